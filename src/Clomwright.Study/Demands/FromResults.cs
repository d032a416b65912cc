using Clomwright.Analysis.Members;
using Clomwright.Analysis.Mix;
using Clomwright.Analysis.Roof;
using Clomwright.Analysis.WallTop;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Rules;

namespace Clomwright.Study.Demands;

/// <summary>Results of the analysis as the rules read them: each demand with its capacity, or why there is none.</summary>
/// <remarks>Where a load that belongs in a combination is not known, what was summed without it may fall short and is never met.</remarks>
internal static class FromResults
{
    /// <summary>Every demand of the roof and of the top of the wall; none for a house without a roof.</summary>
    public static Sequence<CheckedDemand> Of(HouseGeometry geometry, RoofResult roof, WallTopResult top, MixResult mix)
    {
        var house = geometry.House;
        if (house.Roof is null)
        {
            return [];
        }

        var missing = roof.Combined.Missing is [var first, ..] ? first : null;
        return
        [
            .. roof.Reciprocal.Value is { } frame ? OfReciprocal.Frame(house, frame, missing)
                : roof.Plain.Value is { } plain ? OfPlain(plain, missing)
                : Nothing(house.Roof, Why(roof)),
            .. top.Headers.Select(header => header.Key == "header-bearing" ? Length(house, top, OnCob(Leaning(Member(header, missing), top, ["cob-wet", "cob-bearing"]), mix), header) : Leaning(Member(header, missing), top, ["cob-wet"])),
            .. OfWallTop.Demands(geometry, top, missing),
            .. Seats(house, top),
            .. top.Bearing.Select(seat => OnCob(Leaning(Member(seat, missing), top, ["cob-bearing"]), mix)),
            .. Deck(roof, missing),
            .. roof.Fixings.Concat(roof.Supports).Select(check => Fixing(check, missing)),
        ];
    }

    /// <summary>A checked member as a demand, with the combination and pattern that govern it.</summary>
    /// <param name="member">The member.</param>
    /// <param name="missing">A load that belongs in its combinations and is not known; null when all are.</param>
    public static CheckedDemand Member(CheckedMember member, Message? missing) => member.Check.Value is { } check
        ? CheckedDemand.Held(RuleOf(member.Key), member.Subject, check.Demand, check.Capacity) with { Missing = missing, Notes = [Governs(check), .. Wanting(member.Key, check), .. Unsure(check)] }
        : CheckedDemand.Unknown(RuleOf(member.Key), member.Subject, member.Check.NotChecked!);

    /// <summary>The demand with the assumptions that it leans on; one that was not made leans on none.</summary>
    public static CheckedDemand Leaning(CheckedDemand demand, WallTopResult top, string[] assumed) => demand.NotChecked is not null ? demand : demand with
    {
        Notes =
        [
            .. demand.Notes,
            .. top.Assumptions.Where(a => assumed.Contains(a.Key)).Select(a => Message.Of("study.demand.assumed", ("what", a.What), ("source", a.Source))),
        ],
    };

    /// <summary>What the pressure on cob is held against: measured, by whom and when.</summary>
    private static CheckedDemand OnCob(CheckedDemand demand, MixResult mix) => demand.NotChecked is not null || mix.Strength.Tag != Tag.Measured ? demand
        : demand with { Notes = demand.Notes.Plus(Message.Of("study.demand.cob-measured", ("why", mix.Strength.Why), ("allowed", new Amount(mix.Strength.Allowable, Dimension.Stress)))) };

    /// <summary>The bearing that is described beside the one that the pressure asks at each end, and what would be left of it if the cob above arched.</summary>
    private static CheckedDemand Length(House house, WallTopResult top, CheckedDemand demand, CheckedMember header)
    {
        var made = house.Openings.FirstOrDefault(o => $"{o.Name}/header" == header.Subject)?.Header;
        HeaderEnd? End(bool left) => top.HeaderEnds.FirstOrDefault(e => $"{e.Opening}/header" == header.Subject && e.Left == left);
        if (demand.NotChecked is not null || made is null || End(true) is not { } first || End(false) is not { } second)
        {
            return demand;
        }

        static Argument Asked(HeaderEnd end) => end.Needed is { } needed ? Amount.Metres(needed) : new Message("study.demand.header-no-length");
        return demand with
        {
            Notes =
            [
                .. demand.Notes,
                Message.Of("study.demand.header-length", ("given", made.Bearing), ("left", Asked(first)), ("right", Asked(second))),
                first.NeededArched is { } left && second.NeededArched is { } right
                    ? Message.Of("study.demand.header-arched", ("left", Amount.Metres(left)), ("right", Amount.Metres(right)))
                    : new Message("study.demand.header-no-arch"),
            ],
        };
    }

    private static IEnumerable<CheckedDemand> OfPlain(PlainResult plain, Message? missing) =>
    [
        .. plain.Checks.Select(check => Member(check, IsSag(check) ? null : missing)),
        .. Stages.OfPlain(plain),
    ];

    /// <summary>The roof could not be computed at all: every check of it says why.</summary>
    private static IEnumerable<CheckedDemand> Nothing(Roof roof, Message why)
    {
        string[] rules = roof is Roof.Reciprocal
            ? ["pole-bending-crossing", "pole-bending-plate", "pole-foot", "pole-stub", "pole-shear", "pole-seat-bearing", "pole-crossing-bearing", "ring-sag", "stage-bending", "stage-shear", "crossing-opens", "crossing-pinned", "pole-loss", "stage-actions", "pin-strength", "charlie-stick", "secondaries-and-deck", .. Fixings]
            : ["rafter-bending", "rafter-shear", "rafter-combined", "rafter-sag", "pole-seat-bearing", "stage-bending", "stage-shear", "stage-actions", "secondaries-and-deck", "roof-ends", "high-ends", .. Fixings];
        return rules.Select(rule => CheckedDemand.Unknown(rule, "roof", why));
    }

    /// <summary>Rules of what holds a roof on.</summary>
    private static readonly string[] Fixings = ["deck-uplift", "roof-diaphragm", "seat-bolt"];

    /// <summary>What holds the roof on; how far a bolt stands from an edge, a flue from timber, and how soil slides lean on no wind, snow or earthquake.</summary>
    private static CheckedDemand Fixing(CheckedMember check, Message? missing) => check.Key is not ("seat-edge" or "flue-clear" or "soil-slip" or "roof-ends" or "high-ends") ? Member(check, missing)
        : check.Check.Value is { } made ? Member(check, null) with { Notes = [.. Unsure(made)] } : Member(check, null);

    private static Message Why(RoofResult roof) =>
        roof.Reciprocal.NotChecked is { Key: not "analysis.roof.not-reciprocal" } why ? why : roof.Plain.NotChecked!;

    /// <summary>Deck boards and secondary poles; what they sag is held under weight and snow alone.</summary>
    private static IEnumerable<CheckedDemand> Deck(RoofResult roof, Message? missing) => roof.Deck.Select(check => Member(check, missing));

    private static IEnumerable<CheckedDemand> Seats(House house, WallTopResult top) =>
        house.BondBeam is null ? [CheckedDemand.Unknown("seat-centre", "bond beam", new Message("analysis.members.no-beam"))]
        : top.Seats.Count == 0 ? [CheckedDemand.Unknown("seat-centre", "bond beam", new Message("analysis.walltop.no-pieces"))]
        : top.Seats.Select(seat => CheckedDemand.Held("seat-centre", seat.Pole, Amount.Fraction(seat.Share), Amount.Fraction(1)) with
        {
            Notes =
            [
                .. seat.OffMiddle > 0 ? (Sequence<Message>)[Message.Of("study.demand.seat-short", ("share", Amount.Fraction(1 - 2 * seat.OffMiddle / house.BondBeam.Width.Metres)), ("off", Amount.Metres(seat.OffMiddle)))] : [],
                Message.Of("study.demand.seat-rise", ("piece", seat.Piece), ("rise", Amount.Metres(seat.Rise)), ("off", Amount.Metres(Math.Abs(seat.OffCentre)))),
            ],
        });

    /// <summary>Sag is held under weight and snow alone.</summary>
    public static bool IsSag(CheckedMember member) => member.Key is "ring-sag" or "rafter-sag";

    /// <summary>Keys of results that a rule of common practice already has.</summary>
    private static string RuleOf(string key) => key switch
    {
        "pole-seat" => "pole-seat-bearing",
        "header-bearing" => "header-pressure",
        "pin-shear" or "pin-pull" => "pin-strength",
        "deck" or "secondary" => "secondaries-and-deck",
        _ => key,
    };

    private static Message Governs(MemberCheck check) => StageStates.Is(check.Sense)
        ? Message.Of("study.demand.governs-stage", ("stage", Stages.Of(check.Sense)))
        : check.Combination.Length == 0 ? Message.Of("study.demand.governs-hardest", ("sense", new Message($"study.sense.{check.Sense}")))
        : Message.Of("study.demand.governs", ("combination", check.Combination), ("sense", new Message($"study.sense.{check.Sense}")));

    private static IEnumerable<Message> Wanting(string key, MemberCheck check) => key is not ("header-bearing" or "soil-slip") && check.Needed is { } needed && check.Use > 0
        ? [Message.Of(key == "bearing-stress" ? "study.demand.needed-beam" : "study.demand.needed", ("needed", needed))] : [];

    /// <summary>Whose numbers behind a check nobody could read again.</summary>
    public static IEnumerable<Message> Unsure(MemberCheck check)
    {
        var sources = check.How.Steps.SelectMany(step => step.Symbols.Select(s => s.Source).Append(step.Source)).OfType<Source>()
            .Where(source => source.Surety == Surety.Memory).DistinctBy(source => source.Title).OrderBy(source => source.Title, StringComparer.Ordinal).ToList();
        return sources.Count == 0 ? [] : [Message.Of("study.demand.from-memory", ("sources", new Argument.List(sources.Select(s => (Argument)s).ToSequence())))];
    }
}
