using Clomwright.Evidence;
using Clomwright.Papers.Drawing;

namespace Clomwright.Papers.Layout;

/// <summary>One link of a chain of dimensions.</summary>
/// <param name="Of">What is measured.</param>
/// <param name="From">Left end on paper.</param>
/// <param name="To">Right end on paper.</param>
/// <param name="First">In the units that come first.</param>
/// <param name="Second">In the other units; may be empty.</param>
internal sealed record Link(string Of, double From, double To, string First, string Second)
{
    /// <summary>Where the line up from each end stops; null for none.</summary>
    public double? Foot { get; init; }

    /// <summary>How its first label is set; null takes the chain's.</summary>
    public Lettering? Lettering { get; init; }

    /// <summary>It goes on beyond the paper at one end.</summary>
    public bool Broken { get; init; }

    /// <summary>Id of the group it is drawn in; null for none.</summary>
    public string? Id { get; init; }

    /// <summary>Its middle on paper.</summary>
    public double Middle => (From + To) / 2;
}

/// <summary>A horizontal chain of dimensions. Labels that do not fit their link go down into lanes, each with a leader; labels never touch.</summary>
internal sealed class Chain
{
    private const double Clear = 1.4;

    private readonly Lettering lettering;
    private readonly Lettering small;
    private readonly IReadOnlyList<Link> onLine;
    private readonly IReadOnlyList<Flag> flags;

    /// <summary>Works out which label stands where.</summary>
    public Chain(IEnumerable<Link> links, double left, double right, Lettering lettering, Lettering small)
    {
        (this.lettering, this.small) = (lettering, small);
        var sorted = links.OrderByDescending(l => l.Middle).ToArray();
        onLine = [.. sorted.Where(Fits)];
        var flagged = sorted.Where(l => !Fits(l)).ToArray();
        // From the right or from the left: at an end without room beside it only one of the two leaves every leader clear.
        var (fromRight, fromLeft) = (Hung(flagged, left, right), Hung([.. flagged.Reverse()], left, right));
        flags = [.. (fromLeft.Faults < fromRight.Faults ? fromLeft : fromRight).Flags.OrderBy(f => f.Link.Middle)];
        Lanes = flags.Count == 0 ? 0 : flags.Max(f => f.Lane);
    }

    /// <summary>Lanes below the chain itself.</summary>
    public int Lanes { get; }

    /// <summary>From the top of the chain's own labels to the foot of the lowest lane, mm.</summary>
    public double Height => Above + Below + Lanes * LaneHeight;

    /// <summary>Height over the dimension line.</summary>
    private double Above => lettering.Digits + 1.4;

    private double Below => onLine.Any(l => l.Second.Length > 0) ? small.Digits + 1.8 : 1.4;

    private double LaneHeight => lettering.Digits + 1.6;

    /// <summary>Draws it with its top at a height on paper.</summary>
    public void Draw(Board board, double top)
    {
        var y = top + Above;
        foreach (var link in onLine.AsEnumerable().Reverse())
        {
            var label = new Text(link.First, new PaperPoint(link.Middle, y - 0.9), First(link), Anchor.Middle);
            Add(board, link, Line(link, y, label) with
            {
                Second = link.Second.Length == 0 ? null : new Text(link.Second, new PaperPoint(link.Middle, y + 0.9 + small.Digits), small, Anchor.Middle),
            });
        }

        foreach (var flag in flags)
        {
            var link = flag.Link;
            var baseline = y + Below + flag.Lane * LaneHeight - 0.8;
            var second = flag.Left + First(link).WidthOf(link.First) + Clear;
            Add(board, link, Line(link, y, new Text(link.First, new PaperPoint(flag.Left, baseline), First(link))) with
            {
                Second = link.Second.Length == 0 ? null : new Text(link.Second, new PaperPoint(second, baseline), small),
                Leader = Outline.Through(new(link.Middle, y), new(link.Middle, baseline + 0.7), new(flag.IsLeft ? flag.Left : flag.Right, baseline + 0.7)),
            });
        }
    }

    private bool Fits(Link link) => Math.Max(First(link).WidthOf(link.First), small.WidthOf(link.Second)) + Clear <= link.To - link.From;

    private static void Add(Board board, Link link, Mark mark) => board.Add(link.Id is null ? mark : new Group(link.Id, [mark]));

    private Lettering First(Link link) => link.Lettering ?? lettering;

    /// <summary>Labels placed one after another, and how many of them a leader runs through.</summary>
    private (IReadOnlyList<Flag> Flags, int Faults) Hung(Link[] flagged, double left, double right)
    {
        List<Flag> hung = [];
        var faults = 0;
        for (var i = 0; i < flagged.Length; i++)
        {
            var (flag, clear) = Placed(flagged[i], flagged[(i + 1)..], hung, left, right);
            hung.Add(flag);
            faults += clear ? 0 : 1;
        }

        return (hung, faults);
    }

    /// <summary>The highest lane where the label, hanging like a flag from its leader, is clear of labels and leaders placed so far and of leaders still to come.</summary>
    private (Flag Flag, bool Clear) Placed(Link link, Link[] later, List<Flag> hung, double left, double right)
    {
        var width = First(link).WidthOf(link.First) + (link.Second.Length == 0 ? 0 : Clear + small.WidthOf(link.Second));
        Flag? fallback = null;
        for (var lane = 1; lane <= hung.Count + 2; lane++)
        {
            foreach (var isLeft in (bool[])[false, true])
            {
                var start = isLeft ? link.Middle - 0.7 - width : link.Middle + 0.7;
                var flag = new Flag(link, lane, start, start + width, isLeft);
                if (start < left || start + width > right || hung.Any(f => f.Lane == lane && f.Touches(flag)))
                {
                    continue;
                }

                fallback ??= flag;
                if (!hung.Any(f => f.Crosses(flag) || flag.Crosses(f)) && !later.Any(l => flag.Left - 0.5 < l.Middle && l.Middle < flag.Right + 0.5))
                {
                    return (flag, true);
                }
            }
        }

        return (fallback ?? new Flag(link, hung.Count + 1, Math.Max(left, right - width), Math.Max(left, right - width) + width, false), false);
    }

    private static DimensionLine Line(Link link, double y, Text label) => new(link.Of, new PaperPoint(link.From, y), new PaperPoint(link.To, y), label)
    {
        Broken = link.Broken,
        FootFrom = link.Foot is { } a ? new PaperPoint(link.From, a) : null,
        FootTo = link.Foot is { } b ? new PaperPoint(link.To, b) : null,
    };

    private sealed record Flag(Link Link, int Lane, double Left, double Right, bool IsLeft)
    {
        public bool Touches(Flag other) => Left - Clear < other.Right && other.Left - Clear < Right;

        /// <summary>Whether this one's leader passes through the other's label.</summary>
        public bool Crosses(Flag other) => other.Lane < Lane && other.Left - 0.5 < Link.Middle && Link.Middle < other.Right + 0.5;
    }
}
