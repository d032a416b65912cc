using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Roof;
using Clomwright.Analysis.WallTop;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Numerics.Frames;
using Clomwright.Numerics.RigidBlocks;

namespace Clomwright.Analysis.Collapse;

/// <summary>The wall as rigid blocks under its roof.</summary>
public static class FromRoof
{
    /// <summary>Directions of the push; between two of them the factor of a round house changes by a few per cent.</summary>
    public const int Directions = 8;

    /// <summary>The largest block of the usual answer, m.</summary>
    public const double UsualSize = 0.45;

    private static readonly double[] TrendSizes = [0.9, UsualSize, 0.3];

    /// <summary>How hard a house may be pushed sideways, or why that is not known.</summary>
    /// <param name="geometry">The placed house.</param>
    /// <param name="roof">What the roof does.</param>
    /// <param name="seats">Where poles press.</param>
    /// <param name="friction">Coefficient of friction of joints in cob.</param>
    /// <param name="tensionPa">Tension that joints between blocks of cob bear, Pa; none is the usual assumption.</param>
    /// <param name="strength">Characteristic strength of the cob, Pa, for the wall that cracks.</param>
    /// <param name="stop">Ends it.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static Known<CollapseResult> Of(
        HouseGeometry geometry, RoofResult roof, Sequence<PoleSeat> seats, double friction, double tensionPa, double strength, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        ArgumentNullException.ThrowIfNull(roof);
        if (!(geometry.Wall.Top > geometry.Wall.Base))
        {
            return new Message("analysis.collapse.no-wall");
        }

        if (Pressing(roof) is not { Value: { } forces } pressing)
        {
            return Pressing(roof).NotChecked!;
        }

        var joint = new JointStrength(friction, tensionPa);
        double[] off = [.. seats.Select(seat => seat.OffCentre)];
        double[] onLandings = [.. forces.PlateReaction];
        (WallBlocks Blocks, BlockSheet Sheet, LimitLoadAnswer Answer) Limit(double size, double bearing, bool withBeam)
        {
            var blocks = new WallBlocks(geometry, size, joint, withBeam);
            var sheet = blocks.Pushed(bearing, onLandings, off);
            return (blocks, sheet, LimitLoad.Of(sheet, stop: stop));
        }

        var all = Enumerable.Range(0, Directions).Select(d => 2 * Math.PI * d / Directions).Select(bearing => (Bearing: bearing, Limit: Limit(UsualSize, bearing, withBeam: true))).ToArray();
        if (all.Select(one => one.Limit.Answer.End).FirstOrDefault(end => end != LimitLoadEnd.Found) is var failed && all.Any(one => one.Limit.Answer.End != LimitLoadEnd.Found))
        {
            return new Message(failed == LimitLoadEnd.NoEquilibrium ? "analysis.collapse.does-not-stand" : "analysis.collapse.not-found");
        }

        var weakest = all.MinBy(one => one.Limit.Answer.StaticFactor);
        var without = Limit(UsualSize, weakest.Bearing, withBeam: false).Answer;
        var trend = TrendSizes.Select(size => (Size: size, Limit: size == UsualSize ? weakest.Limit : Limit(size, weakest.Bearing, withBeam: true))).ToArray();
        return new CollapseResult
        {
            Weakest = Told(weakest.Bearing, weakest.Limit.Answer),
            WithoutBeam = without.End == LimitLoadEnd.Found ? Told(weakest.Bearing, without) : new Message("analysis.collapse.not-found"),
            Directions = all.Select(one => Told(one.Bearing, one.Limit.Answer)).ToSequence(),
            Trend = trend.Where(t => t.Limit.Answer.End == LimitLoadEnd.Found)
                .Select(t => new BlockTrend(t.Size, t.Limit.Blocks.Blocks.Count(block => block is not null), t.Limit.Answer.StaticFactor)).ToSequence(),
            Cracked = CrackedWalls.Push(geometry, strength, off.ToSequence(), onLandings, weakest.Bearing, 2 * weakest.Limit.Answer.StaticFactor, stop),
            Mechanism = Moving(geometry, weakest.Limit.Blocks, weakest.Limit.Answer).ToSequence(),
            Earthquake = Shaking(geometry, roof, weakest.Limit.Blocks.Weight, onLandings.Sum(force => Math.Max(0, force))),
            Weight = weakest.Limit.Blocks.Weight + onLandings.Sum(force => Math.Max(0, force)),
        };
    }

    private static WallCollapse Told(double bearing, LimitLoadAnswer answer) => new(bearing, answer.StaticFactor, answer.KinematicFactor);

    /// <summary>The soaked roof, or the deck of a roof that carries no soil.</summary>
    private static Known<RoofForces> Pressing(RoofResult roof)
    {
        foreach (var stage in (string[])["soilWet", "decked"])
        {
            if ((roof.Reciprocal.Value?.Stage(stage) ?? roof.Plain.Value?.Stage(stage)) is { Value: { } forces })
            {
                return forces;
            }
        }

        return roof.Reciprocal.NotChecked is { Key: not "analysis.roof.not-reciprocal" } why ? why : roof.Plain.NotChecked ?? new Message("analysis.roof.none");
    }

    /// <summary>The code's share of the weight for a house of this height; where the weight sits does not change the share.</summary>
    private static Known<SeismicLoad> Shaking(HouseGeometry geometry, RoofResult roof, double wall, double onTop)
    {
        var height = (geometry.Wall.Top - geometry.Wall.Base).Metres;
        return Seismic.Of(geometry.House.Site, [new SeismicLevel(wall, height / 2), new SeismicLevel(onTop, height)], height + Sideways.HeightOf(roof) / 2);
    }

    private static IEnumerable<MovingBlock> Moving(HouseGeometry geometry, WallBlocks blocks, LimitLoadAnswer answer)
    {
        Vector3 Speed(int column) => new(answer.Rates[6 * column], answer.Rates[6 * column + 1], answer.Rates[6 * column + 2]);
        var fastest = Enumerable.Range(0, blocks.Blocks.Count).Where(column => blocks.Blocks[column] is not null).Max(column => Speed(column).Norm);
        for (var column = 0; column < blocks.Blocks.Count; column++)
        {
            if (blocks.Blocks[column] is { } block)
            {
                var (speed, station) = (1 / fastest * Speed(column), (block.From + block.To) / 2);
                var (normal, tangent) = (geometry.Curve.Normal(station), geometry.Curve.Tangent(station));
                yield return new MovingBlock(block, speed.X * normal.East + speed.Y * normal.North, speed.X * tangent.East + speed.Y * tangent.North, speed.Z);
            }
        }
    }
}
