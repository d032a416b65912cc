using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Papers.Sheets;

namespace Clomwright.Papers.Templates;

/// <summary>A template on one sheet as large as itself, with its name, house and date over it and the check square under it.</summary>
internal static class WholeTemplate
{
    private const double Edge = 8;
    private const double Head = 16;

    public static Sheet Of(Scene scene, Template template)
    {
        var say = scene.Say;
        var board = new Board();
        var (width, top) = (Math.Max(template.Width, 150) + 2 * Edge, Edge + Head + template.Height + 6);
        board.Say(template.Title, Edge, Edge + Styles.Heading.Ascent(), Styles.Heading);
        var revision = scene.Imprint.Revision is { Length: > 0 } letter ? say.Say("frame.revision", ("letter", letter)) : say.Say("frame.not-issued");
        board.Say(Wrapping.Shortened(Wording.Dotted(scene.House.Name, say.Say(scene.Imprint.Date), revision, say.Say("template.full-size")), Styles.Small, width - 2 * Edge), Edge, Edge + 10, Styles.Small);
        Mark[] drawn = [.. template.Lines, new Stroke(template.Edge, new Pen(Weight.Heavy)), .. template.Labels];
        board.Add(new Group("template", drawn.Select(m => m.Moved(Edge, Edge + Head)).ToSequence()));
        board.Add(new Group("check-square", [new Stroke(Outline.Rectangle(PaperBox.At(Edge, top, Tiling.Square, Tiling.Square)), new Pen(Weight.Medium))]));
        var below = board.Lines([say.Say("template.square")], Edge + 4, top + 4, Styles.Reading);
        foreach (var words in (IEnumerable<string>)[say.Say("template.square-check"), .. template.Uses, say.Say("frame.no-substitute")])
        {
            below = board.Lines(Wrapping.Lines(words, Styles.Body, Tiling.Square - 8), Edge + 4, below + 1, Styles.Body);
        }

        return new Sheet("template-" + template.Key, template.Title, width, Math.Max(top + Tiling.Square, below) + Edge, board.Marks) { Language = say.Book.Language };
    }
}
