using Clomwright.Analysis;
using Clomwright.Analysis.Structure;
using Clomwright.Evidence;
using Clomwright.Geometry;
using static Clomwright.Study.Figures;

namespace Clomwright.Study;

/// <summary>The part of the figures that the model of the whole wall gives.</summary>
internal static class StructureFigures
{
    public static Figure Of(Known<StructureResult> known, HouseGeometry geometry) => known.Value is { } wall ? Wall(wall, geometry) : new Figure.NotChecked(known.NotChecked!);

    private static Figure Wall(StructureResult wall, HouseGeometry geometry) => Tree(
        ("allowed", Computed(wall.Allowed.Value, Dimension.Stress)),
        ("patch", Computed(wall.Patch, Dimension.Length)),
        ("piers", Row(wall.Piers, p => Pier(p, geometry.Piers.First(g => g.Address == p.Address)))),
        ("landings", Row(wall.Landings, l => Tree(
            ("name", Name(l.Name)),
            ("pressure", Computed(l.Pressure, Dimension.Stress)),
            ("spread", Computed(l.Spread, Dimension.Length)),
            ("case", Case(l.Case))))),
        ("headers", Row(wall.Headers, h => Tree(
            ("opening", Name(h.Opening)),
            ("left", new Figure.Flag(h.Left)),
            ("pressure", Computed(h.Pressure, Dimension.Stress)),
            ("case", Case(h.Case))))),
        ("layout", Tree(
            ("stiffness", Row([wall.Layout.Stiffness.East, wall.Layout.Stiffness.North], x => Computed(x, Dimension.Length))),
            ("mass", Row([wall.Layout.Mass.East, wall.Layout.Mass.North], x => Computed(x, Dimension.Length))),
            ("apart", Computed(wall.Layout.Apart, Dimension.Length)),
            ("ratio", Computed(wall.Layout.Ratio, Dimension.Number)),
            ("ratioStill", Computed(wall.Layout.RatioStill, Dimension.Number)),
            ("bearing", Computed(wall.Layout.Bearing, Dimension.Angle)),
            ("weakest", Computed(wall.Layout.Weakest, Dimension.Angle)),
            ("sway", Computed(wall.Layout.Sway, Dimension.Number)))),
        ("soil", wall.Soil is { } soil ? Tree(
            ("height", Computed(soil.Height, Dimension.Length)),
            ("atRest", Computed(soil.AtRest, Dimension.Number)),
            ("force", Computed(soil.Force(soil.Foot, soil.Grade), Dimension.LineLoad))) : new Figure.NotChecked(new Message("study.figure.ground-below"))),
        ("tension", Tree(
            ("most", Computed(wall.TensionMost, Dimension.Stress)),
            ("level", Computed(wall.TensionLevel, Dimension.Stress)),
            ("zones", Row(wall.Tension, z => Tree(
                ("near", Name(z.Near ?? "")),
                ("station", Computed(z.Station, Dimension.Length)),
                ("height", Computed(z.Height, Dimension.Length)),
                ("outside", new Figure.Flag(z.Outside)),
                ("tension", Computed(z.Tension, Dimension.Stress)),
                ("angle", Computed(z.Angle, Dimension.Angle)),
                ("area", Computed(z.Area, Dimension.Area)),
                ("case", Case(z.Case))))))),
        ("foot", Tree(
            ("cases", Computed(wall.Cases, Dimension.Count)),
            ("pulling", Computed(wall.Base.Pulling, Dimension.Count)),
            ("resolved", Computed(wall.Base.Resolved, Dimension.Count)),
            ("letsGo", Computed(wall.Base.LiftedMost, Dimension.Fraction)),
            ("standing", new Figure.Flag(wall.Base.Standing)))),
        ("grid", Tree(
            ("around", Computed(wall.Division.Around, Dimension.Count)),
            ("up", Computed(wall.Division.Up, Dimension.Count)),
            ("through", Computed(wall.Division.Through, Dimension.Count)),
            ("unknowns", Computed(wall.Division.Unknowns, Dimension.Count)),
            ("modulus", Computed(wall.Division.Modulus, Dimension.Stress)))),
        ("checks", Tree(
            ("reactionError", Computed(wall.Checks.ReactionError, Dimension.Number)),
            ("residual", Computed(wall.Checks.Residual, Dimension.Number)),
            ("reciprocity", Computed(wall.Checks.Reciprocity, Dimension.Number)))));

    private static Figure Pier(PierStress pier, Pier place) => Tree(
        ("between", Row([place.Before, place.After], Name)),
        ("axialMean", Computed(pier.MeanMost, Dimension.Stress)),
        ("axialMeanAt", Computed(pier.MeanAt, Dimension.Length)),
        ("axialMeanCase", Case(pier.MeanCase)),
        ("axialMeanBare", Computed(pier.MeanBare, Dimension.Stress)),
        ("edgeMax", Computed(pier.EdgeMost, Dimension.Stress)),
        ("edgeStation", Computed(pier.EdgeStation, Dimension.Length)),
        ("edgeHeight", Computed(pier.EdgeHeight, Dimension.Length)),
        ("edgeOutside", new Figure.Flag(pier.EdgeOutside)),
        ("edgeCase", Case(pier.EdgeCase)),
        ("across", Stand(pier.Across)),
        ("along", Stand(pier.Along)),
        ("levels", Row(pier.Levels, l => Tree(
            ("height", Computed(l.Height, Dimension.Length)),
            ("area", Computed(l.Area, Dimension.Area)),
            ("mean", Computed(l.Mean, Dimension.Stress)),
            ("edge", Computed(l.Edge, Dimension.Stress))))));

    private static Figure Stand(PierStand stand)
    {
        var dimension = stand.Mode == "tipping" ? Dimension.Length : Dimension.Force;
        return Tree(
            ("mode", Name(stand.Mode)),
            ("asked", Computed(stand.Asked, dimension)),
            ("holds", Computed(stand.Holds, dimension)),
            ("load", Computed(stand.Load, Dimension.Force)),
            ("height", Computed(stand.Height, Dimension.Length)),
            ("case", Case(stand.Case)));
    }

    private static Figure Case(WallCase one) => Tree(
        ("combination", Name(one.Combination)),
        ("pattern", Name(one.Sense)),
        ("acts", Name(one.From is null ? "" : one.Shakes ? "earthquake" : "wind")),
        ("bearing", one.From is { } from ? Computed(from, Dimension.Angle) : new Figure.NotChecked(new Message("study.figure.no-direction"))),
        ("twist", Computed(one.Twist, Dimension.Number)),
        ("soil", one.Soil is { } side ? Computed(side, Dimension.Angle) : new Figure.NotChecked(new Message("study.figure.no-soil"))));
}
