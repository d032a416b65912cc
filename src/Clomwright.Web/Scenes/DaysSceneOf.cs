using Clomwright.Evidence;
using Clomwright.Study;
using Clomwright.Web.Editing;

namespace Clomwright.Web.Scenes;

/// <summary>Who works, as the page shows it.</summary>
public static class DaysSceneOf
{
    /// <summary>The scene.</summary>
    /// <param name="study">The house.</param>
    /// <param name="words">The language.</param>
    public static DaysScene Scene(HouseStudy study, Phrasebook words)
    {
        ArgumentNullException.ThrowIfNull(study);
        var pen = new Pen(words, study.House.Units);
        var blanks = CrewBlanks.Of(study.House);
        return new([.. blanks.Select(blank => EarthSceneOf.Card(blank, pen))], blanks.Count > 0 ? null : pen.Say("analysis.days.no-crew"));
    }
}
