using System.Text.RegularExpressions;
using System.Xml.Linq;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Views;
using Clomwright.Papers.Writers;
using Clomwright.Testing;
using UglyToad.PdfPig;

namespace Clomwright.Papers.Tests;

public sealed partial class WriterTests
{
    private const double MmPerPoint = 25.4 / 72;

    // Frozen text, read as a diff and looked at as a picture; not a check of what is right. The number of the page is left out, so that
    // a new sheet elsewhere changes nothing here. CLOM_WRITE_DOCS=1 writes it anew.
    [Theory]
    [InlineData("plan")]
    [InlineData("unrolled-outside")]
    [InlineData("section")]
    [InlineData("foundation")]
    [InlineData("drain")]
    [InlineData("lift-1")]
    [InlineData("opening-door")]
    [InlineData("drying")]
    [InlineData("weather-day")]
    [InlineData("mix-card")]
    [InlineData("test-register")]
    [InlineData("order-earth")]
    [InlineData("order-stone")]
    [InlineData("order-straw")]
    [InlineData("pocket-card")]
    [InlineData("roof-plan")]
    [InlineData("raising")]
    [InlineData("roof-loading")]
    public void Svg_OfASheet_IsTheKeptText(string key)
    {
        var path = Path.Combine(Counts.Root, "tests", "Clomwright.Papers.Tests", "Kept", key + ".svg");
        var text = PageNumber().Replace(SvgWriter.Write(Papers.HeronPointBook.Single(s => s.Key == key)), "");
        if (Environment.GetEnvironmentVariable("CLOM_WRITE_DOCS") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, text);
        }

        Assert.True(File.Exists(path), $"{path} is missing; CLOM_WRITE_DOCS=1 writes it.");
        Assert.Equal(File.ReadAllText(path).ReplaceLineEndings("\n"), text);
    }

    [GeneratedRegex("""<text [^>]*y="21\.5"[^>]*text-anchor="end"[^>]*>(of )?\d+</text>\n""")]
    private static partial Regex PageNumber();

    // Property: every sheet is well-formed, ids are unique, and two books of the same house are the same text.
    [Fact]
    public void Svg_OfEverySheet_IsWellFormedWithUniqueIds_AndTheSameEachTime()
    {
        var again = Book.Of(Papers.Set(Houses.HeronPoint, PaperSize.A4));
        foreach (var (sheet, other) in Papers.HeronPointBook.Zip(again))
        {
            var text = SvgWriter.Write(sheet);
            Assert.Equal(text, SvgWriter.Write(other));
            var ids = XDocument.Parse(text).Descendants().Attributes("id").Select(a => a.Value).ToArray();
            Assert.Equal(ids.Length, ids.Distinct().Count());
        }
    }

    [Fact]
    public void Svg_OfTheUnrolledWall_NamesEveryOpeningPierAndNiche()
    {
        var geometry = Papers.HeronPoint.Geometry;
        var drawing = UnrolledWall.Of(geometry, new WallView(Face.Inside, 25));
        var ids = XDocument.Parse(SvgWriter.Write(drawing.Marks, drawing.View, "wall")).Descendants().Attributes("id").Select(a => a.Value).ToHashSet();
        var expected = geometry.Openings.Select(o => Ids.Opening(o.Opening.Name)).Concat(geometry.Piers.Select(p => Ids.Pier(p.Address))).Concat(geometry.Niches.Select(n => Ids.Niche(n.Niche.Name))).Concat(geometry.Embeds.Select(e => Ids.Embed(e.Address)));
        Assert.Empty(expected.Except(ids));
    }

    // Published: ISO 216 sizes of A4 and A5, ANSI/ASME Y14.1 of Letter. 0.01 mm is the rounding of the file's own numbers.
    [Theory]
    [InlineData(PaperSize.A4, 210, 297, 148, 210)]
    [InlineData(PaperSize.Letter, 215.9, 279.4, 139.7, 215.9)]
    public void Pdf_Pages_HaveTheSizeOfThePaper(PaperSize paper, double width, double height, double pocketWidth, double pocketHeight)
    {
        var book = Book.Site(Papers.On(paper));
        using var document = PdfDocument.Open(PdfWriter.Write([.. book], "Heron Point", Papers.Date));
        var (lift, pocket) = (document.GetPage(IndexOf(book, "lift-1")), document.GetPage(IndexOf(book, "pocket-card")));
        Assert.Equal((width, height), (Math.Round(lift.Width * MmPerPoint, 2), Math.Round(lift.Height * MmPerPoint, 2)));
        Assert.Equal((pocketWidth, pocketHeight), (Math.Round(pocket.Width * MmPerPoint, 2), Math.Round(pocket.Height * MmPerPoint, 2)));
    }

    [Fact]
    public void Pdf_OfTheSameSheets_IsTheSameBytes()
    {
        Sheet[] sheets = [.. Papers.HeronPointBook];
        Assert.Equal(PdfWriter.Write(sheets, "Heron Point", Papers.Date), PdfWriter.Write(sheets, "Heron Point", Papers.Date));
        Assert.NotEqual(PdfWriter.Write(sheets, "Heron Point", Papers.Date), PdfWriter.Write(sheets[..^1], "Heron Point", Papers.Date));
    }

    [Fact]
    public void Pdf_CarriesTitleBookmarksAndSelectableText()
    {
        using var document = PdfDocument.Open(PdfWriter.Write([.. Papers.HeronPointBook], "Heron Point", Papers.Date));
        Assert.Equal("Heron Point", document.Information.Title);
        Assert.True(document.TryGetBookmarks(out var bookmarks));
        Assert.Equal(Papers.HeronPointBook.Select(s => s.Title), bookmarks.GetNodes().Select(n => n.Title));
        Assert.Contains("Lift 1 of 8", string.Join(' ', document.GetPage(IndexOf(Papers.HeronPointBook, "lift-1")).GetWords().Select(w => w.Text)), StringComparison.Ordinal);
    }

    // Analytic: a line of 100 mm in the display list is 100 mm between the ends of the vector in the written file. 0.05 mm is finer than a printed line.
    [Fact]
    public void Pdf_Vectors_AreTrueToSize()
    {
        var sheet = new Sheet("one", "one", 210, 297, [new Stroke(Outline.Line(20, 30, 120, 30), new Pen(Weight.Thin)), new Stroke(Outline.Line(50, 50, 50, 250), new Pen(Weight.Heavy))]);
        using var document = PdfDocument.Open(PdfWriter.Write([sheet], "one", Papers.Date));
        var boxes = document.GetPage(1).Paths.Select(p => p.GetBoundingRectangle()!.Value).ToArray();
        Assert.Equal(100, boxes.Max(b => b.Width) * MmPerPoint, 0.05);
        Assert.Equal(200, boxes.Max(b => b.Height) * MmPerPoint, 0.05);
    }

    private static int IndexOf(IReadOnlyList<Sheet> book, string key) => book.Select((s, i) => (s.Key, i)).First(p => p.Key == key).i + 1;
}
