using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Web.Scenes;

/// <summary>A cut through the foot of the wall: outward to the right, the inside face at the base at nothing.</summary>
internal static class GroundCut
{
    private const double Room = 1.1;
    private const double Above = 0.7;

    public static SectionView Of(HouseGeometry geometry, Pen pen)
    {
        var house = geometry.House;
        var (bottom, cut) = (house.Stem.Top.Metres, Math.Min(house.Stem.Top.Metres + Above, house.Wall.Top.Metres));
        var wall = geometry.Wall;
        var (stemIn, stemOut) = geometry.Stem;
        var grade = house.Site.Grade?.Metres;
        var middle = (stemIn + stemOut) / 2;
        var trenchTop = grade ?? 0;
        var foot = house.Trench is { } trench ? trenchTop - trench.Depth.Metres : Math.Min(trenchTop, -house.Floor.Layers.Sum(layer => layer.Depth.Metres)) - 0.1;
        var frost = house.Site.FrostDepth is { } deep && grade is { } ground ? ground - deep.Metres : (double?)null;
        var right = stemOut + Room;
        var lowest = Math.Min(foot, frost ?? foot) - 0.15;

        List<SectionPart> parts = [];
        List<SectionLine> lines = [];
        if (house.Trench is { } dug)
        {
            parts.Add(Box("trench", middle - dug.Width.Metres / 2, middle + dug.Width.Metres / 2, foot, trenchTop));
            if (dug.GradeBeam is { } beam)
            {
                parts.Add(Box("beam", middle - beam.Width.Metres / 2, middle + beam.Width.Metres / 2, trenchTop - beam.Depth.Metres, trenchTop));
            }
        }

        parts.Add(Box("stem", stemIn, stemOut, trenchTop, bottom));
        parts.Add(new SectionPart("cob", [Pen.Point(wall.InsideOffset(bottom), bottom), Pen.Point(wall.OutsideOffset(bottom), bottom), Pen.Point(wall.OutsideOffset(cut), cut), Pen.Point(wall.InsideOffset(cut), cut)]));
        var at = 0.0;
        foreach (var layer in house.Floor.Layers.Reverse())
        {
            parts.Add(Box("floor", -Room, Math.Min(stemIn, 0), at - layer.Depth.Metres, at));
            at -= layer.Depth.Metres;
        }

        lines.Add(Level("floor", -Room, Math.Min(stemIn, 0), 0, pen.Say("web.drawing.floor")));
        if (grade is { } outside)
        {
            lines.Add(new SectionLine("grade", Pen.Point(stemOut, outside), Pen.Point(right, outside - (house.Site.GroundFall?.RiseOverRun ?? 0) * (right - stemOut)), pen.Say("web.ground.level", ("what", new Message("web.drawing.grade")), ("at", LengthText.Written(house.Site.Grade!.Value, house.Units)))));
        }

        if (frost is { } freezes)
        {
            lines.Add(Level("frost", stemOut, right, freezes, pen.Say("web.ground.level", ("what", new Message("web.ground.frost")), ("at", LengthText.Written(house.Site.FrostDepth!.Value, house.Units)))));
        }

        if (house.Stem.DampBreak is not null)
        {
            lines.Add(Level("damp", stemIn, stemOut, bottom, pen.Say("web.ground.damp")));
        }

        return new SectionView(pen.Say("web.ground.section"), parts, lines, [Pen.Round(-Room), Pen.Round(right), Pen.Round(lowest), Pen.Round(cut)]);
    }

    private static SectionPart Box(string kind, double left, double right, double bottom, double top) => new(kind, [Pen.Point(left, bottom), Pen.Point(right, bottom), Pen.Point(right, top), Pen.Point(left, top)]);

    private static SectionLine Level(string kind, double left, double right, double at, string words) => new(kind, Pen.Point(left, at), Pen.Point(right, at), words);
}
