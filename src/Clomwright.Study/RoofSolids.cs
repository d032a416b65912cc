using System.Globalization;
using Clomwright.Analysis.Roof;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Geometry.Solids;

namespace Clomwright.Study;

/// <summary>The roof in space, for whoever draws or exports the house.</summary>
/// <param name="Solids">Poles by their numbers, each as long as it is cut, thick at its butt and thin at its tip; then secondaries.</param>
/// <param name="Deck">Lines round the deck on its top: the eave, and the ring where the poles leave one open.</param>
public sealed record RoofShape(Sequence<SolidMesh> Solids, Sequence<Sequence<SpacePoint>> Deck);

/// <summary>Makes it.</summary>
/// <remarks>
/// Poles lie as <see cref="PoleGeometry"/> says, over wall top, bond beam and half a pole, not let in. Secondaries of a roof round a centre lie between their two neighbours, from the eave over their
/// landing to the same share of the line between the neighbours' inner crossings, with their undersides in the plane of the poles' undersides; those of shed and gable roofs have no landing and are not drawn.
/// </remarks>
public static class RoofSolids
{
    private const int Steps = 144;

    /// <summary>The roof of a placed house; empty where there is none or it cannot stand.</summary>
    public static RoofShape Of(HouseGeometry geometry, RoofResult result)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        ArgumentNullException.ThrowIfNull(result);
        var (poles, round, axis, aside) = result switch
        {
            { Reciprocal.Value: { } frame } => (frame.Geometry.Poles, true, frame.Raising.AxisHeight, frame.Geometry.SideBySide),
            { Plain.Value: { Places.Count: > 0 } plain } => (plain.Places, geometry.House.Roof is Roof.Radial, AxisHeight(geometry.House, plain.Places[0]), 1),
            _ => ((Sequence<PoleGeometry>)[], false, 0.0, 1),
        };
        if (poles.Count == 0)
        {
            return new([], []);
        }

        PoleGeometry[] order = [.. poles.OrderBy(p => p.Number)];
        SolidMesh?[] solids = [.. order.Select(p => Pole(p, axis, aside)), .. round ? Secondaries(geometry, order, axis) : []];
        return new(solids.OfType<SolidMesh>().ToSequence(), [Eave(geometry, order, axis, round), .. result.Reciprocal.Value is { } reciprocal ? [Ring(reciprocal.Geometry, axis, Deck(geometry.House))] : (Sequence<SpacePoint>[])[]]);
    }

    private static double AxisHeight(House house, PoleGeometry pole) => house.Wall.Top.Metres + (house.BondBeam?.Depth.Metres ?? 0) + pole.DiameterAt(0) / 2;

    private static double Deck(House house) => house.Roof?.Deck?.Metres ?? 0;

    private static SpacePoint At(PoleGeometry pole, double along, double axis) => SpacePoint.Of(pole.Foot + along * pole.Along, axis + pole.HeightAt(along));

    private static SolidMesh? Pole(PoleGeometry pole, double axis, int sideBySide)
    {
        double from = -pole.EaveReach, to = pole.Far + pole.Tail;
        RoundTimber Beside(double share)
        {
            SpacePoint Moved(double along) => At(pole, along, axis) + share * pole.DiameterAt(along) * new SpacePoint(-pole.Along.North, pole.Along.East, 0);
            return new(Moved(from), Moved(to), pole.DiameterAt(from) / 2, pole.DiameterAt(to) / 2);
        }

        return RoundTimbers.Of(
            string.Create(CultureInfo.InvariantCulture, $"pole {pole.Number}"), SolidPart.Pole, sideBySide == 2 ? [Beside(-0.5), Beside(0.5)] : [Beside(0)]);
    }

    private static IEnumerable<SolidMesh?> Secondaries(HouseGeometry geometry, PoleGeometry[] poles, double axis)
    {
        if (geometry.House.Roof?.Secondaries is not { PerBay: > 0 } between)
        {
            yield break;
        }

        var (bay, place) = (poles.Length - 1, 0);
        foreach (var landing in geometry.Landings)
        {
            if (!landing.Secondary)
            {
                (bay, place) = ((bay + 1) % poles.Length, 0);
                continue;
            }

            var share = (double)++place / (between.PerBay + 1);
            var (a, b, radius) = (poles[bay], poles[(bay + 1) % poles.Length], between.Diameter.Metres / 2);
            double Inner(PoleGeometry pole) => geometry.House.Roof is Roof.Reciprocal ? pole.Near : pole.Far;
            SpacePoint Under(PoleGeometry pole, double along) => At(pole, along, axis) - new SpacePoint(0, 0, pole.DiameterAt(along) / 2 / pole.PitchCosine);
            var inner = Between(Under(a, Inner(a)), Under(b, Inner(b)), share);
            var plate = SpacePoint.Of(landing.Point, Between(Under(a, 0), Under(b, 0), share).Up);
            var reach = a.EaveReach + share * (b.EaveReach - a.EaveReach);
            var run = (new PlanPoint(inner.East, inner.North) - landing.Point).Norm;
            var up = new SpacePoint(0, 0, radius * Math.Sqrt(1 + Math.Pow((inner.Up - plate.Up) / run, 2)));
            var solid = RoundTimbers.Of(landing.Name, SolidPart.Secondary, [new(plate + reach / run * (plate - inner) + up, inner + up, radius, radius)]);
            yield return solid;
        }
    }

    private static SpacePoint Between(SpacePoint a, SpacePoint b, double share) => a + share * (b - a);

    /// <summary>Round the eave on the deck: between two poles the height changes evenly; of planes it is that of the nearest pole.</summary>
    private static Sequence<SpacePoint> Eave(HouseGeometry geometry, PoleGeometry[] poles, double axis, bool round)
    {
        var roof = geometry.House.Roof!;
        var offset = geometry.Wall.OutsideOffset(geometry.Wall.Top.Metres) + roof.Eave.Metres;
        var centre = geometry.Curve.Centre;
        (double Angle, double Up)[] ends = [.. poles.Select(p => (Angle(p.Foot - p.EaveReach * p.Along), Over(p, -p.EaveReach))).OrderBy(e => e.Item1)];
        return Enumerable.Range(0, Steps + 1).Select(i => geometry.Curve.At(geometry.Curve.Length * (i % Steps) / Steps, offset)).Select(p => SpacePoint.Of(p, round ? Turned(Angle(p)) : Plane(p))).ToSequence();

        double Angle(PlanPoint p) => Math.Atan2(p.East - centre.East, p.North - centre.North);

        double Over(PoleGeometry pole, double along) => axis + pole.HeightAt(along) + pole.DiameterAt(along) / 2 / pole.PitchCosine + Deck(geometry.House) / pole.PitchCosine;

        double Plane(PlanPoint p)
        {
            var pole = poles.MinBy(q => Math.Abs(q.Along.Cross(p - q.Foot)) + (q.Along.Dot(p - q.Foot) < q.Far + q.Tail ? 0 : 1e3))!;
            return Over(pole, pole.Along.Dot(p - pole.Foot));
        }

        double Turned(double angle)
        {
            var next = Array.FindIndex(ends, e => e.Angle >= angle);
            var (after, before) = (ends[next < 0 ? 0 : next], ends[next <= 0 ? ends.Length - 1 : next - 1]);
            var width = Lap(after.Angle - before.Angle);
            return width > 0 ? before.Up + Lap(angle - before.Angle) / width * (after.Up - before.Up) : after.Up;
        }

        static double Lap(double angle) => angle < 0 ? angle + 2 * Math.PI : angle;
    }

    private static Sequence<SpacePoint> Ring(ReciprocalGeometry frame, double axis, double deck)
    {
        var up = axis + frame.Poles.Average(p => p.HeightAt(p.TangentDistance) + (p.DiameterAt(p.TangentDistance) / 2 + deck) / p.PitchCosine);
        return PlanPoint.Circle(frame.Centre, frame.RingRadius, 72).Select(p => SpacePoint.Of(p, up)).ToSequence() is var ring ? ring.Plus(ring[0]) : [];
    }
}
