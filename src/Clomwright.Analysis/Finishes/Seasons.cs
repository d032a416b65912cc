using Clomwright.Evidence;

namespace Clomwright.Analysis.Finishes;

/// <summary>When in the year a plaster may be laid: nights no colder and days no hotter than asked, in the month itself and, for lime, while it hardens after.</summary>
internal static class Seasons
{
    public static Known<SeasonWindow> Of(PlasterMaterial material, Known<Months> months)
    {
        if (material.Weather is not { } asked)
        {
            return new Message("analysis.finishes.no-season-rule");
        }

        if (months.Value is not { All.Count: 12 } year)
        {
            return months.NotChecked ?? new Message("analysis.finishes.no-months");
        }

        bool Mild(int i) => year.All[i % 12].Low >= asked.Coldest.Value;
        return new SeasonWindow(Enumerable.Range(0, 12).Where(i => year.All[i].High <= asked.Hottest.Value && Enumerable.Range(0, 1 + (int)asked.Months.Value).All(j => Mild(i + j))).Select(i => i + 1).ToSequence());
    }

    /// <summary>The rule in words.</summary>
    public static Message? Rule(PlasterMaterial material) => material.Weather is not { } asked ? null : Message.Of(
        material.Binder == Binder.Lime ? "analysis.finishes.season-lime" : "analysis.finishes.season-earth",
        ("coldest", new Amount(asked.Coldest.Value, Dimension.Temperature)), ("hottest", new Amount(asked.Hottest.Value, Dimension.Temperature)));
}
