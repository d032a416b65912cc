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

    /// <summary>Sizes beside the usual one that show the trend, m.</summary>
    private const double Coarse = 0.9, Fine = 0.3;

    /// <summary>What this leans on of the wall's numbers.</summary>
    private static readonly string[] Leant = ["wall-joint-friction", "wall-crack-tension", "wall-stiffness", "wall-cob-poisson", "wall-base-stiffness"];

    /// <summary>How hard a house may be pushed sideways, or why that is not known.</summary>
    /// <param name="geometry">The placed house.</param>
    /// <param name="roof">What the roof does.</param>
    /// <param name="seats">Where poles press.</param>
    /// <param name="strength">Characteristic strength of the cob, Pa, for the wall that cracks.</param>
    /// <param name="stop">Ends it.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static Known<CollapseResult> Of(HouseGeometry geometry, RoofResult roof, Sequence<PoleSeat> seats, double strength, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        ArgumentNullException.ThrowIfNull(roof);
        if (!(geometry.Wall.Top > geometry.Wall.Base))
        {
            return new Message("analysis.collapse.no-wall");
        }

        var pressing = Pressing(roof);
        if (pressing.Value is not { } forces)
        {
            return pressing.NotChecked!;
        }

        var numbers = WallNumbers.Of(geometry.House.Assumed);
        var joint = new JointStrength(numbers["wall-joint-friction"], 0);
        double[] off = [.. seats.Select(seat => seat.OffCentre)];
        double[] onLandings = [.. forces.PlateReaction.Select(force => Math.Max(0, force))];
        Limit Push(double size, double bearing, bool withBeam = true)
        {
            var blocks = new WallBlocks(geometry, size, joint, withBeam);
            return new Limit(size, bearing, blocks, LimitLoad.Of(blocks.Pushed(bearing, onLandings, off), stop: stop));
        }

        Limit[] all = [.. Enumerable.Range(0, Directions).Select(d => Push(UsualSize, 2 * Math.PI * d / Directions))];
        var weakest = all.MinBy(limit => limit.Answer.StaticFactor)!;
        Limit[] trend = [Push(Coarse, weakest.Bearing), weakest, Push(Fine, weakest.Bearing)];
        if (all.Concat(trend).FirstOrDefault(limit => limit.Answer.End != LimitLoadEnd.Found) is { } failed)
        {
            return new Message(failed.Answer.End == LimitLoadEnd.NoEquilibrium ? "analysis.collapse.does-not-stand" : "analysis.collapse.not-found");
        }

        var without = Push(UsualSize, weakest.Bearing, withBeam: false);
        return new CollapseResult
        {
            Weakest = weakest.Told,
            WithoutBeam = without.Answer.End == LimitLoadEnd.Found ? without.Told : new Message("analysis.collapse.not-found"),
            Directions = all.Select(limit => limit.Told).ToSequence(),
            Trend = trend.Select(limit => new BlockTrend(limit.Size, limit.Blocks.Blocks.Count(block => block is not null), limit.Answer.StaticFactor)).ToSequence(),
            Cracked = CrackedWalls.Push(geometry, strength, off.ToSequence(), onLandings, weakest.Bearing, 2 * weakest.Answer.StaticFactor, stop),
            Mechanism = Moving(geometry, weakest.Blocks, weakest.Answer).ToSequence(),
            Earthquake = Shaking(geometry, roof, weakest.Blocks.Weight, onLandings.Sum()),
            Weight = weakest.Blocks.Weight + onLandings.Sum(),
            Assumptions = numbers.Assumed(Leant),
        };
    }

    /// <summary>One search.</summary>
    private sealed record Limit(double Size, double Bearing, WallBlocks Blocks, LimitLoadAnswer Answer)
    {
        public WallCollapse Told => new(Bearing, Answer.StaticFactor, Answer.KinematicFactor);
    }

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
