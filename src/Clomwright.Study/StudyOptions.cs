namespace Clomwright.Study;

/// <summary>What a study is asked for.</summary>
/// <param name="Deep">Collapse and seasons too; otherwise they are said to be not checked.</param>
public sealed record StudyOptions(bool Deep = false)
{
    /// <summary>The quick passes only.</summary>
    public static StudyOptions Quick { get; } = new();
}
