using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Sheets;
using Clomwright.Study;
using Clomwright.Testing;

namespace Clomwright.Papers.Tests;

/// <summary>What the site folder says of one house. Rank property: read from the sheets themselves.</summary>
public class SiteFolderTests
{
    private static string[] Words(Sequence<Sheet> book, string key) => [.. book.Where(s => s.Key == key || s.Key.StartsWith(key + "-", StringComparison.Ordinal)).SelectMany(s => s.Texts()).Select(t => t.Words)];

    /// <summary>The same place with another description: nothing that is computed hangs on what is changed here.</summary>
    private static PaperSet As(House house) => Papers.HeronPoint with { Geometry = Papers.HeronPoint.Geometry with { House = house } };

    // Every embed, niche and tee stands once in the register, whatever else is there.
    // Rank analytic: a quarter round a circle of radius R inside, R and the wall's thickness outside: each sheet gives a sleeve's distance on its own face.
    [Theory]
    [InlineData("unrolled-inside", Face.Inside)]
    [InlineData("unrolled-outside", Face.Outside)]
    public void WhatIsBuiltIn_IsGivenOnTheFaceOfItsSheet(string sheet, Face face)
    {
        Embed sleeve = new() { Name = "sleeve", Kind = EmbedKind.Sleeve, Along = Along.At(new Angle(90)), Height = Length.FromFeet(2), Width = Length.FromInches(4), Through = true };
        var house = Houses.Round(Length.FromFeet(14)) with { Embeds = [sleeve], Units = UnitSystem.Imperial };
        var set = Papers.Placed(house, PaperSize.Letter);
        var wall = set.Geometry.Wall;
        var away = Math.PI / 2 * (Length.FromFeet(7).Metres + (face == Face.Inside ? wall.InsideOffset(wall.Base.Metres) : wall.OutsideOffset(wall.Base.Metres)));
        var written = LengthText.Tape(Length.Nearest(away), UnitSystem.Imperial);
        Assert.Contains(written, Book.Site(set).Where(s => s.Key.StartsWith(sheet, StringComparison.Ordinal)).SelectMany(s => s.Texts()).Select(t => t.Words.Replace('\u00a0', ' ')));
    }

    [Fact]
    public void Register_HoldsEverythingBuiltInOnce()
    {
        var words = Words(Papers.HeronPointBook, "embed-register");
        var g = Papers.HeronPoint.Geometry;
        Assert.All(g.Embeds.GroupBy(e => e.Embed.Name), row => Assert.All(
            row.Count() == 1 ? [row.Key] : Enumerable.Range(1, row.Count()).Select(n => $"{row.Key}, {n} of {row.Count()}"), name => Assert.Single(words, w => w == name)));
        Assert.All(g.Niches, n => Assert.Single(words, w => w == n.Niche.Name));
        Assert.All(g.Tees, t => Assert.Single(words, w => w == $"T{t.Number}"));
    }

    // On site every finding that is open has its rule, its subject and its reason in one row; one that is met has none, and is counted.
    [Fact]
    public void Findings_HoldAllThatIsOpen_AndCountTheRest()
    {
        var (set, say) = (Papers.HeronPoint, new Scene(Papers.HeronPoint).Say);
        var sheets = Papers.HeronPointBook.Where(s => s.Key == "findings" || s.Key.StartsWith("findings-", StringComparison.Ordinal)).ToArray();
        string[] rows = [.. sheets.SelectMany(s => s.Marks.All()).OfType<Told>().Where(t => t.As == Telling.Row).Select(t => Tight(string.Concat(t.Marks.All().OfType<Text>().Select(w => w.Words))))];
        bool Open(Finding f) => f.Verdict is Verdict.FallsShort or Verdict.NotChecked or Verdict.NeedsJudgement;
        var open = set.Findings.Where(Open).ToArray();
        Assert.NotEmpty(open);
        Assert.All(open, f =>
        {
            var (title, reason) = (Tight(say.Say(f.Rule.Title)), Tight(say.Reason(f.Verdict)));
            Assert.Contains(rows, r => r.StartsWith(title, StringComparison.Ordinal) && r.Contains(Tight(say.Subject(f.Subject)), StringComparison.Ordinal) && r.Contains(reason[..Math.Min(24, reason.Length)], StringComparison.Ordinal));
        });
        Assert.All(set.Findings.GroupBy(f => f.Rule.Key).Where(g => !g.Any(Open)), g => Assert.DoesNotContain(rows, r => r.StartsWith(Tight(say.Say(g.First().Rule.Title)), StringComparison.Ordinal)));
        Assert.Contains(sheets.SelectMany(s => s.Texts()), t => t.Words.StartsWith($"{set.Findings.Count(f => f.Verdict is Verdict.Met)} are met", StringComparison.Ordinal));
    }

    private static string Tight(string words) => string.Concat(words.Where(c => !char.IsWhiteSpace(c)));

    // Property: every line of the costs falls in one month, months ascend, and together they come to what the whole list comes to. By hand: cob begins on 1 June 2027, so sand is on site in May;
    // no day is forecast of windows, which no order measures.
    [Fact]
    public void Costs_ByMonth_AreTheWhole()
    {
        var set = Papers.HeronPoint;
        var costs = Costs.Of(set.House, set.Quantities);
        var months = CostMonth.Of(costs, set.Host!.Value.Value!);
        Assert.Equal(costs.Lines.Count, months.Sum(m => m.Lines.Count + m.Unpriced));
        Assert.Equal(costs.Low, months.Sum(m => m.Low), 1e-9 * costs.Low);
        Assert.Equal(costs.High, months.Sum(m => m.High), 1e-9 * costs.High);
        var dated = months.Where(m => m.Month is not null).Select(m => m.Month!.Value).ToArray();
        Assert.Equal(dated.Order().Distinct(), dated);
        Assert.Equal(new DateOnly(2027, 5, 1), months.Single(m => m.Lines.Any(l => l.Line?.Key == "sand")).Month);
        Assert.Equal("windows, second hand", Assert.Single(months[^1].Lines).Price!.Of);
        Assert.Null(months[^1].Month);
        Assert.Contains(Words(Papers.HeronPointBook, "costs"), w => w.Contains("May 2027", StringComparison.Ordinal));
    }

    // What is not in the house file is a line to write on, never a number of ours.
    [Fact]
    public void EmergencyCard_SaysWhatTheFileSays_AndNothingElse()
    {
        var given = Words(Papers.HeronPointBook, "emergency-card");
        Assert.All((string[])["911", "12 Invented Heron Lane", "Invented County Hospital, 9 miles east", "555 0100"], w => Assert.Contains(w, given));
        var without = new Scene(As(Houses.HeronPoint with { Site = Houses.HeronPoint.Site with { Emergency = null } }));
        var words = EmergencyCard.Of(without).SelectMany(d => d.Finish(1, 1, without.Imprint, without.Say).Texts()).Select(t => t.Words).ToArray();
        Assert.DoesNotContain(words, w => w.Contains("911", StringComparison.Ordinal) || w.Contains("112", StringComparison.Ordinal) || w.Contains("999", StringComparison.Ordinal));
    }

    // A clearance that nobody typed is NOT GIVEN, and a cost that nobody told is a line to write on.
    [Fact]
    public void WhatNobodyTyped_IsSaidToBeMissing()
    {
        var services = Words(Papers.HeronPointBook, "services");
        Assert.Single(services, w => w == "NOT GIVEN");
        Assert.Contains(services, w => w.Contains("Invented: no such stove", StringComparison.Ordinal));
        var costs = Words(Papers.HeronPointBook, "costs");
        Assert.Contains(costs, w => w.Replace('\u00a0', ' ') == "160 USD");
        Assert.Contains(costs, w => w.StartsWith("the order is not measured in this unit", StringComparison.Ordinal));
        var bare = new Scene(As(Houses.HeronPoint with { Stove = null, Prices = [] }));
        var words = ServicesSheet.Of(bare).Concat(CostSheet.Of(bare)).SelectMany(d => d.Finish(1, 1, bare.Imprint, bare.Say).Texts()).Select(t => t.Words).ToArray();
        Assert.Contains(words, w => w.Contains("NOT CHECKED", StringComparison.Ordinal));
        Assert.DoesNotContain(words, w => w.Contains("USD", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(PaperSize.A4, UnitSystem.Metric)]
    [InlineData(PaperSize.Letter, UnitSystem.Imperial)]
    public void BlankSheets_HaveTheirWordsApart(PaperSize paper, UnitSystem units)
    {
        var sheets = BlankBook.Of(new PaperOptions(Papers.Date) { Paper = paper, Units = units });
        Assert.Empty(NothingTouchesTests.Faults(sheets));
        Assert.DoesNotContain(sheets.SelectMany(s => s.Texts()), t => t.Words.Contains('[') || t.Words.Contains('{'));
        Assert.Equal(sheets.Count, sheets.Select(s => s.Key).Distinct().Count());
    }
}
