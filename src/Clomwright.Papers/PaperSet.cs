using Clomwright.Analysis;
using Clomwright.Analysis.Collapse;
using Clomwright.Analysis.Comfort;
using Clomwright.Analysis.Days;
using Clomwright.Analysis.Drying;
using Clomwright.Analysis.Finishes;
using Clomwright.Analysis.Foundation;
using Clomwright.Analysis.Mix;
using Clomwright.Analysis.Roof;
using Clomwright.Analysis.Structure;
using Clomwright.Analysis.WallByHand;
using Clomwright.Analysis.WallTop;
using Clomwright.Analysis.WallTrials;
using Clomwright.Analysis.Weather;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Study;

namespace Clomwright.Papers;

/// <summary>What a book of papers is drawn from: the parts of a study, and how it is to be printed.</summary>
public sealed record PaperSet
{
    /// <summary>Where everything is, with the description it was made from.</summary>
    public required HouseGeometry Geometry { get; init; }

    /// <summary>What it takes.</summary>
    public required HouseQuantities Quantities { get; init; }

    /// <summary>What soil, mix and their tests say; null where nothing was read.</summary>
    public MixResult? Mix { get; init; }

    /// <summary>How to mark it on the ground; null where the plan could not be laid out.</summary>
    public SettingOut? SettingOut { get; init; }

    /// <summary>What holds the roof; null where the house has none.</summary>
    public RoofResult? Roof { get; init; }

    /// <summary>Bond beam, tees and headers; null where nothing was computed of them.</summary>
    public WallTopResult? WallTop { get; init; }

    /// <summary>The wall worked by hand; null where the house has no roof.</summary>
    public WallByHandResult? WallByHand { get; init; }

    /// <summary>Stem, trench, ground and drain; null where nothing was computed of them.</summary>
    public FoundationResult? Foundation { get; init; }

    /// <summary>The whole wall as one elastic body; or why it is not known. Null where nobody asked.</summary>
    public Known<StructureResult>? Structure { get; init; }

    /// <summary>The push at which the house falls; or why it is not known, as in a study that is not deep. Null where nobody asked.</summary>
    public Known<CollapseResult>? Collapse { get; init; }

    /// <summary>The model of the wall in trials; or why it is not known, as in a study that is not deep. Null where nobody asked.</summary>
    public Known<WallTrialsResult>? Trials { get; init; }

    /// <summary>Plasters, lath and floor; null where nothing was computed of them.</summary>
    public FinishesResult? Finishes { get; init; }

    /// <summary>How the wall dries; or why that is not known. Null where nobody asked.</summary>
    public Known<DryingResult>? Drying { get; init; }

    /// <summary>When the job would be done; or why that is not known. Null where nobody asked.</summary>
    public Known<DaysResult>? Days { get; init; }

    /// <summary>Who does what, day by day; or why that is not known. Null where nobody asked.</summary>
    public Known<CrewBoard>? Board { get; init; }

    /// <summary>What a host has ready by when; or why that is not known. Null where nobody asked.</summary>
    public Known<HostList>? Host { get; init; }

    /// <summary>What there is to do on a wet day. Null where nobody asked.</summary>
    public UnderCover? UnderCover { get; init; }

    /// <summary>The same wall begun in each month. Null where nobody asked.</summary>
    public Known<StartYear>? StartMonths { get; init; }

    /// <summary>What it takes to cover the wall. Null where nobody asked.</summary>
    public Known<WallCover>? Cover { get; init; }

    /// <summary>How warm, dry and light it will be. Null where nobody asked.</summary>
    public ComfortResult? Comfort { get; init; }

    /// <summary>What each fix would bring; or why that is not known. Null where nobody asked.</summary>
    public Known<FixResults>? ComfortFixes { get; init; }

    /// <summary>The wall in the first winter; or why that is not known. Null where nobody asked.</summary>
    public Known<FirstWinter>? FirstWinter { get; init; }

    /// <summary>The mean days of the site. Null where nobody asked.</summary>
    public Known<WeatherResult>? Weather { get; init; }

    /// <summary>What is written on site.</summary>
    public SiteRecord Record { get; init; } = SiteRecord.Empty;

    /// <summary>What was found on site otherwise than drawn.</summary>
    public Sequence<AsBuiltMark> AsBuilt { get; init; }

    /// <summary>What the adopted rules say.</summary>
    public Sequence<Finding> Findings { get; init; }

    /// <summary>What is wrong or odd in the description.</summary>
    public Sequence<Diagnostic> Diagnostics { get; init; }

    /// <summary>Values nobody gave that something leaned on.</summary>
    public Sequence<Assumption> Assumptions { get; init; }

    /// <summary>The calculations behind the numbers.</summary>
    public Sequence<Calculation> Calculations { get; init; }

    /// <summary>Paper, units, date and revision.</summary>
    public required PaperOptions Options { get; init; }

    /// <summary>The description.</summary>
    public House House => Geometry.House;

    /// <summary>Which units come first.</summary>
    public UnitSystem Units => Options.Units ?? House.Units;
}
