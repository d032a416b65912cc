using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>One cob house as its author described it: what it is, never what follows from it. Immutable; an edit makes a new one.</summary>
/// <remarks>All heights are from the finished floor. Bearings run clockwise from north. Nothing here is computed.</remarks>
public sealed record House
{
    /// <summary>The author's short key, <c>heron-point</c>.</summary>
    public required string Id { get; init; }

    /// <summary>The name that papers print.</summary>
    public required string Name { get; init; }

    /// <summary>Remarks of the author, printed with the house.</summary>
    public string? Notes { get; init; }

    /// <summary>Which units come first on paper and screen.</summary>
    public UnitSystem Units { get; init; } = UnitSystem.Imperial;

    /// <summary>The place and its loads.</summary>
    public Site Site { get; init; } = new();

    /// <summary>The inside face at the wall base, in plan.</summary>
    public required Plan Plan { get; init; }

    /// <summary>The earthen floor.</summary>
    public Floor Floor { get; init; } = new();

    /// <summary>The rubble trench.</summary>
    public Trench? Trench { get; init; }

    /// <summary>The stem wall.</summary>
    public required Stem Stem { get; init; }

    /// <summary>The cob wall.</summary>
    public required Wall Wall { get; init; }

    /// <summary>How the wall is divided into lifts.</summary>
    public required LiftPlan Lifts { get; init; }

    /// <summary>Doors and windows.</summary>
    public Sequence<Opening> Openings { get; init; }

    /// <summary>Recesses that do not go through.</summary>
    public Sequence<Niche> Niches { get; init; }

    /// <summary>What is built in as the wall rises.</summary>
    public Sequence<Embed> Embeds { get; init; }

    /// <summary>The timber ring on the wall top.</summary>
    public BondBeam? BondBeam { get; init; }

    /// <summary>The tees that hold the bond beam down.</summary>
    public Tees? Tees { get; init; }

    /// <summary>The roof.</summary>
    public Roof? Roof { get; init; }

    /// <summary>Plasters and washes, by face.</summary>
    public Sequence<Finish> Finishes { get; init; }

    /// <summary>Patches of plaster tried on the wall.</summary>
    public Sequence<TestPanel> TestPanels { get; init; }

    /// <summary>The stove; null where there is none.</summary>
    public Stove? Stove { get; init; }

    /// <summary>How it is lived in and kept warm.</summary>
    public Comfort Comfort { get; init; } = new();

    /// <summary>Soil tests, recipe, batch and strength tests.</summary>
    public Mix Mix { get; init; } = new();

    /// <summary>Numbers of the program that the author knows better.</summary>
    public Sequence<AssumedNumber> Assumed { get; init; }

    /// <summary>What prices are in, as printed behind them.</summary>
    public string? Currency { get; init; }

    /// <summary>Prices that somebody was told.</summary>
    public Sequence<Price> Prices { get; init; }

    /// <summary>Who builds, and when.</summary>
    public Crew? Crew { get; init; }

    /// <summary>Bodies of rules adopted, numbers entered and questions answered.</summary>
    public RuleChoices Rules { get; init; } = new();
}
