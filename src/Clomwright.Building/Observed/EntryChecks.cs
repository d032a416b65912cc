using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>What no entry of a site record may say: one sentence for the first thing wrong.</summary>
internal static class EntryChecks
{
    private const int IdMost = 40, AuthorMost = 80, WordsMost = 200, NotesMost = 2000, ListMost = 60, SheetsMost = 2000;
    private const int YearsAhead = 5, PeopleMost = 500, LiftMost = 60;
    private const double HoursMost = 24, BatchesMost = 2000, RainMostMetres = 1, TemperatureMost = 60;
    private static readonly Length RaisedMost = Length.FromFeet(6);
    private static readonly DateOnly Earliest = new(2000, 1, 1);

    public static Message? Of(SiteRecord record, SiteEntry entry) =>
        OfEnvelope(entry) ?? OfCorrection(record, entry) ?? OfDate(entry) ?? entry.What switch
        {
            Seen.Day day => OfDay(day) ?? Twice(record, entry, day),
            Seen.Tested tested => Words(tested.Test) ?? Words(tested.Of) ?? Words(tested.Result),
            Seen.AsBuilt built => Words(built.Part) ?? (built.Found.Metres is >= -100 and <= 1000 ? null : Message.Of("building.record.measured", ("found", built.Found))),
            Seen.Delivery delivery => Words(delivery.What) ?? Words(delivery.Amount),
            Seen.Issue issue => Words(issue.Revision) ?? Words(issue.To) ?? List(issue.Sheets) ?? OfDrawn(issue.Drawn) ?? LetterTwice(record, entry, issue),
            Seen.Struck struck => Words(struck.Why) ?? (entry.Corrects is null ? new Message("building.record.strikes-nothing") : null),
            _ => null,
        };

    private static Message? OfEnvelope(SiteEntry entry) =>
        entry.Id.Length is < 4 or > IdMost || !entry.Id.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '-') ? Message.Of("building.record.id", ("id", Shown(entry.Id)))
        : string.IsNullOrWhiteSpace(entry.Author) || entry.Author.Length > AuthorMost || entry.Author.Any(char.IsControl) ? Message.Of("building.record.author", ("most", AuthorMost))
        : null;

    private static Message? OfCorrection(SiteRecord record, SiteEntry entry)
    {
        if (entry.Corrects is not { } id)
        {
            return null;
        }

        if (record.Find(id) is not { } earlier)
        {
            return Message.Of("building.record.no-such", ("id", Shown(id)));
        }

        return record.Entries.FirstOrDefault(e => e.Corrects == id) is { } other ? Message.Of("building.record.corrected-already", ("id", id), ("by", other.Id))
            : earlier.What is Seen.Struck ? Message.Of("building.record.struck-stays", ("id", id))
            : entry.What is not Seen.Struck && entry.What.GetType() != earlier.What.GetType() ? Message.Of("building.record.other-kind", ("id", id))
            : null;
    }

    /// <summary>A machine on site may have a clock that is wrong, and must still take the log: only years ahead are refused. The one who takes the entry says when its day has not come.</summary>
    private static Message? OfDate(SiteEntry entry) => entry.What.On is not { } date ? null
        : date < Earliest ? Message.Of("building.record.long-ago", ("date", date))
        : date > DateOnly.FromDateTime(entry.Moment.DateTime).AddYears(YearsAhead) ? Message.Of("building.record.far-ahead", ("date", date))
        : null;

    private static Message? OfDay(Seen.Day day)
    {
        var nothing = day is { Raised: null, Lift: null, Batches: null, People: null, Hours: null, Weather: null, Notes: null, Stopped: StoppedBy.Evening } && day.Done.Count + day.Who.Count == 0;
        return nothing ? new Message("building.record.nothing")
            : day.Raised is { } raised && (raised < Length.Zero || raised > RaisedMost) ? Message.Of("building.record.raised", ("raised", new Argument.Exact(raised)), ("most", RaisedMost))
            : day.Lift is < 1 or > LiftMost ? Message.Of("building.record.lift", ("lift", day.Lift.Value), ("most", LiftMost))
            : day.Batches is { } batches && batches is not (>= 0 and <= BatchesMost) ? Message.Of("building.record.batches", ("most", (int)BatchesMost))
            : day.People is < 0 or > PeopleMost ? Message.Of("building.record.people", ("most", PeopleMost))
            : day.Hours is { } hours && hours is not (>= 0 and <= HoursMost) ? new Message("building.record.hours")
            : (day.People == 0 || day.Hours == 0) && (day.Raised > Length.Zero || day.Batches > 0) ? new Message("building.record.by-nobody")
            : day.Who.Count > 0 && day.People is { } people && day.Who.Count > people ? Message.Of("building.record.more-names", ("names", day.Who.Count), ("people", people))
            : OfWeather(day.Weather) ?? List(day.Done) ?? List(day.Who) ?? (day.Notes is { } notes && (notes.Length > NotesMost || string.IsNullOrWhiteSpace(notes)) ? Message.Of("building.record.notes", ("most", NotesMost)) : null);
    }

    private static Message? OfWeather(SeenWeather? weather) => weather is null ? null
        : weather.Rain is { } rain && (rain < Length.Zero || rain.Metres > RainMostMetres) ? Message.Of("building.record.rain", ("rain", new Argument.Exact(rain)))
        : Hot(weather.High) ?? Hot(weather.Low) ?? (weather is { High: { } high, Low: { } low } && high.Celsius < low.Celsius ? Message.Of("building.record.high-below-low", ("high", high.Amount), ("low", low.Amount)) : null);

    private static Message? Hot(Temperature? t) => t is { } value && !(Math.Abs(value.Celsius) <= TemperatureMost) ? Message.Of("building.record.temperature", ("value", value.Amount)) : null;

    private static Message? Twice(SiteRecord record, SiteEntry entry, Seen.Day day) =>
        record.DayOf(day.Date) is { } there && there.Id != entry.Corrects ? Message.Of("building.record.day-twice", ("date", day.Date), ("id", there.Id)) : null;

    private static Message? OfDrawn(Sequence<DrawnSheet> drawn) =>
        drawn.Count > SheetsMost ? Message.Of("building.record.too-many", ("most", SheetsMost))
        : drawn.Select(s => Words(s.Part) ?? Words(s.Key) ?? Words(s.Number) ?? Words(s.Title) ?? Words(s.Print)).FirstOrDefault(m => m is not null);

    /// <summary>Two sets that differ never carry one letter: on the wall nobody could tell them apart.</summary>
    private static Message? LetterTwice(SiteRecord record, SiteEntry entry, Seen.Issue issue) =>
        issue.Drawn.Count > 0 && record.Standing.FirstOrDefault(e => e.Id != entry.Corrects && e.What is Seen.Issue { Drawn.Count: > 0 } there && there.Revision == issue.Revision) is { } other
            ? Message.Of("building.record.letter-twice", ("letter", issue.Revision), ("id", other.Id)) : null;

    private static Message? List(Sequence<string> items) =>
        items.Count > ListMost ? Message.Of("building.record.too-many", ("most", ListMost)) : items.Select(Words).FirstOrDefault(m => m is not null);

    private static Message? Words(string text) =>
        string.IsNullOrWhiteSpace(text) || text.Length > WordsMost || text.Any(char.IsControl) ? Message.Of("building.record.words", ("most", WordsMost)) : null;

    private static string Shown(string id) => id.Length <= IdMost ? id : id[..IdMost] + "…";
}
