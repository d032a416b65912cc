using Clomwright.Analysis.Roof;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Geometry.Solids;

namespace Clomwright.Study;

/// <summary>A point of the roof's edge.</summary>
/// <param name="At">Its place in plan: on the line of the eave.</param>
/// <param name="Under">Height of the deck's underside, m over the finished floor.</param>
/// <param name="Deck">Height of the deck's top, m.</param>
/// <param name="Top">Height of the top of the edge board or of what covers the deck, whichever is higher, m.</param>
public readonly record struct RoofEdgePoint(PlanPoint At, double Under, double Deck, double Top);

/// <summary>The roof in space: poles, the edge all round, and the surface between poles, at their heights over the finished floor.</summary>
public sealed class RoofShell
{
    private readonly HouseGeometry geometry;
    private readonly Roof roof;
    private readonly double plate;

    private RoofShell(HouseGeometry geometry, Roof roof, Sequence<PoleGeometry> poles, double plate, int sideBySide, bool ring)
    {
        (this.geometry, this.roof, Poles, this.plate, SideBySide, IsRing) = (geometry, roof, poles, plate, sideBySide, ring);
        BeamTop = geometry.Wall.Top.Metres + (geometry.House.BondBeam?.Depth.Metres ?? 0);
    }

    /// <summary>All poles or rafters.</summary>
    public Sequence<PoleGeometry> Poles { get; }

    /// <summary>How many lie side by side in each place.</summary>
    public int SideBySide { get; }

    /// <summary>Height of the bond beam's top, m.</summary>
    public double BeamTop { get; }

    /// <summary>Whether the poles stand in a ring; else side by side.</summary>
    public bool IsRing { get; }

    private double Deck => roof.Deck?.Metres ?? 0;

    /// <summary>The shell of a house's roof; null where it is not known.</summary>
    public static RoofShell? Of(HouseGeometry geometry, RoofResult? result) => (geometry.House.Roof, result) switch
    {
        ({ } roof, { Reciprocal.Value: { } frame }) => new RoofShell(geometry, roof, frame.Geometry.Poles, frame.Raising.AxisHeight, frame.Geometry.SideBySide, true),
        ({ } roof, { Plain.Value: { Places.Count: > 0 } plain }) => new RoofShell(geometry, roof, plain.Places, Plate(geometry.House, plain.Places[0]), 1, roof is Roof.Radial),
        _ => null,
    };

    /// <summary>Height of a pole's axis, m over the finished floor.</summary>
    public double Axis(PoleGeometry pole, double along) => plate + pole.HeightAt(along);

    /// <summary>Height of the top of a pole, where the deck lies, m.</summary>
    public double Over(PoleGeometry pole, double along) => Axis(pole, along) + Half(pole, along);

    /// <summary>Height of the deck's top over a pole, m.</summary>
    public double OverDeck(PoleGeometry pole, double along) => Over(pole, along) + Deck / pole.PitchCosine;

    /// <summary>Upright rise of deck and layers, m.</summary>
    public double Covering(PoleGeometry pole) => (Deck + roof.Layers.Sum(l => l.Depth.Metres)) / pole.PitchCosine;

    /// <summary>The roof's edge, clockwise along the line of the eave.</summary>
    /// <param name="steps">How many points.</param>
    public IEnumerable<RoofEdgePoint> Edge(int steps)
    {
        var offset = geometry.Wall.OutsideOffset(geometry.Wall.Top.Metres) + roof.Eave.Metres;
        var ends = IsRing ? Ends() : [];
        for (var i = 0; i < steps; i++)
        {
            var at = geometry.Curve.At(i * geometry.Curve.Length / steps, offset);
            var under = Under(at, out var pole);
            under = IsRing ? Between(ends, i * geometry.Curve.Length / steps) : under;
            var deck = Deck / pole.PitchCosine;
            yield return new(at, under, under + deck, under + Math.Max(deck + (roof.EdgeBoard?.Metres ?? 0), Covering(pole)));
        }
    }

    /// <summary>The surface on which the deck lies, as four corners between each pole and the next, which it rests on in a frame round a ring: eave end and inner end of the next, inner end and eave end of the one before.</summary>
    /// <remarks>
    /// Halved from the first corner to the third, both halves lie on both poles. Halved the other way one half would stand upright and the other cut through the upper pole: in plan a pole runs from its eave end through
    /// the inner end of the pole it rests on, and lies over that by as much as both are thick.
    /// </remarks>
    public IEnumerable<(Sequence<SpacePoint> Corners, double Covering)> Facets()
    {
        foreach (var side in IsRing ? [[.. Poles, Poles[0]]] : Planes())
        {
            foreach (var (a, b) in side.Zip(side.Skip(1)))
            {
                yield return ([Corner(b, -b.EaveReach), Corner(b, Inner(b)), Corner(a, Inner(a)), Corner(a, -a.EaveReach)], (Covering(a) + Covering(b)) / 2);
            }
        }
    }

    /// <summary>Rafters of each plane side by side, and beyond the outermost the edge of the roof, where the deck ends.</summary>
    private IEnumerable<PoleGeometry[]> Planes()
    {
        var edge = Enumerable.Range(0, 360).Select(i => geometry.Curve.At(i * geometry.Curve.Length / 360, geometry.Wall.OutsideOffset(geometry.Wall.Top.Metres) + roof.Eave.Metres)).ToArray();
        foreach (var plane in Poles.GroupBy(p => (Math.Round(p.Along.East, 3), Math.Round(p.Along.North, 3))))
        {
            var across = new PlanPoint(-plane.First().Along.North, plane.First().Along.East);
            PoleGeometry[] rafters = [.. plane.OrderBy(p => p.Foot.Dot(across))];
            PoleGeometry Moved(PoleGeometry pole, double to) => pole with { Foot = pole.Foot + (to - pole.Foot.Dot(across)) * across };
            yield return [Moved(rafters[0], edge.Min(e => e.Dot(across))), .. rafters, Moved(rafters[^1], edge.Max(e => e.Dot(across)))];
        }
    }

    /// <summary>Height of the axes over their seats, m: half a pole above the bond beam.</summary>
    private static double Plate(House house, PoleGeometry pole) => house.Wall.Top.Metres + (house.BondBeam?.Depth.Metres ?? 0) + pole.DiameterAt(0) / 2;

    /// <summary>Where deck and layers end inward along a pole, m from its foot.</summary>
    public double Inner(PoleGeometry pole) => IsRing && roof is Roof.Reciprocal ? pole.Near : pole.Far + (IsRing ? 0 : pole.Tail);

    /// <summary>Stations at which poles of a ring end at the eave, ascending, with the height of the deck's underside there.</summary>
    private (double Station, double Height)[] Ends() =>
    [
        .. Poles.Select(p =>
        {
            var end = p.Foot - p.EaveReach * p.Along;
            var near = geometry.Landings.MinBy(l => (l.Point - p.Foot).Norm)!.Station;
            var foot = geometry.Curve.FootOf(end, near);
            return (Station: geometry.Curve.Wrap(double.IsNaN(foot) ? near : foot), Height: Over(p, -p.EaveReach));
        }).OrderBy(e => e.Station),
    ];

    /// <summary>Between two poles of a ring the edge rises evenly.</summary>
    private double Between((double Station, double Height)[] ends, double station)
    {
        var next = Array.FindIndex(ends, e => e.Station > station);
        var (a, b) = next <= 0 ? (ends[^1], ends[0]) : (ends[next - 1], ends[next]);
        var gap = geometry.Curve.Wrap(b.Station - a.Station);
        return gap == 0 ? a.Height : a.Height + (b.Height - a.Height) * geometry.Curve.Wrap(station - a.Station) / gap;
    }

    private SpacePoint Corner(PoleGeometry pole, double along) => SpacePoint.Of(pole.Foot + along * pole.Along, Over(pole, along));

    /// <summary>Height of the deck's underside over a place: between the two nearest poles in proportion.</summary>
    private double Under(PlanPoint at, out PoleGeometry nearest)
    {
        var (first, second) = (Poles[0], Poles[0]);
        var (near, next) = (double.PositiveInfinity, double.PositiveInfinity);
        foreach (var pole in Poles)
        {
            var away = Away(pole, at);
            if (away < near)
            {
                (second, next, first, near) = (first, near, pole, away);
            }
            else if (away < next)
            {
                (second, next) = (pole, away);
            }
        }

        nearest = first;
        var (a, b) = (Over(first, first.Along.Dot(at - first.Foot)), Over(second, second.Along.Dot(at - second.Foot)));
        return double.IsInfinity(next) || near + next == 0 ? a : (a * next + b * near) / (near + next);
    }

    private static double Away(PoleGeometry pole, PlanPoint at)
    {
        var along = Math.Clamp(pole.Along.Dot(at - pole.Foot), -pole.EaveReach, pole.Far + pole.Tail);
        return (at - pole.Foot - along * pole.Along).Norm;
    }

    private static double Half(PoleGeometry pole, double along) => pole.DiameterAt(along) / 2 / pole.PitchCosine;
}
