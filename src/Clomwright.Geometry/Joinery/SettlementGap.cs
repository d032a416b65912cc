using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Geometry.Joinery;

/// <summary>The gap left over a frame so that drying cob does not come down on it.</summary>
/// <param name="Value">The gap, m; null when neither the author nor a shrinkage bar says it.</param>
/// <param name="Tag">Given by the author, or computed from measured shrinkage.</param>
/// <param name="How">The calculation, where there is one.</param>
public sealed record SettlementGap(double? Value, Tag Tag, Calculation? How)
{
    /// <summary>The gap over the frame of an opening: what is written, else the frame's height times the mean shrinkage of the bars. Never guessed.</summary>
    public static SettlementGap Over(Frame frame, Mix mix)
    {
        ArgumentNullException.ThrowIfNull(frame);
        ArgumentNullException.ThrowIfNull(mix);
        if (frame.Gap is { } given)
        {
            return new SettlementGap(given.Metres, Tag.Given, null);
        }

        var bars = mix.TestBars.Where(b => b.Length > Length.Zero).ToArray();
        if (bars.Length == 0)
        {
            return new SettlementGap(null, Tag.Measured, null);
        }

        var shrinkage = bars.Average(b => b.Shrinkage.Metres / b.Length.Metres);
        var gap = frame.Height.Metres * shrinkage;
        var step = new Step(
            "settlement-gap",
            "h*s",
            [
                new Symbol("h", new Message("papers.gap.frame-height"), frame.Height, Tag.Given),
                new Symbol("s", Message.Of("papers.gap.shrinkage", ("bars", bars.Length)), Amount.Fraction(shrinkage), Tag.Measured),
            ],
            new Symbol("g", new Message("papers.gap.gap"), Amount.Metres(gap), Tag.Computed),
            Sources.Get("common-practice"));
        return new SettlementGap(gap, Tag.Computed, new Calculation("settlement-gap", new Message("papers.gap.title"), [step]));
    }
}
