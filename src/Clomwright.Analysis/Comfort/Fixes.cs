using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Comfort;

/// <summary>Every fix, tried on the described house in the same drawn weather.</summary>
/// <param name="Base">Heat of a year as described, J.</param>
/// <param name="BaseHot">Hours above 26 C as described, nobody heating.</param>
/// <param name="Fixes">In a fixed order.</param>
public sealed record FixResults(double Base, double BaseHot, Sequence<FixResult> Fixes);

/// <summary>One fix, tried.</summary>
/// <param name="Key">nothing, roof, floor-edge, stem, glazing, shaded-lining, tight, all.</param>
/// <param name="What">In words.</param>
/// <param name="Loss">All loss, W/K.</param>
/// <param name="Heat">Of a year, J.</param>
/// <param name="WoodMass">Firewood of a winter, kg.</param>
/// <param name="HotHours">Above 26 C with nobody heating.</param>
/// <param name="Mould">Share of the wall's inside where mould has what it asks in the worst month of later winters.</param>
public sealed record FixResult(string Key, Message What, double Loss, double Heat, double WoodMass, double HotHours, double Mould);

/// <summary>What may be done, as changes of the house.</summary>
internal static class Fixes
{
    private static readonly Length RoofDepth = Length.FromMillimetres(150), EdgeThick = Length.FromMillimetres(75), EdgeDeep = Length.FromMillimetres(600), StemDepth = Length.FromMillimetres(75), StrawDepth = Length.FromMillimetres(300);
    private const double Tighter = 0.5;

    public static IEnumerable<(string Key, Message What, House House)> Of(House house, ComfortNumbers numbers)
    {
        yield return ("nothing", new Message("analysis.comfort.fix.nothing"), house);
        var all = house;
        if (house.Roof is { } roof && (roof.Deck is not null || roof.Layers.Count > 0))
        {
            House Roofed(House h) => h with { Roof = h.Roof! with { Layers = [new Layer("cork", RoofDepth, "cork"), .. h.Roof.Layers] } };
            all = Roofed(all);
            yield return ("roof", Message.Of("analysis.comfort.fix.roof", ("depth", RoofDepth)), Roofed(house));
        }

        if (house.Comfort.FloorEdge is null)
        {
            House Edged(House h) => h with { Comfort = h.Comfort with { FloorEdge = new FloorEdge("foam-glass", EdgeThick, EdgeDeep) } };
            all = Edged(all);
            yield return ("floor-edge", Message.Of("analysis.comfort.fix.floor-edge", ("thickness", EdgeThick), ("depth", EdgeDeep)), Edged(house));
        }

        if (house.Stem.Top > Length.Zero && !house.Comfort.Linings.Any(l => l.Bottom < house.Stem.Top))
        {
            // Lies outside, from grade to the top of the stem: the stone stays in the warm.
            House Stemmed(House h) => h with { Comfort = h.Comfort with { Linings = [.. h.Comfort.Linings, new Lining("stem", Face.Outside, "foam-glass", StemDepth) { Bottom = h.Site.Grade ?? Length.Zero, Top = h.Stem.Top }] } };
            all = Stemmed(all);
            yield return ("stem", Message.Of("analysis.comfort.fix.stem", ("depth", StemDepth)), Stemmed(house));
        }

        if (house.Openings.Any(o => o.Kind != OpeningKind.Door))
        {
            House Glazed(House h)
            {
                string Better(string? now) => now == "single" ? "double" : "triple";
                return h with { Comfort = h.Comfort with { Glazing = Better(h.Comfort.Glazing ?? "double") }, Openings = [.. h.Openings.Select(o => o.Glazing is null ? o : o with { Glazing = Better(o.Glazing) })] };
            }

            all = Glazed(all);
            yield return ("glazing", new Message("analysis.comfort.fix.glazing"), Glazed(house));
        }

        if (!house.Comfort.Linings.Any(l => l.Face == Face.Outside && l.Bottom is null))
        {
            var pole = house.Site.Latitude < 0 ? 180.0 : 0;
            House Lined(House h) => h with { Comfort = h.Comfort with { Linings = [.. h.Comfort.Linings, new Lining("light earth", Face.Outside, "light-earth", StrawDepth) { From = new Angle((pole + 270) % 360), To = new Angle((pole + 90) % 360) }] } };
            all = Lined(all);
            yield return ("shaded-lining", Message.Of("analysis.comfort.fix.shaded-lining", ("depth", StrawDepth)), Lined(house));
        }

        var airing = house.Comfort.Airing ?? numbers["comfort-airing"];
        House Tight(House h) => h with { Comfort = h.Comfort with { Airing = Math.Max(0.3, airing * Tighter) } };
        yield return ("tight", Message.Of("analysis.comfort.fix.tight", ("airing", Amount.Number(Math.Max(0.3, airing * Tighter)))), Tight(house));
        yield return ("all", new Message("analysis.comfort.fix.all"), all);
    }
}
