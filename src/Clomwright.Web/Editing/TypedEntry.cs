using System.Globalization;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Web.Editing;

/// <summary>An entry of the site record as it was typed: a day of work, or one of the other kinds by its <see cref="Kind"/>.</summary>
/// <param name="Id">Made by the page.</param>
/// <param name="Corrects">Id of the entry it takes the place of.</param>
/// <param name="Struck">Why the entry it corrects should not count; null for everything else.</param>
/// <param name="Date">As 2027-06-08.</param>
/// <param name="Raised">Inches, or a length with its unit.</param>
/// <param name="Batches">A number.</param>
/// <param name="People">A number.</param>
/// <param name="Hours">A number.</param>
/// <param name="Lift">A number.</param>
/// <param name="Stopped">What ended the laying.</param>
/// <param name="Done">Keys of tasks finished.</param>
/// <param name="Notes">Words.</param>
internal sealed record TypedEntry(
    string Id, string? Corrects, string? Struck, string? Date, string? Raised, string? Batches, string? People, string? Hours, string? Lift, string? Stopped, IReadOnlyList<string>? Done, string? Notes)
{
    /// <summary><c>test</c>, <c>delivery</c> or <c>as-built</c>; null for a day of work.</summary>
    public string? Kind { get; init; }

    /// <summary>Which test, what came, or which part was measured.</summary>
    public string? What { get; init; }

    /// <summary>Of what the test was.</summary>
    public string? Of { get; init; }

    /// <summary>What was read, how much came, or what was found: words, and a length for what was measured.</summary>
    public string? Found { get; init; }

    /// <summary>What was measured of the part: <c>width</c>, <c>height</c>, <c>sill</c>, <c>station</c>, <c>depth</c>.</summary>
    public string? Measured { get; init; }

    /// <summary>Whether what came was as ordered: <c>yes</c>, <c>no</c>, or nothing where nobody looked.</summary>
    public string? AsOrdered { get; init; }

    /// <summary>What was typed, or the blank that is not understood and one sentence on it.</summary>
    public (Seen? What, string? Blank, Message? Problem) Read()
    {
        if (Struck is not null)
        {
            return (new Seen.Struck(Struck), null, null);
        }

        if (!DateOnly.TryParseExact(Date, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date))
        {
            return (null, "date", new Message("web.record.no-date"));
        }

        return Kind switch
        {
            "test" => (new Seen.Tested(date, What?.Trim() ?? "", Of?.Trim() ?? "", Found?.Trim() ?? ""), null, null),
            "delivery" => (new Seen.Delivery(date, What?.Trim() ?? "", Found?.Trim() ?? "") { AsOrdered = AsOrdered switch { "yes" => true, "no" => false, _ => null } }, null, null),
            "as-built" => AsBuilt(date),
            _ => Day(date),
        };
    }

    private (Seen? What, string? Blank, Message? Problem) AsBuilt(DateOnly date)
    {
        var measured = Enum.GetValues<Measured>().Cast<Measured?>().FirstOrDefault(m => string.Equals(m.ToString(), Measured, StringComparison.OrdinalIgnoreCase));
        return measured is not { } what ? (null, "measured", new Message("web.record.no-measure"))
            : LengthText.TryParse(Found ?? "", Units.Inch, out var found, out var problem) ? (new Seen.AsBuilt(date, What?.Trim() ?? "", what, found), null, null) : (null, "found", problem);
    }

    private (Seen? What, string? Blank, Message? Problem) Day(DateOnly date)
    {
        var length = default(Length);
        if (Text(Raised) is { } raised && !LengthText.TryParse(raised, Units.Inch, out length, out var problem))
        {
            return (null, "raised", problem);
        }

        foreach (var (blank, text) in new[] { ("batches", Batches), ("people", People), ("hours", Hours), ("lift", Lift) })
        {
            if (Text(text) is { } typed && !(blank is "people" or "lift" ? int.TryParse(typed, NumberStyles.None, CultureInfo.InvariantCulture, out _) : Number(typed) is not null))
            {
                return (null, blank, Message.Of("web.record.no-number", ("text", OneLine.Of(typed))));
            }
        }

        var stopped = Enum.GetValues<StoppedBy>().Where(s => string.Equals(s.ToString(), Stopped, StringComparison.OrdinalIgnoreCase)).FirstOrDefault();
        return (new Seen.Day(date)
        {
            Raised = Text(Raised) is null ? null : length, Batches = Number(Batches), People = (int?)Number(People), Hours = Number(Hours), Lift = (int?)Number(Lift),
            Stopped = stopped, Done = (Done ?? []).ToSequence(), Notes = Text(Notes),
        }, null, null);
    }

    private static string? Text(string? text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();

    private static double? Number(string? text) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingWhite | NumberStyles.AllowTrailingWhite, CultureInfo.InvariantCulture, out var value) ? value : null;
}
