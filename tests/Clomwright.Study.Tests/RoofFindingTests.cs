using System.Text.RegularExpressions;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Rules;
using Clomwright.Testing;

namespace Clomwright.Study.Tests;

/// <summary>What the findings say of the roof and what carries it. Ranks: property; the forces themselves are checked where they are computed.</summary>
public partial class RoofFindingTests
{
    private static readonly Phrasebook English = Phrasebook.In("en");

    private static House Heron => Houses.HeronPoint;

    private static Roof.Reciprocal HeronRoof => (Roof.Reciprocal)Heron.Roof!;

    [Fact]
    public void HeronPoint_Roof_StandsAndLeavesToPeopleWhatOnlyTheyCanSay()
    {
        var study = HouseStudy.Of(Heron);
        Assert.Equal(0, study.Tally.Short);
        foreach (var rule in (string[])["pole-bending-crossing", "pole-bending-plate", "pole-stub", "pole-shear", "pole-seat-bearing", "ring-sag", "stage-bending", "stage-shear", "crossing-pinned", "crossing-opens", "pin-strength", "pole-loss", "pole-foot", "stage-actions", "charlie-stick", "secondaries-and-deck", "deck-uplift", "roof-diaphragm", "seat-bolt", "seat-edge", "seat-centre", "bearing-stress", "header-pressure", "header-sag", "bond-beam-tension", "bond-beam-bolts", "bond-beam-lap", "bond-beam-bending", "tee-uplift", "tee-leg", "tee-bar", "tee-bolt", "lateral-path"])
        {
            Assert.Contains(study.Findings, f => f.Rule.Key == rule && f.Verdict is Verdict.Met);
        }
    }

    /// <summary>A frame of 6 in poles under wet soil and snow that passes bare and fails loaded shows exactly that, with both numbers.</summary>
    [Fact]
    public void SixInchPoles_StandBareAndFailUnderWetSoilAndSnow_WithBothNumbersAndAMendThatWasTried()
    {
        var study = HouseStudy.Of(With(HeronRoof with { Pole = PoleSize.Even(Length.FromInches(6)), IfOneFails = new IfOneFails.Post(Length.FromInches(6), Length.FromInches(24)) }) with
        {
            Site = Heron.Site with { GroundSnow = new Stress(3000) }, BondBeam = Heron.BondBeam! with { Width = Length.FromInches(6) },
        });
        var finding = Of(study, "stage-bending");
        Assert.Contains("snow", English.Say(finding.Notes[0], UnitSystem.Metric), StringComparison.Ordinal);
        var made = Assert.IsType<Verdict.FallsShort>(finding.Verdict).Comparisons[0];
        var both = finding.Notes.Single(n => n.Key == "study.demand.bare-and-loaded");
        var bare = ((Argument.Quantity)both.Arguments.Single(a => a.Name == "bare").Value).Value;
        Assert.True(bare.Si < made.Limit.Si);
        Assert.Equal(made.Provided, ((Argument.Quantity)both.Arguments.Single(a => a.Name == "loaded").Value).Value);
        Assert.NotEmpty(study.MendsOf(finding));
    }

    [Fact]
    public void ACombinationThatFallsShort_NamesItselfAndItsPattern()
    {
        var finding = Of(HouseStudy.Of(With(HeronRoof with { Pole = PoleSize.Even(Length.FromInches(4)) })), "pole-bending-plate");
        Assert.IsType<Verdict.FallsShort>(finding.Verdict);
        Assert.Contains(finding.Notes, n => n.Key == "study.demand.governs");
        Assert.Contains(finding.Notes, n => n.Key == "study.demand.from-memory");
    }

    /// <summary>Laid from the eave inward the crossings of a small ring under a deep eave open; the finding says so band by band, and the other order beside it.</summary>
    [Fact]
    public void SoilLaidFromTheEave_OpensCrossings_BandByBand()
    {
        var study = HouseStudy.Of(With(HeronRoof with { Joint = PoleJoint.Lashed }));
        var finding = Of(study, "crossing-opens");
        Assert.IsType<Verdict.FallsShort>(finding.Verdict);
        Assert.True(Steps("study.demand.from-eave")[0] < 0);
        Assert.All(Steps("study.demand.from-ring"), force => Assert.True(force > 0));

        List<double> Steps(string key) => [.. ((Argument.List)finding.Notes.Single(n => n.Key == key).Arguments[0].Value).Items.Select(i => ((Argument.Quantity)i).Value.Si)];
    }

    /// <summary>Poles too thick for their ring: nothing is met, and nothing that makes it so is offered as a mend.</summary>
    [Fact]
    public void AFrameThatCannotStand_IsNotCheckedAndSaysWhy()
    {
        var study = HouseStudy.Of(With(HeronRoof with { RingRadius = Length.FromInches(4) }));
        var finding = Of(study, "pole-bending-plate");
        Assert.StartsWith("analysis.reciprocal.", Assert.IsType<Verdict.NotChecked>(finding.Verdict).Because.Key, StringComparison.Ordinal);
        Assert.IsType<Verdict.NotChecked>(Of(study, "pole-loss").Verdict);
    }

    /// <summary>Without snow no combination is whole: what was summed may fall short and is never met.</summary>
    [Theory]
    [MemberData(nameof(Unloaded))]
    public void ALoadThatIsNotKnown_LeavesNothingMetThatDependsOnIt(Site site)
    {
        var findings = HouseStudy.Of(Heron with { Site = site }).Findings;
        foreach (var rule in (string[])["pole-bending-crossing", "pole-bending-plate", "pole-stub", "pole-shear", "pole-seat-bearing", "tee-uplift", "header-bending", "header-shear", "header-pressure", "tee-bolt", "bond-beam-bending", "lateral-path", "crossing-opens", "pole-loss", "deck-uplift", "roof-diaphragm", "seat-bolt"])
        {
            Assert.DoesNotContain(findings, f => f.Rule.Key == rule && f.Verdict is Verdict.Met);
        }
    }

    public static TheoryData<Site> Unloaded =>
    [
        Heron.Site with { GroundSnow = null }, Heron.Site with { WindSpeed = null }, Heron.Site with { SeismicSds = null }, Heron.Site with { Loads = null },
        Heron.Site with { Exposure = null },
    ];

    [Theory]
    [InlineData(PoleJoint.Lashed)]
    [InlineData(PoleJoint.Notched)]
    public void CrossingsThatOpen_WithoutAPin_FallShortAndAPinMendsIt(PoleJoint joint)
    {
        var study = HouseStudy.Of(With(HeronRoof with { Joint = joint, Notch = Length.FromInches(joint == PoleJoint.Notched ? 1 : 0) }));
        foreach (var rule in (string[])["crossing-opens", "crossing-pinned"])
        {
            var finding = Of(study, rule);
            Assert.IsType<Verdict.FallsShort>(finding.Verdict);
            Assert.Contains(finding.Notes, n => n.Key is "study.demand.friction" or "study.demand.from-eave");
        }
    }

    /// <summary>Losing a pole falls short until a way out is described and holds; each way is tried as a mend and every one offered holds.</summary>
    [Fact]
    public void LossOfAPole_FallsShort_UntilAWayOutIsDescribedAndHolds()
    {
        var study = HouseStudy.Of(With(HeronRoof with { IfOneFails = null }));
        var finding = Of(study, "pole-loss");
        Assert.IsType<Verdict.FallsShort>(finding.Verdict);
        Assert.Contains(finding.Notes, n => n.Key == "study.demand.no-way-out");
        Assert.NotEmpty(study.MendsOf(finding));
        IfOneFails[] ways = [new IfOneFails.Doubled(), new IfOneFails.Post(Length.FromInches(8), Length.FromInches(30))];
        Assert.All(ways, way => Assert.All(Loss(way), f => Assert.IsType<Verdict.Met>(f.Verdict)));
        // A strap pulls with many times what it lifts: one as thick as a plank would hold, the deck beside the gap does not.
        var strap = Loss(new IfOneFails.Strap(Length.FromInches(12), Length.FromInches(1))).ToList();
        Assert.Equal(["strap", "deck as diaphragm"], strap.Take(2).Select(f => f.Subject));
        Assert.IsType<Verdict.Met>(strap[0].Verdict);
        Assert.IsType<Verdict.FallsShort>(strap[1].Verdict);
        Assert.Contains("without pole", strap[2].Subject, StringComparison.Ordinal);
        Assert.IsType<Verdict.FallsShort>(Loss(new IfOneFails.Strap(Length.FromInches(2), new Length(Length.PerInch / 4))).First().Verdict);
        Assert.Contains(Loss(new IfOneFails.Post(Length.FromInches(8), Length.FromInches(6))), f => f.Verdict is Verdict.FallsShort);

        static IEnumerable<Finding> Loss(IfOneFails way) => HouseStudy.Of(With(HeronRoof with { IfOneFails = way })).Findings.Where(f => f.Rule.Key == "pole-loss");
    }

    /// <summary>Without a deck a strap has no diaphragm: not checked, never met.</summary>
    [Fact]
    public void AStrapWithoutADeck_IsNotChecked() =>
        Assert.IsType<Verdict.NotChecked>(Of(HouseStudy.Of(With(HeronRoof with { Deck = null, IfOneFails = new IfOneFails.Strap(Length.FromInches(2), new Length(Length.PerInch / 4)) })), "pole-loss").Verdict);

    /// <summary>Pins that are not described are not checked; thin ones fall short and thicker ones mend it.</summary>
    [Fact]
    public void Pins_AreHeldAgainstWhatSlidesAndPulls()
    {
        Assert.IsType<Verdict.NotChecked>(Of(HouseStudy.Of(With(HeronRoof with { Pin = null })), "pin-strength").Verdict);
        var study = HouseStudy.Of(With(HeronRoof with { Pin = new Pin(new Length(Length.PerInch / 2)) }));
        var thin = study.Findings.First(f => f.Rule.Key == "pin-strength" && f.Verdict is Verdict.FallsShort);
        Assert.NotEmpty(study.MendsOf(thin));
    }

    [Fact]
    public void LossOfAPole_IsMetOnlyWhereAWayOutIsDescribed_AndEveryFindingReadsInFull() =>
        Houses.Plausible.ForAll(house =>
        {
            foreach (var finding in HouseStudy.Of(house).Findings)
            {
                Assert.False(finding.Rule.Key is "pole-loss" or "pin-strength" && finding.Verdict is Verdict.Met && house.Roof is not Roof.Reciprocal { Pin: not null } and not Roof.Reciprocal { IfOneFails: not null });
                Assert.All(finding.Notes.Append(Sentences.Of(finding)).Select(m => English.Say(m, house.Units)), said => Assert.DoesNotMatch(Unsaid(), said));
            }
        }, iter: Counts.Of(40, 1_000));

    private static House With(Roof roof) => Heron with { Roof = roof };

    private static Finding Of(HouseStudy study, string rule) => study.Findings.Single(f => f.Rule.Key == rule);

    [GeneratedRegex(@"\[[a-z]+\.|[{}]|\?\?| {2}|\.\.")]
    private static partial Regex Unsaid();

    /// <summary>A stage that bends or shears too much names the pole or rafter, not the roof.</summary>
    [Fact]
    public void AStage_NamesThePoleItBends()
    {
        var heron = HouseStudy.Of(With(HeronRoof with { Pole = PoleSize.Even(Length.FromInches(5)) }));
        Assert.All(["stage-bending", "stage-shear"], rule => Assert.Matches("^pole [1-8]$", Of(heron, rule).Subject));
        var shed = HouseStudy.Of(With(new Roof.Shed(PoleSize.Even(Length.FromInches(6)), Length.FromInches(36), new Slope(0.1)) { Eave = Length.FromInches(24), Deck = Length.FromInches(2), Layers = HeronRoof.Layers }));
        Assert.All(["stage-bending", "stage-shear"], rule => Assert.Matches("^rafter [0-9]+$", Of(shed, rule).Subject));
    }

    /// <summary>What holds the roof on, made too weak, falls short and has a mend that was tried: more or longer nails, straps, thicker bolts, bolts off the edges.</summary>
    [Theory]
    [MemberData(nameof(Weak))]
    public void WhatHoldsTheRoofOn_MadeTooWeak_FallsShortAndIsMended(string rule, Roof roof, Site site)
    {
        var study = HouseStudy.Of(With(roof) with { Site = site });
        var finding = study.Findings.First(f => f.Rule.Key == rule && f.Verdict is Verdict.FallsShort);
        var mends = study.MendsOf(finding);
        Assert.NotEmpty(mends);
        Assert.All(mends, mend => Assert.DoesNotContain(HouseStudy.Of(mend.Edit.Apply(study.House)).Findings, f => f.Rule.Key == rule && f.Subject == finding.Subject && f.Verdict is Verdict.FallsShort));
    }

    public static TheoryData<string, Roof, Site> Weak
    {
        get
        {
            var windy = Heron.Site with { WindSpeed = new Speed(70), Exposure = "D" };
            return new()
            {
                { "deck-uplift", HeronRoof with { Deck = Length.FromInches(1), DeckNails = new DeckNails(new Length(Length.PerInch / 1000 * 131), Length.FromInches(2)), Secondaries = new Secondaries(2, Length.FromInches(6)) }, windy },
                { "roof-diaphragm", HeronRoof with { Braces = null }, Heron.Site },
                { "roof-diaphragm", HeronRoof with { Braces = new RoofBraces(Length.FromInches(1), new Length(Length.PerInch / 16), 4, new Length(Length.PerInch / 1000 * 131), Length.FromInches(2)) }, Heron.Site },
                { "seat-bolt", HeronRoof with { Seat = new SeatMade { Bolt = new Length(Length.PerInch / 2) } }, Heron.Site },
                { "secondary-ends", HeronRoof with { Secondaries = new Secondaries(1, Length.FromInches(6)) { Bolt = new Length(Length.PerInch / 4) } }, Heron.Site },
                { "centre-post", Radial with { CentrePost = true, Post = new CentrePost(new Length(Length.PerInch * 7 / 2), Length.FromInches(24)) }, Heron.Site },
                { "centre-post", Radial with { CentrePost = true, Post = new CentrePost(Length.FromInches(10), Length.FromInches(8)) }, Heron.Site },
                { "compression-ring", Radial with { RingRadius = Length.FromInches(18), Ring = new CompressionRing(Length.FromInches(1), Length.FromInches(2), "douglas-fir-no2") }, Heron.Site },
                { "flue-clear", HeronRoof with { Flue = HeronRoof.Flue! with { Bearing = new Angle(235) } }, Heron.Site },
                { "soil-slip", HeronRoof with { Battens = null }, Heron.Site },
                { "seat-edge", HeronRoof with { Seat = new SeatMade { Bolt = new Length(Length.PerInch * 9 / 8) } }, Heron.Site },
            };
        }
    }

    private static Roof.Radial Radial => new(8, PoleSize.Even(Length.FromInches(8)), new Slope(0.3)) { Eave = HeronRoof.Eave, Deck = HeronRoof.Deck, Layers = HeronRoof.Layers, FirstBearing = HeronRoof.FirstBearing, Battens = HeronRoof.Battens };

    /// <summary>Thin tees, thin bolts through them, shallow headers and flat ground fall short, and each has a mend that was tried and holds.</summary>
    [Theory]
    [MemberData(nameof(Thin))]
    public void WhatCarriesTheRoof_MadeTooThin_IsMended(string rule, House house)
    {
        var study = HouseStudy.Of(house);
        var finding = study.Findings.First(f => f.Rule.Key == rule && f.Verdict is Verdict.FallsShort);
        var mends = study.MendsOf(finding);
        Assert.NotEmpty(mends);
        Assert.All(mends, mend =>
        {
            Assert.DoesNotContain(HouseStudy.Of(mend.Edit.Apply(house)).Findings, f => f.Rule.Key == rule && f.Subject == finding.Subject && f.Verdict is Verdict.FallsShort);
            Assert.DoesNotMatch(Unsaid(), English.Say(mend.What, house.Units));
        });
    }

    public static TheoryData<string, House> Thin
    {
        get
        {
            var windy = Heron with { Site = Heron.Site with { WindSpeed = new Speed(60), Exposure = "D" } };
            var door = Heron.Openings.First(o => o.Header is not null);
            House Header(int inches) => Heron with { Openings = Heron.Openings.Select(o => o == door ? o with { Header = o.Header! with { Depth = Length.FromInches(inches) } } : o).ToSequence() };
            return new()
            {
                { "tee-bar", windy with { Tees = Heron.Tees! with { Timber = Length.FromInches(2), Bolt = new Length(Length.PerInch / 4), Bar = Length.FromInches(24) } } },
                { "tee-bolt", windy with { Tees = Heron.Tees! with { Bolt = new Length(Length.PerInch / 4) } } },
                { "header-bending", Header(1) },
                { "ground-fall", Heron with { Site = Heron.Site with { GroundFall = new Slope(0.01) } } },
            };
        }
    }

    /// <summary>The leak test is asked until somebody answers it, and not asked of a roof without layers.</summary>
    [Fact]
    public void LeakTest_IsAskedUntilAnswered()
    {
        Assert.IsType<Verdict.NeedsJudgement>(Of(HouseStudy.Of(Heron), "leak-test").Verdict);
        var told = Heron with { Rules = Heron.Rules with { Answers = [.. Heron.Rules.Answers, new Answer("leak-test", true, "M. Invented", new DateOnly(2027, 8, 1))] } };
        Assert.IsType<Verdict.Met>(Of(HouseStudy.Of(told), "leak-test").Verdict);
        var leaks = Heron with { Rules = Heron.Rules with { Answers = [.. Heron.Rules.Answers, new Answer("leak-test", false, "M. Invented", new DateOnly(2027, 8, 1))] } };
        Assert.IsType<Verdict.FallsShort>(Of(HouseStudy.Of(leaks), "leak-test").Verdict);
        Assert.IsType<Verdict.NotApplicable>(Of(HouseStudy.Of(With(HeronRoof with { Layers = [] })), "leak-test").Verdict);
    }

    /// <summary>What the house file does not say is not checked, never met: laps, tees' timber, keys over a damp break.</summary>
    [Fact]
    public void WhatIsNotDescribed_IsNotChecked()
    {
        var house = With(HeronRoof with { DeckNails = null, Braces = null, Seat = null }) with { BondBeam = Heron.BondBeam! with { Lap = null, Bolt = null }, Tees = Heron.Tees! with { Timber = null, Bolt = null }, Stem = Heron.Stem with { Keys = null } };
        var findings = HouseStudy.Of(house).Findings;
        foreach (var rule in (string[])["bond-beam-tension", "bond-beam-bolts", "bond-beam-lap", "lap-places", "tee-leg", "tee-bar", "tee-bolt", "deck-uplift", "roof-diaphragm", "seat-bolt"])
        {
            Assert.Contains(findings, f => f.Rule.Key == rule);
            Assert.All(findings.Where(f => f.Rule.Key == rule), f => Assert.IsType<Verdict.NotChecked>(f.Verdict));
        }

        Assert.IsType<Verdict.NotChecked>(findings.Single(f => f.Rule.Key == "lateral-path" && f.Subject == "cob on stem").Verdict);
    }
}
