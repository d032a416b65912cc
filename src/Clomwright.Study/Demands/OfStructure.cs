using Clomwright.Analysis;
using Clomwright.Analysis.Mix;
using Clomwright.Analysis.Structure;
using Clomwright.Evidence;
using Clomwright.Rules;

namespace Clomwright.Study.Demands;

/// <summary>What the model of the whole wall asks of its cob.</summary>
internal static class OfStructure
{
    private const int ZonesNamed = 4;

    private static readonly string[] Rules = ["wall-edge-pressure", "wall-under-pole", "wall-tension", "wall-foot", "wall-header-bearing", "wall-across", "wall-along", "wall-twist"];

    public static Sequence<CheckedDemand> Demands(Known<StructureResult> structure, MixResult mix) => structure.Value is { } wall
        ?
        [
            .. wall.Piers.Select(p => Edge(wall, p, mix)),
            .. wall.Landings.Select(l => UnderPole(wall, l, mix)),
            Tension(wall), Foot(wall),
            .. wall.Headers.Select(h => UnderHeader(wall, h, mix)),
            .. wall.Piers.Select(p => Standing(wall, "wall-across", p, p.Across)), .. wall.Piers.Select(p => Standing(wall, "wall-along", p, p.Along)),
            Twist(wall),
        ]
        : Rules.Select(rule => CheckedDemand.Unknown(rule, "wall", structure.NotChecked!)).ToSequence();

    private static Message Governs(WallCase one) => Message.Of("study.demand.governs-stage", ("stage", WallWords.Case(one)));

    private static CheckedDemand Edge(StructureResult wall, PierStress pier, MixResult mix) =>
        CheckedDemand.Held("wall-edge-pressure", pier.Address, Pressure(pier.EdgeMost), Pressure(wall.Allowed.Value)) with
        {
            Missing = wall.Missing,
            Notes =
            [
                Governs(pier.EdgeCase), At(pier.EdgeStation, pier.EdgeHeight, pier.EdgeOutside),
                Message.Of("study.demand.wall-mean", ("mean", Pressure(pier.MeanMost)), ("height", Amount.Metres(pier.MeanAt))),
                Grid(wall, WallPrecision.Edge), Cob(mix), .. Unsure(wall),
            ],
        };

    private static CheckedDemand UnderPole(StructureResult wall, LandingStress landing, MixResult mix) =>
        CheckedDemand.Held("wall-under-pole", landing.Name, Pressure(landing.Pressure), Pressure(mix.Strength.Allowable)) with
        {
            Missing = wall.Missing,
            Notes =
            [
                Governs(landing.Case), Message.Of("study.demand.wall-spread", ("length", Amount.Metres(landing.Spread))), Grid(wall, WallPrecision.UnderPole), Cob(mix),
            ],
        };

    /// <summary>Below the level nobody looks into it; above it a person says what stands once it has cracked: it is never met by tension that cob may hold.</summary>
    private static CheckedDemand Tension(StructureResult wall)
    {
        var worst = wall.Tension.Count > 0 ? wall.Tension[0] : null;
        var most = Pressure(Math.Max(0, wall.TensionMost));
        return CheckedDemand.Held("wall-tension", "wall", most, Pressure(wall.TensionLevel)) with
        {
            Missing = wall.Missing,
            Question = worst is null ? null : Message.Of("study.ask.wall-tension", ("tension", most), ("place", WallWords.Place(worst))),
            Notes =
            [
                .. worst is null ? [] : (Message[])[Governs(worst.Case)],
                .. wall.Tension.Take(ZonesNamed).Select(Zone),
                .. wall.Headers.Count > 0 ? [new Message("study.demand.wall-bond")] : (Message[])[],
                new Message("study.demand.wall-uncracked"), Grid(wall, WallPrecision.Tension),
            ],
        };
    }

    private static CheckedDemand Foot(StructureResult wall) =>
        CheckedDemand.Held("wall-foot", "wall", Amount.Count(wall.Base.Standing ? 0 : 1), Amount.Count(0)) with
        {
            Missing = wall.Missing,
            Notes =
            [
                wall.Base.Pulling == 0 ? Message.Of("study.demand.wall-presses", ("cases", wall.Cases))
                    : Message.Of("study.demand.wall-lets-go", ("cases", wall.Cases), ("pulling", wall.Base.Pulling), ("share", Amount.Fraction(wall.Base.LiftedMost))),
                .. wall.Base.LiftedCase is { } one ? [Governs(one)] : (Message[])[],
            ],
        };

    /// <summary>Named as the hand check names it, with the end.</summary>
    private static CheckedDemand UnderHeader(StructureResult wall, HeaderStress header, MixResult mix) =>
        CheckedDemand.Held("wall-header-bearing", $"{header.Opening}/header, {(header.Left ? "left" : "right")}", Pressure(header.Pressure), Pressure(mix.Strength.Allowable)) with
        {
            Missing = wall.Missing,
            Notes = [Governs(header.Case), Grid(wall, WallPrecision.UnderPole), Cob(mix)],
        };

    /// <summary>The elastic wall shares by stiffness: what it asks of one pier more than that pier passes on goes to others once it gives way, so that a person answers.</summary>
    private static CheckedDemand Standing(StructureResult wall, string rule, PierStress pier, PierStand stand)
    {
        var tips = stand.Mode == "tipping";
        Amount Of(double value) => tips ? Amount.Metres(value) : new Amount(value, Dimension.Force);
        return CheckedDemand.Held(rule, pier.Address, Of(stand.Asked), Of(stand.Holds)) with
        {
            Missing = wall.Missing,
            Question = Message.Of(
                $"study.ask.{rule}", ("pier", new Argument.Subject(pier.Address)), ("mode", new Message($"study.stand.{stand.Mode}")), ("asked", Of(stand.Asked)), ("holds", Of(stand.Holds)), ("height", Amount.Metres(stand.Height))),
            Notes =
            [
                Governs(stand.Case),
                Message.Of("study.demand.wall-stands", ("mode", new Message($"study.stand.{stand.Mode}")), ("height", Amount.Metres(stand.Height)), ("load", new Amount(stand.Load, Dimension.Force))),
                new Message("study.demand.wall-elastic"),
            ],
        };
    }

    private static CheckedDemand Twist(StructureResult wall)
    {
        var layout = wall.Layout;
        return CheckedDemand.Held("wall-twist", "wall", Amount.Number(layout.Ratio), Amount.Number(1)) with
        {
            Question = Message.Of(
                "study.ask.wall-twist", ("ratio", Amount.Number(Math.Round(layout.Ratio, 2))), ("apart", Amount.Metres(layout.Apart)), ("side", Toward(layout)), ("bearing", new Amount(layout.Bearing, Dimension.Angle))),
            Notes =
            [
                Message.Of("study.demand.wall-centres", ("apart", Amount.Metres(layout.Apart)), ("side", Toward(layout)), ("still", Amount.Number(Math.Round(layout.RatioStill, 2)))),
                Message.Of("study.demand.wall-weak-way", ("bearing", new Amount(layout.Weakest, Dimension.Angle)), ("sway", Amount.Number(Math.Round(layout.Sway, 2)))),
            ],
        };
    }

    /// <summary>Bearing from the centre of mass to that of stiffness: openings let the wall go on the other side.</summary>
    private static Amount Toward(WallLayout layout)
    {
        var away = Math.Atan2((layout.Stiffness - layout.Mass).East, (layout.Stiffness - layout.Mass).North);
        return new Amount(away < 0 ? away + 2 * Math.PI : away, Dimension.Angle);
    }

    private static Message At(double station, double height, bool outside) => Message.Of(
        outside ? "study.demand.wall-at-outside" : "study.demand.wall-at", ("station", Amount.Metres(station)), ("height", Amount.Metres(height)));

    private static Message Zone(TensionZone zone) => zone.Near is { } name
        ? Message.Of("study.demand.wall-zone", ("tension", Pressure(zone.Tension)), ("near", name), ("area", new Amount(zone.Area, Dimension.Area)))
        : Message.Of(
            "study.demand.wall-zone-plain", ("tension", Pressure(zone.Tension)), ("station", Amount.Metres(zone.Station)), ("height", Amount.Metres(zone.Height)), ("area", new Amount(zone.Area, Dimension.Area)));

    private static Message Grid(StructureResult wall, double share) =>
        Message.Of("study.demand.wall-grid", ("unknowns", wall.Division.Unknowns), ("share", Amount.Fraction(share)));

    private static Message Cob(MixResult mix) => mix.Strength.Tag == Tag.Measured
        ? Message.Of("study.demand.cob-measured", ("why", mix.Strength.Why), ("allowed", Pressure(mix.Strength.Allowable)))
        : mix.Strength.Settled.Assumption is { } assumed ? Message.Of("study.demand.assumed", ("what", assumed.What), ("source", assumed.Source)) : mix.Strength.Why;

    private static IEnumerable<Message> Unsure(StructureResult wall)
    {
        var sources = wall.Assumptions.Select(a => a.Source).Where(s => s.Surety == Surety.Memory).DistinctBy(s => s.Title).OrderBy(s => s.Title, StringComparer.Ordinal).ToList();
        return sources.Count == 0 ? [] : [Message.Of("study.demand.from-memory", ("sources", new Argument.List(sources.Select(s => (Argument)s).ToSequence())))];
    }

    private static Amount Pressure(double pascals) => new(pascals, Dimension.Stress);
}
