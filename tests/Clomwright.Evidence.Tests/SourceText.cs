using System.Text;
using System.Text.RegularExpressions;
using Clomwright.Testing;

namespace Clomwright.Evidence.Tests;

/// <summary>The project's own source text, for the tests that read it.</summary>
internal static partial class SourceText
{
    internal static IEnumerable<(string Path, string Text)> Files(string folder, string pattern) =>
        Directory.EnumerateFiles(Path.Combine(Counts.Root, folder), pattern, SearchOption.AllDirectories)
            .Where(path => !Built().IsMatch(path))
            .Select(path => (Path.GetRelativePath(Counts.Root, path), File.ReadAllText(path)));

    /// <summary>C# without its comments, so that an example in a comment is no use of anything.</summary>
    internal static string WithoutComments(string code) => Comments().Replace(code, m => m.Value[0] == '/' ? "" : m.Value);

    /// <summary>The text between the bracket that opens at a place and its partner; strings inside are skipped over.</summary>
    internal static string Bracketed(string code, int open)
    {
        var depth = 0;
        var inside = new StringBuilder();
        foreach (var token in Tokens().Matches(code[open..]).Select(m => m.Value))
        {
            depth += token is "(" or "[" or "{" ? 1 : token is ")" or "]" or "}" ? -1 : 0;
            inside.Append(token);
            if (depth == 0)
            {
                break;
            }
        }

        return inside.ToString();
    }

    [GeneratedRegex(@"[/\\](obj|bin|artifacts|node_modules)[/\\]")]
    private static partial Regex Built();

    [GeneratedRegex("""//[^\n]*|/\*.*?\*/|@?"(?:\\.|[^"\\])*"|'(?:\\.|[^'\\])'""", RegexOptions.Singleline)]
    private static partial Regex Comments();

    [GeneratedRegex("""\$?"(?:\\.|[^"\\])*"|'(?:\\.|[^'\\])'|[()\[\]{}]|[^()\[\]{}"']+|.""", RegexOptions.Singleline)]
    private static partial Regex Tokens();
}
