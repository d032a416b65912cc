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
        Assert.All(file.RootElement.EnumerateArray(), e => Assert.All(e.EnumerateObject(), p => Assert.Contains(p.Name, (string[])["key", "title", "surety", "address"])));
    }

    [Fact]
    public void EverySourceNamedInTheCodeIsInTheRegister()
    {
        var named = SourceText.Files("src", "*.cs").SelectMany(f => Named().Matches(f.Text)).Select(m => m.Groups[1].Value).Distinct();
        Assert.All(named, key => Assert.Equal(key, Sources.Get(key).Key));
    }

    [Fact]
    public void Get_Unknown_Throws() => Assert.Throws<ArgumentOutOfRangeException>(() => Sources.Get("no-such-source"));

    [GeneratedRegex("Sources\\.Get\\(\"([^\"]+)\"")]
    private static partial Regex Named();
}
