using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Sheets;

namespace Clomwright.Papers;

/// <summary>Sheets to fill in by hand, for people who have no house file yet, or whose printer is far away.</summary>
public static class BlankBook
{
    /// <summary>Emergency card, safety card, handover, pocket card, lift sheet, opening card, mix card, test register, register of what is built in, day board, daily log, crack sheet, each empty.</summary>
    public static Sequence<Sheet> Of(PaperOptions options)
    {
        ArgumentNullException.ThrowIfNull(options);
        var say = new Wording(options.Units ?? UnitSystem.Imperial, Phrasebook.In(options.Language));
        var paper = options.Paper;
        Draft[] before = [.. EmergencyCard.Blank(say, paper), .. SafetyCard.Of(say, paper), .. HandoverSheet.Blank(say, paper)];
        Draft[] after =
        [
            .. BlankSheets.Lift(say, paper), .. BlankSheets.Opening(say, paper), .. BlankSheets.Mix(say, paper), .. BlankSheets.Tests(say, paper), .. EmbedRegister.Blank(say, paper),
            .. BlankSheets.Board(say, paper), .. DailyLog.Of(say, paper), .. CrackSheet.Blank(say, paper),
        ];
        var (count, imprint) = (before.Length + 1 + after.Length, new Imprint("", options.Date, options.Revision));
        return
        [
            .. before.Select((d, i) => d.Finish(i + 1, count, imprint, say)), PocketCard.Blank(options),
            .. after.Select((d, i) => d.Finish(before.Length + 2 + i, count, imprint, say)),
        ];
    }
}
