using Clomwright.Analysis;
using Clomwright.Analysis.Collapse;
using Clomwright.Evidence;
using static Clomwright.Study.Figures;

namespace Clomwright.Study;

/// <summary>The part of the figures that tells the push at which the house falls.</summary>
internal static class CollapseFigures
{
    public static Figure Of(Known<CollapseResult> known) => known.Value is { } collapse ? Tree(
        ("least", Computed(collapse.Least, Dimension.Number)),
        ("weight", Computed(collapse.Weight, Dimension.Force)),
        ("directions", Row(collapse.Directions, Push)),
        ("withoutBeam", collapse.WithoutBeam.Value is { } without ? Push(without) : new Figure.NotChecked(collapse.WithoutBeam.NotChecked!)),
        ("trend", Row(collapse.Trend, t => Tree(
            ("size", Computed(t.Size, Dimension.Length)),
            ("blocks", Computed(t.Blocks, Dimension.Count)),
            ("factor", Computed(t.Factor, Dimension.Number))))),
        ("byHand", Tree([.. collapse.ByHand.Select(m => (m.Kind, Tree(
            ("pier", Name(m.Pier)),
            ("factor", Computed(m.Factor, Dimension.Number)))))])),
        ("thrust", Computed(collapse.ThrustMost, Dimension.Force)),
        ("cracking", Tree(
            ("limit", Computed(collapse.Cracked.Limit, Dimension.Number)),
            ("beyond", collapse.Cracked.Beyond is { } beyond ? Computed(beyond, Dimension.Number) : new Figure.NotChecked(new Message("study.collapse.stands-throughout"))),
            ("tension", Computed(collapse.Cracked.TensionPa, Dimension.Stress)),
            ("unknowns", Computed(collapse.Cracked.Unknowns, Dimension.Count)),
            ("drift", Row(collapse.Cracked.Drift, d => Tree(
                ("factor", Computed(d.Factor, Dimension.Number)),
                ("drift", Computed(d.Drift, Dimension.Length)),
                ("cracked", Computed(d.Cracked, Dimension.Fraction))))))),
        ("earthquake", collapse.Earthquake.Value is { } shaking ? Computed(shaking.Coefficient, Dimension.Number) : new Figure.NotChecked(collapse.Earthquake.NotChecked!)))
        : new Figure.NotChecked(known.NotChecked!);

    private static Figure Push(WallCollapse one) => Tree(
        ("bearing", Computed(one.Bearing, Dimension.Angle)),
        ("factor", Computed(one.Factor, Dimension.Number)),
        ("above", Computed(one.Above, Dimension.Number)));
}
