using Clomwright.Evidence;

namespace Clomwright.Cli;

/// <summary>Where the program speaks: results and complaints, both in words from the phrasebook.</summary>
internal sealed class Terminal(TextWriter results, TextWriter complaints, DateOnly today, TextWriter? progress = null)
{
    /// <summary>The day this run is on.</summary>
    public DateOnly Today { get; } = today;

    /// <summary>The moment of it, with the offset of the place.</summary>
    public DateTimeOffset Now => new(Today.ToDateTime(TimeOnly.FromDateTime(DateTime.Now)), TimeZoneInfo.Local.GetUtcOffset(DateTime.Now));

    /// <summary>Results as they are, for other programs.</summary>
    public TextWriter Results { get; } = results;

    /// <summary>Complaints as they are.</summary>
    public TextWriter Complaints { get; } = complaints;

    /// <summary>Where a line of progress is written over and over; null where nobody looks, as in a file.</summary>
    public TextWriter? Watched { get; } = progress;

    /// <summary>The language it speaks.</summary>
    public Phrasebook Words { get; set; } = Phrasebook.English;

    /// <summary>The terminal of this process.</summary>
    public static Terminal Standard() => new(Console.Out, Console.Error, DateOnly.FromDateTime(DateTime.Now), Console.IsErrorRedirected ? null : Console.Error);

    /// <summary>The words of a verb or option.</summary>
    public string Word(string key) => Words.Say(new Message(key), UnitSystem.Imperial);

    /// <summary>Says a result.</summary>
    public void Say(Message message, UnitSystem units = UnitSystem.Imperial) => Results.WriteLine(Words.Say(message, units));

    /// <summary>Says what is wrong.</summary>
    public void Complain(Message message, UnitSystem units = UnitSystem.Imperial) => Complaints.WriteLine(Words.Say(message, units));
}
