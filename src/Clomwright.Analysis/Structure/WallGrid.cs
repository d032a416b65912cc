using Clomwright.Geometry;
using Clomwright.Numerics.Frames;
using Clomwright.Numerics.Solid;

namespace Clomwright.Analysis.Structure;

/// <summary>How finely a wall is divided.</summary>
/// <param name="Unknowns">About how many unknowns a wall without openings would have.</param>
/// <param name="Through">Cells through the thickness, two or more: the stress on a face is carried on from their middles.</param>
public readonly record struct WallFineness(int Unknowns, int Through)
{
    /// <summary>What findings are made of.</summary>
    public static WallFineness Usual => new(20_000, 2);

    /// <summary>Three times as many unknowns, to see how far the usual answer is off.</summary>
    public static WallFineness Fine => new(60_000, 3);
}

/// <summary>The division of a wall: s stations along the inside curve, z heights, t the share of the thickness from the inside. A last row above the cob is the bond beam.</summary>
/// <remarks>Lines are moved onto jambs, sills, heads and both ends of headers, the shift fading over three cells; edges that no line meets cut cells.</remarks>
internal static class WallGrid
{
    private const int Reach = 3;
    private const int LeastAround = 24;
    private const int LeastUp = 4;

    /// <summary>The grid of a placed house.</summary>
    public static SolidGrid Of(HouseGeometry geometry, WallFineness fineness)
    {
        var wall = geometry.Wall;
        double bottom = wall.Base.Metres, top = wall.Top.Metres, length = geometry.Curve.Length;
        var cell = Math.Sqrt(3 * (fineness.Through + 1) * length * (top - bottom) / fineness.Unknowns);
        var middle = (bottom + top) / 2;
        var jambs = geometry.Openings.SelectMany(o =>
            HoleSection.Of(geometry, o).JambsAt((wall.InsideOffset(middle) + wall.OutsideOffset(middle)) / 2) is { } span ? new[] { span.From, span.To } : []);
        var headers = geometry.Openings.SelectMany(o => o.Header is { Span: var reach } ? new[] { reach.From, reach.To } : []);
        var levels = geometry.Openings.SelectMany(o => o.Header is { } header ? [o.Sill, o.Head, header.Bottom, header.Top] : new[] { o.Sill, o.Head });
        var s = GridLines.Fitted(GridLines.Even(0, length, Math.Max(LeastAround, (int)Math.Round(length / cell))), jambs.Concat(headers), Reach, isClosed: true);
        IEnumerable<double> z = GridLines.Fitted(GridLines.Even(bottom, top, Math.Max(LeastUp, (int)Math.Round((top - bottom) / cell))), levels, Reach, isClosed: false);
        if (geometry.House.BondBeam is { Depth.Nanometres: > 0 } beam)
        {
            z = z.Append(top + beam.Depth.Metres);
        }

        return SolidGrid.Map(s, [.. z], GridLines.Even(0, 1, fineness.Through), closed: true, (along, up, through) =>
        {
            var height = Math.Min(up, top);
            var (inside, outside) = (wall.InsideOffset(height), wall.OutsideOffset(height));
            var point = geometry.Curve.At(along, inside + through * (outside - inside));
            return new Vector3(point.East, point.North, up);
        });
    }
}
