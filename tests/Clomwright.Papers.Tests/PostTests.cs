using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Views;
using Clomwright.Testing;

namespace Clomwright.Papers.Tests;

/// <summary>The post under the middle of a roof, and the tips over it.</summary>
public sealed class PostTests
{
    internal static readonly Roof.Radial Made = new(8, PoleSize.Even(Length.FromInches(8)), new Slope(0.35))
    {
        Eave = Length.FromInches(30), CentrePost = true, Post = new CentrePost(Length.FromInches(10), Length.FromInches(36)), Deck = Length.FromInches(3), Layers = Houses.HeronPoint.Roof!.Layers,
    };

    private static readonly Lazy<PaperSet> Set = new(() => Papers.Set(Houses.HeronPoint with { Roof = Made }, PaperSize.A4));

    private static readonly Lazy<Sequence<Sheet>> All = new(() => Book.Of(Set.Value));

    // Property: a post is drawn where a builder and an engineer look for it. A roof without one has it nowhere.
    [Theory]
    [InlineData("plan", "plan-post")]
    [InlineData("floor-plan", "plan-post")]
    [InlineData("foundation", "foundation-post")]
    [InlineData("foundation-plan", "post")]
    [InlineData("roof-plan", "roof-post")]
    [InlineData("framing-plan", "roof-post")]
    [InlineData("roof-section", "section-post")]
    [InlineData("sections", "section-along-post")]
    [InlineData("sections", "section-across-post")]
    public void APost_IsDrawn(string sheet, string id)
    {
        Assert.Single(Groups(All.Value, sheet), g => g.Id == id);
        Assert.DoesNotContain(Groups(Papers.HeronPointBook, sheet), g => g.Id == id);
    }

    // Analytic: a circle of the post's diameter at the plan's scale, its middle in that of the plan. 0.05 mm is finer than a printed line.
    [Fact]
    public void APost_IsToScale()
    {
        var geometry = Set.Value.Geometry;
        var pen = new PlanPen(geometry, 40);
        var round = PostDrawing.Of(geometry)!.FromAbove(pen, "x").Marks.OfType<Stroke>().Last().Outline.Bounds;
        Assert.Equal(40 * 10 * 0.0254, round.Width, 0.05);
        Assert.Equal(pen.At(geometry.Curve.Centre).X, round.Centre.X, 0.05);
        Assert.Equal(40 * 36 * 0.0254, PostDrawing.Of(geometry)!.FootingBox(pen).Height, 1e-9);
    }

    // Analytic: tips of equal poles meet along the lines halfway between them: the shoulder at the left of one is the one at the right of the next. 1 µm.
    [Fact]
    public void Tips_MeetHalfwayBetweenPoles()
    {
        var geometry = FromBuilding.Of(Houses.Round(Length.FromMillimetres(6000)) with { Roof = Made, Openings = [], Niches = [], Embeds = [] });
        var poles = Clomwright.Analysis.Roof.FromGeometry.Of(geometry).Plain.Value!.Places;
        for (var i = 0; i < poles.Count; i++)
        {
            var (one, next) = (PostTips.Outline(poles, i), PostTips.Outline(poles, (i + 1) % poles.Count));
            Assert.Equal(0, (one[1] - next[3]).Norm, 1e-6);
            Assert.Equal(0, (one[2] - geometry.Curve.Centre).Norm, 1e-6);
        }
    }

    private static IEnumerable<Group> Groups(Sequence<Sheet> book, string key) => book.Where(s => s.Key == key).SelectMany(s => s.Marks.All()).OfType<Group>();
}
