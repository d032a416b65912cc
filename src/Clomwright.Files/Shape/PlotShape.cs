using Clomwright.Building;
using Clomwright.Files.Forms;
using static Clomwright.Files.Forms.Plain;
using static Clomwright.Files.Forms.Quantities;

namespace Clomwright.Files.Shape;

/// <summary>How the plot round the house stands in the file.</summary>
internal static class PlotShape
{
    public static Thing<Plot> Plot { get; } = MakePlot();

    private static Thing<Plot> MakePlot()
    {
        var boundaries = Keys<Plot>.List("boundaries", MakeBoundary(), p => p.Boundaries, leavesOut: true);
        var features = Keys<Plot>.List("features", MakeFeature(), p => p.Features, leavesOut: true);
        var fall = Keys<Plot>.Maybe("fall", Slopes, p => p.Fall, leavesOut: true);
        var downhill = Keys<Plot>.Maybe("downhill", Angles, p => p.Downhill, leavesOut: true);
        return new Thing<Plot>("plot", [boundaries, features, fall, downhill], v => new Plot { Boundaries = v.Of(boundaries), Features = v.Of(features), Fall = v.Of(fall), Downhill = v.Of(downhill) });
    }

    private static Thing<PlotBoundary> MakeBoundary()
    {
        var name = Keys<PlotBoundary>.Needed("name", Text, b => b.Name);
        var bearing = Keys<PlotBoundary>.Needed("bearing", Angles, b => b.Bearing);
        var distance = Keys<PlotBoundary>.Needed("distance", Lengths, b => b.Distance);
        return new Thing<PlotBoundary>("plot-boundary", [name, bearing, distance], v => new PlotBoundary(v.Of(name), v.Of(bearing), v.Of(distance)));
    }

    private static Thing<PlotFeature> MakeFeature()
    {
        var name = Keys<PlotFeature>.Needed("name", Text, f => f.Name);
        var kind = Keys<PlotFeature>.Needed("kind", new WordForm<PlotFeatureKind>(), f => f.Kind);
        var bearing = Keys<PlotFeature>.Needed("bearing", Angles, f => f.Bearing);
        var distance = Keys<PlotFeature>.Needed("distance", Lengths, f => f.Distance);
        return new Thing<PlotFeature>("plot-feature", [name, kind, bearing, distance], v => new PlotFeature(v.Of(name), v.Of(kind), v.Of(bearing), v.Of(distance)));
    }
}
