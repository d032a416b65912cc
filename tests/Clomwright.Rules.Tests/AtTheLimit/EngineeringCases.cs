using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Testing;
using static Clomwright.Rules.Tests.AtTheLimit.LimitCase;

namespace Clomwright.Rules.Tests.AtTheLimit;

/// <summary>Demands exactly as large as what is there to meet them.</summary>
internal static class EngineeringCases
{
    public static IEnumerable<LimitCase> All =>
    [
        .. Stressed(Reciprocal, "pole-bending-crossing", "pole-bending-plate"),
        Case("pole-foot", "pole 3", "a foot used to 1", Reciprocal, Amount.Number(1), 1),
        Case("stage-actions", "pole 3", "an action of a stage used to 1", Reciprocal, Amount.Number(1), 1),
        .. Pushed(Reciprocal, "pins", "pin-strength"),
        .. Pushed(Reciprocal, "charlie stick", "charlie-stick"),
        .. Stressed(Shed, "secondaries-and-deck"),
        .. Pushed(Shed, "deck", "deck-uplift"),
        .. Pushed(Shed, "straps", "roof-diaphragm"),
        .. Pushed(Shed with { Roof = Shed.Roof! with { Secondaries = new Secondaries(1, Length.FromInches(5)) } }, "secondaries, inner bolt", "secondary-ends"),
        .. Pushed(Round(post: true), "post", "centre-post"),
        .. Stressed(Round(post: false), "compression-ring"),
        Case("flue-clear", "flue, pole 3", "a flue exactly its maker's clearance from a pole", Shed with { Roof = Shed.Roof! with { Flue = new Flue(Length.FromInches(8)) { Clear = Length.FromInches(2) } } }, Amount.Metres(0.0508), 1e-9),
        Case("soil-slip", "battens", "a batten pushed with all that its soil can hold", Shed with { Roof = Shed.Roof! with { Layers = [new Layer("soil", Length.FromInches(4), "ordinary-earth")] } }, new Amount(200, Dimension.LineLoad), 1e-6),
        Case("roof-ends", "roof", "a deck that reaches half the spacing past the outermost rafter", Shed, Amount.Metres(0.838), 1e-9),
        Case("high-ends", "rafter 3", "a rafter whose upper end rises by the depth of its seat", Shed, Amount.Metres(0.0254), 1e-9),
        Case("seat-bolt", "pole 3", "a bolt at a seat used to 1", Bolted, Amount.Number(1), 1),
        Case("seat-edge", "edges", "a bolt exactly four diameters from an edge", Bolted, Amount.Metres(0.0635), 1e-9),
        Case("pole-stub", "pole 3", "a stub used to 1", Reciprocal, Amount.Number(1), 1),
        .. Pushed(Reciprocal, "pole 3", "pole-shear", "pole-seat-bearing", "pole-crossing-bearing"),
        Case("ring-sag", "pole 3", "a ring that sinks as far as is accepted", Reciprocal, Amount.Metres(0.0141), 1e-9),
        .. Stressed(Shed, "rafter-bending", "rafter-shear", "stage-bending", "stage-shear"),
        Case("rafter-combined", "rafter 3", "a rafter used to 1", Shed, Amount.Number(1), 1),
        Case("rafter-sag", "pole 3", "a rafter that sags as far as is accepted", Shed, Amount.Metres(0.026), 1e-9),
        Case("crossing-opens", "pole 3", "a crossing that neither presses nor pulls", Reciprocal, new Amount(0, Dimension.Force), 1e-6),
        Case("crossing-pinned", "pole 3", "no crossing without a pin", Reciprocal, Amount.Count(0), 1),
        Case("pole-loss", "pole 3", "a strap pulled with all it can carry when a pole is lost", Reciprocal, new Amount(33_000, Dimension.Force), 1e-3),
        .. Pushed(Shed, "tee 1", "tee-uplift", "tee-bolt"),
        Case("strap-uplift", "gale", "a strap lifted with all the cob it has", Strapped, new Amount(9000, Dimension.Force), 1e-4),
        Case("strap-pull", "gale", "a strap pulled with all it may carry", Strapped, new Amount(9000, Dimension.Force), 1e-4),
        Case("bearing-stress", "pole 3", "a pole that presses on the cob with all that it is allowed", Shed, new Amount(80_000, Dimension.Stress), 1e-3),
        .. Stressed(Shed, "tee-leg", "tee-bar", "bond-beam-tension", "bond-beam-bending"),
        .. Pushed(Shed, "bond beam", "bond-beam-bolts"),
        .. Pushed(Shed, "cob on stem", "lateral-path"),
        Case("bond-beam-lap", "bond beam", "a lap exactly as long as its bolts need", Shed, Amount.Metres(0.3302), 1e-9),
        Case("lap-places", "bond beam", "a lap that ends exactly at an opening", Shed, Amount.Metres(0.1778), 1e-9),
        Case("tee-gap", "tee 1 to 2", "tees exactly as far apart as is written", Shed, Amount.Metres(1.2192), 1e-9),
        Case("header-sag", "pole 3", "a header that sags as far as is accepted", Headed, Amount.Metres(0.005), 1e-9),
        .. Stressed(Headed, "header-bending", "header-shear", "header-pressure"),
        new LimitCase("engineering", "seat-centre", "pole 3", "a seat off centre by a sixth of the thickness", _ => Shed)
        {
            Demand = side => CheckedDemand.Held("seat-centre", "pole 3", Amount.Fraction(1.0 / 6 + side * 1e-9), Amount.Fraction(1)),
        },
        Case("stem-bearing", "stem", "cob that presses on the stem with all that it is allowed", Shed, new Amount(379_212, Dimension.Stress), 1e-2),
        Case("ground-bearing", "trench", "a trench that presses with all that the ground is allowed", Shed, new Amount(95_760, Dimension.Stress), 1e-3),
        new LimitCase("engineering", "middle-third", "trench", "a load off the middle of the trench by a sixth of its width", _ => Shed)
        {
            Demand = side => CheckedDemand.Held("middle-third", "trench", Amount.Fraction(1.0 / 6 + side * 1e-9), Amount.Fraction(1)),
        },
        Case("pier-load", "pier door|south-window", "a pier whose mean pressure is all that it is allowed", Headed, new Amount(140_000, Dimension.Stress), 1e-3),
        Case("pier-edge", "pier door|south-window", "a pier whose edge is pressed with all that cob is allowed", Headed, new Amount(182_000, Dimension.Stress), 1e-3),
        Case("wall-out-of-plane", "pier door|south-window, held at its top", "a wall pushed as hard as it bows at", Shed, new Amount(2_040, Dimension.LineLoad), 1e-5),
        .. Pushed(Shed, "pier door|south-window", "wall-in-plane"),
        .. Pushed(Shed, "on lift 3", "lift-joint"),
        Case("house-overturning", "house", "a house turned with all that holds it", Shed, new Amount(236_000, Dimension.Moment), 1e-3),
        .. Pushed(Shed, "at a free end", "free-wall"),
        Case("pole-drop", "wall", "a blow that is just accepted", Shed, new Amount(152, Dimension.Moment), 1e-6),
        Case("wet-foot", "pier door|south-window", "a soaked foot with all its safety used", Headed, new Amount(119_000, Dimension.Stress), 1e-3),
        Case("drain-outlet", "trench", "a drain that needs all the height down to its outlet", Shed with { Trench = new Trench(Length.FromInches(24), Length.FromInches(24)) }, Amount.Metres(0.1524), 1e-9),
        Wall("wall-edge-pressure", "pier door|window", "a pier pressed at its edge with all that it is allowed", new Amount(160_000, Dimension.Stress), 1e-3),
        Wall("wall-under-pole", "pole 3", "cob under a pole pressed with all that it is allowed", new Amount(80_000, Dimension.Stress), 1e-3),
        Wall("wall-tension", "wall", "tension as high as is not looked into", new Amount(20_000, Dimension.Stress), 1e-3),
        Wall("wall-foot", "wall", "no case in which nothing holds the foot", Amount.Count(0), 1),
        new LimitCase("wall-model", "wall-header-bearing", "door/header, left", "cob under a header pressed with all that it is allowed", _ => Headed)
        {
            Demand = side => At("wall-header-bearing", "door/header, left", new Amount(160_000, Dimension.Stress), side * 1e-3),
        },
        Wall("wall-across", "pier door|window", "a force as far off the middle as a pier passes on", Amount.Metres(0.18), 1e-9),
        Wall("wall-along", "pier door|window", "a pier pushed along itself with all that its joint holds", new Amount(3_500, Dimension.Force), 1e-5),
        new LimitCase("wall-model", "wall-twist", "wall", "a top one side of which moves 1.2 times the mean", _ => Headed)
        {
            Demand = side => CheckedDemand.Held("wall-twist", "wall", Amount.Number(1.2 + side * 1e-9), Amount.Number(1)),
        },
        new LimitCase("engineering", "wall-soil", "turning", "ground that turns a metre of wall with all that it weighs", _ => Shed with { Site = Shed.Site with { Grade = Length.FromFeet(3) } })
        {
            Demand = side => CheckedDemand.Held("wall-soil", "turning", new Amount(2_500 + side * 1e-5, Dimension.Moment), new Amount(2_500, Dimension.Moment)),
        },
        Wall("wall-green", "lift 3", "a green lift pressed with all that its safety leaves", new Amount(48_000, Dimension.Stress), 1e-4),
        Wall("wall-roof-day", "wall", "a young wall under its roof with all its safety used", new Amount(150_000, Dimension.Stress), 1e-3),
        Wall("wall-wet-foot", "wall", "a foot at its plastic limit with all its safety used", new Amount(119_000, Dimension.Stress), 1e-3),
        Wall("wall-settlement", "wall", "an edge over a dip pressed with all that it is allowed", new Amount(160_000, Dimension.Stress), 1e-3),
        new LimitCase("wall-model", "wall-thrust", "wall", "an edge that the roof's push presses with all that it is allowed", _ => Reciprocal)
        {
            Demand = side => At("wall-thrust", "wall", new Amount(160_000, Dimension.Stress), side * 1e-3),
        },
        Wall("wall-collapse", "wall", "an earthquake that asks for all that the blocks bear", Amount.Fraction(0.3), 1e-9),
        Measure("drain-fall", "trench", "a trench laid at 1/8 in per ft", side => new Amount(1.0 / 96 - side * 1e-9, Dimension.Slope)),
        Measure("lime-coat", "outside face, scratch coat", "a lime coat of 12 mm", side => Length.FromMillimetres(12) + new Length(side)),
        Measure("earth-coat", "inside face, scratch coat", "an earth coat of 40 mm", side => Length.FromMillimetres(40) + new Length(side)),
        Measure("lath-lap", "inside face", "lath that laps 2 in", side => Length.FromInches(2) - new Length(side)),
        Measure("plaster-panel", "inside face", "one sound panel", side => Amount.Count(1 - side)),
        Measure("floor-drain", "floor", "4 in of clean stone", side => Length.FromInches(4) - new Length(side)),
        Measure("floor-damp", "floor", "one damp break", side => Amount.Count(1 - side)),
        Measure("floor-earth-layers", "floor", "two layers of earth", side => Amount.Count(2 - side)),
        Measure("floor-over-grade", "floor", "floor earth that begins at the grade", side => new Length(-side)),
        Measure("stem-over-floor", "stem", "a stem 4 in over the floor", side => Length.FromInches(4) - new Length(side)),
        Measure("door-sill", "door", "a sill at the finished floor", side => new Length(-side)),
        Measure("door-clear", "door", "1/4 in under the leaf", side => new Length(Length.PerInch / 4 - side)),
        Against("fresh-height", "lifts 1-7", "lifts as high as the fresh mix stands", Amount.Metres(0.3302), 1e-9),
        Against("lift-bulge", "lifts 1-7", "a foot that bears its weight and the safety to the last", new Amount(5600, Dimension.Stress), -1e-4),
        Against("roof-landing", "roof", "a roof on the day by which the wall carries it", new Amount(62, Dimension.Days), -1e-6),
        Against("plaster-dry", "inside face", "a first coat on the day by which the wall is dry", new Amount(245, Dimension.Days), -1e-6),
        Measure("plaster-season", "inside face", "a first coat in a mild month", side => Amount.Count(side)),
        Measure("frost-young", "lifts", "half a night of frost while cob is young", side => Amount.Number(0.5 + side * 1e-9)),
        Measure("trench-frost", "trench", "a trench 4 in below frost", side => Length.FromInches(4) - new Length(side)),
        Measure("dry-stem", "stem", "a stem laid dry as high as it is wide", side => Amount.Number(1 + side * 1e-9)),
    ];

    private static House Shed => Bare with { Roof = new Roof.Shed(PoleSize.Even(Length.FromInches(8)), Length.FromInches(48), new Slope(0.1)) { Eave = Length.FromInches(30) } };

    private static House Round(bool post) => Bare with
    {
        Roof = new Roof.Radial(8, PoleSize.Even(Length.FromInches(8)), new Slope(0.3)) { Eave = Length.FromInches(30), CentrePost = post },
    };

    private static House Bolted => Shed with { Roof = Shed.Roof! with { Seat = new SeatMade { Bolt = new Length(Length.PerInch * 5 / 8) } } };

    private static House Reciprocal => Bare with { Roof = new Roof.Reciprocal(8, Length.FromInches(30), PoleSize.Even(Length.FromInches(8))) { Eave = Length.FromInches(30) } };

    private static House Strapped => Shed with
    {
        Embeds = [new Embed { Name = "gale", Kind = EmbedKind.Strap, Along = Along.At(new Angle(45)), Height = Length.FromFeet(6), Anchor = new StrapAnchor(Length.FromInches(24), Length.FromInches(12)) }],
    };

    private static House Headed => Shed with { Openings = Houses.HeronPoint.Openings };

    private static IEnumerable<LimitCase> Stressed(House house, params string[] rules) =>
        rules.Select(rule => Case(rule, "pole 3", "a stress as large as is allowed", house, new Amount(12e6, Dimension.Stress), 1e-2));

    private static IEnumerable<LimitCase> Pushed(House house, string subject, params string[] rules) =>
        rules.Select(rule => Case(rule, subject, "a force as large as can be carried", house, new Amount(9000, Dimension.Force), 1e-4));

    private static LimitCase Case(string rule, string subject, string what, House house, Amount limit, double hair) =>
        new("engineering", rule, subject, what, _ => house) { Demand = side => At(rule, subject, limit, side * hair) };

    private static LimitCase Wall(string rule, string subject, string what, Amount limit, double hair) =>
        new("wall-model", rule, subject, what, _ => Shed) { Demand = side => At(rule, subject, limit, side * hair) };

    private static LimitCase Measure(string rule, string subject, string what, Func<int, Amount> provided) =>
        new("common-practice", rule, subject, what, _ => Bare) { Demand = side => CheckedDemand.Measured(rule, subject, provided(side)) };

    private static LimitCase Against(string rule, string subject, string what, Amount computed, double hair) =>
        new("common-practice", rule, subject, what, _ => Bare) { Demand = side => CheckedDemand.Against(rule, subject, new Amount(computed.Si + side * hair, computed.Dimension), computed) };

    /// <summary>A demand a little off its capacity.</summary>
    private static CheckedDemand At(string rule, string subject, Amount capacity, double off) =>
        CheckedDemand.Held(rule, subject, new Amount(capacity.Si + off, capacity.Dimension), capacity);
}
