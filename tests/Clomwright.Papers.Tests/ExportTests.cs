using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Geometry.Solids;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Exports;
using Clomwright.Papers.Views;
using Clomwright.Papers.Writers;
using Clomwright.Papers.Writers.Dxf;
using Clomwright.Rules;
using Clomwright.Testing;

namespace Clomwright.Papers.Tests;

/// <summary>Files for other programs, read by programs that had no part in writing them.</summary>
public sealed partial class ExportTests : IDisposable
{
    /// <summary>Published: the yard of 0.9144 m (1959).</summary>
    private const double CubicYard = 0.9144 * 0.9144 * 0.9144;

    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("clom-export-");

    public void Dispose() => folder.Delete(recursive: true);

    // Independent: LibreOffice opens the workbook and works its formulas out anew; sums equal the integrals of the geometry, counts equal the findings, and a number changed by hand changes the sum. 1e-9 is what decimal text keeps.
    [Fact]
    public void Workbook_RecalculatedByLibreOffice_GivesOurTotals()
    {
        var set = Papers.HeronPoint;
        var bytes = XlsxWriter.Write(HouseTables.Of(set));
        Assert.Equal(bytes, XlsxWriter.Write(HouseTables.Of(set)));
        var (whole, changed) = (Tool.Own(folder, "whole.xlsx", bytes), Tool.Own(folder, "changed.xlsx", Changed(bytes)));
        Tool.Run("soffice", "-env:UserInstallation=file://" + folder.FullName + "/profile", "--headless", "--convert-to", "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,false,false,false,false,-1", "--outdir", folder.FullName, whole, changed);
        Assert.Equal(set.Geometry.Measures.NetVolume / CubicYard, Last("whole-Lifts.csv", 3), 1e-9 * set.Geometry.Measures.NetVolume);
        Assert.Equal(set.Quantities.Batches!.Value, Last("whole-Lifts.csv", 5), 1e-9 * set.Quantities.Batches.Value);
        Assert.Equal(set.House.Openings.Sum(o => o.Width.Metres * o.Height.Metres) / (0.3048 * 0.3048), Last("whole-Openings.csv", 8), 1e-9);
        Assert.Equal(set.Geometry.Measures.NetVolume / CubicYard + 1000, Last("changed-Lifts.csv", 3), 1e-6);
        var tally = Tally.Of(set.Findings);
        var counted = Lines("whole-Findings counted.csv").Skip(1).Select(l => double.Parse(l.Split(',')[1].Trim('"'), CultureInfo.InvariantCulture)).ToArray();
        Assert.Equal([tally.Met, tally.Short, tally.NotChecked, tally.NeedsJudgement], counted[..4].Select(c => (int)c));
        Assert.Equal(set.Findings.Count, counted[^1]);
    }

    /// <summary>The same workbook with 1000 more in the net volume of the first lift.</summary>
    private static byte[] Changed(byte[] workbook)
    {
        using var file = new MemoryStream();
        file.Write(workbook);
        using (var archive = new ZipArchive(file, ZipArchiveMode.Update, leaveOpen: true))
        {
            var entry = archive.GetEntry("xl/worksheets/sheet1.xml")!;
            string text;
            using (var reader = new StreamReader(entry.Open()))
            {
                text = reader.ReadToEnd();
            }

            var (from, to) = (text.IndexOf("<c r=\"D2\"", StringComparison.Ordinal), text.IndexOf("<c r=\"E2\"", StringComparison.Ordinal));
            var cell = text[from..to];
            var value = cell[(cell.IndexOf("<v>", StringComparison.Ordinal) + 3)..cell.IndexOf("</v>", StringComparison.Ordinal)];
            var more = double.Parse(value, CultureInfo.InvariantCulture) + 1000;
            entry.Delete();
            using var writer = new StreamWriter(archive.CreateEntry("xl/worksheets/sheet1.xml").Open());
            writer.Write(WithoutSums().Replace(text[..from] + cell.Replace($"<v>{value}</v>", string.Create(CultureInfo.InvariantCulture, $"<v>{more:R}</v>"), StringComparison.Ordinal) + text[to..], "$1"));
        }

        return file.ToArray();
    }

    /// <summary>A reader that trusts the sums it finds would show the old ones: without them it has to work them out.</summary>
    [GeneratedRegex("(</f>)<v>[^<]*</v>")]
    private static partial Regex WithoutSums();

    private string[] Lines(string name) => File.ReadAllLines(Path.Combine(folder.FullName, name));

    private double Last(string name, int column) => double.Parse(Lines(name)[^1].Split(',')[column].Trim('"'), CultureInfo.InvariantCulture);

    // Independent: ezdxf opens and audits it, knows its units and layers, and finds a width of the unrolled wall at its place, as long as the arc of the face is. 0.01 mm.
    [Theory]
    [InlineData(UnitSystem.Imperial, 1, 25.4)]
    [InlineData(UnitSystem.Metric, 4, 1)]
    public void Drawings_ReadByEzdxf_AreSoundAndTrueToSize(UnitSystem units, int code, double perUnit)
    {
        var set = Papers.HeronPoint with { Options = Papers.HeronPoint.Options with { Units = units } };
        var drawings = HouseDrawings.Of(set);
        var text = DxfWriter.Write(drawings, units);
        Assert.Equal(text, DxfWriter.Write(HouseDrawings.Of(set), units));
        using var read = Read(text);
        var root = read.RootElement;
        Assert.Equal(("AC1021", code), (root.GetProperty("version").GetString(), root.GetProperty("units").GetInt32()));
        Assert.All((string[])["errors", "fixes", "layers"], key => Assert.Equal(0, root.GetProperty(key).GetArrayLength()));
        Assert.All(drawings, d => Assert.Contains(d.Title, root.GetProperty("words").EnumerateArray().Select(w => w.GetString())));
        var place = set.Geometry.Openings[1];
        var wanted = Ids.Opening(place.Opening.Name) + " width";
        var line = drawings[2].Marks.All().OfType<DimensionLine>().Single(d => d.Of == wanted);
        var (from, to) = (DxfWriter.Placed(drawings, 2, line.From, units), DxfWriter.Placed(drawings, 2, line.To, units));
        Assert.Equal(place.Inside.Width * 1000, (to - from).Norm * perUnit, 0.01);
        Assert.Contains(Polylines(root), l => l.Length == 2 && (l[0] - from).Norm * perUnit < 0.01 && (l[1] - to).Norm * perUnit < 0.01);
    }

    // Independent of the way the drawings take: read back by ezdxf, a corner of every opening without splay lies, on its layer, where its jamb meets the outside face, found by halving on the normals of the plan curve;
    // and the cob that a section cuts ends where the plan curve is as far away as the face's offset at that height. 0.01 mm.
    [Fact]
    public void ElevationsAndSections_ReadByEzdxf_AgreeWithGeometry()
    {
        const double hundredth = 0.01 / 25.4;
        var set = Papers.HeronPoint;
        var (geometry, drawings) = (set.Geometry, HouseDrawings.Of(set));
        using var read = Read(DxfWriter.Write(drawings, UnitSystem.Imperial));
        (string On, PaperPoint[] Points)[] lines = [.. read.RootElement.GetProperty("on").EnumerateArray().Select(l => l.GetString()!).Zip(Polylines(read.RootElement))];
        int Drawing(string title) => drawings.Select((d, i) => (d, i)).Single(d => d.d.Title == title).i;
        PaperPoint Placed(int drawing, double across, double height) => DxfWriter.Placed(drawings, drawing, drawings[drawing].PaperPerMetre * new PaperPoint(across, -height), UnitSystem.Imperial);
        var corners = 0;
        foreach (var (title, bearing) in ((string, double)[])[("North elevation", 0), ("East elevation", Math.PI / 2), ("South elevation", Math.PI), ("West elevation", 3 * Math.PI / 2)])
        {
            var (toward, drawing) = (new PlanPoint(Math.Sin(bearing), Math.Cos(bearing)), Drawing(title));
            foreach (var place in geometry.Openings.Where(o => o.Opening.Shape == OpeningShape.Rectangular && o.Normal.Dot(toward) > 0.5 && o.Sill > geometry.Wall.Base.Metres && o.Opening.Splay == default))
            {
                foreach (var side in (double[])[-0.5, 0.5])
                {
                    var jamb = place.Middle + side * place.Opening.Width.Metres * new PlanPoint(place.Normal.North, -place.Normal.East);
                    double low = 0, high = 2;
                    for (var i = 0; i < 60; i++)
                    {
                        var middle = (low + high) / 2;
                        (low, high) = FromCurve(geometry, jamb + middle * place.Normal, place.Station) < geometry.Wall.OutsideOffset(place.Sill) ? (middle, high) : (low, middle);
                    }

                    var corner = Placed(drawing, (jamb + low * place.Normal).Dot(new PlanPoint(-toward.North, toward.East)), place.Sill);
                    Assert.Contains(lines, l => l.On == "openings" && l.Points.Any(p => (p - corner).Norm < hundredth));
                    corners++;
                }
            }
        }

        Assert.True(corners >= 6, $"{corners} corners");
        var cut = Drawing("Section along the plan");
        var (wall, along) = (geometry.Wall, geometry.House.Plan.Bearing.Radians + Math.PI / 2);
        var right = new PlanPoint(-Math.Cos(along), Math.Sin(along));
        var top = Placed(cut, 0, wall.Top.Metres);
        var perMetre = Placed(cut, 1, 0).X - Placed(cut, 0, 0).X;
        double[] ends = [.. lines.Where(l => l.On == "cob").SelectMany(l => l.Points).Where(p => Math.Abs(p.Y - top.Y) < hundredth && Math.Abs(p.X - top.X) < 10 * perMetre).Select(p => (p.X - top.X) / perMetre)];
        Assert.Equal([-1, -1, 1, 1], ends.Select(e => Math.Round(e, 4)).Distinct().Select(Math.Sign).Order());
        Assert.All(ends, across =>
        {
            var foot = Enumerable.Range(0, 400).Select(i => i * geometry.Curve.Length / 400).MinBy(s => (geometry.Curve.At(s) - across * right).Norm);
            var away = FromCurve(geometry, across * right, foot);
            Assert.True(Math.Min(Math.Abs(away - wall.InsideOffset(wall.Top.Metres)), Math.Abs(away - wall.OutsideOffset(wall.Top.Metres))) < 1e-5, $"{across} m: {away} m from the plan curve");
        });
    }

    /// <summary>How far outside the plan curve a point lies, m.</summary>
    private static double FromCurve(HouseGeometry geometry, PlanPoint point, double near)
    {
        var foot = geometry.Curve.FootOf(point, near);
        return (point - geometry.Curve.At(foot)).Dot(geometry.Curve.Normal(foot));
    }

    // Analytic: 100 mm on paper at 20 mm for each metre are 5 m; of a line under white paper what it covers is gone, and a line within the paper is gone altogether.
    [Fact]
    public void Drawings_UnderWhitePaper_AreCut()
    {
        var pen = new Pen(Weight.Thin);
        TrueDrawing drawing = new("t", [new Stroke(Outline.Line(0, 10, 100, 10), pen), new Stroke(Outline.Line(41, 11, 59, 11), pen), new Fill(Outline.Rectangle(new(40, 5, 60, 15)), Tone.Paper), new Stroke(Outline.Line(45, 10, 55, 10), pen)], new(0, 0, 100, 20), 20);
        using var read = Read(DxfWriter.Write([drawing], UnitSystem.Metric));
        var lengths = Polylines(read.RootElement).Select(l => (l[^1] - l[0]).Norm).Order().ToArray();
        Assert.Equal([500, 2000, 2000], lengths.Select(l => Math.Round(l, 6)));
    }

    private static IEnumerable<PaperPoint[]> Polylines(JsonElement root) =>
        root.GetProperty("lines").EnumerateArray().Select(l => l.EnumerateArray().Select(p => new PaperPoint(p[0].GetDouble(), p[1].GetDouble())).ToArray());

    private JsonDocument Read(string dxf)
    {
        // Debian's own Python has Debian's ezdxf.
        Assert.SkipUnless(Tool.Try("/usr/bin/python3", "-c", "import ezdxf").Code == 0, "python3-ezdxf is not on this machine");
        return JsonDocument.Parse(Tool.Run("/usr/bin/python3", Path.Combine(Counts.Root, "tests", "oracles", "dxf_reader.py"), Tool.Own(folder, "house.dxf", Encoding.UTF8.GetBytes(dxf))));
    }

    // Independent: the validator of the Khronos Group finds nothing to say. Analytic: read back from the file, the wall's triangles enclose what the body encloses (to the 24 bits of the file's numbers), and up is y.
    [Fact]
    public void Bodies_PassTheValidator_AndEncloseWhatTheyEnclose()
    {
        var solids = HouseSolids.Of(Papers.HeronPoint.Geometry);
        var bytes = GlbWriter.Write("Heron Point", solids);
        Assert.Equal(bytes, GlbWriter.Write("Heron Point", solids));
        var length = BitConverter.ToInt32(bytes, 12);
        using var json = JsonDocument.Parse(bytes.AsMemory(20, length));
        var (root, numbers) = (json.RootElement, bytes.AsSpan(28 + length).ToArray());
        Assert.Equal(solids.Select(s => s.Name), root.GetProperty("nodes").EnumerateArray().Select(n => n.GetProperty("name").GetString()));
        var wall = solids[0];
        var (points, corners) = (View(root, 0), View(root, 2));
        double[] At(int corner) => [.. Enumerable.Range(0, 3).Select(i => (double)BitConverter.ToSingle(numbers, points + 12 * BitConverter.ToInt32(numbers, corners + 4 * corner) + 4 * i))];
        var sum = 0.0;
        for (var i = 0; i < wall.Triangles.Count; i += 3)
        {
            var (a, b, c) = (At(i), At(i + 1), At(i + 2));
            sum += a[0] * (b[1] * c[2] - b[2] * c[1]) + a[1] * (b[2] * c[0] - b[0] * c[2]) + a[2] * (b[0] * c[1] - b[1] * c[0]);
        }

        Assert.Equal(wall.Volume, sum / 6, 1e-4 * wall.Volume);
        var most = root.GetProperty("accessors")[0].GetProperty("max")[1].GetDouble();
        Assert.Equal(Papers.HeronPoint.Geometry.Wall.Top.Metres, most, 1e-6);

        var tools = Path.Combine(Counts.Root, "tests", "tools", "gltf");
        if (!Directory.Exists(Path.Combine(tools, "node_modules")))
        {
            Assert.SkipUnless(Tool.Try("npm", "ci", "--silent", "--no-audit", "--no-fund", "--prefix", tools).Code == 0, "npm could not fetch the validator");
        }

        using var said = JsonDocument.Parse(Tool.Run("node", Path.Combine(tools, "check.mjs"), Tool.Own(folder, "house.glb", bytes)));
        Assert.Equal((0, 0), (said.RootElement.GetProperty("numErrors").GetInt32(), said.RootElement.GetProperty("numWarnings").GetInt32()));
    }

    private static int View(JsonElement root, int accessor) =>
        root.GetProperty("bufferViews")[root.GetProperty("accessors")[accessor].GetProperty("bufferView").GetInt32()].GetProperty("byteOffset").GetInt32();

    // Published: RFC 4180, sections 2.5 to 2.7: fields with commas, quotes or line ends are quoted, quotes doubled. A name that a spreadsheet would run is words.
    [Fact]
    public void Csv_QuotesWhatHasToBe()
    {
        var table = new DataTable("t", "T", ["a, b", "c"], [[new DataCell.Words("two\nlines"), new DataCell.Number(0.1)], [new DataCell.Words("=1+1"), new DataCell.Formula("A{r}", -2)], [new DataCell.Words("7\" wide"), new DataCell.Empty()]]);
        Assert.Equal("\"a, b\",c\r\n\"two\nlines\",0.1\r\n'=1+1,-2\r\n\"7\"\" wide\",\r\n", CsvWriter.Write(table));
    }

    // Independent: qpdf finds nothing wrong, poppler finds the words, a section with the title for each sheet, and figures that are told. Under 10 MB.
    [Fact]
    public void Pdf_IsSoundTaggedAndReadable()
    {
        var book = Papers.HeronPointBook;
        var bytes = PdfWriter.Write([.. book], "Heron Point", Papers.Date);
        Assert.InRange(bytes.Length, 1, 10_000_000);
        var path = Tool.Own(folder, "house.pdf", bytes);
        Assert.Contains("No syntax or stream encoding errors found", Tool.Run("qpdf", "--check", path), StringComparison.Ordinal);
        Assert.Contains("Lift 1 of 8", Tool.Run("pdftotext", path, "-"), StringComparison.Ordinal);
        var told = Tool.Run("pdfinfo", "-struct-text", path).Split('\n');
        Assert.Equal(book.Count, told.Count(l => l.StartsWith("  Sect", StringComparison.Ordinal)));
        Assert.Equal(book.Count, told.Count(l => l.Trim() is "H1 (block)"));
        Assert.Contains("\"What the rules say \"", told.Select(l => l.Trim()));
        Assert.All(book.SelectMany(s => s.Marks.All()).OfType<Told>().Where(t => t.As == Telling.Figure), f => Assert.Contains("Drawing of the sheet", f.Words, StringComparison.Ordinal));
    }

    // Property: whatever text stands within the frame of a sheet is told to somebody who cannot see it.
    [Fact]
    public void EveryWordWithinAFrame_IsTold()
    {
        foreach (var sheet in Papers.HeronPointBook)
        {
            var (top, bottom) = (29, sheet.Height - 50);
            Assert.All(sheet.Marks.Where(m => m is not Told).All().OfType<Text>().Where(t => t.Turn == 0 && t.At.X > 17), t => Assert.False(t.At.Y > top && t.At.Y < bottom, $"{sheet.Key}: {t.Words}"));
        }
    }
}
