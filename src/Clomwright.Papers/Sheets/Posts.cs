using Clomwright.Analysis.Members;
using Clomwright.Analysis.Roof;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Papers.Views;
using Clomwright.Study;

namespace Clomwright.Papers.Sheets;

/// <summary>What the sheets say of the post under the middle of a roof; nothing where there is none.</summary>
internal static class Posts
{
    /// <summary>Of the drawing on the foundation sheet: how much of the post is shown over the floor, m, and how wide its column is, mm.</summary>
    private const double Shown = 0.3, Widest = 62;

    /// <summary>Where it stands, from the two pegs, and what it stands on.</summary>
    public static IEnumerable<Paragraph> Place(Scene scene)
    {
        if (PostDrawing.Of(scene.Geometry) is not { } post)
        {
            yield break;
        }

        var say = scene.Say;
        var sizes = post.Made is { } made ? say.Say("post.stands", ("diameter", made.Diameter), ("side", made.Footing)) : say.Say("post.unknown");
        var pegs = scene.Set.SettingOut is { } out_ ? " " + say.Say("post.from-pegs", ("x", Amount.Metres((post.At - out_.PegA).Norm)), ("y", Amount.Metres((post.At - out_.PegB).Norm))) : "";
        yield return new Paragraph(sizes + pegs, Styles.Body) { Above = 1.5 };
    }

    /// <summary>How it stands under the poles, and how their tips meet over it.</summary>
    public static IEnumerable<Paragraph> Under(Scene scene)
    {
        if (PostDrawing.Of(scene.Geometry, RoofShell.Of(scene.Geometry, scene.Set.Roof)) is not { } post)
        {
            yield break;
        }

        var say = scene.Say;
        var top = post.Top is { } height ? " " + say.Say("post.top", ("height", Amount.Metres(height))) : "";
        yield return new Paragraph((post.Made is { } made ? say.Say("post.under", ("diameter", made.Diameter)) : say.Say("post.unknown")) + top + " " + say.Say("post.tips"), Styles.Body) { Above = 1.5 };
    }

    /// <summary>Words after the note of a section; empty without a post.</summary>
    public static string InSection(Scene scene) => PostDrawing.Of(scene.Geometry) is null ? "" : " " + scene.Say.Say("post.in-section");

    /// <summary>Its sizes for a schedule.</summary>
    public static IEnumerable<Fact> Facts(Scene scene)
    {
        if (PostDrawing.Of(scene.Geometry) is not { } post)
        {
            return [];
        }

        var say = scene.Say;
        Fact Of(string key, Length? length) => length is { } known ? scene.Fact(key, known, Tag.Given) : new Fact(say.Say(key), say.Say("criteria.not-given"));
        return [Of("post.thick", post.Made?.Diameter), Of("post.footing-side", post.Made?.Footing), Of("post.footing-depth", null)];
    }

    /// <summary>What comes down under its footing, checked with the roof, or why it could not be; null where there is none.</summary>
    public static CheckedMember? Footing(RoofResult? roof) =>
        roof?.Supports.FirstOrDefault(s => s is { Key: "centre-post", Subject: "post footing" }) ?? roof?.Supports.FirstOrDefault(s => s is { Key: "centre-post", Check.Is: false });

    /// <summary>The foot of the post to scale on its footing, for the foundation sheet; null without one.</summary>
    public static Picture? Foot(Scene scene, double paperPerMetre)
    {
        if (PostDrawing.Of(scene.Geometry) is not { Made: { } made } post)
        {
            return null;
        }

        var say = scene.Say;
        var k = Math.Min(paperPerMetre, (Widest - 10) / made.Footing.Metres);
        PaperPoint At(double across, double height) => new(across * k, -height * k);
        var (board, half) = (new Board(), made.Footing.Metres / 2);
        board.Add(post.Upright("foundation-post", At, 0, Shown));
        foreach (var side in (double[])[-1, 1])
        {
            var (near, far) = (At(side * made.Diameter.Metres / 2, 0), At(side * (half + 0.08), 0));
            board.Line(near.X, near.Y, far.X, far.Y, Weight.Bold);
        }

        var foot = At(0, -PostDrawing.FootingShown).Y + 6;
        board.Add(new DimensionLine("post footing", new(At(-half, 0).X, foot), new(At(half, 0).X, foot), new Text(say.Book.Tape(made.Footing, say.First), new(0, foot - 0.9), Styles.BodyStrong, Anchor.Middle))
        {
            Second = new Text(say.Book.Tape(made.Footing, say.Second), new(0, foot + 1 + Styles.Small.Digits), Styles.Small, Anchor.Middle),
            FootFrom = new PaperPoint(At(-half, 0).X, foot - 5),
            FootTo = new PaperPoint(At(half, 0).X, foot - 5),
        });
        board.Say(say.Say(post.Name), 0, At(0, Shown).Y - 1.2, Styles.SmallStrong, Anchor.Middle);
        board.Say(say.Say("post.footing-open"), 0, foot + 1 + Styles.Small.Leading + Styles.Small.Ascent(), Styles.Small, Anchor.Middle);
        return new Picture(board.Marks, board.Marks.Bounds().Inset(-1));
    }
}
