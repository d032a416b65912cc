using System.Collections.Frozen;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Rules;

/// <summary>The roof and what carries it against their strength: asked of every house with a roof. Capacities come with the demands; the limit is the share of them that may be used.</summary>
internal static class Engineering
{
    /// <summary>The key of this body of rules.</summary>
    public const string Body = "engineering";

    /// <summary>The key of the body that holds the model of the whole wall against its cob.</summary>
    public const string WallModel = "wall-model";

    private const string HeaderPressure = "header-pressure";

    /// <summary>Rules of common practice whose measure is computed elsewhere.</summary>
    public static readonly FrozenSet<string> MeasuredByOthers = FrozenSet.ToFrozenSet(
    [
        "dry-stem", "trench-frost", "drain-fall", "lime-coat", "earth-coat", "lath-lap", "plaster-panel", "floor-drain", "floor-damp", "floor-earth-layers", "floor-over-grade", "stem-over-floor",
        "door-sill", "door-clear", "fresh-height", "lift-bulge", "frost-young", "roof-landing", "plaster-dry", "plaster-season",
    ]);

    /// <summary>Whether a clause is answered from demands.</summary>
    public static bool Reads(Clause clause, Rule rule) => clause.Body is Body or WallModel || MeasuredByOthers.Contains(rule.Key);

    /// <summary>The rulings of one computed rule.</summary>
    public static Sequence<Ruling> Of(WrittenClause clause, HouseGeometry house, Sequence<CheckedDemand> demands, Amount limit) => clause.Rule.Key switch
    {
        var rule when MeasuredByOthers.Contains(rule) => demands.Where(d => d.Rule == rule).Select(d => Compared(clause, d, limit)).ToSequence() is { Count: > 0 } rulings
            ? rulings : [NothingMeasured(rule)],
        var rule => DoesNotArise(rule, house) is { } because ? [Ruling.NotApplicable("roof", because)]
            : Rulings(clause, demands, limit) is { Count: > 0 } rulings ? rulings : [None(rule, house)],
    };

    /// <summary>What a rule says where nothing was measured for it.</summary>
    private static Ruling NothingMeasured(string rule) => rule switch
    {
        "dry-stem" => Ruling.NotApplicable("stem", "stem-with-mortar"),
        "lime-coat" => Ruling.NotApplicable("plaster", "no-lime-coat"),
        "earth-coat" => Ruling.NotApplicable("plaster", "no-earth-coat"),
        "lath-lap" => Ruling.NotApplicable("plaster", "no-timber-at-a-face"),
        "plaster-panel" or "plaster-dry" or "plaster-season" => Ruling.NotApplicable("plaster", "no-plaster-described"),
        "roof-landing" => Ruling.NotApplicable("roof", "no-roof-described"),
        "fresh-height" or "lift-bulge" or "frost-young" => Ruling.NotChecked("lifts", "not-computed"),
        "door-sill" or "door-clear" => Ruling.NotApplicable("doors", "no-doors"),
        "floor-drain" or "floor-damp" or "floor-earth-layers" or "floor-over-grade" or "stem-over-floor" => Ruling.NotChecked("floor", "not-computed"),
        _ => Ruling.NotChecked("trench", "not-computed"),
    };

    /// <summary>A measure against the number of the rule, or against that many times of what was computed beside it, by the rule's own word.</summary>
    private static Ruling Compared(WrittenClause clause, CheckedDemand measured, Amount limit)
    {
        if (measured.Demand is not { } provided)
        {
            return new Ruling(measured.Subject, new Verdict.NotChecked(measured.NotChecked ?? new Message("rules.because.not-computed"))) { Notes = measured.Notes };
        }

        var asked = measured.Capacity is { } whole ? new Amount(whole.Si * limit.Si, whole.Dimension) : limit;
        if (!double.IsFinite(provided.Si) || !double.IsFinite(asked.Si))
        {
            return Ruling.NotChecked(measured.Subject, "not-finite");
        }

        var compared = Require.All(new Comparison(Exactly.Near(provided, asked), clause.Word!.Value, asked));
        return new Ruling(measured.Subject, compared is Verdict.FallsShort && measured.Question is { } question ? new Verdict.NeedsJudgement(question) : compared) { Notes = measured.Notes };
    }

    /// <summary>The rulings of a rule that is not computed yet: the numbers that are there stand in the reason.</summary>
    public static Sequence<Ruling> NotYet(WrittenClause clause, HouseGeometry house, Sequence<CheckedDemand> demands) =>
        DoesNotArise(clause.Rule.Key, house) is { } because ? [Ruling.NotApplicable("roof", because)]
        : demands.Where(d => d.Rule == clause.Rule.Key).Select(d => new Ruling(d.Subject, new Verdict.NotChecked(d.NotChecked ?? clause.Says!))).ToSequence() is { Count: > 0 } rulings ? rulings
        : [new Ruling("roof", new Verdict.NotChecked(clause.Says!))];

    private static Sequence<Ruling> Rulings(WrittenClause clause, Sequence<CheckedDemand> demands, Amount limit)
    {
        var own = demands.Where(d => d.Rule == clause.Rule.Key).ToList();
        return own.Count > 1 && own.All(d => d.NotChecked is not null && d.NotChecked == own[0].NotChecked)
            ? [new Ruling(Together(clause.Rule.Key), new Verdict.NotChecked(own[0].NotChecked!))]
            : own.Select(demand => Answer(clause, demand, limit)).ToSequence();
    }

    /// <summary>What is asked of a thing against what it has; a rule that asks for room is told the other way round: at least what is asked.</summary>
    private static Ruling Answer(WrittenClause clause, CheckedDemand checkedDemand, Amount limit)
    {
        if (checkedDemand is not { Demand: { } demand, Capacity: { } capacity })
        {
            return new Ruling(checkedDemand.Subject, new Verdict.NotChecked(checkedDemand.NotChecked ?? new Message("rules.because.not-computed"))) { Notes = checkedDemand.Notes };
        }

        var allowed = new Amount(capacity.Si * limit.Si, capacity.Dimension);
        if (!double.IsFinite(demand.Si) || !double.IsFinite(allowed.Si))
        {
            return Ruling.NotChecked(checkedDemand.Subject, "not-finite");
        }

        var compared = clause.Word is ComparisonWord.AtLeast
            ? Require.AtLeast(Exactly.Near(allowed, demand), demand)
            : Require.AtMost(Exactly.Near(demand, allowed), allowed);
        return (compared, checkedDemand) switch
        {
            (Verdict.Met, { Missing: { } missing }) => new Ruling(checkedDemand.Subject, new Verdict.NotChecked(missing))
            {
                Notes = [Message.Of("rules.note.known-loads", ("demand", demand), ("limit", allowed)), .. checkedDemand.Notes],
            },
            (Verdict.FallsShort, { Question: { } question }) => new Ruling(checkedDemand.Subject, new Verdict.NeedsJudgement(question)) { Notes = checkedDemand.Notes },
            _ => new Ruling(checkedDemand.Subject, compared) { Notes = checkedDemand.Notes },
        };
    }

    /// <summary>Why a rule has nothing to do with this roof; null when it has.</summary>
    private static string? DoesNotArise(string rule, HouseGeometry house) => (rule, house.House.Roof) switch
    {
        ("rafter-bending" or "rafter-shear" or "rafter-combined" or "rafter-sag", Roof.Reciprocal) => "no-rafters",
        ("pole-bending-crossing" or "pole-bending-plate" or "pole-foot" or "pole-stub" or "pole-shear" or "pole-crossing-bearing" or "ring-sag"
            or "crossing-opens" or "crossing-pinned" or "pin-strength" or "pole-loss" or "charlie-stick", not Roof.Reciprocal) => "not-reciprocal",
        ("secondary-ends", { Secondaries: not { PerBay: > 0 } }) => "no-secondaries",
        ("centre-post", not Roof.Radial { CentrePost: true }) => "no-centre-post",
        ("compression-ring", not Roof.Radial { CentrePost: false }) => "no-compression-ring",
        ("flue-clear", { Flue: null }) => "no-flue",
        ("soil-slip", { Layers.Count: 0 }) => "no-roof-layers",
        ("roof-ends", not (Roof.Shed or Roof.Gable)) => "not-side-by-side",
        ("high-ends", not Roof.Shed) => "not-wall-to-wall",
        ("seat-edge", { Seat: not { Bolt: not null } }) => "no-seat-bolt",
        ("strap-uplift" or "strap-pull", _) when house.Embeds.All(e => e.Embed.Kind != EmbedKind.Strap) => "no-straps",
        ("tee-uplift" or "tee-gap" or "tee-leg" or "tee-bar" or "tee-bolt", _) when house.House.Tees is null && house.Embeds.Any(e => e.Embed.Anchor is not null) => "straps-hold",
        ("wall-soil", _) when house.House.Site.Grade is { } grade && grade <= house.Wall.Base => "ground-below-wall",
        ("wall-thrust", Roof.Shed or Roof.Radial { CentrePost: true }) => "no-thrust",
        ("wall-header-bearing", _) when house.Openings.All(o => o.Header is null) => "no-headers",
        ("drain-outlet", _) when house.House.Trench is null => "no-trench-described",
        ("header-bending" or "header-shear" or "header-sag" or HeaderPressure, _) when house.House.Openings.All(o => o.Header is null) => "no-headers",
        _ => null,
    };

    private static Ruling None(string rule, HouseGeometry house) => rule is "tee-uplift" or "tee-gap" or "tee-leg" or "tee-bar" or "tee-bolt" && house.House.Tees is null
        ? Ruling.NotChecked("tees", "no-tees-described")
        : Ruling.NotChecked(Together(rule), "not-computed");

    /// <summary>What a rule is about, named as one.</summary>
    private static string Together(string rule) => rule switch
    {
        "tee-uplift" or "tee-gap" or "tee-leg" or "tee-bar" or "tee-bolt" => "tees",
        "strap-uplift" or "strap-pull" => "straps",
        "header-bending" or "header-shear" or "header-sag" or HeaderPressure => "headers",
        "bond-beam-tension" or "bond-beam-bolts" or "bond-beam-lap" or "bond-beam-bending" or "lap-places" => "bond beam",
        "stem-bearing" => "stem",
        "wall-edge-pressure" or "wall-under-pole" or "wall-tension" or "wall-foot" or "wall-collapse" => "wall",
        "pier-load" or "pier-edge" or "wall-out-of-plane" or "wall-in-plane" or "lift-joint" or "free-wall" or "pole-drop" or "wet-foot" or "wall-soil" => "wall",
        "wall-header-bearing" or "wall-across" or "wall-along" or "wall-twist" => "wall",
        "wall-green" or "wall-roof-day" or "wall-wet-foot" or "wall-settlement" or "wall-thrust" => "wall",
        "house-overturning" => "house",
        "ground-bearing" or "middle-third" or "drain-outlet" => "trench",
        _ => "roof",
    };
}
