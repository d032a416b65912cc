using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Drying;

/// <summary>How the wall dries, by bay and lift; what it carries on the way. Bands, never dates: a forecast, not permission. Numbers, never a verdict.</summary>
public sealed record DryingResult
{
    /// <summary>How the lifts are laid.</summary>
    public required LiftMethod Method { get; init; }

    /// <summary>Day the first lift is laid.</summary>
    public required DateOnly Start { get; init; }

    /// <summary>Clockwise from the zero mark.</summary>
    public required Sequence<DryingBay> Bays { get; init; }

    /// <summary>With what is as likely as not; its water is what pictures show.</summary>
    public required WallDrying Middle { get; init; }

    /// <summary>With everything uncertain taken so that it dries faster.</summary>
    public required WallDrying Fast { get; init; }

    /// <summary>With everything uncertain taken so that it dries slower.</summary>
    public required WallDrying Slow { get; init; }

    /// <summary>Lifts, bottom up.</summary>
    public required Sequence<LiftBand> Lifts { get; init; }

    /// <summary>Height a lift of this mix and method may have today, m, the practice cap counted.</summary>
    public required Band HeightToday { get; init; }

    /// <summary>Days from the first lift until the roof may land; null where that was not reached within 1000 days.</summary>
    public required Band RoofAfter { get; init; }

    /// <summary>Days from the first lift until plaster may go on.</summary>
    public required Band PlasterAfter { get; init; }

    /// <summary>Gaps to leave over frames.</summary>
    public required Sequence<FrameGap> Gaps { get; init; }

    /// <summary>Numbers that tests, recipe and roof of this house told.</summary>
    public required Sequence<KnownNumber> Known { get; init; }

    /// <summary>What nobody gave.</summary>
    public required Sequence<Assumption> Assumptions { get; init; }

    /// <summary>How the height of a lift today and the gaps over frames were made; days come from the runs.</summary>
    public required Sequence<Calculation> Calculations { get; init; }

    /// <summary>What a builder is warned of at each lift: bulging, frost, joints that dry.</summary>
    public required Sequence<LiftWarning> LiftWarnings { get; init; }

    /// <summary>Their words.</summary>
    public Sequence<Message> Warnings => LiftWarnings.Select(w => w.Words).ToSequence();

    /// <summary>The highest lift that is practice for the method, m.</summary>
    public required double PracticeCap { get; init; }

    /// <summary>Joints between lifts that have dried when the next lift comes, in any case; the others keyed in all of them.</summary>
    public required Sequence<DriedJoint> Joints { get; init; }

    /// <summary>Blocks that the crew weighed, read.</summary>
    public required Sequence<BlockReading> Blocks { get; init; }

    /// <summary>Liquid diffusivity of the full cob in each case, m2/s: given, measured or assumed.</summary>
    public required Forecast Diffusivity { get; init; }

    /// <summary>The window of the next lift on one bay of a lift: bands over the cases, days after that lift was laid; null ends where not reached.</summary>
    /// <param name="lift">Its number, from 1.</param>
    /// <param name="bay">Its place in <see cref="Bays"/>.</param>
    public BayWindow WindowOf(int lift, int bay)
    {
        BayLift? In(WallDrying wall) => lift <= wall.Lifts.Count ? wall.Lifts[lift - 1].Bays[bay] : null;
        var (fast, middle, slow) = (In(Fast), In(Middle), In(Slow));
        return new(new(fast?.FirmAfter, middle?.FirmAfter, slow?.FirmAfter), new(fast?.KeysUntil, middle?.KeysUntil, slow?.KeysUntil));
    }
}

/// <summary>When the next lift may go on a bay.</summary>
/// <param name="Firm">Days until it carries the next lift.</param>
/// <param name="Keys">Days until its top no longer keys.</param>
public readonly record struct BayWindow(Forecast Firm, Forecast Keys);

/// <summary>A warning at one lift.</summary>
/// <param name="Lift">From 1 at the bottom; 0 for the whole wall.</param>
/// <param name="Words">What is said.</param>
public sealed record LiftWarning(int Lift, Message Words);

/// <summary>A joint that has dried when the next lift comes: as strong as what is done to it before.</summary>
/// <param name="Lift">The lift under it, from 1.</param>
/// <param name="Height">Of the joint, m from the finished floor.</param>
/// <param name="Bay">Where.</param>
/// <param name="Fast">Dried in the fast case.</param>
/// <param name="Middle">Dried in the middle case.</param>
/// <param name="Slow">Dried in the slow case.</param>
public sealed record DriedJoint(int Lift, double Height, DryingBay Bay, bool Fast, bool Middle, bool Slow);

/// <summary>A low and a high; null where an end was not reached in the time looked at.</summary>
public readonly record struct Band(double? Low, double? High);

/// <summary>A stretch of wall that faces one way.</summary>
/// <param name="Address">Of its pier, <c>arc 3</c> without openings; <c>#2</c> and on for further pieces of a long pier.</param>
/// <param name="From">Station it begins at, m.</param>
/// <param name="To">Station it ends at, m.</param>
/// <param name="Normal">Azimuth it faces, rad clockwise from north.</param>
public sealed record DryingBay(string Address, double From, double To, double Normal)
{
    /// <summary>The nearest of the eight winds that it faces: 0 north, then clockwise.</summary>
    public int Wind => (int)Math.Round(Normal / (Math.PI / 4)) % 8;
}

/// <summary>The wall in one case.</summary>
/// <param name="Lifts">Bottom up; as many as were laid in the time looked at.</param>
/// <param name="RoofDay">Day on which the roof may land, from the first lift; null if not reached.</param>
/// <param name="PlasterDay">Day on which plaster may go on; null if not reached.</param>
public sealed record WallDrying(Sequence<LiftDrying> Lifts, double? RoofDay, double? PlasterDay);

/// <summary>One lift in one case.</summary>
/// <param name="Number">From 1 at the bottom.</param>
/// <param name="LaidDay">Days after the first lift.</param>
/// <param name="LaidWater">Water content when laid.</param>
/// <param name="Bays">As the bays are listed.</param>
/// <param name="NextDay">Day of the next lift: the last bay to be firm; null if not reached.</param>
public sealed record LiftDrying(int Number, double LaidDay, double LaidWater, Sequence<BayLift> Bays, double? NextDay)
{
    /// <summary>Days until the last bay is firm; null while one is not.</summary>
    public double? Latest => Bays.Any(b => b.FirmAfter is null) ? null : Bays.Max(b => b.FirmAfter);
}

/// <summary>One lift in one bay.</summary>
/// <param name="FirmAfter">Days until it may take the next lift: firm, and no more than the practice cap laid in a day; null if not reached.</param>
/// <param name="KeysUntil">Days until its top is drier than plastic and no longer keys; null if later than was looked.</param>
/// <param name="SafetyWhenLaid">Strength over weight of the weakest band of the stack just after it is laid.</param>
/// <param name="JointDried">Whether the next lift comes when the top no longer keys: wet, scratch, hole, slip and re-key.</param>
/// <param name="Water">Mean water content at the end of each day from the day it is laid until the roof may land.</param>
public sealed record BayLift(double? FirmAfter, double? KeysUntil, double SafetyWhenLaid, bool JointDried, Sequence<double> Water)
{
    /// <summary>Days until its mean water is as near to rest as plaster asks; null if not reached before the roof may land.</summary>
    public double? DryAfter { get; init; }
}

/// <summary>A lift's windows over the cases.</summary>
/// <param name="Number">From 1 at the bottom.</param>
/// <param name="DaysToNext">Of the whole ring, which waits for its last bay: in the fast case and in the slow one.</param>
/// <param name="KeysFor">Days for which its top keys, the fast case's first bay and the slow case's last.</param>
/// <param name="Settles">How far the lift comes down until it is dry, m.</param>
/// <param name="FrostFrom">Whether the mean low of a month lies below freezing within the days in which young cob must not freeze.</param>
public sealed record LiftBand(int Number, Band DaysToNext, Band KeysFor, Band Settles, bool FrostFrom);

/// <summary>The gap over a frame.</summary>
/// <param name="Opening">Its name.</param>
/// <param name="Gap">m: what the cob beside it still comes down once it is bridged, and a margin.</param>
/// <param name="BridgeAfter">Days from the first lift until the cob under the header's ends has a firm skin.</param>
public sealed record FrameGap(string Opening, Band Gap, Band BridgeAfter);
