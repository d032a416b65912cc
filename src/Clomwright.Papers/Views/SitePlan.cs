using Clomwright.Building;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Papers.Sheets;

namespace Clomwright.Papers.Views;

/// <summary>The house on its plot, north up: boundaries and distances as typed, blanks to fill in where none are.</summary>
internal static class SitePlan
{
    private const int Steps = 160;

    /// <summary>Length that stands for an unknown distance, m.</summary>
    private const double Unknown = 5;

    private static readonly double[] Sides = [0, Math.PI / 2, Math.PI, 3 * Math.PI / 2];

    public static Board Of(HouseGeometry geometry, double k, Wording say)
    {
        var pen = new PlanPen(geometry, k);
        var board = new Board();
        var centre = geometry.Curve.Centre;
        var plot = geometry.House.Site.Plot;
        var wall = Ring(pen.Outside);
        board.Add(new Group("house", [new Fill(wall, Tone.Paper), new Hatch(wall, 45, 2, new Pen(Weight.Hair)), new Stroke(wall, new Pen(Weight.Heavy))]));
        if (geometry.House.Roof is { } roof)
        {
            board.Add(new Group("eave", [new Stroke(Ring(geometry.Wall.OutsideOffset(geometry.Wall.Top.Metres) + roof.Eave.Metres), new Pen(Weight.Thin, Dash.Chain))]));
        }

        var taken = new Taken(PaperBox.Around(pen.At(centre)).Inset(-100_000));
        taken.Keep(board.Marks.Bounds());
        Boundaries(board, pen, centre, plot, taken, say);
        foreach (var feature in plot?.Features ?? [])
        {
            var at = pen.At(centre + feature.Distance.Metres * Toward(feature.Bearing.Radians));
            board.Add(new Fill(Outline.Circle(at, 1.1)));
            taken.Keep(PaperBox.Around(at).Inset(-1.2));
            var words = Wording.Dotted(feature.Name, say.Say("site-plan.kind-" + feature.Kind.ToString().ToLowerInvariant()), say.One(feature.Distance));
            if (taken.Place(Taken.Round(words, at, Styles.Small, 2)) is { } label)
            {
                board.Add(label);
            }
        }

        if (plot?.Downhill is { } downhill)
        {
            var reach = geometry.EvenWidth / 2 + (geometry.House.Roof?.Eave.Metres ?? 0) + 1;
            var from = centre + reach * Toward(downhill.Radians);
            var to = centre + (reach + 2.5) * Toward(downhill.Radians);
            board.Add(new Arrow(pen.At(from), pen.At(to), new Pen(Weight.Medium)));
            if (taken.Place(Taken.Round(Wording.Dotted(say.Say("site-plan.downhill"), plot.Fall is { } fall ? say.One(fall) : ""), pen.At(to), Styles.Small, 2)) is { } label)
            {
                board.Add(label);
            }
        }

        PlanMarks.North(board, board.Marks.Bounds().Inset(-9));
        return board;

        Outline Ring(double offset) => Outline.Polygon(pen.Run(0, pen.Length, offset, Steps).SkipLast(1));
    }

    /// <summary>Lines of the plot with the distance from the outside face of the wall; with none typed, four blanks.</summary>
    private static void Boundaries(Board board, PlanPen pen, PlanPoint centre, Plot? plot, Taken taken, Wording say)
    {
        (string Name, double Bearing, double? Distance)[] lines = plot is { Boundaries.Count: > 0 }
            ? [.. plot.Boundaries.Select(b => (b.Name, b.Bearing.Radians, (double?)b.Distance.Metres))]
            : [.. Sides.Select(s => (say.Say("site-plan.boundary"), s, (double?)null))];
        List<(string, PaperPoint)> labels = [];
        foreach (var (name, bearing, distance) in lines)
        {
            var toward = Toward(bearing);
            var face = Face(pen, centre, toward);
            var away = distance ?? face + Unknown;
            var (foot, aside) = (centre + away * toward, new PlanPoint(toward.North, -toward.East));
            var (a, b) = Ends(lines, bearing, away, centre, aside, foot);
            board.Add(new Stroke(Outline.Line(pen.At(a), pen.At(b)), new Pen(Weight.Medium, distance is null ? Dash.Dotted : Dash.Chain)));
            var (from, to) = (pen.At(centre + face * toward), pen.At(foot));
            board.Add(new Stroke(Outline.Line(from, to), new Pen(Weight.Thin, distance is null ? Dash.Dotted : Dash.Solid)));
            var words = distance is null ? say.Say("site-plan.blank") : say.Both(Evidence.Length.Nearest(away - face));
            labels.AddRange([(words, 0.5 * (from + to)), (name, to)]);
            Keep(taken, from, to);
            Keep(taken, pen.At(a), pen.At(b));
        }

        foreach (var (words, at) in labels)
        {
            if (taken.Place(Taken.Round(words, at, Styles.Small, 1.5)) is { } label)
            {
                board.Add(label);
            }
        }
    }

    /// <summary>No label stands on a line.</summary>
    private static void Keep(Taken taken, PaperPoint from, PaperPoint to)
    {
        var steps = (int)Math.Clamp((to - from).Norm, 2, 400);
        for (var i = 0; i <= steps; i++)
        {
            var at = from + (double)i / steps * (to - from);
            taken.Keep(PaperBox.At(at.X - 0.4, at.Y - 0.4, 0.8, 0.8));
        }
    }

    /// <summary>A boundary runs to its neighbours; where none meets it, as far as it is away.</summary>
    private static (PlanPoint, PlanPoint) Ends((string Name, double Bearing, double? Distance)[] lines, double bearing, double away, PlanPoint centre, PlanPoint aside, PlanPoint foot)
    {
        var reach = 1.5 * lines.Max(l => l.Distance ?? away) + 3;
        var (low, high) = (-reach, reach);
        foreach (var other in lines.Where(l => l.Distance is not null && Math.Abs(Math.Sin(l.Bearing - bearing)) > 0.1))
        {
            var toward = Toward(other.Bearing);
            var slope = aside.Dot(toward);
            var t = (other.Distance!.Value - (foot - centre).Dot(toward)) / slope;
            (low, high) = slope > 0 ? (low, Math.Min(high, Math.Max(t, 0))) : (Math.Max(low, Math.Min(t, 0)), high);
        }

        return (foot + low * aside, foot + high * aside);
    }

    /// <summary>How far the outside face reaches toward a bearing.</summary>
    private static double Face(PlanPen pen, PlanPoint centre, PlanPoint toward) =>
        Enumerable.Range(0, 720).Max(i => (pen.Geometry.Curve.At(i * pen.Length / 720, pen.Outside) - centre).Dot(toward));

    private static PlanPoint Toward(double bearing) => Math.SinCos(bearing) is var (sin, cos) ? new PlanPoint(sin, cos) : default;
}
