using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Testing;

public static partial class Houses
{
    /// <summary>The complete bath house of <c>examples/heron-point.house.json</c>, written by hand. Invented; no such house stands anywhere.</summary>
    public static House HeronPoint { get; } = new()
    {
        Id = "heron-point",
        Name = "Heron Point bath house",
        Notes = "Invented: no such house, place or crew. It shows an oval plan under a planted reciprocal roof in a wet mild climate, in feet and inches.",
        Site = new Site
        {
            Latitude = 45.5, Longitude = -122.7, Elevation = Length.FromMillimetres(60_000), Climate = "portland-or", Grade = In(-12), Loads = "asce7-16",
            GroundSnow = new Stress(1000), WindSpeed = new Speed(105 * 0.44704), Exposure = "B", SeismicSds = 0.25, SeismicSd1 = 0.12, SeismicS1 = 0.1,
            SiteClass = "D", RiskCategory = "II", FrostDepth = In(18), SoilBearing = new Stress(100_000), Soil = new Soil { Class = "gravel" }, GroundFall = new Slope(0.06),
            Emergency = new Emergency
            {
                Number = "911", Address = "12 Invented Heron Lane", Way = "second gate after the mill; bridge carries 10 tons; soft verge in rain", Meet = "the mailbox at the gate", Hospital = "Invented County Hospital, 9 miles east",
                Contacts = [new Contact("engineer", "M. Invented", "555 0100"), new Contact("inspector", "County office, Invented", "555 0101")],
            },
        },
        Plan = new Plan.Oval(Ft(15), Ft(12)) { Bearing = new Angle(90) },
        Floor = new Floor
        {
            Layers =
            [
                new FloorLayer("washed gravel", In(6)) { Role = FloorRole.Drain },
                new FloorLayer("damp sheet", Length.Zero) { Role = FloorRole.Damp },
                new FloorLayer("rough earth", In(4)) { Role = FloorRole.Base, Parts = new PlasterParts { Clay = 1, Sand = 4, Straw = 1 } },
                new FloorLayer("finish earth", In(1)) { Role = FloorRole.Finish, Parts = new PlasterParts { Clay = 1, Sand = 2, Straw = 0.25 } },
            ],
            Oil = new FloorOil("linseed", 4),
        },
        Trench = new Trench(In(26), In(24), In(-42)) { OutletBearing = new Angle(202.5), OutletRun = Length.FromFeet(20) },
        Stem = new Stem(In(20), In(8)) { DampBreak = "slate", Keys = new StemKeys(In(30), In(6), In(9)) },
        Wall = new Wall(Ft(8, 2), In(14), new Slope(0.05)),
        Lifts = new LiftPlan { Height = In(12) },
        Openings =
        [
            new Opening
            {
                Name = "door", Kind = OpeningKind.Door, Along = At(112), Width = Ft(3), Height = Ft(6, 8), Sill = Length.Zero, Header = Header(12),
                Frame = new Frame(In(35), Ft(6, 6), In(6), Quarters(6), In(1)), Escape = true, Leaf = new DoorLeaf(Swing.In, Eighths(3)),
            },
            new Opening
            {
                Name = "tub-window", Kind = OpeningKind.Fixed, Along = At(157.5), Width = In(26), Height = In(40), Sill = In(38), Header = Header(8) with { CrossPad = true },
                Frame = new Frame(In(25), In(38), In(6), Quarters(6), In(1)),
            },
            new Opening
            {
                Name = "south-window", Kind = OpeningKind.Opening, Along = At(202.5), Width = In(26), Height = In(40), Sill = In(38), Header = Header(8) with { CrossPad = true },
                Splay = new Splay(new Angle(10), new Angle(0)), Frame = new Frame(In(25), In(38), In(6), Quarters(6), In(1)),
            },
            new Opening { Name = "west-arch", Kind = OpeningKind.Fixed, Along = At(247.5), Width = In(30), Height = In(42), Sill = In(36), Shape = OpeningShape.Arched, Rise = In(12) },
            new Opening { Name = "moon", Kind = OpeningKind.Glass, Along = At(292.5), Width = In(16), Height = In(16), Sill = In(60), Shape = OpeningShape.Round },
            new Opening
            {
                Name = "east-window", Kind = OpeningKind.Opening, Along = At(67.5), Width = In(24), Height = In(40), Sill = In(38), Header = Header(12),
                Frame = new Frame(In(23), In(38), In(6), Quarters(6), In(1)),
            },
        ],
        Niches =
        [
            new Niche { Name = "lamp", Along = At(20), Width = In(12), Height = In(16), Depth = In(4), Sill = Ft(4) },
            new Niche { Name = "soap", Along = At(340), Width = In(14), Height = In(12), Depth = In(5), Sill = In(34) },
        ],
        Embeds =
        [
            new Embed { Name = "coat-pegs", Kind = EmbedKind.Peg, Along = At(10), Height = Ft(5, 10), Count = 4, Spacing = In(8), Depth = In(7) },
            new Embed { Name = "towel-shelf", Kind = EmbedKind.Shelf, Along = At(330), Height = Ft(4, 6), Width = In(24), Size = In(2), Depth = In(9) },
            new Embed { Name = "morning-bottles", Kind = EmbedKind.Bottle, Face = Face.Outside, Along = At(325), Height = Ft(5, 4), Count = 5, Spacing = In(6), Width = In(3), Through = true },
            new Embed { Name = "water-in", Kind = EmbedKind.Sleeve, Along = At(345), Height = In(14), Width = In(2), Through = true, Note = "copper, bell end inside" },
            new Embed { Name = "tub-drain", Kind = EmbedKind.Sleeve, Along = At(180), Height = In(2), Width = In(3), Through = true, Note = "through the stem" },
            new Embed { Name = "lamp-box", Kind = EmbedKind.Box, Along = At(32), Height = Ft(4), Width = In(2), Size = In(4), Depth = In(3) },
            new Embed { Name = "lamp-wire", Kind = EmbedKind.Wire, Along = At(32), Height = In(16), Note = "from the stem up to lamp-box, in conduit" },
            new Embed { Name = "shower-pipe", Kind = EmbedKind.Pipe, Along = At(350), Height = Ft(3), Width = In(1), Note = "cast against a lath so it can be reached" },
            new Embed { Name = "mirror-nailer", Kind = EmbedKind.Nailer, Along = At(40), Height = Ft(5), Width = In(18), Size = In(4), Depth = In(2) },
            new Embed { Name = "door-hinge-low", Kind = EmbedKind.Deadman, Along = At(96), Height = In(16), Depth = In(8), Note = "bottom of the hinge side" },
            new Embed { Name = "door-hinge-middle", Kind = EmbedKind.Deadman, Along = At(96), Height = In(40), Depth = In(8) },
            new Embed { Name = "door-hinge-top", Kind = EmbedKind.Deadman, Along = At(96), Height = In(72), Depth = In(8) },
            new Embed
            {
                Name = "eave-strap", Kind = EmbedKind.Strap, Face = Face.Outside, Along = At(349), Height = Ft(6), Width = Quarters(5),
                Anchor = new StrapAnchor(In(24), In(8)) { Thickness = new Length(Length.PerInch / 16), Pull = new Force(2000) }, Note = "over the bond beam beside pole 1, nailed as its maker says",
            },
        ],
        BondBeam = new BondBeam(In(10), In(8), Length.Zero) { Lap = In(15), Bolt = new Length(Length.PerInch / 2), Bolts = 5 },
        Tees = new Tees(Ft(4), In(24), In(10)) { Timber = In(4), Bolt = new Length(Length.PerInch / 2) },
        Roof = new Roof.Reciprocal(8, Quarters(120), PoleSize.Even(In(8)))
        {
            Turn = Turn.Clockwise, Joint = PoleJoint.Pinned, Pin = new Pin(Quarters(3)), IfOneFails = new IfOneFails.Doubled(),
            Eye = Eye.Glazed, Eave = In(28), Deck = In(3), EdgeBoard = In(6),
            DeckNails = new DeckNails(Quarters(1), In(6)) { Kind = DeckFastener.Screw }, Braces = new RoofBraces(In(2), new Length(Length.PerInch / 8), 14, new Length(Length.PerInch / 1000 * 162), Quarters(14)),
            Overflow = Quarters(22), Battens = new SoilBattens(In(12), In(2)), Flue = new Flue(In(8)) { Bearing = new Angle(257.5), Distance = Ft(5), Clear = In(2) },
            Drip = new DripEdge(In(1), In(1)), Seat = new SeatMade { Bolt = new Length(Length.PerInch * 7 / 8), Washer = new Length(Length.PerInch * 21 / 8) },
            Layers =
            [
                new Layer("felt", Quarters(1), "fleece"), new Layer("pond membrane", new Length(Length.PerInch / 16), "epdm"),
                new Layer("drainage stone", In(1), "crushed-stone"), new Layer("planted soil", In(4), "ordinary-earth"),
            ],
        },
        Finishes = Plasters,
        TestPanels = Panels,
        Stove = new Stove(In(18), In(18))
        {
            Name = "small wood stove", Bearing = new Angle(257.5), Distance = Ft(5), Facing = new Angle(77.5), ClearBack = In(16), ClearSide = In(14), ClearFront = In(36), Source = "Invented: no such stove",
        },
        Mix = new Mix
        {
            SoilTests = new SoilTests
            {
                JarSand = Quarters(6), JarSilt = In(1), JarClay = Quarters(10), JarColumn = In(9), JarWater = new Temperature(18), Moisture = new Share(Units.Find(Dimension.Fraction, "%")!.ToSi(12)),
                Ribbon = In(4), Ball = BallDrop.Cracked, Wash = HandWash.Sticky,
            },
            Target = new MixTarget { Clay = new Share(Units.Find(Dimension.Fraction, "%")!.ToSi(18)), Straw = new Share(Units.Find(Dimension.Fraction, "%")!.ToSi(1.5)) },
            Recipe = new Recipe { Soil = 3, Sand = 3, Water = 1.25, Straw = new Mass(2) },
            Measures = new Measures
            {
                Armful = new Mass(0.5), Bale = new Mass(16), SoilBucket = new Mass(25), SandBucket = new Mass(27), BucketLabel = new Volume(Units.Find(Dimension.Volume, "gal")!.ToSi(5)),
                Truck = new Volume(Units.Find(Dimension.Volume, "yd3")!.ToSi(8)),
            },
            Batch = new Batch(6, new Volume(Units.Find(Dimension.Volume, "ft3")!.ToSi(0.67)), 3, Ft(10), In(7), In(8)),
            Trials =
            [
                new MixTrial("A", new Recipe { Soil = 4, Sand = 2, Water = 1, Straw = new Mass(2) }) { Date = new DateOnly(2027, 3, 28) },
                new MixTrial("B", new Recipe { Soil = 3, Sand = 3, Water = 1.25, Straw = new Mass(2) }) { Date = new DateOnly(2027, 3, 28) },
            ],
            TestBars =
            [
                new TestBar(In(24), new Length(Length.PerInch * 3 / 4)) { Cracked = true, Trial = "A", Date = new DateOnly(2027, 5, 3), Tester = "M. Invented" },
                new TestBar(In(24), new Length(Length.PerInch * 3 / 8)) { Trial = "B", Date = new DateOnly(2027, 5, 3), Tester = "M. Invented" },
            ],
            Prisms = [Crushed(1600), Crushed(1710), Crushed(1540), Crushed(1660), Crushed(1750)],
            Bricks = [new Brick(In(6), In(4), In(10), new Force(Units.Find(Dimension.Force, "lbf")!.ToSi(380)), 40) { Date = new DateOnly(2027, 5, 14), Tester = "M. Invented" }],
        },
        Currency = "USD",
        Prices =
        [
            new Price("sand", PriceUnit.Load, 280) { High = 360, From = "Invented quarry", On = new DateOnly(2027, 2, 20) },
            new Price("straw", PriceUnit.Bale, 6) { High = 9, From = "Invented farm", On = new DateOnly(2027, 2, 21) },
            new Price("trench-gravel", PriceUnit.Ton, 18) { From = "Invented quarry" },
            new Price("windows, second hand", PriceUnit.Each, 40) { High = 120, Quantity = 4 },
        ],
        Crew = new Crew(8, Skill.Mixed, new DateOnly(2027, 6, 1), 5, 7) { RoofOn = new DateOnly(2027, 8, 2) },
        Rules = new RuleChoices
        {
            Adopted = ["common-practice", "irc-cob@2021"],
            Answers =
            [
                Yes("ground-services"), Yes("ground-test-pit"), Yes("ground-soil"), Yes("ground-flood"), Yes("ground-uphill-water"), Yes("ground-setbacks"),
                Yes("ground-outlet"), Yes("ground-truck"), Yes("tee-fixing"),
            ],
        },
    };

    private static Sequence<Finish> Plasters =>
    [
        new Finish(Face.Inside, "earth-plaster", In(1))
        {
            Lath = new Lath("reed mat", In(3)), Start = new DateOnly(2028, 5, 15),
            Coats =
            [
                new Coat(CoatRole.Slip, Length.Zero) { Parts = new PlasterParts { Clay = 1 } },
                new Coat(CoatRole.Scratch, Quarters(2)) { Parts = Rough }, new Coat(CoatRole.Brown, Eighths(3)) { Parts = Rough }, new Coat(CoatRole.Finish, Eighths(1)) { Panel = "B" },
            ],
        },
        new Finish(Face.Outside, "lime-plaster", In(1))
        {
            Lath = new Lath("galvanised mesh", In(3)), Start = new DateOnly(2028, 8, 28),
            Coats =
            [
                new Coat(CoatRole.Scratch, Eighths(3)) { Parts = Coarse }, new Coat(CoatRole.Brown, Eighths(3)) { Parts = Coarse }, new Coat(CoatRole.Finish, Quarters(1)) { Panel = "D" },
                new Coat(CoatRole.Wash, Length.Zero) { Passes = 4, Material = "limewash" },
            ],
        },
    ];

    private static Sequence<TestPanel> Panels =>
    [
        Panel("A", Face.Inside, new PlasterParts { Clay = 1, Sand = 2, Straw = 0.5 }, PanelCracks.Open, PanelBond.Holds, 20),
        Panel("B", Face.Inside, new PlasterParts { Clay = 1, Sand = 3, Manure = 0.75, Paste = 0.25 }, PanelCracks.None, PanelBond.Holds, 20),
        Panel("C", Face.Outside, new PlasterParts { Lime = 1, Sand = 2 }, PanelCracks.Hair, PanelBond.Hollow, 24),
        Panel("D", Face.Outside, new PlasterParts { Lime = 1, Sand = 2.5 }, PanelCracks.Hair, PanelBond.Holds, 24),
    ];

    private static PlasterParts Rough => new() { Clay = 1, Sand = 3, Straw = 1 };

    private static PlasterParts Coarse => new() { Lime = 1, Sand = 3 };

    private static TestPanel Panel(string name, Face face, PlasterParts parts, PanelCracks cracks, PanelBond bond, int day) =>
        new(name, face, face == Face.Inside ? "earth-plaster" : "lime-plaster", parts, cracks, PanelDust.None, bond) { Date = new DateOnly(2027, 5, day) };

    private static Answer Yes(string question) => new(question, true, "M. Invented", new DateOnly(2027, 3, 2));

    private static Length In(long inches) => Length.FromInches(inches);

    private static Length Quarters(long quarters) => new(Length.PerInch / 4 * quarters);

    private static Length Eighths(long eighths) => new(Length.PerInch / 8 * eighths);

    private static Length Ft(long feet, long inches = 0) => Length.FromFeet(feet, inches);

    private static Along At(double bearing) => Along.At(new Angle(bearing));

    private static Prism Crushed(double poundsForce) =>
        new(In(4), In(4), In(8), new Force(poundsForce * 4.4482216152605), 40) { Date = new DateOnly(2027, 5, 14), Tester = "M. Invented" };
}
