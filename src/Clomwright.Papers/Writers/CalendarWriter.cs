using System.Globalization;
using System.Text;

namespace Clomwright.Papers.Writers;

/// <summary>A day or days in a calendar.</summary>
/// <param name="Key">Permanent, within the house.</param>
/// <param name="First">Its first day.</param>
/// <param name="Last">Its last day.</param>
/// <param name="Title">In a few words.</param>
/// <param name="Words">The rest.</param>
public sealed record CalendarEntry(string Key, DateOnly First, DateOnly Last, string Title, string Words);

/// <summary>iCalendar text (RFC 5545): whole days, tentative, and nobody is busy by them.</summary>
public static class CalendarWriter
{
    private const int OctetsMost = 75;
    private const string End = "\r\n";

    /// <summary>The text of a file.</summary>
    /// <param name="of">The house's id: entries of the same house take the place of older ones.</param>
    /// <param name="name">What the calendar is called.</param>
    /// <param name="entries">What stands in it.</param>
    /// <param name="stamped">The day it was made.</param>
    public static string Write(string of, string name, IEnumerable<CalendarEntry> entries, DateOnly stamped)
    {
        ArgumentNullException.ThrowIfNull(entries);
        var text = new StringBuilder();
        Line(text, "BEGIN:VCALENDAR");
        Line(text, "VERSION:2.0");
        Line(text, "PRODID:-//Clomwright//days//EN");
        Line(text, "CALSCALE:GREGORIAN");
        Line(text, "METHOD:PUBLISH");
        Line(text, "X-WR-CALNAME:" + Escaped(name));
        foreach (var entry in entries)
        {
            Line(text, "BEGIN:VEVENT");
            Line(text, "UID:" + Escaped(entry.Key) + "@" + Escaped(of) + ".clomwright");
            Line(text, "DTSTAMP:" + Day(stamped) + "T000000Z");
            Line(text, "DTSTART;VALUE=DATE:" + Day(entry.First));
            // The end of whole days is the day after the last.
            Line(text, "DTEND;VALUE=DATE:" + Day(entry.Last.AddDays(1)));
            Line(text, "SUMMARY:" + Escaped(entry.Title));
            Line(text, "DESCRIPTION:" + Escaped(entry.Words));
            Line(text, "STATUS:TENTATIVE");
            Line(text, "TRANSP:TRANSPARENT");
            Line(text, "END:VEVENT");
        }

        Line(text, "END:VCALENDAR");
        return text.ToString();
    }

    private static string Day(DateOnly day) => day.ToString("yyyyMMdd", CultureInfo.InvariantCulture);

    /// <summary>Section 3.3.11: backslash, semicolon, comma and line ends. Other signs that are no text are left out.</summary>
    private static string Escaped(string text)
    {
        var escaped = new StringBuilder(text.Length);
        foreach (var sign in text.ReplaceLineEndings("\n"))
        {
            escaped.Append(sign switch { '\\' => "\\\\", ';' => "\\;", ',' => "\\,", '\n' => "\\n", _ => char.IsControl(sign) ? "" : sign.ToString() });
        }

        return escaped.ToString();
    }

    /// <summary>Section 3.1: no line longer than 75 octets; what goes on begins with a space. A sign is never cut.</summary>
    private static void Line(StringBuilder text, string line)
    {
        var octets = 0;
        foreach (var rune in line.EnumerateRunes())
        {
            if (octets + rune.Utf8SequenceLength > OctetsMost)
            {
                text.Append(End).Append(' ');
                octets = 1;
            }

            text.Append(rune.ToString());
            octets += rune.Utf8SequenceLength;
        }

        text.Append(End);
    }
}
