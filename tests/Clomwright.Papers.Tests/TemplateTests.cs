using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Sheets;
using Clomwright.Papers.Writers;
using Clomwright.Testing;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Core;

namespace Clomwright.Papers.Tests;

/// <summary>Templates measured in the written PDF, by the vectors that an independent reader finds in it. 0.05 mm is finer than a printed line, and a tenth of what a saw is asked for.</summary>
public sealed class TemplateTests
{
    private const double MmPerPoint = 25.4 / 72;
    private const double Finer = 0.05;

    private static readonly Lazy<Pages> HeronPoint = new(() => Pages.Of(Papers.HeronPoint));

    // Independent: the oval's inside face is the ellipse of 15 by 12 ft of the house file; the outside one lies (14 in + 5 % of 90 in) square to it. Distances to the ellipse are searched for here, point by point.
    [Theory]
    [InlineData("template-curve-inside-", 4, 0)]
    [InlineData("template-curve-outside-", 5, 18.5 * 25.4)]
    public void CurveBoards_OfAnOval_LieOnTheEllipse(string key, int bays, double offset)
    {
        var (a, b) = (7.5 * 304.8, 6 * 304.8);
        Assert.Equal(bays, HeronPoint.Value.Keys.Count(k => k.StartsWith(key, StringComparison.Ordinal) && k[key.Length..].All(char.IsDigit)));
        var quarter = Arc(a, b, Math.PI / 2);
        for (var bay = 0; bay < bays; bay++)
        {
            // Bays are even shares of a quarter of the inside face, from the end of the long axis.
            var (from, to) = (At(a, b, quarter * bay / bays, offset), At(a, b, quarter * (bay + 1) / bays, offset));
            var drawn = HeronPoint.Value.Edge($"{key}{bay + 1}");
            var (start, end) = (drawn[0], drawn[^1]);
            var chord = (to - from).Norm;
            Assert.Equal(chord, (end - start).Norm, Finer);
            foreach (var p in drawn)
            {
                // Along the drawn chord from its start and square to it upward on paper, which is outward; the same from the chord of the ellipse.
                var (x, y) = (((p.X - start.X) * (end.X - start.X) + (p.Y - start.Y) * (end.Y - start.Y)) / (end - start).Norm, ((p.Y - start.Y) * (start.X - end.X) + (p.X - start.X) * (end.Y - start.Y)) / (end - start).Norm);
                var along = 1 / chord * (to - from);
                var outward = new PaperPoint(-along.Y, along.X);
                var place = from + x * along + (outward.X * from.X + outward.Y * from.Y > 0 ? y : -y) * outward;
                Assert.Equal(offset, FromEllipse(a, b, place), Finer);
            }
        }
    }

    // Analytic: a circle of 6 m inside, and 14 in outside it. Ends and every point between lie on the radius.
    [Theory]
    [InlineData("template-curve-inside", 3000)]
    [InlineData("template-curve-outside", 3000 + 14 * 25.4)]
    public void CurveBoards_OfACircle_LieOnIt(string key, double radius)
    {
        var drawn = Pages.Of(Papers.Set(Houses.Round(Length.FromMillimetres(6000)), PaperSize.Letter), key).Edge(key);
        var (start, end) = (drawn[0], drawn[^1]);
        var centre = new PaperPoint((start.X + end.X) / 2, start.Y + Math.Sqrt(radius * radius - (end.X - start.X) * (end.X - start.X) / 4));
        Assert.InRange((end - start).Norm, 800, 1200);
        Assert.All(drawn, p => Assert.Equal(radius, (p - centre).Norm, Finer));
    }

    // Analytic: 5 % over the 3 ft of a level is 45.72 mm; the other side is straight up.
    [Fact]
    public void TaperWedge_LeansAsTheWall()
    {
        var corners = HeronPoint.Value.Edge("template-taper-outside");
        var (top, bottom) = (corners.Min(p => p.Y), corners.Max(p => p.Y));
        double Wide(double y) => corners.Where(p => Math.Abs(p.Y - y) < 0.01).Max(p => p.X) - corners.Where(p => Math.Abs(p.Y - y) < 0.01).Min(p => p.X);
        Assert.Equal(914.4, bottom - top, Finer);
        Assert.Equal(45.72, Wide(top) - Wide(bottom), Finer);
    }

    // Given: heights of the house file, from the finished floor, in mm; the pole has them all, true to size.
    [Fact]
    public void StoreyPole_HasTheHeightsOfTheHouse()
    {
        var marks = HeronPoint.Value.Edge("template-storey-pole").Select(p => p.Y).Distinct().ToArray();
        var top = marks.Min();
        foreach (var inches in (double[])[-12, 0, 8, 20, 34, 36, 38, 48, 60, 68, 78, 80, 98])
        {
            Assert.Contains(marks, y => Math.Abs(y - top - (106 - inches) * 25.4) < Finer);
        }
    }

    // Analytic: 30 in wide and 12 in high, so an arc of radius (15^2 + 12^2) / 24 in; the niche of 12 in is a half circle.
    [Theory]
    [InlineData("template-form-west-arch", 15, 12)]
    [InlineData("template-form-lamp", 6, 6)]
    [InlineData("template-form-moon", 8, 8)]
    public void Forms_AreArcsOfTheirCircle(string key, double half, double rise)
    {
        var radius = (half * half + rise * rise) / (2 * rise) * 25.4;
        var drawn = HeronPoint.Value.Edge(key);
        var crown = drawn[0];
        var arc = drawn.Where(p => p.Y <= crown.Y + rise * 25.4 + 1e-6).ToArray();
        Assert.All(arc, p => Assert.Equal(radius, (p - new PaperPoint(crown.X, crown.Y + radius)).Norm, Finer));
        Assert.Equal(half * 25.4, arc.Max(p => p.X) - crown.X, Finer);
        Assert.Equal(rise * 25.4, arc.Max(p => p.Y) - crown.Y, Finer);
    }

    // Analytic: going once round, the pieces turn by a whole turn, so all mitres together are half of one. 0.05 degrees each is what makes two of them alike.
    [Fact]
    public void Mitres_AddUpToHalfATurn()
    {
        var pieces = Papers.HeronPoint.WallTop!.BeamPieces;
        var sum = 0.0;
        foreach (var (key, i) in HeronPoint.Value.Keys.Where(k => k.StartsWith("template-mitre-", StringComparison.Ordinal) && k.Count(c => c == '-') == 2).Select((k, i) => (k, i)))
        {
            var line = HeronPoint.Value.Edge(key);
            Assert.Equal(10 * 25.4, line.Max(p => p.Y) - line.Min(p => p.Y), Finer);
            sum += TemplateBook.All(new Scene(Papers.HeronPoint)).Single(t => t.Key == key["template-".Length..]).Pieces * Math.Atan2(line.Max(p => p.X) - line.Min(p => p.X), 254) * 180 / Math.PI;
        }

        Assert.Equal(180, sum, 0.05 * pieces.Count);
    }

    // Property of every tile: its check square is 100 mm both ways, and neighbours have the template at the same distance from the crosses that they share.
    [Fact]
    public void EveryTile_HasItsSquareAndSharesItsCrosses()
    {
        var pages = HeronPoint.Value;
        for (var i = 0; i < pages.Keys.Count; i++)
        {
            if (pages.Keys[i].StartsWith("template-", StringComparison.Ordinal))
            {
                Assert.Contains(pages.Shapes[i], s => Math.Abs(Wide(s) - 100) < Finer && Math.Abs(High(s) - 100) < Finer && s.Length == 4);
            }
        }

        var (one, two) = (pages.Index("template-curve-inside-1"), pages.Index("template-curve-inside-1-2"));
        double[] Crosses(int page) => [.. pages.Shapes[page].Where(s => s.Length == 2 && Math.Abs(Wide(s)) < 1e-6 && Math.Abs(High(s) - 8) < 0.01).Select(s => s[0].X).Distinct().Order()];
        Assert.Equal(Crosses(one)[^1] - pages.EdgeOn(one)[0].X, Crosses(two)[0] - pages.EdgeOn(two)[0].X, Finer);
    }

    [Theory]
    [InlineData(PaperSize.A4, UnitSystem.Metric)]
    [InlineData(PaperSize.Letter, UnitSystem.Imperial)]
    public void Templates_KeepTextApartAndInside(PaperSize paper, UnitSystem units) =>
        Assert.Empty(NothingTouchesTests.Faults(TemplateBook.Of(Papers.HeronPoint with { Options = new PaperOptions(Papers.Date) { Paper = paper, Units = units } })));

    [Fact]
    public void Templates_OfAnyHouse_KeepTextApartAndInside() =>
        Houses.LongestNames.ForAll(house => Assert.Empty(NothingTouchesTests.Faults(TemplateBook.Of(Papers.Set(house, PaperSize.Letter)))), iter: Counts.Of(1, 10), threads: 1);

    private static double Wide(PaperPoint[] s) => s.Max(p => p.X) - s.Min(p => p.X);

    private static double High(PaperPoint[] s) => s.Max(p => p.Y) - s.Min(p => p.Y);

    /// <summary>Arc of an ellipse from the end of its long axis, by Simpson's rule.</summary>
    private static double Arc(double a, double b, double to)
    {
        const int n = 2000;
        double Speed(double t) => Math.Sqrt(a * a * Math.Sin(t) * Math.Sin(t) + b * b * Math.Cos(t) * Math.Cos(t));
        return to / n / 3 * Enumerable.Range(0, n + 1).Sum(i => (i is 0 or n ? 1 : i % 2 == 1 ? 4 : 2) * Speed(to * i / n));
    }

    private static PaperPoint At(double a, double b, double arc, double offset)
    {
        var (low, high) = (0.0, Math.PI / 2);
        for (var i = 0; i < 50; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = Arc(a, b, middle) < arc ? (middle, high) : (low, middle);
        }

        var (x, y) = (Math.Cos(low) / a, Math.Sin(low) / b);
        var norm = Math.Sqrt(x * x + y * y);
        return new PaperPoint(a * Math.Cos(low) + offset * x / norm, b * Math.Sin(low) + offset * y / norm);
    }

    /// <summary>Distance from an ellipse, positive outside, by golden section over its angle.</summary>
    private static double FromEllipse(double a, double b, PaperPoint p)
    {
        double Away(double t) => (new PaperPoint(a * Math.Cos(t), b * Math.Sin(t)) - p).Norm;
        var middle = Math.Atan2(p.Y / b, p.X / a);
        var (low, high) = (middle - 0.3, middle + 0.3);
        for (var i = 0; i < 60; i++)
        {
            var (m, n) = (low + 0.381966 * (high - low), low + 0.618034 * (high - low));
            (low, high) = Away(m) < Away(n) ? (low, n) : (m, high);
        }

        return Away(low) * Math.Sign(p.X * p.X / (a * a) + p.Y * p.Y / (b * b) - 1 + 1e-12);
    }

    /// <summary>The pages of the templates as an independent reader finds them: paths as points, mm from the top left, curves in eighths.</summary>
    private sealed record Pages(IReadOnlyList<string> Keys, IReadOnlyList<IReadOnlyList<PaperPoint[]>> Shapes, IReadOnlyList<IReadOnlyList<PaperPoint[]>> Heavy)
    {
        public static Pages Of(PaperSet set, string only = "")
        {
            Sheet[] sheets = [.. TemplateBook.Of(set).Where(s => s.Key.StartsWith(only, StringComparison.Ordinal))];
            using var document = PdfDocument.Open(PdfWriter.Write(sheets, "templates", Papers.Date));
            List<IReadOnlyList<PaperPoint[]>> shapes = [], heavy = [];
            foreach (var page in document.GetPages())
            {
                var paths = page.Paths.Select(p => (p.LineWidth, Points: p.SelectMany(s => Points(s, page.Height)).ToArray())).Where(p => p.Points.Length > 0).ToArray();
                shapes.Add([.. paths.Select(p => p.Points)]);
                heavy.Add([.. paths.Where(p => Math.Abs((double)p.LineWidth * MmPerPoint - 0.6) < 0.01).Select(p => p.Points)]);
            }

            return new Pages([.. sheets.Select(s => s.Key)], shapes, heavy);
        }

        public int Index(string key) => Keys.Select((k, i) => (k, i)).First(p => p.k == key).i;

        public PaperPoint[] Edge(string key) => EdgeOn(Index(key));

        /// <summary>The one heavy line, however many pieces it has.</summary>
        public PaperPoint[] EdgeOn(int page) => [.. Heavy[page].SelectMany(p => p)];

        private static IEnumerable<PaperPoint> Points(PdfSubpath path, double height)
        {
            PaperPoint P(PdfPoint p) => new(p.X * MmPerPoint, (height - p.Y) * MmPerPoint);
            foreach (var command in path.Commands)
            {
                switch (command)
                {
                    case PdfSubpath.Move m:
                        yield return P(m.Location);
                        break;
                    case PdfSubpath.Line l:
                        yield return P(l.To);
                        break;
                    case PdfSubpath.CubicBezierCurve c:
                        for (var i = 1; i <= 8; i++)
                        {
                            var (t, u) = (i / 8.0, 1 - i / 8.0);
                            yield return u * u * u * P(c.StartPoint) + 3 * u * u * t * P(c.FirstControlPoint) + 3 * u * t * t * P(c.SecondControlPoint) + t * t * t * P(c.EndPoint);
                        }

                        break;
                }
            }
        }
    }
}
