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
        if (RoofShell.Of(geometry, result) is not { } shell)
        {
            return new([], []);
        }

        PoleGeometry[] order = [.. shell.Poles.OrderBy(p => p.Number)];
        SolidMesh?[] solids = [.. order.Select(p => Pole(p, shell)), .. shell.IsRing ? Secondaries(geometry, order, shell) : []];
        return new(solids.OfType<SolidMesh>().ToSequence(), [Closed(shell.Edge(Steps).Select(e => SpacePoint.Of(e.At, e.Deck))), .. result.Reciprocal.Value is { } frame ? [Ring(frame.Geometry, shell)] : (Sequence<SpacePoint>[])[]]);
    }

    private static SpacePoint At(PoleGeometry pole, double along, RoofShell shell) => SpacePoint.Of(pole.Foot + along * pole.Along, shell.Axis(pole, along));

    private static SolidMesh? Pole(PoleGeometry pole, RoofShell shell)
    {
        double from = -pole.EaveReach, to = pole.Far + pole.Tail;
        RoundTimber Beside(double share)
        {
            SpacePoint Moved(double along) => At(pole, along, shell) + share * pole.DiameterAt(along) * new SpacePoint(-pole.Along.North, pole.Along.East, 0);
            return new(Moved(from), Moved(to), pole.DiameterAt(from) / 2, pole.DiameterAt(to) / 2);
        }

        return RoundTimbers.Of(
            string.Create(CultureInfo.InvariantCulture, $"pole {pole.Number}"), SolidPart.Pole, shell.SideBySide == 2 ? [Beside(-0.5), Beside(0.5)] : [Beside(0)]);
    }

    private static IEnumerable<SolidMesh?> Secondaries(HouseGeometry geometry, PoleGeometry[] poles, RoofShell shell)
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
            SpacePoint Under(PoleGeometry pole, double along) => At(pole, along, shell) - new SpacePoint(0, 0, pole.DiameterAt(along) / 2 / pole.PitchCosine);
            var inner = Between(Under(a, shell.Inner(a)), Under(b, shell.Inner(b)), share);
            var plate = SpacePoint.Of(landing.Point, Between(Under(a, 0), Under(b, 0), share).Up);
            var reach = a.EaveReach + share * (b.EaveReach - a.EaveReach);
            var run = (new PlanPoint(inner.East, inner.North) - landing.Point).Norm;
            var up = new SpacePoint(0, 0, radius * Math.Sqrt(1 + Math.Pow((inner.Up - plate.Up) / run, 2)));
            var solid = RoundTimbers.Of(landing.Name, SolidPart.Secondary, [new(plate + reach / run * (plate - inner) + up, inner + up, radius, radius)]);
            yield return solid;
        }
    }

    private static SpacePoint Between(SpacePoint a, SpacePoint b, double share) => a + share * (b - a);

    /// <summary>The ring that the poles leave open, at the mean height of the deck over their crossings.</summary>
    private static Sequence<SpacePoint> Ring(ReciprocalGeometry frame, RoofShell shell)
    {
        var up = frame.Poles.Average(p => shell.OverDeck(p, p.TangentDistance));
        return Closed(PlanPoint.Circle(frame.Centre, frame.RingRadius, 72).Select(p => SpacePoint.Of(p, up)));
    }

    private static Sequence<SpacePoint> Closed(IEnumerable<SpacePoint> line) => line.ToSequence() is { Count: > 0 } points ? points.Plus(points[0]) : [];
}
