using Clomwright.Building;
using Clomwright.Evidence;
using static Clomwright.Rules.Tests.AtTheLimit.LimitCase;

namespace Clomwright.Rules.Tests.AtTheLimit;

/// <summary>Houses exactly at the limits of what makes a dwelling fit to live in.</summary>
internal static class DwellingCases
{
    /// <summary>Floor of the bare house, 16 ft across: pi 8^2 ft2.</summary>
    private const double Floor = Math.PI * 8 * 8;

    public static IEnumerable<LimitCase> All =>
    [
        Case("daylight", "house", "glass of 8 % of the floor", side => With(Glass(Share(0.08) - side * 1e-4))),
        Case("daylight", "house", "a window that opens, of which a written share is glass that comes to 8 % of the floor", side => With(Window(In(60), In(84)) with { Kind = OpeningKind.Opening, Glazed = new Evidence.Share((Share(0.08) - side * 1e-4) / 35) })),
        Case("opening-to-air", "house", "windows that open to 4 % of the floor", side => With(Window(Length.FromInches(60), Length.FromFeet(7)) with { Kind = OpeningKind.Opening, Clear = new ClearOpening(In(36), new Length((long)Math.Round(0.04 * Floor * 144 / 36 * Length.PerInch) - side * 100_000)) })),
        Case("room-area", "house", "a floor of 70 ft2", side => Bare with { Plan = new Plan.Round(new Length((long)Math.Round(Math.Sqrt(70 * 4 / Math.PI) * 12 * Length.PerInch) - side * 1000)) }),
        Case("ceiling-height", "house", "a wall 7 ft high under its roof", side => Bare with { Wall = Bare.Wall with { Top = In(84) - Nm(side) }, BondBeam = null, Roof = new Roof.Shed(PoleSize.Even(In(6)), In(24), new Slope(0.1)) { Eave = In(24) } }),
        Case("glazing-low", "window", "a large pane 18 in over the floor", side => With(Window(In(48), In(48)) with { Sill = In(18) - Nm(side) })),
        Case("glazing-by-door", "window", "glass 24 in from a door along the inside face", side => With(Door, Beside(side))),
        Case("escape-area", "window", "a window that opens to 5 ft2", side => With(Clear(In(24), In(30) - Nm(10_000 * side)))),
        Case("escape-height", "window", "a window that opens 24 in high", side => With(Clear(In(36), In(24) - Nm(side)))),
        Case("escape-width", "window", "a window that opens 20 in wide", side => With(Clear(In(20) - Nm(side), In(40)))),
        Case("escape-sill", "window", "a way out with its sill 44 in over the floor", side => With(Window(In(36), In(40)) with { Escape = true, Sill = In(44) + Nm(side) })),
        Case("egress-door-width", "door", "a door 32 in clear", side => With(Door with { Clear = new ClearOpening(In(32) - Nm(side), In(78)) })),
        Case("egress-door-height", "door", "a door 78 in clear", side => With(Door with { Clear = new ClearOpening(In(32), In(78) - Nm(side)) })),
    ];

    private static Opening Door => new() { Name = "door", Kind = OpeningKind.Door, Along = Along.At(In(200)), Width = In(38), Height = In(82), Sill = In(0) };

    private static LimitCase Case(string rule, string subject, string what, Func<int, House> house) => new("irc-dwelling", rule, subject, what, house);

    private static House With(params Opening[] openings) => Bare with { Openings = [.. openings] };

    private static Opening Window(Length width, Length height) => new() { Name = "window", Kind = OpeningKind.Fixed, Along = Along.At(In(60)), Width = width, Height = height, Sill = In(12) };

    private static Opening Clear(Length width, Length height) => Window(In(40), In(44)) with { Kind = OpeningKind.Opening, Escape = true, Clear = new ClearOpening(width, height) };

    /// <summary>Glass set in cob as wide as its area asks, 5 ft high.</summary>
    private static Opening Glass(double squareFeet) => Window(new Length((long)Math.Round(squareFeet / 5 * 12 * Length.PerInch)), Length.FromFeet(5)) with { Kind = OpeningKind.Glass };

    private static double Share(double share) => share * Floor;

    /// <summary>A window whose nearer jamb stands 24 in from the door's, both on the inside face of a circle of 8 ft: jambs of an opening of half width h lie asin(h / r) from its middle.</summary>
    private static Opening Beside(int side)
    {
        var r = 96.0;
        var middle = 200 + r * Math.Asin(19 / r) + 24 + r * Math.Asin(15 / r);
        return Window(In(30), In(30)) with { Sill = In(30), Along = Along.At(new Length((long)Math.Round(middle * Length.PerInch) - side * 100)) };
    }

    private static Length In(long inches) => Length.FromInches(inches);

    private static Length Nm(int count) => new(count);
}
