using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Testing;

namespace Clomwright.Study.Tests;

/// <summary>Ranks: property throughout.</summary>
public class MendTests
{
    /// <summary>A mend is offered only when making it leaves the rule short of fewer things and no other rule of more.</summary>
    [Fact]
    public void EveryMendOfferedMends() =>
        Houses.Plausible.ForAll(house =>
        {
            var study = HouseStudy.Of(house);
            foreach (var finding in study.Findings.Where(f => f.Verdict is Verdict.FallsShort).Take(4))
            {
                var mends = study.MendsOf(finding);
                Assert.InRange(mends.Count, 0, 3);
                foreach (var mend in mends)
                {
                    var after = HouseStudy.Of(mend.Edit.Apply(house));
                    Assert.True(after.Tally.Short < study.Tally.Short);
                    Assert.Equal(mend.After, after.Tally);
                }
            }
        }, iter: Counts.Of(15, 300));

    public static TheoryData<string, House> Spoilt()
    {
        var house = StarterHouse.Make();
        var window = house.Openings[1];
        return new TheoryData<string, House>
        {
            { "pole-seat", new Edit.TurnRoof(new Angle(20)).Apply(house) },
            { "header-bearing", new Edit.ChangeOpening(window.Name, window with { Header = window.Header! with { Bearing = Length.FromInches(6) } }).Apply(house) },
            { "header-thickness", new Edit.ChangeOpening(window.Name, window with { Header = window.Header! with { Pieces = 2 } }).Apply(house) },
            { "opening-width", new Edit.ResizeOpening(window.Name, Length.FromFeet(4, 1), window.Height).Apply(house) },
            { "cob-over-head", new Edit.MoveOpening(window.Name, window.Along, Length.FromFeet(4, 4)).Apply(house) },
            { "pier-width", new Edit.MoveOpening(window.Name, Along.At(new Angle(141))).Apply(house) },
            { "tee-spacing", new Edit.ChangeTees(house.Tees! with { Spacing = Length.FromFeet(6) }).Apply(house) },
            { "stem-height", new Edit.ChangeStem(house.Stem with { Top = Length.FromInches(2) }).Apply(house) },
            { "stem-width", new Edit.ChangeStem(house.Stem with { Width = Length.FromInches(12) }).Apply(house) },
            { "wall-slenderness", new Edit.ChangeWall(house.Wall with { Top = Length.FromFeet(9, 6) }).Apply(house) },
            { "sealed-face", new Edit.ChangeFinishes([new Finish(Face.Outside, "cement-plaster")]).Apply(house) },
            { "tossed-lift-height", new Edit.ChangeLifts(new LiftPlan { Height = Length.FromInches(20) }).Apply(house) },
            { "niche-back", new Edit.ResizeNiche("lamp", Length.FromInches(12), Length.FromInches(16), Length.FromInches(8)).Apply(house) },
            { "stage-bending", new Edit.ChangeRoof(((Roof.Reciprocal)Houses.HeronPoint.Roof!) with { Pole = PoleSize.Even(Length.FromInches(4)) }).Apply(Houses.HeronPoint) },
            { "pole-bending-plate", new Edit.ChangeRoof(((Roof.Reciprocal)Houses.HeronPoint.Roof!) with { Pole = PoleSize.Even(Length.FromInches(4)) }).Apply(Houses.HeronPoint) },
            { "crossing-pinned", new Edit.ChangeRoof(((Roof.Reciprocal)Houses.HeronPoint.Roof!) with { Joint = PoleJoint.Lashed }).Apply(Houses.HeronPoint) },
            { "seat-centre", new Edit.ChangeBondBeam(Houses.HeronPoint.BondBeam! with { Offset = Length.FromInches(3) }).Apply(Houses.HeronPoint) },
            { "header-pressure", new Edit.ChangeOpening("door", Houses.HeronPoint.Openings[0] with { Header = Houses.HeronPoint.Openings[0].Header! with { Bearing = Length.FromInches(3), CrossPad = true } }).Apply(Houses.HeronPoint with { Mix = new Mix() }) },
            { "header-sag", new Edit.ChangeOpening("door", Houses.HeronPoint.Openings[0] with { Header = Houses.HeronPoint.Openings[0].Header! with { Depth = Length.FromInches(2) } }).Apply(Houses.HeronPoint) },
            { "tee-bar", new Edit.ChangeTees(Houses.HeronPoint.Tees! with { Timber = Length.FromInches(2), Bolt = new Length(Length.PerInch / 4), Bar = Length.FromInches(24) }).Apply(Houses.HeronPoint with { Site = Houses.HeronPoint.Site with { WindSpeed = new Speed(85), Exposure = "D" } }) },
            { "ground-bearing", Houses.HeronPoint with { Site = Houses.HeronPoint.Site with { SoilBearing = new Stress(85_000) } } },
            { "middle-third", Houses.HeronPoint with { Stem = Houses.HeronPoint.Stem with { InsideOffset = Length.FromInches(8) }, Trench = Houses.HeronPoint.Trench! with { Width = Length.FromInches(20) } } },
            { "drain-outlet", Houses.HeronPoint with { Trench = Houses.HeronPoint.Trench! with { Outlet = Length.FromInches(-38) } } },
            { "drain-fall", Houses.HeronPoint with { Trench = Houses.HeronPoint.Trench! with { Fall = new Slope(1.0 / 480) } } },
            { "trench-frost", Houses.HeronPoint with { Site = Houses.HeronPoint.Site with { FrostDepth = Length.FromInches(24) } } },
            { "trench-width", Houses.HeronPoint with { Stem = Houses.HeronPoint.Stem with { Width = Length.FromInches(20) }, Trench = Houses.HeronPoint.Trench! with { Width = Length.FromInches(15) } } },
            { "dry-stem", Houses.HeronPoint with { Stem = Houses.HeronPoint.Stem with { Material = "dry-stone" }, Site = Houses.HeronPoint.Site with { Grade = Length.FromInches(-13), } } },
            { "door-clear", Houses.HeronPoint with { Openings = Houses.HeronPoint.Openings.Select(o => o.Leaf is { } leaf ? o with { Leaf = leaf with { Bottom = new Length(Length.PerInch / 8) } } : o).ToSequence() } },
            { "lime-coat", Houses.HeronPoint with { Finishes = [new Finish(Face.Outside, "lime-plaster") { Coats = [new Coat(CoatRole.Scratch, Length.FromMillimetres(20))] }] } },
            { "lath-lap", Houses.HeronPoint with { Finishes = Houses.HeronPoint.Finishes.Select(f => f with { Lath = f.Lath! with { Lap = Length.FromInches(1) } }).ToSequence() } },
            { "floor-drain", Houses.HeronPoint with { Floor = Houses.HeronPoint.Floor with { Layers = Houses.HeronPoint.Floor.Layers.Select(l => l.Role == FloorRole.Drain ? l with { Depth = Length.FromInches(2) } : l).ToSequence() } } },
            { "floor-over-grade", Houses.HeronPoint with { Site = Houses.HeronPoint.Site with { Grade = Length.FromInches(-4) }, Stem = Houses.HeronPoint.Stem with { Top = Length.FromInches(14) }, Trench = Houses.HeronPoint.Trench! with { Outlet = Length.FromInches(-34) } } },
            { "bond-beam-bolts", new Edit.ChangeBondBeam(Houses.HeronPoint.BondBeam! with { Bolts = 3 }).Apply(Houses.HeronPoint) },
            { "bearing-stress", new Edit.ChangeBondBeam(Houses.HeronPoint.BondBeam! with { Depth = Length.FromInches(4) }).Apply(Houses.HeronPoint) },
            { "tee-gap", new Edit.ChangeTees(Houses.HeronPoint.Tees! with { Bar = Length.FromInches(16) }).Apply(Houses.HeronPoint) },
            { "tee-uplift", Windy(52) },
            { "tee-depth", new Edit.ChangeTees(Houses.HeronPoint.Tees! with { Depth = Length.FromInches(15) }).Apply(Houses.HeronPoint) },
            { "tee-leg", new Edit.ChangeTees(Houses.HeronPoint.Tees! with { Timber = Length.FromInches(2), Bolt = new Length(Length.PerInch / 4) }).Apply(Windy(200)) },
            { "bond-beam-tension", new Edit.ChangeBondBeam(Houses.HeronPoint.BondBeam! with { Width = Length.FromInches(1) }).Apply(Houses.HeronPoint) },
            { "bond-beam-bending", new Edit.ChangeBondBeam(Houses.HeronPoint.BondBeam! with { Depth = Length.FromInches(1) }).Apply(Windy(200)) },
            { "header-bending", Headed("door", h => h with { Depth = Length.FromInches(1) }) },
            { "header-shear", Headed("door", h => h with { Depth = new Length(Length.PerInch / 2) }) },
            { "header-bearing-on-pad", Headed("tub-window", h => h with { Bearing = Length.FromInches(6) }) },
            { "trench-depth", Houses.HeronPoint with { Trench = Houses.HeronPoint.Trench! with { Depth = Length.FromInches(8) } } },
            { "bond-beam-lap", new Edit.ChangeBondBeam(Houses.HeronPoint.BondBeam! with { Lap = Length.FromInches(12) }).Apply(Houses.HeronPoint) },
            { "lateral-path", new Edit.ChangeStem(Houses.HeronPoint.Stem with { Keys = Houses.HeronPoint.Stem.Keys! with { Spacing = Length.FromInches(60), Width = Length.FromInches(4) } }).Apply(Houses.HeronPoint) },
            { "strap-uplift", Strapped(s => s with { Anchor = s.Anchor! with { Depth = Length.FromInches(6), Bar = Length.FromInches(6) } }) },
            { "strap-pull", Strapped(s => s with { Width = new Length(Length.PerInch / 16) }) },
            { "stem-bearing", Houses.HeronPoint with { Stem = Houses.HeronPoint.Stem with { Width = Length.FromInches(15), AllowedPressure = new Stress(125_000) } } },
            { "eave", new Edit.ChangeRoof(house.Roof! with { Eave = Length.FromInches(6) }).Apply(house) },
        };
    }

    /// <summary>Heron Point in a storm that lifts its roof.</summary>
    private static House Windy(double speed) => Houses.HeronPoint with { Site = Houses.HeronPoint.Site with { WindSpeed = new Speed(speed), Exposure = "D" } };

    /// <summary>Heron Point in a storm, held down by a strap at each of its poles and by no tees; the first strap changed.</summary>
    private static House Strapped(Func<Embed, Embed> change)
    {
        var (house, made) = (Windy(60), Houses.HeronPoint.Embeds.Single(e => e.Kind == EmbedKind.Strap));
        var straps = Enumerable.Range(0, 8).Select(k => made with
        {
            Name = $"strap-{k + 1}", Along = Along.At(new Angle(45 * k)), Anchor = made.Anchor! with { Depth = Length.FromInches(36), Bar = Length.FromInches(10) },
        }).ToList();
        return house with { Tees = null, Embeds = [.. house.Embeds.Where(e => e.Kind != EmbedKind.Strap), change(straps[0]), .. straps.Skip(1)] };
    }

    private static House Headed(string opening, Func<Header, Header> change) => Houses.HeronPoint.Openings.Single(o => o.Name == opening) is var made
        ? new Edit.ChangeOpening(opening, made with { Header = change(made.Header!) }).Apply(Houses.HeronPoint) : Houses.HeronPoint;

    /// <summary>What was spoilt on purpose is found, and something that was tried mends it.</summary>
    [Theory]
    [MemberData(nameof(Spoilt))]
    public void SpoiltHouse_Mends_AreFound(string rule, House spoilt)
    {
        var study = HouseStudy.Of(spoilt);
        var finding = study.Findings.FirstOrDefault(f => f.Rule.Key == rule && f.Verdict is Verdict.FallsShort);
        Assert.NotNull(finding);
        var mends = study.MendsOf(finding);
        Assert.NotEmpty(mends);
        Assert.All(mends, mend => Assert.DoesNotMatch("Change the (roof|tees|bond beam)", Phrasebook.In("en").Say(mend.What, UnitSystem.Imperial)));
    }

    /// <summary>A frame that cannot stand falls short of nothing; making it so is no mend. Poles this thick do not pass each other round the ring.</summary>
    [Fact]
    public void AChangeThatLeavesRulesUnanswered_IsNotOffered()
    {
        var roof = (Roof.Reciprocal)Houses.HeronPoint.Roof!;
        var study = HouseStudy.Of(Houses.HeronPoint with { Roof = roof with { RingRadius = Length.FromInches(8), Pole = PoleSize.Even(Length.FromInches(4)) } });
        foreach (var finding in study.Findings.Where(f => f.Clause.Body == "engineering" && f.Verdict is Verdict.FallsShort))
        {
            Assert.All(study.MendsOf(finding), mend => Assert.True(HouseStudy.Of(mend.Edit.Apply(study.House)).Roof.Reciprocal.Is));
        }
    }

    [Fact]
    public void FindingThatIsMet_Mends_AreNone()
    {
        var study = HouseStudy.Of(StarterHouse.Make());
        Assert.Empty(study.MendsOf(study.Findings.First(f => f.Verdict is Verdict.Met)));
    }
}
