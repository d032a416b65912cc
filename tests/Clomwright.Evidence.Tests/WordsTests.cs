using System.Text.Json;
using System.Text.RegularExpressions;
using Clomwright.Testing;

namespace Clomwright.Evidence.Tests;

/// <summary>The words files against the code: every message has its words, every word its message.</summary>
public partial class WordsTests
{
    private static readonly (string Path, string Text)[] Code = [.. SourceText.Files("src", "*.cs").Select(f => (f.Path, SourceText.WithoutComments(f.Text)))];

    [Fact]
    public void EveryMessageInTheCodeHasEnglishWords()
    {
        var known = Phrasebook.English.Keys.ToHashSet();
        var inCode = Code.SelectMany(f => Literal().Matches(f.Text).Select(m => (Key: m.Groups["key"].Value, f.Path)));
        var onPages = SourceText.Files("src", "*.ts").SelectMany(f => Quoted().Matches(f.Text).Select(m => (Key: m.Groups[1].Value, f.Path)))
            .Where(m => m.Key.StartsWith("web.", StringComparison.Ordinal));
        AssertNone(inCode.Concat(onPages).Where(m => !known.Contains(m.Key)).Select(m => $"{m.Key} ({m.Path})"));
    }

    [Fact]
    public void EveryPlaceInTheWordsIsFilledByTheCall()
    {
        var wrong = new List<string>();
        foreach (var (path, text) in Code)
        {
            foreach (Match match in Literal().Matches(text))
            {
                var key = match.Groups["key"].Value;
                var call = SourceText.Bracketed(text, text.IndexOf('(', match.Index));
                var given = ArgumentName().Matches(call).Select(m => m.Groups[1].Value).ToHashSet();
                var spread = match.Groups["of"].Success && !call.Contains("(\"", StringComparison.Ordinal) && call.Contains(',', StringComparison.Ordinal);
                var asked = Phrasebook.English.Arguments(key);
                wrong.AddRange(spread ? [] : asked.Where(name => !given.Contains(name)).Select(name => $"{key} is not given {{{name}}} ({path})"));
            }
        }

        AssertNone(wrong);
    }

    [Fact]
    public void NoWordsAreUnused()
    {
        var texts = Code.Select(f => f.Text)
            .Concat(SourceText.Files("src", "*.ts").Select(f => f.Text))
            .Concat(SourceText.Files("src", "*.html").Select(f => f.Text))
            .Concat(SourceText.Files("data", "*.json").Where(f => !f.Path.Contains("words", StringComparison.Ordinal)).Select(f => f.Text));
        var quoted = new HashSet<string>(StringComparer.Ordinal);
        var made = new HashSet<string>(StringComparer.Ordinal);
        foreach (var text in texts)
        {
            quoted.UnionWith(Quoted().Matches(text).Select(m => m.Groups[1].Value));
            made.UnionWith(Made().Matches(text).Select(m => m.Groups[1].Value));
        }

        made.UnionWith(quoted.Where(start => start.Contains('.', StringComparison.Ordinal) && start[^1] is '-' or '.'));
        bool IsSaid(string key) => quoted.Contains(key) || made.Any(start => key.StartsWith(start, StringComparison.Ordinal));

        // A room may leave its own name out: Papers says "caution.wet-wall" for "papers.caution.wet-wall".
        AssertNone(Phrasebook.English.Keys.Where(key => !IsSaid(key) && !IsSaid(key[(key.IndexOf('.', StringComparison.Ordinal) + 1)..])));
    }

    [Fact]
    public void EveryFileHoldsTheKeysOfItsRoomOnce()
    {
        foreach (var (path, text) in SourceText.Files(Path.Combine("data", "words"), "*.json"))
        {
            using var document = JsonDocument.Parse(text);
            var keys = document.RootElement.EnumerateObject().Select(p => p.Name).ToArray();
            Assert.Equal(keys.Distinct(), keys);
            Assert.All(keys, key => Assert.StartsWith(Path.GetFileNameWithoutExtension(path) + ".", key, StringComparison.Ordinal));
            Assert.All(keys, key => Assert.Matches(@"^[a-z]+(\.[a-z0-9]+([-@][a-z0-9]+)*)+$", key));
            Assert.All(document.RootElement.EnumerateObject(), p => Assert.False(string.IsNullOrWhiteSpace(p.Value.GetString()) && !p.Name.StartsWith("language.", StringComparison.Ordinal), p.Name));
        }
    }

    [Fact]
    public void TheReaderOfTheCodeSeesWhatItShould()
    {
        const string code = """
            // Message.Of("a.comment", ("x", 1))
            var m = Message.Of("a.key", ("name", Name(x)), ("list", new Argument.List([.. y])));
            var n = new Message("a.other");
            var o = new Message($"a.made-{month}");
            """;
        var bare = SourceText.WithoutComments(code);
        Assert.Equal(["a.key", "a.other"], Literal().Matches(bare).Select(m => m.Groups["key"].Value));
        Assert.Equal(["name", "list"], ArgumentName().Matches(SourceText.Bracketed(bare, bare.IndexOf('(', StringComparison.Ordinal))).Select(m => m.Groups[1].Value));
        Assert.Equal(["a.made-"], Made().Matches(bare).Select(m => m.Groups[1].Value));
    }

    private static void AssertNone(IEnumerable<string> wrong)
    {
        var all = string.Join("\n", wrong.Distinct());
        Assert.True(all.Length == 0, all);
    }

    [GeneratedRegex("""(?:new\s+Message|(?<of>Message\.Of))\(\s*"(?<key>[^"]+)"(?=\s*[,)])""")]
    private static partial Regex Literal();

    [GeneratedRegex("""\(\s*"([A-Za-z0-9-]+)"\s*,""")]
    private static partial Regex ArgumentName();

    [GeneratedRegex("""["'`]([a-z-]+(?:\.[a-z0-9.-]*)?)["'`]""")]
    private static partial Regex Quoted();

    [GeneratedRegex("""(?:\$"|`)([a-z-]+\.[a-z0-9.-]*)\$?\{""")]
    private static partial Regex Made();
}
