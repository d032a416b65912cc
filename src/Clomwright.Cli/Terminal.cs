using Clomwright.Evidence;

namespace Clomwright.Cli;

/// <summary>Where the program speaks: results and complaints, both in words from the phrasebook.</summary>
internal sealed class Terminal(TextWriter results, TextWriter complaints, DateOnly today)
{
    /// <summary>The day this run is on.</summary>
    public DateOnly Today { get; } = today;

    /// <summary>Results as they are, for other programs.</summary>
    public TextWriter Results { get; } = results;

    /// <summary>Complaints and progress as they are.</summary>
    public TextWriter Complaints { get; } = complaints;

    /// <summary>The terminal of this process.</summary>
    public static Terminal Standard() => new(Console.Out, Console.Error, DateOnly.FromDateTime(DateTime.Now));

    /// <summary>Says a result.</summary>
    public void Say(Message message, UnitSystem units = UnitSystem.Imperial) => Results.WriteLine(Phrasebook.English.Say(message, units));

    /// <summary>Says what is wrong.</summary>
    public void Complain(Message message, UnitSystem units = UnitSystem.Imperial) => Complaints.WriteLine(Phrasebook.English.Say(message, units));
}
