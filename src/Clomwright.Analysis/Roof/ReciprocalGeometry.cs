using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Numerics.Frames;

namespace Clomwright.Analysis.Roof;

/// <summary>Either the frame in space, or the reason why no such frame can stand.</summary>
public abstract record ReciprocalShape
{
    private ReciprocalShape()
    {
    }

    /// <summary>The poles can lie as described.</summary>
    public sealed record Frame(ReciprocalGeometry Geometry) : ReciprocalShape;

    /// <summary>They cannot, and why.</summary>
    public sealed record Impossible(Message Because) : ReciprocalShape;
}

/// <summary>A reciprocal frame in space. Heights are against the plate axis; lengths in m.</summary>
/// <param name="Centre">Of the circle that the centrelines touch in plan.</param>
/// <param name="RingRadius">r_t.</param>
/// <param name="Turn">Which neighbour each pole rests on.</param>
/// <param name="Poles">In the order of carrying: each rests on the next, the last on the first. Clockwise when <paramref name="Turn"/> is, else anticlockwise.</param>
public sealed record ReciprocalGeometry(PlanPoint Centre, double RingRadius, Turn Turn, Sequence<PoleGeometry> Poles)
{
    /// <summary>How many poles lie side by side in every place: 2 in a doubled frame. Axes and marks are those of the line between them.</summary>
    public int SideBySide { get; init; } = 1;

    /// <summary>How many places of a pole there are round the ring.</summary>
    public int Count => Poles.Count;

    /// <summary>a_i in the order of carrying.</summary>
    public double[] NearDistances => [.. Poles.Select(p => p.Near)];

    /// <summary>b_i in the order of carrying.</summary>
    public double[] FarDistances => [.. Poles.Select(p => p.Far)];

    /// <summary>The pole that this one rests on, in the order of carrying.</summary>
    public PoleGeometry Next(int index) => Poles[(index + 1) % Count];

    /// <summary>Diameter left clear inside the ring, m; may be negative.</summary>
    public double ClearOpening => 2 * RingRadius - SideBySide * Poles.Max(p => p.DiameterAt(p.TangentDistance));

    /// <summary>Mean of the poles' pitches along their own axes, radians.</summary>
    public double MeanPitch => Poles.Average(p => p.Pitch);

    /// <summary>Mean slope of the roof from plate to ring along a radius: the angle to use for snow and wind coefficients, radians.</summary>
    public double MeanRadialPitch => Poles.Average(p => Math.Atan2(p.TangentDistance * p.Slope, p.PlateRadius - RingRadius));

    /// <summary>Height of the roof surface over the plate axis on a pole's line, m: the surface swept by the axes is a hyperboloid of one sheet.</summary>
    /// <param name="pole">Place in the order of carrying.</param>
    /// <param name="radius">Distance from the centre, m; at least r_t.</param>
    public double SurfaceHeight(int pole, double radius) =>
        Poles[pole].FootHeight + Poles[pole].Slope * (Poles[pole].TangentDistance - Math.Sqrt(radius * radius - RingRadius * RingRadius));

    /// <summary>Slope of that surface along a radius, rise over run; steeper toward the ring and infinite at it.</summary>
    public double RadialSlope(int pole, double radius) => Poles[pole].Slope * radius / Math.Sqrt(radius * radius - RingRadius * RingRadius);
}

/// <summary>One pole in space. Distances along a pole are in plan from its foot on the plate, inward positive, m.</summary>
public sealed record PoleGeometry
{
    /// <summary>From 1, clockwise as landings are listed.</summary>
    public required int Number { get; init; }

    /// <summary>Where its axis crosses the plate.</summary>
    public required PlanPoint Foot { get; init; }

    /// <summary>Unit direction inward along the pole, in plan.</summary>
    public required PlanPoint Along { get; init; }

    /// <summary>R_w: from the ring's centre to the foot.</summary>
    public required double PlateRadius { get; init; }

    /// <summary>Height of the axis over the foot, against the plate axis.</summary>
    public required double FootHeight { get; init; }

    /// <summary>L_w: to the point where the axis touches the ring circle in plan.</summary>
    public required double TangentDistance { get; init; }

    /// <summary>a: to the near crossing, where it carries the pole before it.</summary>
    public required double Near { get; init; }

    /// <summary>b: to the far crossing, where it rests on the next.</summary>
    public required double Far { get; init; }

    /// <summary>From the foot outward to the eave end.</summary>
    public required double EaveReach { get; init; }

    /// <summary>Past the far crossing to the inner end.</summary>
    public required double Tail { get; init; }

    /// <summary>Diameter at the eave end.</summary>
    public required double Butt { get; init; }

    /// <summary>Diameter at the inner end.</summary>
    public required double Tip { get; init; }

    /// <summary>Depth cut from it at each crossing.</summary>
    public required double Notch { get; init; }

    /// <summary>tan(beta): rise over plan run along its axis.</summary>
    public required double Slope { get; init; }

    /// <summary>delta: least distance between its axis and that of the pole it rests on.</summary>
    public required double Separation { get; init; }

    /// <summary>e: vertical distance from the next pole's axis up to its own where they cross in plan.</summary>
    public required double Rise { get; init; }

    /// <summary>omega: angle in plan between its axis and the next one's, radians.</summary>
    public required double CrossingAngle { get; init; }

    /// <summary>How its foot sits on the bond beam; null without one.</summary>
    public LevelSeat? Seat { get; init; }

    /// <summary>How its far end does, where that sits on the wall too; otherwise null.</summary>
    public LevelSeat? UpperSeat { get; init; }

    /// <summary>lambda = a/b.</summary>
    public double Ratio => Near / Far;

    /// <summary>beta: slope of its axis, radians.</summary>
    public double Pitch => Math.Atan(Slope);

    /// <summary>cos(beta).</summary>
    public double PitchCosine => 1 / Math.Sqrt(1 + Slope * Slope);

    /// <summary>Between the two crossings in plan: for equal poles on a circle, s = 2 r_t tan(pi/n).</summary>
    public double Stub => Far - Near;

    /// <summary>Angle in plan between the pole and the radius at its foot, radians.</summary>
    public double Skew(double ringRadius) => Math.Asin(ringRadius / PlateRadius);

    /// <summary>From the foot to the far crossing along the axis.</summary>
    public double LengthToFar => Far / PitchCosine;

    /// <summary>From the foot to the near crossing along the axis: the crossing mark.</summary>
    public double LengthToNear => Near / PitchCosine;

    /// <summary>From the eave end to the far crossing along the axis.</summary>
    public double Length => (EaveReach + Far) / PitchCosine;

    /// <summary>From the eave end to the inner end along the axis.</summary>
    public double CutLength => (EaveReach + Far + Tail) / PitchCosine;

    /// <summary>How far the axis at the eave end lies below the foot.</summary>
    public double EaveDrop => EaveReach * Slope;

    /// <summary>Its edge in plan from a distance inward to its inner end, in its own thickness and taper; of two side by side also the line where they touch.</summary>
    /// <param name="from">Where the outline begins and ends, m from the foot.</param>
    /// <param name="sideBySide">How many poles lie in its place: 1 or 2.</param>
    public PlanPoint[] OutlineFrom(double from, int sideBySide)
    {
        var to = Far + Tail;
        var aside = new PlanPoint(-Along.North, Along.East);
        return sideBySide == 1
            ? [At(from, 0.5), At(to, 0.5), At(to, -0.5), At(from, -0.5)]
            : [At(from, 1), At(to, 1), At(to, 0), At(from, 0), At(to, 0), At(to, -1), At(from, -1)];

        PlanPoint At(double along, double side) => Foot + along * Along + side * DiameterAt(along) * aside;
    }

    /// <summary>Height of the axis, against the plate axis.</summary>
    public double HeightAt(double distance) => FootHeight + Slope * distance;

    /// <summary>Height of its underside, against the plate axis.</summary>
    public double UnderAt(double distance) => HeightAt(distance) - DiameterAt(distance) / (2 * PitchCosine);

    /// <summary>Diameter, tapering evenly from butt to tip.</summary>
    public double DiameterAt(double distance) => Butt + (Tip - Butt) * (EaveReach + distance) / (EaveReach + Far + Tail);

    /// <summary>What is cut from it at a distance, square to its axis, m: its seat over the middle of the bond beam, the notch at a crossing.</summary>
    public double CutAt(double distance) =>
        distance == 0 && Seat is { } seat ? LevelSeat.Counted(DiameterAt(0), seat.Depth)
        : distance == Far && UpperSeat is { } upper ? LevelSeat.Counted(DiameterAt(Far), upper.Depth)
        : distance == Near || distance == Far ? Notch
        : 0;

    /// <summary>Where the seat of its foot is deepest, at the lower edge of the bond beam, and how deep, m; over the plate and nothing without one.</summary>
    public (double At, double Cut) Heel => Seat is { } seat ? (-Math.Min(seat.Run / 2, EaveReach), LevelSeat.Counted(DiameterAt(0), seat.Outer)) : default;

    /// <summary>The same of its upper end; null where that has no seat.</summary>
    public (double At, double Cut)? UpperHeel => UpperSeat is { } upper ? (Far - Math.Min(upper.Run / 2, Far), LevelSeat.Counted(DiameterAt(Far), upper.Outer)) : null;

    /// <summary>How far its underside at the upper end lies over that at its foot, m; null where the upper end sits on no wall.</summary>
    public double? UpperRise => UpperSeat is null ? null : UnderAt(Far) - UnderAt(0);

    /// <summary>The point of the axis in space.</summary>
    public Vector3 AxisAt(double distance) =>
        new(Foot.East + distance * Along.East, Foot.North + distance * Along.North, HeightAt(distance));
}
