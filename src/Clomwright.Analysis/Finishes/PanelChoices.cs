using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Finishes;

/// <summary>Which test panel to take: it has to hold, then to crack least, then to dust least; of equals the leaner one, because less binder shrinks less.</summary>
internal static class PanelChoices
{
    /// <summary>Sand put to the same binder after open cracks.</summary>
    private const double MoreSand = 1.5;

    public static Sequence<PanelChoice> Of(House house) =>
        house.Finishes.Select(f => (f.Face, f.Material)).Distinct().Where(f => PlasterMaterial.Find(f.Material).Coats.Count > 0 || house.TestPanels.Any(p => p.Face == f.Face && p.Material == f.Material))
            .Select(f => Of(f.Face, f.Material, [.. house.TestPanels.Where(p => p.Face == f.Face && p.Material == f.Material)])).ToSequence();

    private static PanelChoice Of(Face face, string material, TestPanel[] panels)
    {
        var tried = panels.OrderBy(p => p.Bond).ThenBy(p => p.Cracks).ThenBy(p => p.Dust).ThenBy(Binder).ToSequence();
        if (tried.Count == 0)
        {
            return new PanelChoice(face, material, [], null, new Message("analysis.finishes.no-panels"), new Message("analysis.finishes.first-panels"));
        }

        return tried.FirstOrDefault(p => p.IsSound) is { } best
            ? new PanelChoice(face, material, tried, best, Message.Of("analysis.finishes.panel-taken", ("name", best.Name), ("cracks", Word("cracks", best.Cracks)), ("dust", Word("dust", best.Dust))), null)
            : new PanelChoice(face, material, tried, null, new Message("analysis.finishes.none-sound"), Next(tried[0]));
    }

    /// <summary>What to change in the best of the unsound ones.</summary>
    private static Message Next(TestPanel panel) => panel switch
    {
        { Bond: not PanelBond.Holds } => Message.Of("analysis.finishes.panel-key", ("name", panel.Name)),
        { Cracks: PanelCracks.Open, Parts.Sand: > 0 and var sand } => Message.Of("analysis.finishes.panel-sand", ("name", panel.Name), ("sand", Amount.Number(sand * MoreSand)), ("source", Sources.Get("coblist-2008-011503").Title)),
        { Cracks: PanelCracks.Open } => Message.Of("analysis.finishes.panel-add-sand", ("name", panel.Name)),
        _ => Message.Of("analysis.finishes.panel-dusts", ("name", panel.Name)),
    };

    private static double Binder(TestPanel panel)
    {
        var binder = (panel.Parts.Clay ?? 0) + (panel.Parts.Lime ?? 0);
        return binder / Math.Max(1e-9, binder + (panel.Parts.Sand ?? 0));
    }

    private static Message Word<T>(string kind, T value) where T : struct, Enum => new($"analysis.panel.{kind}-{value.ToString().ToLowerInvariant()}");
}
