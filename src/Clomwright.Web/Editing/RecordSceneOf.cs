using System.Globalization;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Record;
using Clomwright.Study;

namespace Clomwright.Web.Editing;

/// <summary>The record page: text and what its blanks begin with, nothing left to compute.</summary>
/// <param name="Name">Of the house.</param>
/// <param name="Today">As 2027-06-08.</param>
/// <param name="Trouble">One sentence on what is wrong with the record; null for a sound one.</param>
/// <param name="Standing">How far the ring is.</param>
/// <param name="Days">Days that count, the latest first.</param>
/// <param name="Others">Other entries that count, the latest first.</param>
/// <param name="Corrected">How many were corrected or struck out, in words; empty for none.</param>
/// <param name="Tasks">What can be finished and is not yet.</param>
/// <param name="Stops">What can end a day.</param>
/// <param name="Parts">Names of what can be measured in the wall.</param>
/// <param name="Measures">What can be measured of them.</param>
internal sealed record RecordScene(
    string Name, string Today, string? Trouble, string Standing, IReadOnlyList<WrittenDay> Days, IReadOnlyList<WrittenOther> Others, string Corrected, IReadOnlyList<NamedKey> Tasks, IReadOnlyList<NamedKey> Stops, IReadOnlyList<string> Parts, IReadOnlyList<NamedKey> Measures);

/// <summary>A day as it is written.</summary>
internal sealed record WrittenDay(
    string Id, string Date, string DateInWords, string Line, string Raised, string Batches, string People, string Hours, string Lift, string Stopped, IReadOnlyList<NamedKey> Done, string Notes);

/// <summary>An entry that is no day, and whether it can be struck out here.</summary>
internal sealed record WrittenOther(string Id, string Line, bool CanStrike);

/// <summary>A key and what people call it.</summary>
internal sealed record NamedKey(string Key, string Name);

/// <summary>Makes it.</summary>
internal static class RecordSceneOf
{
    public static RecordScene Scene(HouseStudy study, RecordReading reading, DateOnly today)
    {
        var units = study.House.Units;
        string Say(Message message) => Words.Book.Say(message, units);
        string Text(double? number) => number?.ToString(CultureInfo.InvariantCulture) ?? "";
        NamedKey Named(string task) => new(task, Say(DayWords.Task(task)));
        var record = reading.Record;
        var standing = record.Standing;
        var done = record.Days.SelectMany(d => d.Done).ToHashSet(StringComparer.Ordinal);
        var corrected = record.Entries.Count - standing.Count;
        return new(
            study.House.Name,
            today.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            reading.Problem is { } problem ? Say(Message.Of("web.record.trouble", ("problem", problem))) : null,
            DayWords.Height(study, record) is { } height ? Say(height) : "",
            [.. standing.Where(e => e.What is Seen.Day).OrderByDescending(e => e.What.On).Select(e => (e, (Seen.Day)e.What)).Select(p => new WrittenDay(
                p.e.Id, p.Item2.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), Words.Book.Say(p.Item2.Date), Say(DayWords.Of(p.Item2)),
                p.Item2.Raised is { } raised ? LengthText.Written(raised, units) : "", Text(p.Item2.Batches), Text(p.Item2.People), Text(p.Item2.Hours), Text(p.Item2.Lift),
                p.Item2.Stopped.ToString().ToLowerInvariant(), [.. p.Item2.Done.Select(Named)], p.Item2.Notes ?? ""))],
            [.. standing.Where(e => e.What is not Seen.Day).OrderByDescending(e => e.What.On).Select(e => new WrittenOther(e.Id, Say(DayWords.Of(e.What)), e.What is not Seen.Issue))],
            corrected > 0 ? Words.Say("web.record.corrected", ("n", corrected)) : "",
            [.. DayWords.Tasks(study).Where(t => !done.Contains(t)).Select(Named)],
            [.. Enum.GetValues<StoppedBy>().Select(s => new NamedKey(s.ToString().ToLowerInvariant(), Say(DayWords.Stop(s))))],
            DayWords.Parts(study.House), [.. Enum.GetValues<Measured>().Select(m => new NamedKey(m.ToString().ToLowerInvariant(), Say(DayWords.Measure(m))))]);
    }
}
