using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Testing;
using static Clomwright.Rules.Tests.AtTheLimit.LimitCase;

namespace Clomwright.Rules.Tests.AtTheLimit;

/// <summary>Houses exactly at the limits of common practice.</summary>
internal static class CommonPracticeCases
{
    /// <summary>A micrometre, for lengths that are computed: well above what the computation rounds.</summary>
    private static readonly Length Hair = new(1000);

    public static IEnumerable<LimitCase> All =>
    [
        Case("pier-width", "pier left|right", "two windows set 24 in apart at their narrowest", side =>
            Slid(at => Bare with { Openings = [Window("left", In(60)), Window("right", at)] }, "pier-width", "pier left|right", In(120), In(24) - Hair * side, 1)),
        Case("opening-width", "wide", "a window 4 ft wide", side => Bare with { Openings = [Window("wide", In(60)) with { Width = In(48) + Nm(side) }] }),
        Case("opening-share", "wall", "four windows that take up a third of the inside face to the nanometre", side => Bare with
        {
            Openings = [Window("a", In(60)), Window("b", In(180)), Window("c", In(300)), Window("d", In(440)) with { Width = Length.Nearest(Math.PI * 16 * 0.3048 / 3) - In(72) + Nm(side) }],
        }),
        Case("opening-corner", "near", "a window 3 ft from the middle of a corner", side => Slid(
            at => Bare with { Plan = new Plan.RoundedRectangle(In(240), In(168), In(24)) { Bearing = new Angle(90) }, Openings = [Window("near", at)] },
            "opening-corner", "near", In(30), In(36) - Hair * side, -1)),
        Case("header-bearing", "window/header", "a header that bears 12 in each side", side => Headed(new Header(3, In(4), In(6), In(12) - Nm(side)))),
        Case("header-bearing-on-pad", "window/header", "a header that bears 8 in each side on cross pads", side => Headed(new Header(3, In(4), In(6), In(8) - Nm(side)) { CrossPad = true })),
        Case("header-thickness", "window/header", "three pieces of 4 in under a wall of 12 in", side => Headed(new Header(3, In(4) - Nm(side), In(6), In(12)))),
        Case("cob-over-head", "window", "a header whose top is 6 in under the wall top", side =>
            Bare with { Openings = [Window("window", In(60)) with { Height = In(50) + Nm(side), Header = new Header(3, In(4), In(6), In(12)) }] }),
        Case("pole-seat", "pole 1", "a pole 12 in from the edge of a window in a wall of 12 in", side =>
            Slid(at => Bare with { Openings = [Window("window", at)], Roof = Round() }, "pole-seat", "pole 1", In(30), In(12) - Hair * side, 1)),
        Case("tee-spacing", "tees", "tees 4 ft apart", side => Tied(new Tees(In(48) + Nm(side), In(24), In(24)))),
        Case("tee-depth", "tees", "tees 18 in deep", side => Tied(new Tees(In(36), In(18) - Nm(side), In(24)))),
        Case("drip-edge", "drip edge", "a drip edge 1/4 in below the deck", side => Bare with { Roof = Round() with { Drip = new DripEdge(In(1), new Length(Length.PerInch / 4) - Nm(side)) } }),
        Case("eave", "roof", "an eave of 24 in", side => Bare with { Roof = Round() with { Eave = In(24) - Nm(side) } }),
        Case("niche-head", "flat", "a flat niche 8 in wide", side => Bare with { Niches = [Niche("flat", In(60)) with { Head = NicheHead.Flat, Width = In(8) + Nm(side) }] }),
        Case("niche-back", "deep", "a niche with 8 in left behind it", side =>
            Slid(depth => Bare with { Niches = [Niche("deep", In(60)) with { Depth = depth }] }, "niche-back", "deep", In(4), In(8) - Hair * side, -1)),
        Case("niche-under-load", "niche", "a niche that just clears the seat of a pole", side =>
            Slid(at => Bare with { Niches = [Niche("niche", at)], Roof = Round() }, "niche-under-load", "niche", In(20), -Hair * side, 1)),
        Case("niche-pier", "niche", "a niche in a pier of 36 in", side => Slid(
            at => Bare with { Openings = [Window("left", In(60)), Window("right", at)], Niches = [Niche("niche", In(90))] }, "niche-pier", "niche", In(120), In(36) - Hair * side, 1)),
        Case("niche-back-to-back", "outer", "niches in both faces that just miss each other", side => Slid(
            at => Bare with { Niches = [Niche("inner", In(60)), Niche("outer", at) with { Face = Face.Outside }] }, "niche-back-to-back", "outer", In(80), -Hair * side, 1)),
        Case("bottle-cob", "bottles", "bottles of 3 in set at 5 in", side => Bare with
        {
            Embeds = [new Embed { Name = "bottles", Kind = EmbedKind.Bottle, Along = Along.At(In(60)), Height = In(60), Count = 3, Spacing = In(5) - Nm(side), Width = In(3) }],
        }),
        Case("stem-height", "stem", "a stem 16 in above grade", side => Bare with { Site = Bare.Site with { Grade = In(-8) + Nm(side) } }),
        Case("stem-width", "stem", "a stem as wide as the wall", side => Bare with { Stem = Bare.Stem with { Width = In(12) - Nm(side) } }),
        Case("damp-break", "stem", "one layer of slate", side => Bare with { Stem = Bare.Stem with { DampBreak = side > 0 ? null : "slate" } }),
        Case("trench-width", "trench", "a trench 16 in wide", side => Bare with { Trench = new Trench(In(16) - Nm(side), In(24)) }),
        Case("trench-depth", "trench", "a trench 12 in deep", side => Bare with { Trench = new Trench(In(24), In(12) - Nm(side)) }),
        Case("ground-fall", "ground", "ground that falls 5 %", side => Bare with { Site = Bare.Site with { GroundFall = new Slope(0.05 - 1e-9 * side) } }),
        Case("wall-slenderness", "wall top", "84 in of cob, 12 in thick", side => Bare with { Wall = new Wall(In(92) + Nm(side), In(12)) }),
        Case("wall-slenderness", "wall mid-height", "84 in of cob, 12 in thick", side => Bare with { Wall = new Wall(In(92) + Nm(side), In(12)) }),
        Case("wall-taper", "wall", "an outside taper of 4 %", side => Bare with { Wall = Bare.Wall with { OutsideTaper = new Slope(0.04 - 1e-9 * side) } }),
        Case("sealed-face", "outside face", "no sealing coat", side => Bare with { Finishes = [new Finish(Face.Outside, side > 0 ? "cement-plaster" : "lime-plaster")] }),
        Case("tossed-lift-height", "lift 1", "a tossed lift of 18 in", side => Laid(LiftMethod.Tossed, In(18) + Nm(side))),
        Case("tossed-lift-least", "lift 1", "a tossed lift of 6 in", side => Laid(LiftMethod.Tossed, In(6) - Nm(side))),
        Case("forked-lift-height", "lift 1", "a forked lift of 24 in", side => Laid(LiftMethod.Forked, In(24) + Nm(side))),
    ];

    private static LimitCase Case(string rule, string subject, string what, Func<int, House> house) => new("common-practice", rule, subject, what, house);

    private static House Headed(Header header) => Bare with { Openings = [Window("window", In(60)) with { Header = header }] };

    private static House Tied(Tees tees) => Bare with { BondBeam = new BondBeam(In(10), In(4), Length.Zero), Tees = tees };

    private static House Laid(LiftMethod method, Length height) => Bare with { Lifts = new LiftPlan { Tops = [Bare.Stem.Top + height, Bare.Wall.Top], Method = method } };

    /// <summary>Eight poles, the first due north, where stations begin.</summary>
    private static Roof.Reciprocal Round() => new(8, In(30), PoleSize.Even(In(8))) { Eave = In(30) };

    private static Opening Window(string name, Length station) => new()
    {
        Name = name, Kind = OpeningKind.Fixed, Along = Along.At(station), Width = In(24), Height = In(40), Sill = In(36),
    };

    private static Niche Niche(string name, Length station) => new()
    {
        Name = name, Along = Along.At(station), Width = In(8), Height = In(12), Depth = In(3), Sill = In(48),
    };

    private static Length In(long inches) => Length.FromInches(inches);

    private static Length Nm(int count) => new(count);
}
