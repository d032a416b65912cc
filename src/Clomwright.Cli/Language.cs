using System.CommandLine;
using Clomwright.Evidence;

namespace Clomwright.Cli;

/// <summary>Which language a run speaks: <c>--language fr</c> anywhere on the line, else what <c>CLOM_LANGUAGE</c> says, else English.</summary>
internal static class Language
{
    /// <summary>The variable of the environment that says it for every run.</summary>
    public const string Variable = "CLOM_LANGUAGE";

    private const string Name = "--language";

    /// <summary>The option, for every verb. It is read before the line is, so that help and complaints are in it too.</summary>
    public static Option Option(Terminal terminal) => new Option<string>(Name) { Description = terminal.Word("cli.language"), Recursive = true };

    /// <summary>The language that somebody asked for, on the line or for every run; null where nobody did.</summary>
    public static string? Chosen(ParseResult? parsed, Terminal terminal) =>
        parsed?.GetValue<string?>(Name) is not null || !string.IsNullOrWhiteSpace(Environment.GetEnvironmentVariable(Variable)) ? terminal.Words.Language : null;

    /// <summary>The phrasebook asked for; null where there is none of that name.</summary>
    public static Phrasebook? Asked(IReadOnlyList<string> arguments, string? everyRun)
    {
        var asked = string.IsNullOrWhiteSpace(everyRun) ? Phrasebook.English.Language : everyRun;
        for (var i = 0; i < arguments.Count; i++)
        {
            asked = arguments[i] == Name && i + 1 < arguments.Count ? arguments[i + 1]
                : arguments[i].StartsWith(Name + "=", StringComparison.Ordinal) ? arguments[i][(Name.Length + 1)..]
                : asked;
        }

        var language = Phrasebook.Languages.FirstOrDefault(known => string.Equals(known, asked.Trim(), StringComparison.OrdinalIgnoreCase));
        return language is null ? null : Phrasebook.In(language);
    }
}
