using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Sheets;
using Clomwright.Testing;

namespace Clomwright.Papers.Tests;

/// <summary>What the office set promises on every sheet, and on the first page of the note.</summary>
public sealed class OfficeTests
{
    // Whatever falls short or is not checked is named on page one of the note, by the title of its rule.
    [Fact]
    public void EveryOpenFinding_IsNamedOnPageOneOfTheNote()
    {
        NamesWhatIsOpen(Papers.HeronPoint);
        NamesWhatIsOpen(Papers.HeronPoint with { Options = Papers.HeronPoint.Options with { Paper = PaperSize.Letter } });
    }

    // Found by the long runs of random houses: up to a hundred rules open, and Letter is short; they ran over to page two.
    [Theory]
    [InlineData(20261126, 340)]
    [InlineData(20261126, 364)]
    [InlineData(20261128, 290)]
    public void AHundredOpenFindings_AreNamedOnPageOneOfTheNote(uint seed, int number) =>
        NamesWhatIsOpen(Papers.Set(Drawn.One(Houses.LongestNames, seed, number), PaperSize.Letter));

    /// <summary>Random houses ask it of their papers too: <see cref="NothingTouchesTests"/>.</summary>
    internal static void NamesWhatIsOpen(PaperSet set)
    {
        var scene = new Scene(set) { Office = true };
        var page = NoteSheet.Of(scene).First().Finish(1, 1, scene.Imprint, scene.Say);
        var words = page.Texts().Select(t => t.Words).ToArray();
        var open = set.Findings.Where(f => f.Verdict is Verdict.FallsShort or Verdict.NotChecked).Select(f => scene.Say.Say(f.Rule.Title)).Distinct().ToArray();
        Assert.All(open, title => Assert.Contains(words, w => w.StartsWith("– " + title[..Math.Min(24, title.Length)], StringComparison.Ordinal)));
        Assert.True(open.Length == 0 || words.Length > open.Length);
    }

    // Property: each sheet has its own number, an empty box for the seal, and stands in the list of the title sheet; the box stays empty.
    [Fact]
    public void EveryOfficeSheet_HasANumberAndAnEmptyBoxForTheSeal()
    {
        var sheets = Papers.HeronPointOffice;
        Assert.Equal(sheets.Count, sheets.Select(s => s.Number).Distinct().Count());
        Assert.Equal("title-sheet", sheets[0].Key);
        var index = string.Join(' ', sheets[0].Texts().Select(t => t.Words));
        Assert.All(sheets.Skip(1).Where(s => !s.Key.EndsWith("-2", StringComparison.Ordinal) && !char.IsDigit(s.Key[^1])), s => Assert.Contains(s.Number, index, StringComparison.Ordinal));
        Assert.All(sheets, sheet =>
        {
            var box = Assert.Single(sheet.Marks.OfType<Group>(), g => g.Id == "seal").Marks.Bounds();
            Assert.True(box is { Width: > 37.9, Height: > 37.9 } && box.Bottom < sheet.Height);
            Assert.DoesNotContain(sheet.Marks.Where(m => m is not Group { Id: "seal" }).All().OfType<Text>(), t => t.Bounds.Overlaps(box));
        });
        Assert.Empty(sheets.Select(s => s.Key).Intersect(Papers.HeronPointSite.Select(s => s.Key)));
    }

    // Analytic: the wall on the south elevation is as wide on paper as its faces stand apart, from the largest and smallest reach of the outside face of the stem. 0.05 mm is finer than a printed line.
    [Fact]
    public void TheSouthElevation_IsToScale()
    {
        var set = Papers.HeronPoint;
        var sheet = Papers.HeronPointOffice.Single(s => s.Key == "elevations");
        var scale = double.Parse(sheet.Texts().Select(t => t.Words).First(w => w.StartsWith("1:", StringComparison.Ordinal))[2..].Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture);
        var geometry = set.Geometry;
        var stem = geometry.House.Stem.Width.Metres - (geometry.House.Stem.Width.Metres - geometry.Wall.OutsideOffset(geometry.Wall.Base.Metres)) / 2;
        var reach = Enumerable.Range(0, 20_000).Select(i => geometry.Curve.At(i * geometry.Curve.Length / 20_000, stem).East).ToArray();
        var drawn = sheet.Marks.All().OfType<Group>().Single(g => g.Id == "elevation-south-wall").Marks.Bounds();
        Assert.Equal(1000 / scale * (reach.Max() - reach.Min()), drawn.Width, 0.05);
    }

    // Property: what the office states stands on the criteria sheet as it was written; what nobody wrote is NOT GIVEN, so five more words are five fewer of those.
    [Fact]
    public void Criteria_AreAsWritten_OrNotGiven()
    {
        static string[] Words(PaperSet set)
        {
            var scene = new Scene(set);
            return [.. CriteriaSheet.Of(scene).SelectMany(d => d.Finish(1, 1, scene.Imprint, scene.Say).Texts()).Select(t => t.Words)];
        }

        var set = Papers.HeronPoint;
        var given = set.House with { Site = set.House.Site with { FloodZone = "AE 12", Termites = "very heavy", Weathering = "severe", EnergyZone = "4C", IceBarrier = "asked" } };
        var (bare, full) = (Words(set), Words(set with { Geometry = set.Geometry with { House = given } }));
        Assert.Equal(5, bare.Count(w => w == "NOT GIVEN") - full.Count(w => w == "NOT GIVEN"));
        Assert.All((string[])["AE 12", "very heavy", "severe", "4C", "asked"], w => Assert.Single(full, w));
    }
}
