using System.Text.Json;
using System.Text.RegularExpressions;
using Clomwright.Testing;

namespace Clomwright.Evidence.Tests;

public partial class SourcesTests
{
    [Fact]
    public void EveryLineOfTheRegisterIsRead()
    {
        using var file = JsonDocument.Parse(File.ReadAllText(Path.Combine(Counts.Root, "data", "sources.json")));
        var keys = file.RootElement.EnumerateArray().Select(e => e.GetProperty("key").GetString()!).ToArray();
        Assert.Equal(keys.Distinct(), keys);
        Assert.Equal(keys.Order(StringComparer.Ordinal), Sources.All.Select(s => s.Key));
        Assert.All(Sources.All, s => Assert.Matches("^[a-z0-9]+(-[a-z0-9]+)*$", s.Key));
        Assert.All(Sources.All, s => Assert.True(s.Address is null || Uri.TryCreate(s.Address, UriKind.Absolute, out _), s.Key));
        Assert.All(file.RootElement.EnumerateArray(), e => Assert.All(e.EnumerateObject(), p => Assert.Contains(p.Name, (string[])["key", "title", "surety", "code", "address"])));
    }

    [Fact]
    public void EverySourceNamedInTheCodeIsInTheRegister()
    {
        var named = SourceText.Files("src", "*.cs").SelectMany(f => Named().Matches(f.Text)).Select(m => m.Groups[1].Value).Distinct();
        Assert.All(named, key => Assert.Equal(key, Sources.Get(key).Key));
    }

    // By hand: a manual of soils, a handbook and an estimate of ours are no codes, however a number of theirs is used.
    [Theory]
    [InlineData("usda-texture", "published")]
    [InlineData("wood-handbook-memory", "published")]
    [InlineData("lift-practice", "practice")]
    [InlineData("nds-memory", "code")]
    [InlineData("en-1991-1-3", "code")]
    public void ANumberOfASource_IsOfACodeOnlyWhereThatIsOne(string source, string tag) =>
        Assert.Equal(tag, Phrasebook.English.Say(Names.Of(Tag.Code, Sources.Get(source)), UnitSystem.Metric));

    // Property: whatever is named by the number of a standard is marked as one, but a report of tests by it; no estimate of ours is.
    [Fact]
    public void CodesAreMarked()
    {
        Assert.All(Sources.All.Where(s => Standard().IsMatch(s.Title) && !s.Title.Contains(" tests ", StringComparison.Ordinal)), s => Assert.True(s.IsCode, s.Key));
        Assert.DoesNotContain(Sources.All, s => s.IsCode && s.Surety is (Surety.Practice or Surety.Derived));
    }

    [Fact]
    public void Get_Unknown_Throws() => Assert.Throws<ArgumentOutOfRangeException>(() => Sources.Get("no-such-source"));

    [GeneratedRegex("^(?:ASCE|EN [0-9]|NDS|NZS|ISO [0-9]|IBC|IRC|IS [0-9]|ASTM|UFC [0-9]|TMS|20[0-9]{2} I)")]
    private static partial Regex Standard();

    [GeneratedRegex("Sources\\.Get\\(\"([^\"]+)\"")]
    private static partial Regex Named();
}
