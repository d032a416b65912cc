using Clomwright.Analysis.Foundation;
using Clomwright.Analysis.Steps;
using Clomwright.Building;
using Clomwright.Geometry;
using Clomwright.Numerics.Factorisation;
using Clomwright.Numerics.Frames;
using Clomwright.Numerics.RigidBlocks;

namespace Clomwright.Analysis.Collapse;

/// <summary>One block of the wall, or one piece of the bond beam on it.</summary>
/// <param name="From">Station at which it begins, m.</param>
/// <param name="To">Station at which it ends, m.</param>
/// <param name="Bottom">Height of its bottom, m.</param>
/// <param name="Top">Height of its top, m.</param>
/// <param name="IsBeam">Whether it is timber.</param>
public sealed record WallBlock(double From, double To, double Bottom, double Top, bool IsBeam);

/// <summary>A wall cut into rigid blocks, with the bond beam as one more course; what loads them besides their weight is added by the direction of the push. Behind a niche the block is as thick as what is left.</summary>
internal sealed class WallBlocks
{
    /// <summary>Tension of joints that a header or the beam's bolted laps hold together, Pa: so large that they never open first.</summary>
    private const double HeldTogether = 1e7;

    /// <summary>Three points integrate a cubic: area times arm over a block of a smooth curve.</summary>
    private static readonly (double At, double Weight)[] Gauss = [(0.5 - Math.Sqrt(0.15), 5 / 18.0), (0.5, 8 / 18.0), (0.5 + Math.Sqrt(0.15), 5 / 18.0)];

    private readonly HouseGeometry geometry;
    private readonly BlockLines lines;
    private readonly JointStrength strength;
    private readonly SheetShape shape;
    private readonly WallBlock?[] blocks;
    private readonly Vector3[] centres;
    private readonly double[] weights;
    private readonly (double From, double To) beamOffsets;
    private readonly int courses;

    /// <summary>The blocks of a placed house.</summary>
    /// <param name="geometry">The house.</param>
    /// <param name="size">Length and height of the largest block, m.</param>
    /// <param name="strength">Of joints within the cob.</param>
    /// <param name="withBeam">Whether the bond beam is there and holds.</param>
    public WallBlocks(HouseGeometry geometry, double size, JointStrength strength, bool withBeam)
    {
        (this.geometry, this.strength) = (geometry, strength);
        lines = BlockLines.Of(geometry, size);
        courses = lines.Heights.Length - 1;
        var beam = withBeam ? geometry.House.BondBeam : null;
        shape = new SheetShape(lines.Stations.Length - 1, courses + (beam is null ? 0 : 1), closed: true);
        (blocks, centres, weights) = (new WallBlock?[shape.Columns], new Vector3[shape.Columns], new double[shape.Columns]);
        var top = geometry.Wall.Top.Metres;
        var middle = (geometry.Wall.InsideOffset(top) + geometry.Wall.OutsideOffset(top)) / 2 + (beam?.Offset.Metres ?? 0);
        beamOffsets = (middle - (beam?.Width.Metres ?? 0) / 2, middle + (beam?.Width.Metres ?? 0) / 2);
        for (var i = 0; i < shape.Around; i++)
        {
            for (var k = 0; k < shape.Up; k++)
            {
                var block = k < courses
                    ? new WallBlock(lines.Stations[i], lines.Stations[i + 1], lines.Heights[k], lines.Heights[k + 1], false)
                    : new WallBlock(lines.Stations[i], lines.Stations[i + 1], top, top + beam!.Depth.Metres, true);
                if (!IsHole(block))
                {
                    Place(shape.Column(i, k), block);
                }
            }
        }
    }

    /// <summary>The blocks by place on the sheet; null in openings.</summary>
    public IReadOnlyList<WallBlock?> Blocks => blocks;

    /// <summary>Weight of all of them, N.</summary>
    public double Weight => weights.Sum();

    /// <summary>Weight of the bond beam's pieces among them, N.</summary>
    public double BeamWeight => weights.Where((_, column) => blocks[column] is { IsBeam: true }).Sum();

    /// <summary>The blocks under their weight and the roof's, pushed along a bearing (radians clockwise from north) by a share of both.</summary>
    /// <param name="bearing">Towards which it pushes.</param>
    /// <param name="onLandings">What each pole presses on the wall, N, 0 or more, in the order of the landings.</param>
    /// <param name="offCentre">How far off the middle of the wall each presses, m outward.</param>
    /// <param name="thrust">What each pole pushes square out of the wall all the time, N.</param>
    public BlockSheet Pushed(double bearing, IReadOnlyList<double> onLandings, IReadOnlyList<double> offCentre, IReadOnlyList<double> thrust)
    {
        var along = new Vector3(Math.Sin(bearing), Math.Cos(bearing), 0);
        var dead = weights.Select(weight => Wrench.Through(new Vector3(0, 0, -weight))).ToArray();
        var live = weights.Select(weight => Wrench.Through(weight * along)).ToArray();
        var landings = geometry.Landings.Where(landing => !landing.Secondary).ToArray();
        for (var p = 0; p < Math.Min(landings.Length, onLandings.Count); p++)
        {
            var (force, under) = (onLandings[p], Under(landings[p].Station));
            if (under is { } column)
            {
                var arm = Seat(landings[p].Station, offCentre.Count > p ? offCentre[p] : null, blocks[column]!.Top) - centres[column];
                var outward = geometry.Curve.Normal(landings[p].Station);
                dead[column] += Wrench.At(arm, new Vector3(0, 0, -force) + (thrust.Count > p ? thrust[p] : 0) * new Vector3(outward.East, outward.North, 0));
                live[column] += Wrench.At(arm, force * along);
            }
        }

        return new BlockSheet(shape, [.. blocks.Select((block, column) => block is null ? null : new RigidBlock(centres[column], dead[column], live[column]))], [.. Joints()]);
    }

    private bool IsHole(WallBlock block)
    {
        var (s, z) = ((block.From + block.To) / 2, (block.Bottom + block.Top) / 2);
        return !block.IsBeam && geometry.Openings.Any(o => z > o.Sill && z < o.Head && IsWithin(s, o.Widest));
    }

    private bool IsWithin(double station, Span span) => geometry.Curve.Wrap(station - span.From) < span.Width;

    private void Place(int column, WallBlock block)
    {
        var (volume, moment) = (0.0, Vector3.Zero);
        foreach (var (along, ws) in Gauss)
        {
            var station = block.From + along * (block.To - block.From);
            foreach (var (up, wz) in Gauss)
            {
                var z = block.Bottom + up * (block.Top - block.Bottom);
                var (inside, outside) = Faces(block, z);
                foreach (var (through, wd) in Gauss)
                {
                    var offset = inside + through * (outside - inside);
                    var part = ws * wz * wd * (1 + offset * geometry.Curve.Curvature(station)) * (block.To - block.From) * (block.Top - block.Bottom) * (outside - inside);
                    volume += part;
                    moment += part * Point(station, offset, z);
                }
            }
        }

        var weight = block.IsBeam ? TakeDown.BeamWeight : TakeDown.CobDensity * UsUnits.Gravity;
        (blocks[column], centres[column], weights[column]) = (block, 1 / volume * moment, weight * volume);
    }

    /// <summary>Offsets of a block's two faces at a height; a niche's back is its face where there is one.</summary>
    public (double Inside, double Outside) Faces(WallBlock block, double height)
    {
        if (block.IsBeam)
        {
            return beamOffsets;
        }

        var (inside, outside) = (geometry.Wall.InsideOffset(height), geometry.Wall.OutsideOffset(height));
        var (s, z) = ((block.From + block.To) / 2, (block.Bottom + block.Top) / 2);
        foreach (var place in geometry.Niches.Where(n => z > n.Bottom && z < n.Top && IsWithin(s, n.Span)))
        {
            (inside, outside) = place.Niche.Face == Face.Inside
                ? (Math.Max(inside, geometry.Wall.InsideOffset(place.Bottom) + place.Niche.Depth.Metres), outside)
                : (inside, Math.Min(outside, geometry.Wall.OutsideOffset(place.Bottom) - place.Niche.Depth.Metres));
        }

        return (inside, outside);
    }

    /// <summary>What two blocks have in common of the thickness at a height; the lower one may be the stem.</summary>
    private (double Inside, double Outside) Common(WallBlock block, WallBlock? other, double height)
    {
        var own = Faces(block, height);
        return other is null || other.IsBeam != block.IsBeam ? own : Faces(other, height) is var its ? (Math.Max(own.Inside, its.Inside), Math.Min(own.Outside, its.Outside)) : own;
    }

    /// <summary>Where a block's weight acts.</summary>
    public Vector3 Centre(int column) => centres[column];

    /// <summary>A place in the wall.</summary>
    public Vector3 Point(double station, double offset, double height)
    {
        var point = geometry.Curve.At(station, offset);
        return new Vector3(point.East, point.North, height);
    }

    private Vector3 Seat(double station, double? offCentre, double height)
    {
        var top = geometry.Wall.Top.Metres;
        var middle = (geometry.Wall.InsideOffset(top) + geometry.Wall.OutsideOffset(top)) / 2;
        return Point(station, offCentre is { } off ? middle + off : (beamOffsets.From + beamOffsets.To) / 2, height);
    }

    /// <summary>The uppermost block under a station; null where an opening reaches the top.</summary>
    private int? Under(double station)
    {
        for (var i = 0; i < shape.Around; i++)
        {
            if (geometry.Curve.Wrap(station - lines.Stations[i]) < lines.Stations[i + 1] - lines.Stations[i])
            {
                return shape.Column(i, shape.Up - 1) is var column && blocks[column] is not null ? column : null;
            }
        }

        return null;
    }

    private IEnumerable<BlockJoint> Joints()
    {
        for (var i = 0; i < shape.Around; i++)
        {
            for (var k = 0; k < shape.Up; k++)
            {
                var column = shape.Column(i, k);
                if (blocks[column] is not { } block)
                {
                    continue;
                }

                var below = k == 0 ? (int?)null : shape.Column(i, k - 1);
                if (below is null || blocks[below.Value] is not null)
                {
                    yield return Bed(column, below, block);
                }

                var beside = shape.Column((i + shape.Around - 1) % shape.Around, k);
                if (blocks[beside] is not null)
                {
                    yield return Upright(column, beside, block);
                }
            }
        }
    }

    private BlockJoint Bed(int column, int? below, WallBlock block)
    {
        var (inside, outside) = Common(block, below is { } under ? blocks[under] : null, block.Bottom);
        Vector3[] corners =
        [
            Point(block.From, inside, block.Bottom), Point(block.From, outside, block.Bottom), Point(block.To, inside, block.Bottom), Point(block.To, outside, block.Bottom),
        ];
        var area = (outside - inside) * geometry.Curve.OffsetArc(block.From, block.To, (inside + outside) / 2);
        return new BlockJoint(column, below, new Vector3(0, 0, 1), corners, area, block.IsBeam ? strength with { TensionPa = 0 } : strength);
    }

    private BlockJoint Upright(int column, int beside, WallBlock block)
    {
        var ((lowIn, lowOut), (highIn, highOut)) = (Common(block, blocks[beside], block.Bottom), Common(block, blocks[beside], block.Top));
        Vector3[] corners =
        [
            Point(block.From, lowIn, block.Bottom), Point(block.From, lowOut, block.Bottom), Point(block.From, highIn, block.Top), Point(block.From, highOut, block.Top),
        ];
        var tangent = geometry.Curve.Tangent(block.From);
        var area = (block.Top - block.Bottom) * (lowOut - lowIn + highOut - highIn) / 2;
        var held = block.IsBeam || geometry.Openings.Any(o => o.Header is { } header && IsHeldBy(header, block));
        return new BlockJoint(column, beside, new Vector3(tangent.East, tangent.North, 0), corners, area, held ? strength with { TensionPa = HeldTogether } : strength);
    }

    /// <summary>Whether a header runs through the joint at a block's beginning.</summary>
    private bool IsHeldBy(HeaderPlace header, WallBlock block) =>
        (block.Bottom + block.Top) / 2 is var z && z > header.Bottom && z < header.Top && geometry.Curve.Wrap(block.From - header.Span.From) < header.Span.Width;
}
