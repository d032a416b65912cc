using System.Globalization;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Study;
using Clomwright.Study.Arrivals;

namespace Clomwright.Web.Scenes;

/// <summary>The ways to go on with a frame that came in another size, as the page shows them.</summary>
internal static class ArrivedSceneOf
{
    /// <summary>Wall shown on each side of all that is drawn of the opening, m.</summary>
    private const double Beside = 1.9;

    /// <summary>The scene.</summary>
    /// <param name="study">Of the house as it is drawn.</param>
    /// <param name="arrival">What was tried on it.</param>
    /// <param name="revision">Of that house.</param>
    /// <param name="today">The day, for the record of what came.</param>
    /// <param name="words">The language.</param>
    public static ArrivedScene Scene(HouseStudy study, Arrival arrival, long revision, DateOnly today, Phrasebook words)
    {
        var pen = new Pen(words, study.House.Units);
        var (name, middle) = (arrival.Drawn.Name, StandingOpening.All(study.Geometry).FirstOrDefault(o => o.Opening.Name == arrival.Drawn.Name)?.Station ?? 0);
        WayCard[] ways = [.. arrival.Ways.Select(way => Card(way, middle, pen))];
        IEnumerable<IReadOnlyList<double[][]>> outlines = [.. ways.Select(way => way.View.Openings.FirstOrDefault(o => o.Name == name)?.Outlines ?? [])];
        double[] xs = [.. outlines.SelectMany(o => o).SelectMany(o => o).Select(p => p[0]).DefaultIfEmpty(ways[0].View.Length / 2)];
        return new ArrivedScene
        {
            Revision = revision,
            Today = today.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            Opening = name,
            Line = pen.Say("web.arrived.line", ("name", name), ("width", arrival.Drawn.Width), ("height", arrival.Drawn.Height), ("wide", arrival.Width), ("high", arrival.Height)),
            Came = pen.Say("web.arrived.came", ("wide", arrival.Width), ("high", arrival.Height)),
            Drawn = outlines.Last(),
            Across = [Pen.Round(Math.Max(0, xs.Min() - Beside)), Pen.Round(Math.Min(ways[0].View.Length, xs.Max() + Beside))],
            Bottom = Extent.Bottom(study.House),
            Top = Extent.Top(study.House),
            Ways = ways,
        };
    }

    private static WayCard Card(WayOn way, double middle, Pen pen)
    {
        var geometry = way.Study.Geometry;
        var openings = StandingOpening.All(geometry);
        return new WayCard
        {
            Kind = way.Kind.ToString().ToLowerInvariant(),
            What = pen.Say(way.What),
            Says = way.Kind == WayKind.Refuse ? pen.Say("web.arrived.stays") : way.BreaksNothing ? pen.Say("web.arrived.good") : pen.Say("web.arrived.worse", ("n", way.Breaks.Count)),
            Good = way.BreaksNothing,
            Wrong = way.Wrong is { } wrong ? pen.Say(wrong) : null,
            Breaks = Lines(way.Breaks, pen),
            Changed = Changed(way, pen),
            View = new FaceViewOf(geometry, Face.Inside, pen, middle).View(openings, []),
            Piers = [.. geometry.Piers.Select(pier => FromStudy.Line(pier, way.Study.Findings, pen))],
        };
    }

    private static IReadOnlyList<FindingLine> Lines(Sequence<Finding> findings, Pen pen) => [.. FindingLines.Of(findings, pen, _ => false).Select(f => f.Line)];

    /// <summary>Those whose words differ: a number that changed beyond what is written of it is no news.</summary>
    private static IReadOnlyList<FindingLine> Changed(WayOn way, Pen pen)
    {
        var before = way.Changed.ToLookup(c => c.Now, c => c.Before);
        return
        [
            .. FindingLines.Of(way.Changed.Select(c => c.Now).ToSequence(), pen, _ => false)
                .Select(f => (f.Line, Before: before[f.Finding].First() is { } was ? pen.Reason(was.Verdict) : null))
                .Where(f => f.Line.Sentence != f.Before)
                .Select(f => f.Line with { Notes = [pen.Say("web.arrived.before", ("sentence", f.Before ?? pen.Say("web.arrived.before-nothing"))), .. f.Line.Notes] }),
        ];
    }
}
