using Clomwright.Analysis.Members;
using Clomwright.Analysis.Steps;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Roof;

/// <summary>Where a flue passes the roof.</summary>
/// <param name="Middle">In plan.</param>
/// <param name="Pipe">Radius of the pipe, m.</param>
/// <param name="Clear">Radius of what has to be free of soil, boards and poles, m; null where the maker's clearance is not known.</param>
/// <param name="Nearest">What timber lies nearest.</param>
/// <param name="Gap">From the outside of the pipe to it, in plan, m; negative where they meet.</param>
/// <param name="Cut">Taken out of deck and layers, on the roof's own surface, m2: the clear zone, or the pipe where that is not known; nothing within an open ring.</param>
public sealed record FluePlace(PlanPoint Middle, double Pipe, double? Clear, string Nearest, double Gap, double Cut);

/// <summary>The flue against the poles beside it. The clearance is the maker's and never ours.</summary>
internal static class Flues
{
    /// <summary>The place and its check; nothing without a flue.</summary>
    /// <param name="geometry">The placed house.</param>
    /// <param name="roof">As described.</param>
    /// <param name="poles">Where the poles lie.</param>
    /// <param name="ring">Radius that is open in the middle, m; 0 where nothing is.</param>
    /// <param name="slope">Mean slope of the roof, radians.</param>
    public static (FluePlace? Place, CheckedMember? Check) Of(HouseGeometry geometry, Building.Roof roof, Sequence<PoleGeometry> poles, double ring, double slope)
    {
        if (roof.Flue is not { } flue)
        {
            return (null, null);
        }

        var (sin, cos) = Math.SinCos(flue.Bearing.Radians);
        var middle = geometry.Curve.Centre + flue.Distance.Metres * new PlanPoint(sin, cos);
        var pipe = flue.Diameter.Metres / 2;
        var (nearest, gap) = Beside(geometry, roof, poles, middle).Select(b => (b.Name, Gap: b.Distance - pipe)).MinBy(b => b.Gap);
        var clear = flue.Clear is { } asked ? pipe + asked.Metres : (double?)null;
        var open = flue.Distance.Metres + (clear ?? pipe) <= ring;
        var radius = clear ?? pipe;
        var place = new FluePlace(middle, pipe, clear, nearest, gap, open ? 0 : Math.PI * radius * radius / Math.Cos(slope));
        if (flue.Clear is not { } clearance)
        {
            return (place, new("flue-clear", "flue", Message.Of("analysis.flue.no-clear", ("nearest", nearest), ("gap", Amount.Metres(Math.Max(0, gap))))));
        }

        var sheet = new Worksheet("flue-clear");
        var d = Worksheet.Computed("a", "flue-to-axis", gap + pipe, Dimension.Length);
        var g = sheet.Step("flue-gap", "g", "max(0, a - D/2)", Math.Max(0, gap), Dimension.Length, Sources.Get("mechanics"), d, Worksheet.Given("D", "flue-diameter", 2 * pipe, Dimension.Length));
        return (place, new("flue-clear", $"flue, {nearest}", new MemberCheck("", "place", clearance, g.Value with { Si = Math.Max(g.Value.Si, 1e-6) }, sheet.Done)));
    }

    /// <summary>Distance in plan from a point to the side of everything of timber.</summary>
    private static IEnumerable<(string Name, double Distance)> Beside(HouseGeometry geometry, Building.Roof roof, Sequence<PoleGeometry> poles, PlanPoint at)
    {
        foreach (var pole in poles)
        {
            var along = Math.Clamp(pole.Along.Dot(at - pole.Foot), -pole.EaveReach, pole.Far + pole.Tail);
            yield return (FormattableString.Invariant($"pole {pole.Number}"), (at - (pole.Foot + along * pole.Along)).Norm - roof.SideBySide * pole.DiameterAt(along) / 2);
        }

        if (roof.Secondaries is { } made)
        {
            foreach (var landing in geometry.Landings.Where(l => l.Secondary))
            {
                // Between its neighbours a secondary runs with the nearest pole, to that pole's near crossing.
                var beside = poles.MinBy(p => (p.Foot - landing.Point).Norm)!;
                var along = Math.Clamp(beside.Along.Dot(at - landing.Point), -beside.EaveReach, roof is Building.Roof.Reciprocal ? beside.Near : beside.Far);
                yield return (landing.Name, (at - (landing.Point + along * beside.Along)).Norm - made.Diameter.Metres / 2);
            }
        }

        if (roof is Building.Roof.Radial { CentrePost: true, Post: { } post })
        {
            yield return ("post", (at - geometry.Curve.Centre).Norm - post.Diameter.Metres / 2);
        }
    }
}
