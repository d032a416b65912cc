using Clomwright.Analysis;
using Clomwright.Analysis.Collapse;
using Clomwright.Analysis.Days;
using Clomwright.Analysis.Structure;
using Clomwright.Analysis.WallTrials;
using Clomwright.Study;

namespace Clomwright.Papers;

/// <summary>The door from the study of a house to its papers.</summary>
public static class FromStudy
{
    /// <summary>What a book of papers is drawn from.</summary>
    public static PaperSet Set(HouseStudy study, PaperOptions options)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(options);
        var board = new Lazy<Known<CrewBoard>>(() => study.BoardBy(options.Planner));
        TakeTheLongPartsSideBySide(study, board);
        return new PaperSet
        {
            Geometry = study.Geometry,
            Quantities = study.Quantities,
            Mix = study.Mix,
            SettingOut = study.SettingOut,
            Roof = study.House.Roof is null ? null : study.Roof,
            WallTop = study.WallTop,
            WallByHand = study.House.Roof is null ? null : study.WallByHand,
            Foundation = study.Foundation,
            Structure = study.House.Roof is null ? null : (Known<StructureResult>?)study.Structure,
            Collapse = study.House.Roof is null ? null : (Known<CollapseResult>?)study.Collapse,
            Trials = study.House.Roof is null ? null : (Known<WallTrialsResult>?)study.Trials,
            Finishes = study.FinishesDried,
            Drying = study.Drying,
            Days = study.Options.Deep ? (Known<DaysResult>?)study.Days : null,
            Board = board.Value,
            Host = study.Host,
            UnderCover = study.UnderCover,
            StartMonths = study.StartMonths,
            Cover = study.Cover,
            Comfort = study.Comfort,
            ComfortFixes = study.ComfortFixes,
            FirstWinter = study.FirstWinter,
            Weather = study.Weather,
            Record = study.Options.Record,
            AsBuilt = AsBuiltMarks.Of(study.Geometry, study.Options.Record),
            Findings = study.AllFindings,
            Diagnostics = study.Diagnostics,
            Assumptions = study.Assumptions,
            Calculations = study.Calculations,
            Options = options,
        };
    }

    /// <summary>What takes longest first; what hangs on another waits for it. All is kept once it is there.</summary>
    private static void TakeTheLongPartsSideBySide(HouseStudy study, Lazy<Known<CrewBoard>> board)
    {
        if (study.House.Roof is not null)
        {
            Parallel.Invoke(() => _ = study.StartMonths, () => _ = study.ComfortFixes, () => _ = study.Structure, () => _ = study.FinishesDried, () => _ = study.Findings, () => _ = study.FirstWinter, () => _ = board.Value);
        }
    }
}
