using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Papers.Views;

namespace Clomwright.Papers.Tests;

/// <summary>Rank property: a line from a label to what it names meets no other such line and runs through no other label.</summary>
public sealed class LeaderTests
{
    // Names beside section, eave, foundation and details of the complete house: their leaders bend once, level before the words.
    [Theory]
    [InlineData("roof-section")]
    [InlineData("foundation")]
    [InlineData("details")]
    public void NamesBesideADrawing_HaveLeadersThatDoNotCross(string key)
    {
        var sheets = Papers.HeronPointBook.Where(s => s.Key == key || s.Key.StartsWith(key + "-", StringComparison.Ordinal)).ToArray();
        var leaders = sheets.SelectMany((s, i) => s.Marks.All().OfType<Stroke>().Select(m => (Sheet: i, Points: m.Outline.Segments.Select(p => p.To).ToArray())).Where(l => IsLeader(l.Points))).ToArray();
        Assert.True(leaders.Length > 4);
        for (var a = 0; a < leaders.Length; a++)
        {
            for (var b = a + 1; b < leaders.Length; b++)
            {
                Assert.False(leaders[a].Sheet == leaders[b].Sheet && Cross(leaders[a].Points, leaders[b].Points), $"{key}: the leaders from {leaders[a].Points[0]} and {leaders[b].Points[0]} cross");
            }
        }
    }

    // Points of eaves as they lie, deck and layers rising to the right and the edge far to the left: by the heights of the points alone their leaders cross.
    [Fact]
    public void NamesOfAnEave_TakeTheOrderInWhichTheyDoNotCross()
    {
        PaperPoint[] points = [new(35, 5), new(33, 8), new(31, 9.5), new(22, 12), new(1, 11.5), new(3, 12), new(24, 13), new(40, 16), new(21, 18), new(2, 19)];
        var board = new Board();
        PartLabels.Name(board, [.. points.Select((p, i) => new PartLabel(p, i % 3 == 1 ? $"a longer name of part number {i} that takes two lines" : $"part {i}"))], 60, 40);
        var leaders = board.Marks.OfType<Stroke>().Select(s => s.Outline.Segments.Select(p => p.To).ToArray()).Where(IsLeader).ToArray();
        Assert.Equal(points.Length, leaders.Length);
        Assert.Empty(from a in leaders from b in leaders where a != b && Cross(a, b) select $"{a[0]} and {b[0]}");
    }

    // Two labels too long for their links at an end without room beyond it, either end: each hangs clear of the other's leader.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void AChain_HangsNoLabelOverALeader(bool mirrored)
    {
        double At(double x) => mirrored ? 100 - x : x;
        Link One(string name, double from, double to) => new(name, Math.Min(At(from), At(to)), Math.Max(At(from), At(to)), "3 ft 1 1/4 in", "945 mm");
        var chain = new Chain([One("long", 0, 70), One("window", 70, 82), One("pier", 82, 90)], 0, 100, Styles.BodyStrong, Styles.Small);
        var board = new Board();
        chain.Draw(board, 0);
        var lines = board.Marks.OfType<DimensionLine>().ToArray();
        Assert.Equal(2, lines.Count(l => l.Leader is not null));
        foreach (var line in lines.Where(l => l.Leader is not null))
        {
            var down = line.Leader!.Segments.Select(s => s.To).ToArray();
            var leg = PaperBox.Around(down[0], down[1]);
            Assert.All(lines.Where(l => l != line).SelectMany(l => (Text?[])[l.Label, l.Second]).OfType<Text>(), text => Assert.False(text.Bounds.Left < leg.Left && leg.Left < text.Bounds.Right && text.Bounds.Top < leg.Bottom && leg.Top < text.Bounds.Bottom, $"the leader of {line.Of} runs through {text.Words}"));
        }
    }

    private static bool IsLeader(PaperPoint[] points) => points.Length == 3 && Math.Abs(points[1].Y - points[2].Y) < 1e-9 && Math.Abs(points[2].X - points[1].X - 2.2) < 1e-6;

    /// <summary>Whether the sloping parts meet between their ends.</summary>
    private static bool Cross(PaperPoint[] a, PaperPoint[] b)
    {
        double Side(PaperPoint from, PaperPoint to, PaperPoint of) => (to.X - from.X) * (of.Y - from.Y) - (to.Y - from.Y) * (of.X - from.X);
        return Side(a[0], a[1], b[0]) * Side(a[0], a[1], b[1]) < -1e-9 && Side(b[0], b[1], a[0]) * Side(b[0], b[1], a[1]) < -1e-9;
    }
}
