namespace Clomwright.Files.Forms;

/// <summary>The forms without units.</summary>
internal static class Plain
{
    public static TextForm Text { get; } = new();

    public static NumberForm Number { get; } = new();

    public static WholeForm Whole { get; } = new();

    public static TruthForm Truth { get; } = new();

    public static DateForm Date { get; } = new();
}
