using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>The plot round the house.</summary>
internal static class PlotChecks
{
    private static readonly Length Farthest = Length.FromMillimetres(5_000_000);

    public static void Of(Plot? plot, Checks checks)
    {
        if (plot is null)
        {
            return;
        }

        for (var i = 0; i < plot.Boundaries.Count; i++)
        {
            var (path, line) = ($"site.plot.boundaries[{i}]", plot.Boundaries[i]);
            checks.Word($"{path}.name", line.Name);
            checks.Bearing($"{path}.bearing", line.Bearing);
            checks.Size($"{path}.distance", line.Distance, Farthest);
        }

        for (var i = 0; i < plot.Features.Count; i++)
        {
            var (path, feature) = ($"site.plot.features[{i}]", plot.Features[i]);
            checks.Word($"{path}.name", feature.Name);
            checks.Bearing($"{path}.bearing", feature.Bearing);
            checks.Size($"{path}.distance", feature.Distance, Farthest);
        }

        if (plot.Downhill is { } downhill)
        {
            checks.Bearing("site.plot.downhill", downhill);
        }

        checks.Within("site.plot.fall", plot.Fall is { } fall ? (Amount)fall : null, 0, 1);
    }
}
