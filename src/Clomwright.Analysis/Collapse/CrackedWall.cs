using System.Collections.Immutable;
using Clomwright.Analysis.Roof;
using Clomwright.Analysis.Steps;
using Clomwright.Analysis.Structure;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Numerics.Cracking;
using Clomwright.Numerics.Frames;
using Clomwright.Numerics.Solid;

namespace Clomwright.Analysis.Collapse;

/// <summary>The wall as a body that cracks, pushed in one direction until no equilibrium is found.</summary>
/// <param name="Bearing">Towards which it is pushed, radians clockwise from north.</param>
/// <param name="Limit">Largest push over weight in equilibrium.</param>
/// <param name="Beyond">Least push tried at which none was found; null where the last one asked for still was.</param>
/// <param name="Drift">States on the way.</param>
/// <param name="CracksAt">Push over weight of the state that <paramref name="Cracks"/> tells of.</param>
/// <param name="Cracks">Where it has cracked then.</param>
/// <param name="TensionPa">Tension that the cob was let bear, Pa.</param>
/// <param name="Unknowns">Equations solved.</param>
public sealed record CrackedWall(double Bearing, double Limit, double? Beyond, Sequence<DriftStep> Drift, double CracksAt, Sequence<CrackedCell> Cracks, double TensionPa, int Unknowns);

/// <summary>A state of a pushed wall.</summary>
/// <param name="Factor">Push over weight.</param>
/// <param name="Drift">How far what is pushed has moved, weighed by its weight, m.</param>
/// <param name="Cracked">Share of the cob that has cracked.</param>
public sealed record DriftStep(double Factor, double Drift, double Cracked);

/// <summary>A stretch of cob that has cracked.</summary>
/// <param name="From">Station at which it begins, m.</param>
/// <param name="To">Station at which it ends, m.</param>
/// <param name="Bottom">Height of its bottom, m.</param>
/// <param name="Top">Height of its top, m.</param>
/// <param name="Outside">Whether it is in the outer half of the wall.</param>
/// <param name="Opening">About how far cracks in it gape together, m: the strain beyond what stress accounts for times its longer side.</param>
public sealed record CrackedCell(double From, double To, double Bottom, double Top, bool Outside, double Opening);

/// <summary>Makes a <see cref="CrackedWall"/>.</summary>
internal static class CrackedWalls
{
    /// <summary>Share of the elastic stress always left: with 1e-3 limits come out a tenth too high.</summary>
    public const double Residual = 1e-4;

    private static readonly WallFineness Fineness = new(8_000, 2);

    /// <summary>Pushes a wall.</summary>
    /// <param name="geometry">The placed house.</param>
    /// <param name="strength">Characteristic strength of its cob, Pa.</param>
    /// <param name="seats">How far off the middle of the wall each pole presses, m.</param>
    /// <param name="onLandings">What each pole presses, N.</param>
    /// <param name="bearing">Towards which, radians clockwise from north.</param>
    /// <param name="most">Largest push over weight to try.</param>
    /// <param name="thrust">What each pole pushes square out of the wall all the time, N.</param>
    /// <param name="look">Push over weight at which cracks are told: of the first state that is not under it, else of the last.</param>
    /// <param name="watch">Who waits: told the share of the way to the largest push.</param>
    public static CrackedWall Push(
        HouseGeometry geometry, double strength, Sequence<double> seats, IReadOnlyList<double> onLandings, IReadOnlyList<double> thrust, double bearing, double most, double look, Watch watch)
    {
        var body = new WallBody(geometry, strength, Fineness);
        var basis = new BasisLoads(body, seats, null);
        var model = body.Model with { Supports = body.Unilateral };
        var along = new Vector3(Math.Sin(bearing), Math.Cos(bearing), 0);
        var dead = basis.All[basis.Cob] + basis.All[basis.Timber] + basis.All[basis.Plaster];
        var live = Loading.Inertia(model, _ => UsUnits.Gravity * along);
        var landings = geometry.Landings.Where(l => !l.Secondary).ToArray();
        for (var p = 0; p < Math.Min(basis.Press.Length, onLandings.Count); p++)
        {
            dead += onLandings[p] * basis.All[basis.Press[p]];
            live += onLandings[p] * Along(basis.All[basis.Press[p]], along);
            if (thrust[p] > 0 && geometry.Curve.Normal(landings[p].Station) is var outward)
            {
                dead += thrust[p] * Along(basis.All[basis.Press[p]], new Vector3(outward.East, outward.North, 0));
            }
        }

        var law = new LowTension(body.Modulus, body.Numbers["wall-cob-poisson"], body.Numbers["wall-crack-tension"], strength, Residual);
        ImmutableArray<LowTension?> laws = [.. model.Materials.Select(material => material.IsIsotropic ? law : null)];
        var pushed = Pushover.Of(model, laws, dead, live, most / 8, most, told: factor => watch.Tell?.Invoke(factor / most), stop: watch.Cancelled);
        var cob = Enumerable.Range(0, model.Cells.Count).Where(body.IsCob).ToArray();
        var seen = pushed.Steps.FirstOrDefault(step => step.Factor >= look - 1e-9) ?? pushed.Steps.LastOrDefault();
        return new CrackedWall(
            bearing, pushed.Limit, pushed.Beyond,
            pushed.Steps.Select(step => new DriftStep(step.Factor, step.Drift, cob.Average(cell => step.State.Cracks[cell].Cracked))).ToSequence(),
            seen?.Factor ?? 0, seen is null ? [] : Cracks(body.Grid, cob, seen.State).ToSequence(), law.Tension, 3 * body.Grid.Nodes);
    }

    /// <summary>A load down turned into as much along a direction.</summary>
    private static NodalLoad Along(NodalLoad down, Vector3 along) => down.Turned(force => -force.Z * along);

    private static IEnumerable<CrackedCell> Cracks(SolidGrid grid, int[] cob, CrackedState state)
    {
        foreach (var cell in cob.Where(cell => state.Cracks[cell].Cracked > 0))
        {
            var (i, k, j) = grid.Position(cell);
            var side = Math.Max(grid.S[i + 1] - grid.S[i], grid.Z[k + 1] - grid.Z[k]);
            yield return new CrackedCell(grid.S[i], grid.S[i + 1], grid.Z[k], grid.Z[k + 1], 2 * j + 1 > grid.Through, side * state.Cracks[cell].Opening);
        }
    }
}
