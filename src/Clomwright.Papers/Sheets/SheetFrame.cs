using System.Globalization;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Papers.Revisions;

namespace Clomwright.Papers.Sheets;

/// <summary>Which of three clocks a sheet shows.</summary>
internal enum Clock
{
    /// <summary>What was designed.</summary>
    Drawing,

    /// <summary>What was measured on the wall.</summary>
    Wall,

    /// <summary>What is expected.</summary>
    Forecast,
}

/// <summary>What a sheet says of itself.</summary>
/// <param name="Key">Permanent key.</param>
/// <param name="Title">Its name.</param>
/// <param name="Clock">Which clock it shows.</param>
/// <param name="Scale">Its scale; empty for one that is not to scale.</param>
internal sealed record SheetHead(string Key, string Title, Clock Clock = Clock.Drawing, string Scale = "")
{
    /// <summary>It goes on from the sheet before it.</summary>
    public bool GoesOn { get; init; }
}

/// <summary>What every sheet of one book says.</summary>
/// <param name="House">Name of the house; empty leaves a line to write on.</param>
/// <param name="Date">The date carried.</param>
/// <param name="Revision">Letter of the issue; null when not issued.</param>
internal sealed record Imprint(string House, DateOnly Date, string? Revision)
{
    /// <summary>What changed since the set that was handed out last; null where no letters are asked for.</summary>
    public SetRevision? Set { get; init; }

    /// <summary>What of it is said of this sheet.</summary>
    public SheetRevision? Sheet { get; init; }
}

/// <summary>The edge of every sheet: a storey pole up the left side that is true to size, a title over a heavy rule, and a foot with date, revision and clock.</summary>
internal static class SheetFrame
{
    private const double Left = 17;
    private const double Right = 9;
    private const double RuleAt = 25;
    private const double FootHeight = 19.5;
    private const double SealedFoot = 49.5;
    private const double SealWidth = 44;
    private const double SealHeight = 38;
    private const double PoleAt = 5.5;

    /// <summary>The part of the paper that a sheet may fill.</summary>
    public static PaperBox Content(Format paper) => new(Left, RuleAt + 4, paper.Width - Right, FootAt(paper) - 3);

    /// <summary>Draws the frame.</summary>
    public static void Draw(Board board, Format paper, SheetHead head, string number, string of, Imprint imprint, Wording say)
    {
        Title(board, paper.Width, head, number, of, imprint, say);
        Foot(board, paper, head, imprint, say);
        Pole(board, paper.Height, say);
    }

    private static double FootAt(Format paper) => paper.Height - (paper.Sealed ? SealedFoot : FootHeight);

    private static void Title(Board board, double width, SheetHead head, string place, string of, Imprint imprint, Wording say)
    {
        var right = width - Right;
        var mark = Changed(board, right, imprint, say);
        board.Say(of, right, 21.5, Styles.Small, Anchor.End);
        var ofWidth = Styles.Small.WidthOf(of) + 1.2;
        board.Say(place, right - ofWidth, 21.5, Styles.Large, Anchor.End);
        var room = right - Left - ofWidth - Styles.Large.WidthOf(place) - 6;
        if (imprint.House.Length > 0)
        {
            var name = Math.Min(room, right - Left - mark);
            board.Tell(Telling.Paragraph, () => board.Say(Wrapping.Shortened(imprint.House, Styles.Body, name), Left, 13, Styles.Body));
        }
        else
        {
            board.Line(Left, 13, Left + room * 0.6, 13, Weight.Thin, Dash.Dotted);
        }

        var title = Styles.Title;
        while (title.WidthOf(head.Title) > room && title.Digits > 2.6)
        {
            title = Lettering.Strong(title.Digits - 0.2);
        }

        board.Tell(Telling.Title, () => board.Say(Wrapping.Shortened(head.Title, title, room), Left, 21.5, title));
        board.Line(Left, RuleAt, right, RuleAt, Weight.Bold);
    }

    /// <summary>A triangle with the new letter on a sheet that changed since the last set; returns the room it takes from the right, mm.</summary>
    private static double Changed(Board board, double right, Imprint imprint, Wording say)
    {
        if (imprint is not { Set.Before: { } before, Sheet.State: not SheetState.Same and var state })
        {
            return 0;
        }

        const double Foot = 13.8, Side = 6.4, Height = Side * 0.866;
        var words = say.Say(state == SheetState.New ? "frame.new-since" : "frame.changed-since", ("before", before));
        var left = right - Styles.BodyStrong.WidthOf(words) - 1.6 - Side;
        board.Add(new Group("changed", [new Stroke(Outline.Polygon(new(left, Foot), new(left + Side / 2, Foot - Height), new(left + Side, Foot)), new Pen(Weight.Medium))]));
        board.Say(imprint.Revision ?? "", left + Side / 2, Foot - 0.9, Styles.SmallStrong, Anchor.Middle);
        board.Tell(Telling.Paragraph, () => board.Say(words, right, 13, Styles.BodyStrong, Anchor.End));
        return right - left + 4;
    }

    /// <summary>The letter since which a sheet shows what it shows, and that of the set it is printed with.</summary>
    private static string Issue(Imprint imprint, Wording say) => imprint switch
    {
        { Revision: { Length: > 0 } set, Sheet.Letter: { } letter } when letter != set => say.Say("frame.revision-in", ("letter", letter), ("set", set)),
        { Revision: { Length: > 0 } letter } => say.Say("frame.revision", ("letter", letter)),
        _ => say.Say("frame.not-issued"),
    };

    private static void Foot(Board board, Format paper, SheetHead head, Imprint imprint, Wording say)
    {
        var (top, width) = (FootAt(paper), paper.Width);
        board.Line(Left, top, width - Right, top, Weight.Medium);
        var x = Left;
        foreach (var (words, strong) in (ReadOnlySpan<(string, bool)>)[(say.Say(imprint.Date), false), (Issue(imprint, say), true)])
        {
            var lettering = strong ? Styles.SmallStrong : Styles.Small;
            board.Tell(Telling.Paragraph, () => board.Say(words, x, top + 4, lettering));
            x += lettering.WidthOf(words) + 5;
        }

        x += 1;
        foreach (var clock in Enum.GetValues<Clock>())
        {
            var words = say.Say("frame.clock-" + clock.ToString().ToLowerInvariant());
            var lettering = clock == head.Clock ? Styles.SmallStrong : Styles.Small;
            var box = PaperBox.At(x, top + 2.1, 1.9, 1.9);
            board.Rectangle(box, Weight.Thin);
            if (clock == head.Clock)
            {
                board.Solid(box.Inset(0.4));
            }

            void Say() => board.Say(words, x + 2.8, top + 4, lettering);
            if (clock == head.Clock)
            {
                // The other two are ornament to one who hears it: only what the sheet shows is told.
                board.Tell(Telling.Paragraph, Say);
            }
            else
            {
                Say();
            }

            x += 2.8 + lettering.WidthOf(words) + 4;
        }

        var shown = Wording.Dotted(head.Scale, head.Key);
        board.Say(Wrapping.Shortened(shown, Styles.Small, width - Right - x - 2), width - Right, top + 4, Styles.Small, Anchor.End);
        var room = width - Right - Left - (paper.Sealed ? SealWidth + 4 : 0);
        var lines = Wrapping.Lines(say.Say("frame.units-" + say.First.ToString().ToLowerInvariant()) + " " + say.Say("frame.no-substitute"), Styles.Small, room);
        var below = 0.0;
        board.Tell(Telling.Paragraph, () => below = board.Lines(lines, Left, top + 5.4, Styles.Small));
        if (paper.Sealed)
        {
            Licence(board, new PaperBox(Left, below + 1, width - Right - SealWidth - 4, top + 5.4 + SealHeight), say);
            board.Add(new Group("seal", [new Stroke(Outline.Rectangle(PaperBox.At(width - Right - SealWidth, top + 5.4, SealWidth, SealHeight)), new Pen(Weight.Medium))]));
        }
    }

    /// <summary>Lines for whoever answers for the sheet, and what the empty box beside them is for.</summary>
    private static void Licence(Board board, PaperBox room, Wording say)
    {
        var words = Wrapping.Lines(say.Say("frame.seal"), Styles.Small, room.Width);
        var top = room.Top;
        board.Tell(Telling.Paragraph, () => top = board.Lines(words, room.Left, room.Top, Styles.Small));
        const int Across = 2;
        const double Gap = 6;
        string[] asked = ["frame.licence-name", "frame.licence-number", "frame.licence-signature", "frame.licence-date"];
        var (each, step) = ((room.Width - Gap) / Across, (room.Bottom - top) / (asked.Length / Across));
        for (var i = 0; i < asked.Length; i++)
        {
            var (x, y) = (room.Left + i % Across * (each + Gap), top + (i / Across + 1) * step - Styles.Small.Leading);
            board.Line(x, y, x + each, y, Weight.Thin, Dash.Dotted);
            board.Tell(Telling.Paragraph, () => board.Say(say.Say(asked[i]), x, y + 0.4 + Styles.Small.Ascent(), Styles.Small));
        }
    }

    /// <summary>Centimetres or quarter inches, true to size, zero at the foot: the printed sheet checks itself.</summary>
    private static void Pole(Board board, double height, Wording say)
    {
        var units = say.First;
        var (step, perLong, perLabel) = units == UnitSystem.Metric ? (5.0, 2, 10) : (25.4 / 4, 2, 4);
        var foot = height - 10;
        var count = (int)Math.Floor((foot - 10) / step);
        List<Outline> ticks = [Outline.Line(PoleAt, foot, PoleAt, foot - count * step)];
        for (var i = 0; i <= count; i++)
        {
            var length = i % perLabel == 0 ? 3.4 : i % perLong == 0 ? 2.2 : 1.2;
            ticks.Add(Outline.Line(PoleAt, foot - i * step, PoleAt + length, foot - i * step));
            if (i % perLabel == 0 && i > 0)
            {
                var number = units == UnitSystem.Metric ? i / 2 : i / 4;
                board.Say(number.ToString(CultureInfo.InvariantCulture), PoleAt + 4.2, foot - i * step + Styles.Small.Digits / 2, Styles.Small);
            }
        }

        board.Add(new Group("pole", [new Stroke(Outline.Of(ticks), new Pen(Weight.Thin)), new Fill(Outline.Polygon(new(PoleAt, foot), new(PoleAt - 1.2, foot + 2), new(PoleAt + 1.2, foot + 2)))]));
        board.Say(say.Say("frame.pole-" + units.ToString().ToLowerInvariant()), PoleAt + 8.6, foot, Styles.Small, Anchor.Start, -90);
    }
}
