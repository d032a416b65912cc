using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>A small complete round house to start from. Its numbers are invented.</summary>
public static class StarterHouse
{
    /// <summary>A fresh one.</summary>
    public static House Make() => new()
    {
        Id = "my-house",
        Name = "My house",
        Notes = "A small round house to start from; every number in it is invented. Change what you like.",
        Plan = new Plan.Round(Length.FromFeet(14)),
        Site = new Site { Grade = Length.FromInches(-12) },
        Trench = new Trench(Length.FromInches(24), Length.FromInches(24), Length.FromInches(-42)) { OutletRun = Length.FromFeet(15) },
        Stem = new Stem(Length.FromInches(20), Length.FromInches(8)) { DampBreak = "slate" },
        Wall = new Wall(Length.FromFeet(8), Length.FromInches(14), new Slope(0.04)),
        Lifts = new LiftPlan { Height = Length.FromInches(12) },
        Openings =
        [
            new Opening
            {
                Name = "door", Kind = OpeningKind.Door, Along = Along.At(new Angle(180)), Width = Length.FromFeet(3), Height = Length.FromFeet(6, 6), Sill = Length.Zero,
                Header = new Header(4, Length.FromInches(4), Length.FromInches(6), Length.FromInches(12)),
            },
            Window("east-window", 90),
            Window("west-window", 270),
        ],
        Niches =
        [
            new Niche { Name = "lamp", Along = Along.At(new Angle(0)), Width = Length.FromInches(12), Height = Length.FromInches(16), Depth = Length.FromInches(4), Sill = Length.FromFeet(4) },
        ],
        Embeds = [new Embed { Name = "coat-pegs", Kind = EmbedKind.Peg, Along = Along.At(new Angle(140)), Height = Length.FromFeet(5, 6), Count = 3, Spacing = Length.FromInches(8) }],
        BondBeam = new BondBeam(Length.FromInches(10), Length.FromInches(8), Length.Zero),
        Tees = new Tees(Length.FromFeet(4), Length.FromInches(24), Length.FromInches(24)),
        Roof = new Roof.Reciprocal(8, Length.FromInches(27), PoleSize.Even(Length.FromInches(8)))
        {
            Eave = Length.FromFeet(2), FirstBearing = new Angle(22.5), Joint = PoleJoint.Pinned, Turn = Turn.Clockwise, Eye = Eye.Glazed,
            Pin = new Pin(Length.FromInches(1)), Seat = new SeatMade { Flat = new Length(Length.PerInch * 7 / 4) }, IfOneFails = new IfOneFails.Post(Length.FromInches(6), Length.FromInches(24)),
            Battens = new SoilBattens(Length.FromInches(12), Length.FromInches(3)),
            Deck = Length.FromInches(3), Layers = [new Layer("planted soil", Length.FromInches(4), "ordinary-earth")],
        },
        Floor = new Floor
        {
            Layers =
            [
                new FloorLayer("washed gravel", Length.FromInches(6)) { Role = FloorRole.Drain },
                new FloorLayer("damp sheet", Length.Zero) { Role = FloorRole.Damp },
                new FloorLayer("rough earth", Length.FromInches(3)) { Role = FloorRole.Base },
                new FloorLayer("finish earth", Length.FromInches(1)) { Role = FloorRole.Finish },
            ],
        },
        Finishes = [new Finish(Face.Inside, "earth-plaster"), new Finish(Face.Outside, "lime-plaster")],
        Crew = new Crew(4, Skill.Beginner, new DateOnly(2027, 6, 1), 5, 6),
        Rules = new RuleChoices { Adopted = ["common-practice"] },
    };

    private static Opening Window(string name, double bearing) => new()
    {
        Name = name, Kind = OpeningKind.Opening, Along = Along.At(new Angle(bearing)), Width = Length.FromInches(30), Height = Length.FromFeet(3), Sill = Length.FromFeet(3),
        Header = new Header(4, Length.FromInches(4), Length.FromInches(6), Length.FromInches(12)),
    };
}
