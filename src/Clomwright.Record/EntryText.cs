using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Record;

/// <summary>What was seen, as one line of JSON that a person can read without this program. Lengths are written as in the house file, temperatures in C.</summary>
internal static class EntryText
{
    private static readonly JsonWriterOptions Plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static string Kind(Seen what) => what switch
    {
        Seen.Day => "day",
        Seen.Tested => "test",
        Seen.AsBuilt => "as-built",
        Seen.Delivery => "delivery",
        Seen.Issue => "issue",
        Seen.Struck => "struck",
        _ => throw new ArgumentOutOfRangeException(nameof(what)),
    };

    public static string Write(Seen what)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, Plain))
        {
            json.WriteStartObject();
            if (what.On is { } date)
            {
                json.WriteString("date", date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
            }

            Write(json, what);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan);
    }

    private static void Write(Utf8JsonWriter json, Seen what)
    {
        switch (what)
        {
            case Seen.Day day:
                Length(json, "raised", day.Raised);
                Number(json, "lift", day.Lift);
                Number(json, "batches", day.Batches);
                Number(json, "people", day.People);
                Number(json, "hours", day.Hours);
                Word(json, "stopped", day.Stopped == StoppedBy.Evening ? null : Name(day.Stopped));
                List(json, "done", day.Done);
                List(json, "who", day.Who);
                Length(json, "rain", day.Weather?.Rain);
                Number(json, "high", day.Weather?.High?.Celsius);
                Number(json, "low", day.Weather?.Low?.Celsius);
                Word(json, "notes", day.Notes);
                break;
            case Seen.Tested tested:
                Word(json, "test", tested.Test);
                Word(json, "of", tested.Of);
                Word(json, "result", tested.Result);
                break;
            case Seen.AsBuilt built:
                Word(json, "part", built.Part);
                Word(json, "what", Name(built.What));
                Length(json, "found", built.Found);
                break;
            case Seen.Delivery delivery:
                Word(json, "what", delivery.What);
                Word(json, "amount", delivery.Amount);
                if (delivery.AsOrdered is { } ordered)
                {
                    json.WriteBoolean("asOrdered", ordered);
                }

                break;
            case Seen.Issue issue:
                Word(json, "revision", issue.Revision);
                List(json, "sheets", issue.Sheets);
                Word(json, "to", issue.To);
                Drawn(json, issue.Drawn);
                break;
            case Seen.Struck struck:
                Word(json, "why", struck.Why);
                break;
        }
    }

    /// <summary>Reads a line back.</summary>
    /// <returns>Null where this program does not know what is written: a later one wrote it.</returns>
    public static Seen? Read(string kind, string body)
    {
        try
        {
            using var document = JsonDocument.Parse(body);
            var fields = new Fields(document.RootElement);
            var what = Read(kind, fields);
            return fields.AllRead ? what : null;
        }
        catch (Exception wrong) when (wrong is JsonException or InvalidOperationException or FormatException or KeyNotFoundException)
        {
            return null;
        }
    }

    private static Seen? Read(string kind, Fields f) => kind switch
    {
        "day" => new Seen.Day(f.Date)
        {
            Raised = f.Length("raised"), Lift = (int?)f.Number("lift"), Batches = f.Number("batches"), People = (int?)f.Number("people"), Hours = f.Number("hours"),
            Stopped = f.Word("stopped") is { } stopped ? Named<StoppedBy>(stopped) : StoppedBy.Evening, Done = f.List("done"), Who = f.List("who"),
            Weather = (f.Length("rain"), f.Number("high"), f.Number("low")) is var (rain, high, low) && (rain is not null || high is not null || low is not null)
                ? new SeenWeather(rain, high is { } h ? new Temperature(h) : null, low is { } l ? new Temperature(l) : null) : null,
            Notes = f.Word("notes"),
        },
        "test" => new Seen.Tested(f.Date, f.Must("test"), f.Must("of"), f.Must("result")),
        "as-built" => new Seen.AsBuilt(f.Date, f.Must("part"), Named<Measured>(f.Must("what")), f.Length("found") ?? throw new FormatException()),
        "delivery" => new Seen.Delivery(f.Date, f.Must("what"), f.Must("amount")) { AsOrdered = f.Flag("asOrdered") },
        "issue" => new Seen.Issue(f.Date, f.Must("revision"), f.List("sheets"), f.Must("to")) { Drawn = f.Drawn() },
        "struck" => new Seen.Struck(f.Must("why")),
        _ => null,
    };

    private static string Name<T>(T value) where T : struct, Enum => value.ToString().ToLowerInvariant();

    private static T Named<T>(string name) where T : struct, Enum =>
        Enum.GetValues<T>().Where(v => Name(v) == name).Cast<T?>().FirstOrDefault() ?? throw new FormatException();

    private static void Word(Utf8JsonWriter json, string key, string? value)
    {
        if (value is not null)
        {
            json.WriteString(key, value);
        }
    }

    private static void Length(Utf8JsonWriter json, string key, Length? value) => Word(json, key, value is { } length ? LengthText.Written(length) : null);

    private static void Number(Utf8JsonWriter json, string key, double? value)
    {
        if (value is { } number)
        {
            json.WriteNumber(key, number);
        }
    }

    private static void List(Utf8JsonWriter json, string key, Sequence<string> items)
    {
        if (items.Count > 0)
        {
            json.WriteStartArray(key);
            foreach (var item in items)
            {
                json.WriteStringValue(item);
            }

            json.WriteEndArray();
        }
    }

    /// <summary>Sheets in page order, each with its number, title and the hash of what is drawn.</summary>
    private static void Drawn(Utf8JsonWriter json, Sequence<DrawnSheet> sheets)
    {
        if (sheets.Count == 0)
        {
            return;
        }

        json.WriteStartArray("drawn");
        foreach (var sheet in sheets)
        {
            json.WriteStartObject();
            json.WriteString("part", sheet.Part);
            json.WriteString("key", sheet.Key);
            json.WriteString("number", sheet.Number);
            json.WriteString("title", sheet.Title);
            json.WriteString("print", sheet.Print);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>The keys of one line, each read once.</summary>
    private sealed class Fields(JsonElement line)
    {
        private int read;

        public bool AllRead => read == line.EnumerateObject().Count();

        public DateOnly Date => DateOnly.ParseExact(Must("date"), "yyyy-MM-dd", CultureInfo.InvariantCulture);

        public string Must(string key) => Word(key) ?? throw new KeyNotFoundException();

        public string? Word(string key) => Take(key)?.GetString();

        public double? Number(string key) => Take(key)?.GetDouble();

        public bool? Flag(string key) => Take(key)?.GetBoolean();

        public Length? Length(string key) => Word(key) is not { } text ? null : LengthText.TryParse(text, out var value, out _) ? value : throw new FormatException();

        public Sequence<string> List(string key) => Take(key)?.EnumerateArray().Select(e => e.GetString() ?? throw new FormatException()).ToSequence() ?? [];

        public Sequence<DrawnSheet> Drawn() => Take("drawn")?.EnumerateArray().Select(e => new Fields(e)).Select(f => new DrawnSheet(f.Must("part"), f.Must("key"), f.Must("number"), f.Must("title"), f.Must("print"))).ToSequence() ?? [];

        private JsonElement? Take(string key)
        {
            if (!line.TryGetProperty(key, out var value))
            {
                return null;
            }

            read++;
            return value;
        }
    }
}
