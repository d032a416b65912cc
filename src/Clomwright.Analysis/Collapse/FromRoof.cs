using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Roof;
using Clomwright.Analysis.Steps;
using Clomwright.Analysis.WallTop;
using Clomwright.Evidence;
using Clomwright.Geometry;
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

    /// <summary>About how much of the whole work the blocks are; the cracking wall is the rest.</summary>
    private const double BlocksShare = 0.3;

    /// <summary>What this leans on of the wall's numbers.</summary>
    private static readonly string[] Leant = ["wall-joint-friction", "wall-tension-share", "wall-crack-tension", "wall-stiffness", "wall-cob-poisson", "wall-base-stiffness"];

    /// <summary>How hard a house may be pushed sideways, or why that is not known.</summary>
    /// <param name="geometry">The placed house.</param>
    /// <param name="roof">What the roof does.</param>
    /// <param name="seats">Where poles press.</param>
    /// <param name="strength">Characteristic strength of the cob, Pa, for the wall that cracks and for toes that crush.</param>
    /// <param name="watch">Who waits; null where nobody does.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static Known<CollapseResult> Of(HouseGeometry geometry, RoofResult roof, Sequence<PoleSeat> seats, double strength, Watch? watch = null)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        ArgumentNullException.ThrowIfNull(roof);
        watch ??= Watch.None;
        if (!(geometry.Wall.Top > geometry.Wall.Base))
        {
            return new Message("analysis.collapse.no-wall");
        }

        var pressing = Pressing(roof);
        if (pressing.Value is not { } press)
        {
            return pressing.NotChecked!;
        }

        var numbers = WallNumbers.Of(geometry.House.Assumed);
        var joint = new JointStrength(numbers["wall-joint-friction"], 0);
        double[] off = [.. seats.Select(seat => seat.OffCentre)];
        double[] onLandings = [.. press.Forces.PlateReaction.Select(force => Math.Max(0, force))];
        double[] thrust = [.. press.Forces.PlateSidewaysInSpace.Select(Math.Abs)];
        var done = 0.0;
        Limit Push(double size, double bearing, bool withBeam = true)
        {
            var blocks = new WallBlocks(geometry, size, joint, withBeam);
            var sheet = blocks.Pushed(bearing, onLandings, off, thrust);
            var limit = new Limit(size, bearing, blocks, sheet, LimitLoad.Of(sheet, stop: watch.Cancelled));
            watch.Tell?.Invoke(done += BlocksShare / (Directions + 3));
            return limit;
        }

        Limit[] all = [.. Enumerable.Range(0, Directions).Select(d => Push(UsualSize, 2 * Math.PI * d / Directions))];
        var weakest = all.MinBy(limit => limit.Answer.StaticFactor)!;
        Limit[] trend = [Push(Coarse, weakest.Bearing), weakest, Push(Fine, weakest.Bearing)];
        if (all.Concat(trend).FirstOrDefault(limit => limit.Answer.End != LimitLoadEnd.Found) is { } failed)
        {
            return new Message(failed.Answer.End == LimitLoadEnd.NoEquilibrium ? "analysis.collapse.does-not-stand" : "analysis.collapse.not-found");
        }

        var without = Push(UsualSize, weakest.Bearing, withBeam: false);
        var falls = new FallingBlocks(geometry, weakest.Blocks, weakest.Sheet, weakest.Answer);
        var earthquake = Shaking(geometry, roof, weakest.Blocks.Weight, onLandings.Sum());
        var cracking = watch with { Tell = share => watch.Tell?.Invoke(BlocksShare + (1 - BlocksShare) * share) };
        return new CollapseResult
        {
            Weakest = weakest.Told,
            WithoutBeam = without.Answer.End == LimitLoadEnd.Found ? without.Told : new Message("analysis.collapse.not-found"),
            Directions = all.Select(limit => limit.Told).ToSequence(),
            Trend = trend.Select(limit => new BlockTrend(limit.Size, limit.Blocks.Blocks.Count(block => block is not null), limit.Answer.StaticFactor)).ToSequence(),
            Cracked = CrackedWalls.Push(geometry, strength, off.ToSequence(), onLandings, thrust, weakest.Bearing, 2 * weakest.Answer.StaticFactor, earthquake.Value?.Coefficient ?? weakest.Answer.StaticFactor, cracking),
            Mechanism = falls.Moving.ToSequence(),
            ByHand = new HandMechanisms(geometry, numbers, seats, onLandings, strength).All,
            How = Shown(weakest, trend, falls, onLandings.Sum(), earthquake.Value),
            Earthquake = earthquake,
            Weight = weakest.Blocks.Weight + onLandings.Sum(),
            Stage = press.Stage,
            ThrustMost = thrust.DefaultIfEmpty().Max(),
            Assumptions = numbers.Assumed(Leant),
        };
    }

    /// <summary>One search.</summary>
    private sealed record Limit(double Size, double Bearing, WallBlocks Blocks, BlockSheet Sheet, LimitLoadAnswer Answer)
    {
        public WallCollapse Told => new(Bearing, Answer.StaticFactor, Answer.KinematicFactor);
    }

    /// <summary>Weight, work, and what is held against what.</summary>
    private static Calculation Shown(Limit weakest, Limit[] trend, FallingBlocks falls, double roof, SeismicLoad? earthquake)
    {
        var mechanics = Sources.Get("mechanics");
        var sheet = new Worksheet("collapse");
        Symbol cob = Worksheet.Computed("W_w", "wall-weight", weakest.Blocks.Weight - weakest.Blocks.BeamWeight, Dimension.Force),
            beam = Worksheet.Computed("W_b", "beam-weight", weakest.Blocks.BeamWeight, Dimension.Force), onTop = Worksheet.Computed("N_r", "roof-weight", roof, Dimension.Force);
        sheet.Step("collapse-weight", "W", "W_w + W_b + N_r", weakest.Blocks.Weight + roof, Dimension.Force, mechanics, cob, beam, onTop);
        Symbol raised = Worksheet.Computed("A_W", "work-raised", falls.Raised, Dimension.Moment), parted = Worksheet.Computed("A_T", "work-parted", falls.Parted, Dimension.Moment),
            pushed = Worksheet.Computed("A_1", "work-pushed", falls.Pushed, Dimension.Moment);
        sheet.Step("collapse-work", "l_k", "(A_W + A_T)/A_1", (falls.Raised + falls.Parted) / falls.Pushed, Dimension.Number, Sources.Get("livesley-1978-memory"), raised, parted, pushed);
        Symbol Of(string name, string word, Limit limit) => Worksheet.Computed(name, word, limit.Answer.StaticFactor, Dimension.Number);
        var least = sheet.Step(
            "collapse-least", "l", "min(l_1, min(l_2, l_3))", trend.Min(t => t.Answer.StaticFactor), Dimension.Number, mechanics,
            Of("l_1", "factor-coarse", trend[0]), Of("l_2", "factor-usual", trend[1]), Of("l_3", "factor-fine", trend[2]));
        if (earthquake is { } shaking)
        {
            var asked = Worksheet.Computed("C_s", "seismic-coefficient", shaking.Coefficient, Dimension.Number);
            sheet.Step("collapse-used", "u", "C_s/l", shaking.Coefficient / least.Value.Si, Dimension.Number, mechanics, asked, least);
        }

        return sheet.Done;
    }

    /// <summary>The soaked roof, or the deck of a roof that carries no soil.</summary>
    private static Known<Pressed> Pressing(RoofResult roof)
    {
        foreach (var stage in (string[])["soilWet", "decked"])
        {
            if ((roof.Reciprocal.Value?.Stage(stage) ?? roof.Plain.Value?.Stage(stage)) is { Value: { } forces })
            {
                return new Pressed(stage, forces);
            }
        }

        return roof.Reciprocal.NotChecked is { Key: not "analysis.roof.not-reciprocal" } why ? why : roof.Plain.NotChecked ?? new Message("analysis.roof.none");
    }

    private sealed record Pressed(string Stage, RoofForces Forces);

    /// <summary>The code's share of the weight for a house of this height; where the weight sits does not change the share.</summary>
    private static Known<SeismicLoad> Shaking(HouseGeometry geometry, RoofResult roof, double wall, double onTop)
    {
        var height = (geometry.Wall.Top - geometry.Wall.Base).Metres;
        return Seismic.Of(geometry.House.Site, [new SeismicLevel(wall, height / 2), new SeismicLevel(onTop, height)], height + Sideways.HeightOf(roof) / 2);
    }
}
