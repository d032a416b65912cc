namespace Clomwright.Study;

/// <summary>The study before another, from which passes may be taken over. Passes that nobody has asked for yet hold it; so that a study does not keep all that were ever before it, those two before it let go of theirs.</summary>
internal sealed class Earlier
{
    private volatile HouseStudy? study;

    private Earlier(HouseStudy? study) => this.study = study;

    /// <summary>The study before; null where there was none, and once it was let go.</summary>
    public HouseStudy? Study => study;

    /// <summary>The one before a new study.</summary>
    public static Earlier Of(HouseStudy? study)
    {
        if (study?.Before.Study?.Before is { } older)
        {
            older.study = null;
        }

        return new Earlier(study);
    }
}
