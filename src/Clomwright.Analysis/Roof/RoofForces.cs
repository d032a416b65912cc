using Clomwright.Analysis.Members;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Roof;

/// <summary>What one state of load does to the poles of a roof. Lists run clockwise, pole by pole as landings are listed; each crossing of a reciprocal frame belongs to the pole that rests there.</summary>
/// <remarks>For a plain roof the crossing stands for the inner support: post, ring, ridge or high wall.</remarks>
public sealed record RoofForces
{
    /// <summary>W: load of each pole, N.</summary>
    public required Sequence<double> Load { get; init; }

    /// <summary>M_o: its first moment about the plate, N m.</summary>
    public required Sequence<double> LoadMoment { get; init; }

    /// <summary>P: force on each pole at its far crossing, from plan equilibrium, N; negative opens the crossing.</summary>
    public required Sequence<double> CrossingForce { get; init; }

    /// <summary>The same in space, its vertical part, N.</summary>
    public required Sequence<double> CrossingForceInSpace { get; init; }

    /// <summary>In space, its horizontal part, N: what a pin holds even when nothing slips.</summary>
    public required Sequence<double> CrossingSidewaysInSpace { get; init; }

    /// <summary>A: vertical force of the plate on each pole, N; negative lifts the pole off.</summary>
    public required Sequence<double> PlateReaction { get; init; }

    /// <summary>In space, horizontal force of each pole on the plate, N.</summary>
    public required Sequence<double> PlateSidewaysInSpace { get; init; }

    /// <summary>Moment over the plate, N m, sagging positive.</summary>
    public required Sequence<double> MomentAtPlate { get; init; }

    /// <summary>Moment where the seat is deepest, at the bond beam's lower edge, N m.</summary>
    public required Sequence<double> MomentAtHeel { get; init; }

    /// <summary>Moment at the near crossing, N m.</summary>
    public required Sequence<double> MomentAtNear { get; init; }

    /// <summary>Largest shear across each pole, N.</summary>
    public required Sequence<double> Shear { get; init; }

    /// <summary>Shear across each pole at the outer edge of its seat, from its overhang, N.</summary>
    public required Sequence<double> ShearOfOverhang { get; init; }

    /// <summary>Largest bending stress of each pole, at the net section where it is notched or seated, Pa.</summary>
    public required Sequence<double> BendingStress { get; init; }

    /// <summary>Largest bending stress of each pole as if nothing were cut, Pa.</summary>
    public required Sequence<double> BendingStressGross { get; init; }

    /// <summary>Largest shear stress of each pole, at the net section where it is notched or seated, Pa.</summary>
    public required Sequence<double> ShearStress { get; init; }

    /// <summary>How far each near crossing sinks at once, m; empty when the timber is not known.</summary>
    public required Sequence<double> Drop { get; init; }

    /// <summary>The larger of plan and space at each crossing, N: what is checked.</summary>
    public required Sequence<double> Governing { get; init; }

    /// <summary>Numbers of the poles whose far crossing opens; the pin there is in tension.</summary>
    public Sequence<int> Opened => CrossingForce.Select((p, i) => (p, i)).Where(x => x.p < 0).Select(x => x.i + 1).ToSequence();

    /// <summary>Sum of all loads, N.</summary>
    public double TotalLoad => Load.Sum();

    /// <summary>Largest share by which space and plan differ at a crossing, of the largest force.</summary>
    public double PlanToSpace => CrossingForce.Zip(CrossingForceInSpace, (p, s) => Math.Abs(s - p)).Max() / Math.Max(CrossingForce.Max(Math.Abs), double.Epsilon);

    /// <summary>The same under a multiple of the load: everything here grows with it.</summary>
    internal RoofForces Times(double factor)
    {
        return new RoofForces
        {
            Load = All(Load), LoadMoment = All(LoadMoment), CrossingForce = All(CrossingForce), CrossingForceInSpace = All(CrossingForceInSpace),
            CrossingSidewaysInSpace = All(CrossingSidewaysInSpace), PlateReaction = All(PlateReaction), PlateSidewaysInSpace = All(PlateSidewaysInSpace),
            MomentAtPlate = All(MomentAtPlate), MomentAtHeel = All(MomentAtHeel), MomentAtNear = All(MomentAtNear), Shear = All(Shear), ShearOfOverhang = All(ShearOfOverhang), BendingStress = All(BendingStress),
            BendingStressGross = All(BendingStressGross), ShearStress = All(ShearStress), Drop = All(Drop), Governing = All(Governing),
        };

        Sequence<double> All(Sequence<double> values) => values.Select(v => factor * v).ToSequence();
    }

    /// <summary>Forces of loads along the poles, given in the order of carrying.</summary>
    internal static RoofForces Of(ReciprocalGeometry frame, SpatialEquilibrium space, IReadOnlyList<PoleLoad> loads, double? modulus)
    {
        var n = frame.Count;
        double[] near = frame.NearDistances, far = frame.FarDistances;
        double[] load = [.. loads.Select(l => l.Total)], moment = [.. loads.Select(l => l.PlateMoment)];
        var crossing = CyclicEquilibrium.Forces(near, far, moment);
        var plate = CyclicEquilibrium.PlateReactions(load, crossing);
        var spatial = space.Solve(load, moment);
        var diagrams = new PoleDiagram[n];
        var sink = new double[n];
        var stress = new PoleStress[n];
        for (var i = 0; i < n; i++)
        {
            var pole = frame.Poles[i];
            diagrams[i] = PoleDiagram.Of(pole, loads[i], plate[i], crossing[(i + n - 1) % n], crossing[i]);
            stress[i] = PoleStress.Of(diagrams[i]);
            sink[i] = modulus is { } e ? diagrams[i].SinkAtNear(x => e * SecondMoment(pole.DiameterAt(x))) : 0;
        }

        return new RoofForces
        {
            Load = InOrder(load.AsSpan()),
            LoadMoment = InOrder(moment.AsSpan()),
            CrossingForce = InOrder(crossing.AsSpan()),
            CrossingForceInSpace = Each(i => spatial.Crossing[i].Z),
            Governing = Each(i => Math.Abs(spatial.Crossing[i].Z) > Math.Abs(crossing[i]) ? spatial.Crossing[i].Z : crossing[i]),
            CrossingSidewaysInSpace = Each(i => Sideways(spatial.Crossing[i])),
            PlateReaction = InOrder(plate.AsSpan()),
            PlateSidewaysInSpace = Each(i => Sideways(spatial.Plate[i])),
            MomentAtPlate = Each(i => diagrams[i].MomentAtPlate),
            MomentAtHeel = Each(i => diagrams[i].MomentAtHeel),
            MomentAtNear = Each(i => diagrams[i].MomentAtNear),
            Shear = Each(i => diagrams[i].GreatestShear * frame.Poles[i].PitchCosine),
            ShearOfOverhang = Each(i => Math.Abs(diagrams[i].ShearOfOverhang) * frame.Poles[i].PitchCosine),
            BendingStress = Each(i => stress[i].Bending),
            BendingStressGross = Each(i => stress[i].BendingGross),
            ShearStress = Each(i => stress[i].Shear),
            Drop = modulus is null ? [] : InOrder(RingDrop.Of(near, far, sink).AsSpan()),
        };

        Sequence<double> Each(Func<int, double> value)
        {
            var inCarrying = new double[n];
            for (var i = 0; i < n; i++)
            {
                inCarrying[i] = value(i);
            }

            return InOrder(inCarrying);
        }

        Sequence<double> InOrder(ReadOnlySpan<double> inCarrying)
        {
            var clockwise = new double[n];
            for (var i = 0; i < n; i++)
            {
                clockwise[frame.Poles[i].Number - 1] = inCarrying[i];
            }

            return Sequence.Create<double>(clockwise);
        }
    }

    private static double SecondMoment(double d) => Math.PI / 64 * d * d * d * d;

    private static double Sideways(Numerics.Frames.Vector3 f) => Math.Sqrt(f.X * f.X + f.Y * f.Y);
}

/// <summary>Largest stresses along one pole, Pa.</summary>
/// <param name="Bending">At net sections.</param>
/// <param name="BendingGross">As if nothing were cut.</param>
/// <param name="Shear">At net sections.</param>
internal readonly record struct PoleStress(double Bending, double BendingGross, double Shear)
{
    public static PoleStress Of(PoleDiagram diagram)
    {
        var pole = diagram.Pole;
        double bending = 0, gross = 0, shear = 0;
        for (var j = 0; j < diagram.Stations.Count; j++)
        {
            var x = diagram.Stations[j];
            var d = pole.DiameterAt(x);
            var moment = Math.Abs(diagram.Moment[j]);
            gross = Math.Max(gross, moment / (Math.PI * d * d * d / 32));
            var net = NotchedRound.Of(d, pole.CutAt(x));
            bending = Math.Max(bending, moment / net.SectionModulus);
            shear = Math.Max(shear, Math.Max(Across(diagram.ShearBefore[j], net), Across(diagram.ShearAfter[j], net)));
        }

        AtHeel(pole.Heel, 0);
        if (pole.UpperHeel is { } upper)
        {
            AtHeel(upper, pole.Far);
        }

        return new PoleStress(bending, gross, shear);

        void AtHeel((double At, double Cut) heel, double support)
        {
            var net = NotchedRound.Of(pole.DiameterAt(heel.At), heel.Cut);
            bending = Math.Max(bending, Math.Abs(diagram.MomentAt(heel.At)) / net.SectionModulus);
            shear = Math.Max(shear, Across(diagram.ShearBefore[diagram.IndexOf(support)], net));
        }

        double Across(double vertical, NotchedRound left) => left.ShearFactor * Math.Abs(vertical) * pole.PitchCosine / left.Area;
    }
}
