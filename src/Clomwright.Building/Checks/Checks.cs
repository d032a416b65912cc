using System.Globalization;
using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>Gathers what is wrong in one description. A value that is no number at all is reported once and by every check.</summary>
internal sealed class Checks
{
    /// <summary>The longest name of a part, in characters: it has to fit a lift card.</summary>
    public const int NameLengthMax = 40;

    /// <summary>The longest remark on one part.</summary>
    public const int NoteLengthMax = 200;

    private readonly List<Diagnostic> found = [];

    public Sequence<Diagnostic> Found => found.ToSequence();

    public void Error(string path, string key, params ReadOnlySpan<(string Name, Argument Value)> arguments) =>
        found.Add(new Diagnostic(path, Message.Of(key, arguments)));

    public void Warning(string path, string key, params ReadOnlySpan<(string Name, Argument Value)> arguments) =>
        found.Add(new Diagnostic(path, Message.Of(key, arguments), Severity.Warning));

    /// <summary>A size: more than nothing and no longer than a small house can have.</summary>
    public bool Size(string path, Length value, Length most) => Positive(path, value) && NotAbove(path, value, most);

    public bool Size(string path, Length? value, Length most) => value is not { } size || Size(path, size, most);

    /// <summary>A height above or below the finished floor.</summary>
    public bool Height(string path, Length value) => NotBelow(path, value, -Limits.Height) && NotAbove(path, value, Limits.Height);

    public bool Height(string path, Length? value) => value is not { } height || Height(path, height);

    public bool NotNegative(string path, Length value) => value >= Length.Zero || Fail(path, "building.negative", ("value", new Argument.Exact(value)));

    public bool NotBelow(string path, Length value, Length least) =>
        value >= least || Fail(path, "building.too-low", ("value", new Argument.Exact(value)), ("least", new Argument.Exact(least)));

    public bool NotAbove(string path, Length value, Length most) =>
        value <= most || Fail(path, "building.too-large", ("value", new Argument.Exact(value)), ("most", new Argument.Exact(most)));

    /// <summary>A quantity between two of its kind, the limits themselves allowed; NaN is never allowed.</summary>
    public bool Within(string path, Amount value, double least, double most) =>
        (value.Si >= least && value.Si <= most)
        || (double.IsFinite(value.Si)
            ? Fail(path, "building.out-of-range", ("value", Exactly(value)), ("least", Exactly(value with { Si = least })), ("most", Exactly(value with { Si = most })))
            : Fail(path, "building.not-a-number"));

    public bool Within(string path, Amount? value, double least, double most) => value is not { } amount || Within(path, amount, least, most);

    /// <summary>A quantity that is more than nothing.</summary>
    public bool Positive(string path, Amount value, double most) =>
        value.Si == 0 ? Fail(path, "building.zero") : Within(path, value, 0, most);

    public bool Positive(string path, Amount? value, double most) => value is not { } amount || Positive(path, amount, most);

    /// <summary>A direction: within a full turn either way.</summary>
    public bool Bearing(string path, Angle value) => Within(path, value, -2 * Math.PI, 2 * Math.PI);

    public bool Count(string path, int value, int least, int most) =>
        (value >= least && value <= most)
        || Fail(path, "building.count", ("value", value), ("least", least), ("most", most));

    /// <summary>A key of a material, a climate, a code: some text on one line.</summary>
    public bool Word(string path, string? value, int longest = NameLengthMax) =>
        value is null
        || (string.IsNullOrWhiteSpace(value) ? Fail(path, "building.text-empty")
            : value.Length > longest ? Fail(path, "building.text-long", ("length", value.Length), ("most", longest))
            : !value.Any(char.IsControl) || Fail(path, "building.text-lines"));

    /// <summary>A place along the wall: a bearing or a station, one of the two.</summary>
    public void Along(string path, Along along)
    {
        if (along is { Bearing: not null, Station: not null })
        {
            Error(path, "building.along-both");
        }
        else if (along is { Bearing: null, Station: null })
        {
            Error(path, "building.along-neither");
        }
        else if (along.Bearing is { } bearing)
        {
            Bearing($"{path}.bearing", bearing);
        }
        else if (along.Station is { } station)
        {
            _ = NotNegative($"{path}.station", station) && NotAbove($"{path}.station", station, 4 * Limits.Plan);
        }
    }

    private bool Positive(string path, Length value) => value > Length.Zero || Fail(path, "building.not-positive", ("value", new Argument.Exact(value)));

    /// <summary>A plain number to its last digit, because a rounded one may look as if it were in range.</summary>
    private static Argument Exactly(Amount value) => value.Dimension == Dimension.Number ? value.Si.ToString("R", CultureInfo.InvariantCulture) : value;

    private bool Fail(string path, string key, params ReadOnlySpan<(string Name, Argument Value)> arguments)
    {
        Error(path, key, arguments);
        return false;
    }
}

/// <summary>Beyond these a number is a slip of the hand: the program is for small houses.</summary>
internal static class Limits
{
    /// <summary>Across the plan.</summary>
    public static Length Plan { get; } = Length.FromMillimetres(40_000);

    /// <summary>Above or below the finished floor.</summary>
    public static Length Height { get; } = Length.FromMillimetres(12_000);

    /// <summary>Through the wall, and any one piece of timber or layer.</summary>
    public static Length Thick { get; } = Length.FromMillimetres(2_000);

    /// <summary>Lifts in one wall.</summary>
    public const int Lifts = 120;

    /// <summary>Things in one list of the house file.</summary>
    public const int Items = 400;
}
