using Clomwright.Building;

namespace Clomwright.Study;

/// <summary>What a study is asked for.</summary>
/// <param name="Deep">Collapse and seasons too; otherwise they are said to be not checked.</param>
public sealed record StudyOptions(bool Deep = false)
{
    /// <summary>The quick passes only.</summary>
    public static StudyOptions Quick { get; } = new();

    /// <summary>What was seen on site; the days of the job learn from it.</summary>
    public SiteRecord Record { get; init; } = SiteRecord.Empty;

    /// <summary>The day it is, on which a forecast that knows what was done begins; null for the day after the last written one.</summary>
    public DateOnly? Today { get; init; }
}
