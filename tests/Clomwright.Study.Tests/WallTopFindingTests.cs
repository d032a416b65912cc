using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Rules;
using Clomwright.Testing;

namespace Clomwright.Study.Tests;

/// <summary>What the findings say of the wall top under its roof: seats, bond beam, tees, straps, headers. Ranks: property; the forces themselves are checked where they are computed.</summary>
public sealed class WallTopFindingTests
{
    private static readonly Phrasebook English = Phrasebook.In("en");

    private static House Heron => Houses.HeronPoint;

    private static Roof.Reciprocal HeronRoof => (Roof.Reciprocal)Heron.Roof!;

    /// <summary>No default is used without being said beside the finding and standing on the record.</summary>
    [Fact]
    public void AHeaderMetByAnAssumedStrengthOfCob_SaysSo()
    {
        var study = HouseStudy.Of(Heron with { Mix = Heron.Mix with { Prisms = [] } });
        Assert.All(study.Findings.Where(f => f.Rule.Key is "header-pressure" && f.Verdict is Verdict.Met), f =>
            Assert.Contains(f.Notes, n => English.Say(n, UnitSystem.Metric).StartsWith("Assumed: bearing on cob without a test", StringComparison.Ordinal)));
        Assert.Superset(new HashSet<string> { "cob-bearing", "cob-wet", "cob-dry", "green-poles" }, study.Assumptions.Select(a => a.Key).ToHashSet());
    }

    /// <summary>With five prisms of its own mix the cob bears what they say, by whom and when.</summary>
    [Fact]
    public void AHeaderMetByAMeasuredStrengthOfCob_NamesTheTests()
    {
        var study = HouseStudy.Of(Heron);
        Assert.All(study.Findings.Where(f => f.Rule.Key == "header-pressure" && f.Verdict is Verdict.Met), f =>
        {
            Assert.Contains(f.Notes, n => English.Say(n, UnitSystem.Metric).Contains("measured on 5 prisms", StringComparison.Ordinal) && English.Say(n, UnitSystem.Metric).Contains("M. Invented", StringComparison.Ordinal));
            Assert.Equal(study.Mix.Strength.Allowable, ((Verdict.Met)f.Verdict).Comparisons[0].Limit.Si, 1e-6);
        });
        Assert.DoesNotContain(study.Assumptions, a => a.Key == "cob-bearing");
    }

    /// <summary>Too much pressure under a pole falls short, and both a deeper and a wider bond beam are tried before they are offered. Seats reach all of either beam.</summary>
    [Fact]
    public void PolesThatPressTooHard_FallShort_AndADeeperAndAWiderBeamAreOffered()
    {
        var study = HouseStudy.Of(Heron with { BondBeam = Heron.BondBeam! with { Depth = Length.FromInches(4) }, Roof = HeronRoof with { Seat = HeronRoof.Seat! with { Flat = Length.FromInches(2) } } });
        var hard = study.Findings.Where(f => f.Rule.Key == "bearing-stress" && f.Verdict is Verdict.FallsShort).ToList();
        Assert.NotEmpty(hard);
        Assert.DoesNotContain(study.Findings, f => f.Rule.Key == "bearing-stress" && f.Verdict is Verdict.NeedsJudgement);
        Assert.All(hard, finding =>
        {
            var said = study.MendsOf(finding).Select(m => English.Say(m.What, UnitSystem.Imperial)).ToList();
            Assert.Contains(said, s => s.Contains("deep instead of", StringComparison.Ordinal));
            Assert.Contains(said, s => s.Contains("wide instead of", StringComparison.Ordinal));
            Assert.All(study.MendsOf(finding), m =>
            {
                var left = HouseStudy.Of(m.Edit.Apply(study.House)).Findings.Where(f => f.Rule.Key == "bearing-stress" && f.Verdict is Verdict.FallsShort).ToList();
                Assert.True(left.Count < hard.Count);
                Assert.DoesNotContain(left, f => f.Subject == finding.Subject);
            });
        });
    }

    /// <summary>Where seats cut level are too short to reach all of the bond beam, cutting them deeper is tried, and offered where it mends.</summary>
    [Fact]
    public void SeatsTooShortForTheBeam_AreOfferedDeeper()
    {
        var starter = StarterHouse.Make();
        var study = HouseStudy.Of(starter with { Roof = starter.Roof! with { Seat = null } });
        var finding = study.Findings.First(f => f.Rule.Key == "bearing-stress" && f.Verdict is Verdict.FallsShort);
        var mend = study.MendsOf(finding).First(m => English.Say(m.What, UnitSystem.Imperial).StartsWith("seats of the poles cut", StringComparison.Ordinal));
        Assert.DoesNotContain(HouseStudy.Of(mend.Edit.Apply(study.House)).Findings, f => f.Rule.Key == "bearing-stress" && f.Verdict is Verdict.FallsShort);
    }

    /// <summary>Rank property: in a wind that nothing of this size holds, no tee is offered that reaches into the lowest lift or under it; the deepest that the old depth times the ratio asks would.</summary>
    [Fact]
    public void TeesThatPullOut_AreNeverOfferedDeeperThanTheWallHoldsThem()
    {
        var study = HouseStudy.Of(Heron with { Site = Heron.Site with { WindSpeed = new Speed(110) } });
        var pulled = study.Findings.Where(f => f.Rule.Key == "tee-uplift" && f.Verdict is Verdict.FallsShort).ToList();
        Assert.NotEmpty(pulled);
        var most = study.Geometry.Wall.Top - study.Geometry.Lifts[0].Top;
        Assert.Contains(pulled, f => ((Verdict.FallsShort)f.Verdict).Comparisons[0] is var c && Heron.Tees!.Depth.Metres * c.Provided.Si / c.Limit.Si > most.Metres);
        Assert.All(pulled.SelectMany(f => study.MendsOf(f)), m => Assert.True(m.Edit.Apply(Heron).Tees!.Depth <= most));
    }

    /// <summary>A stretch without a tee is a person's question over an opening; where a pole lands in it, it falls short and says which.</summary>
    [Fact]
    public void APoleWithoutATee_FallsShort_AndAStretchOverAnOpeningIsAQuestion()
    {
        var plain = Heron with { Openings = Heron.Openings.Select(o => o.Header is { } header ? o with { Header = header with { Bearing = Length.FromInches(12), CrossPad = false } } : o).ToSequence() };
        var study = HouseStudy.Of(plain);
        var finding = study.Findings.Single(f => f.Rule.Key == "tee-gap");
        Assert.IsType<Verdict.FallsShort>(finding.Verdict);
        Assert.Contains("pole 5", English.Say(finding.Notes.Single(n => n.Key == "study.demand.tee-bare"), UnitSystem.Imperial), StringComparison.Ordinal);
        Assert.Contains(study.MendsOf(finding), m => English.Say(m.What, UnitSystem.Imperial).Contains("cross pad", StringComparison.Ordinal));
        Assert.IsType<Verdict.NeedsJudgement>(HouseStudy.Of(Heron).Findings.Single(f => f.Rule.Key == "tee-gap").Verdict);
    }

    /// <summary>A strap's steel without its maker's sheet may fall short and is never met; with it both findings are met here, and without an anchor neither is.</summary>
    [Fact]
    public void AStrap_IsMetOnlyWithItsAnchorAndItsMakersSheet()
    {
        var strap = Heron.Embeds.Single(e => e.Kind == EmbedKind.Strap);
        Assert.All(Of(strap), f => Assert.IsType<Verdict.Met>(f.Verdict));
        var unsure = Of(strap with { Anchor = strap.Anchor! with { Pull = null } });
        Assert.IsType<Verdict.Met>(unsure.Single(f => f.Rule.Key == "strap-uplift").Verdict);
        Assert.Equal("study.demand.strap-fixings", Assert.IsType<Verdict.NotChecked>(unsure.Single(f => f.Rule.Key == "strap-pull").Verdict).Because.Key);
        Assert.All(Of(strap with { Anchor = null }), f => Assert.IsType<Verdict.NotChecked>(f.Verdict));

        List<Finding> Of(Embed made) => [.. HouseStudy.Of(new Edit.ChangeEmbed(strap.Name, made).Apply(Heron)).Findings.Where(f => f.Rule.Key is "strap-uplift" or "strap-pull")];
    }

    /// <summary>A header's finding has what the load asks at each end beside what is described, with and without arching.</summary>
    [Fact]
    public void AHeader_SaysWhatEachEndAsks()
    {
        var study = HouseStudy.Of(Heron);
        foreach (var finding in study.Findings.Where(f => f.Rule.Key == "header-pressure"))
        {
            var ends = study.WallTop.HeaderEnds.Where(e => $"{e.Opening}/header" == finding.Subject).ToList();
            var note = finding.Notes.Single(n => n.Key == "study.demand.header-length");
            Assert.Equal(ends.Single(e => e.Left).Needed!.Value, ((Argument.Quantity)note.Arguments.Single(a => a.Name == "left").Value).Value.Si);
            Assert.Equal(ends.Single(e => !e.Left).Needed!.Value, ((Argument.Quantity)note.Arguments.Single(a => a.Name == "right").Value).Value.Si);
            Assert.Single(finding.Notes, n => n.Key is "study.demand.header-arched" or "study.demand.header-no-arch");
        }
    }

    /// <summary>The pressure under headers is one finding a header, not two.</summary>
    [Fact]
    public void AHeadersPressure_IsCountedOnce()
    {
        var findings = HouseStudy.Of(Heron).Findings;
        Assert.All(Heron.Openings.Where(o => o.Header is not null), o => Assert.Single(findings, f => f.Subject == $"{o.Name}/header" && f.Rule.Key is "header-pressure" or "bearing-stress" && f.Subject == $"{o.Name}/header"));
    }

    /// <summary>A lap must be at least as long as its bolts ask, and have at least half of itself clear.</summary>
    [Fact]
    public void Laps_AreToldAsRoomThatIsAsked()
    {
        var lap = Assert.Single(Assert.IsType<Verdict.Met>(HouseStudy.Of(Houses.HeronPoint).Findings.Single(f => f.Rule.Key == "bond-beam-lap").Verdict).Comparisons);
        Assert.Equal(ComparisonWord.AtLeast, lap.Word);
        Assert.Equal(15 * 0.0254, lap.Provided.Si, 1e-9);
        Assert.True(lap.Limit.Si <= lap.Provided.Si);
        Assert.Equal(ComparisonWord.AtLeast, RuleBook.Clauses.Single(c => c.Rule.Key == "lap-places").Word);
    }
}
