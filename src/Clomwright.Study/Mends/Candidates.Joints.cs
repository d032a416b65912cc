using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Study.Mends;

internal static partial class Candidates
{
    /// <summary>Each way out for a lost pole, in sizes that can be bought: a strap, a doubled frame, posts.</summary>
    private static IEnumerable<Edit> WaysOut(Need need)
    {
        if (need.House.Roof is not Roof.Reciprocal roof)
        {
            return [];
        }

        (double Width, double Thick)[] straps = [(1.5, 0.125), (2, 0.125), (2, 0.25), (3, 0.25)];
        (double Post, double Footing)[] posts = [(6, 16), (6, 24), (8, 30)];
        return
        [
            .. straps.Select(s => Way(new IfOneFails.Strap(Inches(s.Width), Inches(s.Thick)))).Take(need.House.Roof.Deck is null ? 0 : straps.Length),
            Way(new IfOneFails.Doubled()),
            .. posts.Select(p => Way(new IfOneFails.Post(Inches(p.Post), Inches(p.Footing)))),
        ];

        Edit Way(IfOneFails way) => new Edit.ChangeRoof(roof with { IfOneFails = way });
    }

    /// <summary>Pins of the next sizes, with washers as wide as the poles can seat.</summary>
    private static IEnumerable<Edit> BiggerPins(Need need) => need.House.Roof is Roof.Reciprocal roof
        ? new[] { 0.625, 0.75, 1 }.Where(inches => roof.Pin is null || Inches(inches) > roof.Pin.Diameter)
            .Select(inches => new Edit.ChangeRoof(roof with { Joint = PoleJoint.Pinned, Pin = (roof.Pin ?? new Pin(default)) with { Diameter = Inches(inches), Washer = Inches(3 * inches + 0.5) } }))
        : [];

    /// <summary>Thicker boards, more secondaries, thicker secondaries; then two of them.</summary>
    private static IEnumerable<Edit> Decking(Need need)
    {
        if (need.House.Roof is not { } roof)
        {
            return [];
        }

        var (one, boards) = (roof.Secondaries ?? new Secondaries(0, Inches(5)), roof.Deck ?? Inches(1));
        var more = one with { PerBay = one.PerBay + 1 };
        var thicker = one with { Diameter = one.Diameter + need.StockStep };
        Roof[] tried = need.Subject.StartsWith("secondaries", StringComparison.Ordinal)
            ? [roof with { Secondaries = thicker }, roof with { Secondaries = more }, roof with { Secondaries = one with { Diameter = thicker.Diameter + need.StockStep } }]
            : [roof with { Deck = boards + Inches(0.5) }, roof with { Secondaries = more }, roof with { Deck = boards + Inches(1) }, roof with { Secondaries = more with { PerBay = one.PerBay + 2 } }, roof with { Deck = boards + Inches(1), Secondaries = more }];
        return tried.Select(changed => new Edit.ChangeRoof(changed));
    }

    private static Length Inches(double inches) => new((long)(inches * Length.PerInch));
}
