using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Papers.Revisions;

/// <summary>Letters of revision: A, B, C and on. Letters that mud makes a digit or each other of (I, O, Q, S, X, Z) are left out, as drawing offices do; after Y comes AA.</summary>
/// <remarks>Which letters are left out is common practice of drawing offices, no source.</remarks>
public static class Letters
{
    private const string Usual = "ABCDEFGHJKLMNPRTUVWY";

    /// <summary>The letter that the next set of papers carries: one past the furthest that stands in the record, whoever wrote it there.</summary>
    /// <param name="record">What was handed out.</param>
    public static string Next(SiteRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        // Struck ones count too: papers that carry their letter may hang somewhere.
        return Letter(record.Entries.Select(e => e.What).OfType<Seen.Issue>().Select(i => PlaceOf(i.Revision)).DefaultIfEmpty(-1).Max() + 1);
    }

    /// <summary>The letter at a place, from 0 for A.</summary>
    private static string Letter(int place) => (place < Usual.Length ? "" : Letter(place / Usual.Length - 1)) + Usual[place % Usual.Length];

    /// <summary>The place of a letter; -1 for what is none.</summary>
    private static int PlaceOf(string letter)
    {
        var place = -1;
        foreach (var sign in letter.Trim().ToUpperInvariant())
        {
            var at = Usual.IndexOf(sign, StringComparison.Ordinal);
            if (at < 0 || place > 100_000)
            {
                return -1;
            }

            place = (place + 1) * Usual.Length + at;
        }

        return place;
    }
}
