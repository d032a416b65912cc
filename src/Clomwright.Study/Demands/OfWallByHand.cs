using Clomwright.Analysis.Members;
using Clomwright.Analysis.Mix;
using Clomwright.Analysis.Roof;
using Clomwright.Analysis.WallByHand;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Rules;

namespace Clomwright.Study.Demands;

/// <summary>The wall worked by hand as the rules read it.</summary>
/// <remarks>
/// Along the wall, in the joints and at the foot the hardest stands for all. Where a hand check leaves out what may well hold (the bond beam, the cob over and under openings, joints that keyed, braces while it is built), more than it allows goes to a person and does not fall short by itself.
/// </remarks>
internal static class OfWallByHand
{
    private static readonly string[] Rules = ["pier-load", "pier-edge", "wall-out-of-plane", "wall-in-plane", "lift-joint", "house-overturning", "free-wall", "pole-drop", "wet-foot", "wall-soil"];

    /// <summary>Every demand of the wall; none for a house without a roof.</summary>
    /// <param name="house">The description.</param>
    /// <param name="roof">What presses on the wall.</param>
    /// <param name="hand">The wall.</param>
    /// <param name="mix">What its cob may carry.</param>
    public static IEnumerable<CheckedDemand> Demands(House house, RoofResult roof, WallByHandResult hand, MixResult mix)
    {
        if (house.Roof is null)
        {
            return [];
        }

        if (roof.Combined.States.Count == 0)
        {
            var why = roof.Combined.Missing is [var first, ..] ? first : new Message("analysis.roof.none");
            return Rules.Select(rule => CheckedDemand.Unknown(rule, "wall", why));
        }

        var missing = roof.Combined.Missing is [var lacks, ..] ? lacks : null;
        return
        [
            .. hand.Piers.SelectMany(p => new[] { Pier(FromResults.Member(p.Mean, missing), p, mix, c => c.Use), Edge(Pier(FromResults.Member(p.Edge, missing), p, mix, c => c.Edge)) }),
            .. hand.OutOfPlane.Select(m => OutOfPlane(house, hand, m, missing)),
            InPlane(hand, missing),
            Joint(hand, missing),
            FromResults.Member(hand.Overturning, missing),
            .. hand.Soil.Select(m => FromResults.Member(m, null) with { Notes = m.Check.Value is { } check ? [new Message("study.demand.soil-alone"), .. FromResults.Unsure(check)] : [] }),
            .. hand.Green.Free.Select(m => Free(house, hand, m)),
            Drop(hand),
            Wet(hand, missing),
        ];
    }

    /// <summary>At an edge a third more than the mean may be counted as masonry is in bending (TMS 402: f/3 beside f/4): between the two a person answers.</summary>
    private static CheckedDemand Edge(CheckedDemand demand) => demand is { Demand: { } edge, Capacity: { } allowed } && edge.Si <= allowed.Si * 4 / 3
        ? demand with { Question = Message.Of("study.ask.pier-edge", ("pier", new Argument.Subject(demand.Subject)), ("edge", edge), ("allowed", allowed)) }
        : demand;

    /// <summary>Where in the pier, and by whose strength.</summary>
    private static CheckedDemand Pier(CheckedDemand demand, PierByHand pier, MixResult mix, Func<CutStress, double> hardest)
    {
        var cut = pier.Cuts.MaxBy(hardest)!;
        return demand with
        {
            Notes =
            [
                .. demand.Notes,
                Message.Of(
                    "study.demand.pier-cut", ("where", Where(cut)), ("height", Amount.Metres(cut.Height)), ("load", new Amount(cut.Load, Dimension.Force)), ("width", Amount.Metres(cut.Width)),
                    ("thickness", Amount.Metres(cut.Thickness)), ("off", Amount.Metres(Math.Abs(cut.Across)))),
                mix.Strength.Tag == Tag.Measured
                    ? Message.Of("study.demand.cob-measured", ("why", mix.Strength.Why), ("allowed", new Amount(mix.Strength.Allowable, Dimension.Stress)))
                    : Message.Of("study.demand.assumed", ("what", mix.Strength.Assumption!.What), ("source", mix.Strength.Assumption.Source)),
            ],
        };
    }

    private static Argument Where(CutStress cut) => cut.Where is "head" or "middle" or "sill" or "foot" ? new Message($"study.cut.{cut.Where}") : Message.Of("study.cut.pole", ("pole", cut.Where));

    private static CheckedDemand OutOfPlane(House house, WallByHandResult hand, CheckedMember member, Message? missing)
    {
        var demand = FromResults.Member(member, missing);
        if (demand.NotChecked is not null || house.BondBeam is null || !member.Subject.EndsWith("free at its top", StringComparison.Ordinal))
        {
            return demand;
        }

        var held = hand.OutOfPlane.FirstOrDefault(m => m.Subject == member.Subject.Replace("free at", "held at", StringComparison.Ordinal))?.Check.Value?.How.Steps.FirstOrDefault(s => s.Key == "wall-top-held");
        Argument pier = new Argument.Subject(member.Subject.Split(',')[0]);
        return demand with
        {
            Question = held?.Result.Value.Si is var force and > 0
                ? Message.Of("study.ask.wall-free", ("pier", pier), ("force", new Amount(force.Value, Dimension.Force)))
                : Message.Of("study.ask.wall-free-still", ("pier", pier)),
        };
    }

    /// <summary>The pier that is used most.</summary>
    private static CheckedDemand InPlane(WallByHandResult hand, Message? missing)
    {
        var member = hand.InPlane.FirstOrDefault(m => !m.Check.Is) ?? hand.InPlane.MaxBy(m => m.Check.Value!.Use)!;
        var demand = FromResults.Member(member, missing);
        return demand.NotChecked is not null || hand.Along.FirstOrDefault(a => a.Address == member.Subject) is not { } along ? demand : demand with
        {
            Notes = [.. demand.Notes, Message.Of(
                "study.demand.pier-along", ("mode", new Message($"study.mode.{along.Mode}")), ("rocking", new Amount(along.Rocking, Dimension.Force)), ("sliding", new Amount(along.Sliding, Dimension.Force)),
                ("cracking", new Amount(along.Cracking, Dimension.Force)))],
            Question = Message.Of("study.ask.wall-in-plane", ("pier", new Argument.Subject(member.Subject)), ("demand", demand.Demand!.Value), ("capacity", demand.Capacity!.Value), ("mode", new Message($"study.mode.{along.Mode}"))),
        };
    }

    /// <summary>The joint that is used most.</summary>
    private static CheckedDemand Joint(WallByHandResult hand, Message? missing)
    {
        if (hand.Joints.FirstOrDefault(j => !j.Check.Is) is { } unknown)
        {
            return FromResults.Member(unknown, missing);
        }

        if (hand.Joints.Count == 0)
        {
            return CheckedDemand.Unknown("lift-joint", "wall", new Message("study.demand.no-joints"));
        }

        var worst = hand.Joints.MaxBy(j => j.Check.Value!.Use)!;
        return FromResults.Member(worst, missing) with
        {
            Question = Message.Of("study.ask.lift-joint", ("joint", new Argument.Subject(worst.Subject)), ("demand", worst.Check.Value!.Demand), ("capacity", worst.Check.Value.Capacity)),
        };
    }

    private static CheckedDemand Free(House house, WallByHandResult hand, CheckedMember member)
    {
        var demand = member.Check.Value is { } check
            ? CheckedDemand.Held("free-wall", member.Subject, check.Demand, check.Capacity) with { Notes = [Message.Of("study.demand.governs-by", ("combination", check.Combination)), .. FromResults.Unsure(check)] }
            : CheckedDemand.Unknown("free-wall", member.Subject, member.Check.NotChecked!);
        var brace = member.Subject == "at a free end" ? hand.Green.BraceEnd : hand.Green.BraceMiddle;
        return brace is { } height ? demand with { Question = Message.Of("study.ask.free-wall", ("where", new Argument.Subject(member.Subject)), ("height", Amount.Metres(house.Stem.Top.Metres + height))) } : demand;
    }

    private static CheckedDemand Drop(WallByHandResult hand) => hand.Green.PoleDrop is var member && member.Check.Value is { } check
        ? CheckedDemand.Held("pole-drop", member.Subject, check.Demand, check.Capacity) with
        {
            Question = new Message("study.ask.pole-drop"),
            Notes = [Message.Of("study.demand.pole-dent", ("dent", check.How.Steps.First(s => s.Key == "pole-dent").Result.Value)), .. FromResults.Unsure(check)],
        }
        : CheckedDemand.Unknown("pole-drop", member.Subject, member.Check.NotChecked!);

    /// <summary>The pier that stands least water.</summary>
    private static CheckedDemand Wet(WallByHandResult hand, Message? missing)
    {
        var worst = hand.Wet.Checks.First(c => c.Subject == hand.Wet.Worst);
        var pier = hand.Wet.Piers.First(p => p.Address == hand.Wet.Worst);
        return FromResults.Member(worst, missing) with
        {
            Question = Message.Of("study.ask.wet-foot", ("pier", new Argument.Subject(pier.Address)), ("safe", Amount.Fraction(pier.WaterSafe)), ("gone", Amount.Fraction(pier.WaterGone)), ("plastic", Amount.Fraction(hand.Wet.PlasticLimit))),
            Notes = [.. FromResults.Member(worst, missing).Notes, Message.Of(
                "study.demand.wet-foot", ("safe", Amount.Fraction(pier.WaterSafe)), ("gone", Amount.Fraction(pier.WaterGone)), ("skin", Amount.Metres(pier.SkinSafe)), ("skinGone", Amount.Metres(pier.SkinGone)))],
        };
    }
}
