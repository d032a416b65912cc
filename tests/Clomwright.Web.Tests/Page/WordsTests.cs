using System.Text.RegularExpressions;

namespace Clomwright.Web.Tests.Page;

/// <summary>The page speaks only in keys, and every key has words. Read from the sources; rank: property.</summary>
public sealed partial class WordsTests
{
    [Fact]
    public void EveryKeyThatThePageSpeaks_HasWords()
    {
        var words = Words.OfPage;
        var spoken = Sources().SelectMany(source => Key().Matches(source.Text)).Select(match => match.Groups[1].Value).ToHashSet();
        Assert.True(spoken.Count > 40, "the keys are no longer found in the sources");
        Assert.All(spoken, key => Assert.Contains(words.Keys, word => key.EndsWith('.') || key.EndsWith('-') ? word.StartsWith(key, StringComparison.Ordinal) : word == key));
    }

    [Fact]
    public void EveryWordOfThisRoom_IsSpokenSomewhere()
    {
        var all = string.Concat(Sources().Select(source => source.Text));
        Assert.All(Words.OfPage.Keys, key => Assert.True(
            all.Contains(key, StringComparison.Ordinal) || all.Contains(key[..(key.LastIndexOf('.') + 1)] + "${", StringComparison.Ordinal) || all.Contains(key[..(key.LastIndexOf('.') + 1)] + "{", StringComparison.Ordinal), $"{key} is spoken nowhere"));
    }

    [Fact]
    public void Templates_HoldNoEnglish() => Assert.All(
        Sources().Where(source => source.Path.EndsWith(".ts", StringComparison.Ordinal)),
        source => Assert.DoesNotMatch(TextBetweenTags(), source.Text));

    private static IEnumerable<(string Path, string Text)> Sources() =>
        Directory.EnumerateFiles(Path.Combine(Root(), "src", "Clomwright.Web"), "*.*", SearchOption.AllDirectories)
            .Where(path => path.EndsWith(".cs", StringComparison.Ordinal) || path.EndsWith(".ts", StringComparison.Ordinal))
            .Where(path => !path.Contains("node_modules", StringComparison.Ordinal) && !path.Contains("wwwroot", StringComparison.Ordinal))
            .Select(path => (path, File.ReadAllText(path)));

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Clomwright.slnx")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new DirectoryNotFoundException("the tests are not inside the repository");
    }

    [GeneratedRegex(@"['""`](web\.[a-z.-]+)")]
    private static partial Regex Key();

    /// <summary>A word of three letters or more between a tag's end and the next tag, outside any expression.</summary>
    [GeneratedRegex(@"<(?:p|a|h[1-3]|button|th|td|dt|dd|span|b|text|tspan|title|caption|summary|li)\b[^<>`]*>\s*[A-Za-z]{3,}[^<$]*</")]
    private static partial Regex TextBetweenTags();
}
