using Clomwright.Analysis.Comfort;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Outline = Clomwright.Papers.Drawing.Outline;

namespace Clomwright.Papers.Views;

/// <summary>The floor from above with the sun that falls on it at one hour, north up.</summary>
public static class SunPlan
{
    private const int Steps = 96;

    /// <summary>Draws it.</summary>
    /// <param name="geometry">Of the house.</param>
    /// <param name="patches">Of the hour.</param>
    /// <param name="paperPerMetre">Scale, mm on paper for each metre.</param>
    public static (Sequence<Mark> Marks, PaperBox View) Of(HouseGeometry geometry, Sequence<SunPatch> patches, double paperPerMetre)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        var board = new Board();
        var (curve, outside) = (geometry.Curve, geometry.Wall.OutsideOffset(geometry.Wall.Base.Metres));
        PaperPoint At(PlanPoint p) => new((p.East - curve.Centre.East) * paperPerMetre, -(p.North - curve.Centre.North) * paperPerMetre);
        PaperPoint[] Ring(double offset) => [.. Enumerable.Range(0, Steps).Select(i => At(curve.At(i * curve.Length / Steps, offset)))];
        foreach (var patch in patches.Where(p => p.Floor.Count > 2))
        {
            var area = Outline.Polygon(patch.Floor.Select(At));
            board.Add(new Hatch(area, 0, 0.9, new Pen(Weight.Thin)));
            board.Add(new Stroke(area, new Pen(Weight.Thin)));
        }

        var (inner, outer) = (Ring(0), Ring(outside));
        board.Add(new Fill(Outline.Of(Outline.Polygon(inner), Outline.Polygon(outer)), Tone.Paper));
        board.Add(new Stroke(Outline.Polygon(inner), new Pen(Weight.Medium)));
        board.Add(new Stroke(Outline.Polygon(outer), new Pen(Weight.Medium)));
        for (var i = 0; i < geometry.Openings.Count; i++)
        {
            var place = geometry.Openings[i];
            // The opening as a gap in the ring, closed by thin lines.
            IEnumerable<PaperPoint> Run(double offset) => Enumerable.Range(0, 9).Select(k => At(curve.At(place.Inside.From + k * place.Inside.Width / 8, offset)));
            var gap = Outline.Polygon(Run(0).Concat(Run(outside).Reverse()));
            board.Add(new Fill(gap, Tone.Paper));
            board.Add(new Stroke(gap, new Pen(Weight.Hair)));
            var middle = At(place.Middle + outside / 2 * place.Normal);
            board.Say(Ids.Letter(i), middle.X, middle.Y + Styles.SmallStrong.Digits / 2, Styles.SmallStrong, Anchor.Middle);
        }

        return (board.Marks, board.Marks.Bounds().Inset(-0.5));
    }
}
