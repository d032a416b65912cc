using Clomwright.Analysis;
using Clomwright.Analysis.Collapse;
using Clomwright.Analysis.Days;
using Clomwright.Analysis.Drying;
using Clomwright.Analysis.Structure;
using Clomwright.Study;

namespace Clomwright.Web.Editing;

/// <content>What is worked out beside everything else: one run of each for a house as it is, given up when it becomes another.</content>
internal sealed partial class OpenHouse
{
    private LongRun<Known<DryingResult>>? drying;
    private LongRun<Known<StructureResult>>? stress;
    private LongRun<Known<CollapseResult>>? fall;
    private LongRun<Known<DaysResult>>? days;
    private LongRun<Known<DaysChoices>>? choices;

    /// <summary>How the house as it is now dries, being worked out beside everything else; one run, given up when the house changes.</summary>
    public LongRun<Known<DryingResult>> Drying
    {
        get
        {
            lock (gate)
            {
                TakeNewFile();
                return drying ??= new(study, (of, watch) => of.DryingFor(watch));
            }
        }
    }

    /// <summary>What the wall of the house as it is now carries, being solved beside everything else, and the number of that house; one run, given up when the house changes.</summary>
    public (LongRun<Known<StructureResult>> Run, long Revision) Stress
    {
        get
        {
            lock (gate)
            {
                TakeNewFile();
                return (stress ??= new(study, (of, watch) => of.StructureFor(watch)), revision);
            }
        }
    }

    /// <summary>The search for the push at which the house as it is now falls; one run, given up when the house changes.</summary>
    public LongRun<Known<CollapseResult>> Fall
    {
        get
        {
            lock (gate)
            {
                TakeNewFile();
                return fall ??= new(HouseStudy.Of(study.House, new StudyOptions(Deep: true), study), (deep, watch) => deep.CollapseFor(watch));
            }
        }
    }

    /// <summary>When the job of the house as it is now would be done, by what is written of it; one run, given up when the house or its record changes.</summary>
    public LongRun<Known<DaysResult>> Days
    {
        get
        {
            lock (gate)
            {
                TakeNewFile();
                TakeRecord();
                return days ??= new(written, (of, watch) => of.DaysFor(watch));
            }
        }
    }

    /// <summary>What other ways and weeks would bring it; one run, given up when the house changes or nobody waits.</summary>
    public LongRun<Known<DaysChoices>> Choices
    {
        get
        {
            lock (gate)
            {
                TakeNewFile();
                TakeRecord();
                return choices ??= new(written, (of, watch) => of.DaysChoicesFor(watch));
            }
        }
    }

    /// <summary>Gives a search up that nobody waits for any more.</summary>
    public void GiveUp(LongRun<Known<CollapseResult>> run)
    {
        lock (gate)
        {
            if (ReferenceEquals(fall, run) && !run.Done.IsCompletedSuccessfully)
            {
                fall = null;
            }
        }

        run.Cancel();
    }

    /// <summary>Gives the trying of other ways up.</summary>
    public void GiveUp(LongRun<Known<DaysChoices>> run)
    {
        lock (gate)
        {
            if (ReferenceEquals(choices, run) && !run.Done.IsCompletedSuccessfully)
            {
                choices = null;
            }
        }

        run.Cancel();
    }
}
