using System.Text.Json;

namespace Clomwright.Evidence.Tests;

/// <summary>Materials of the data files in words.</summary>
public sealed class MaterialWordsTests
{
    private static readonly (string File, string List)[] Lists =
    [
        ("finishes", "materials"), ("ground", "ground"), ("metal", "metals"), ("roof-layers", "layers"), ("stem", "stems"), ("thermal", "materials"), ("thermal", "ground"), ("thermal", "glazing"), ("thermal", "wood"), ("timber", "timbers"),
    ];

    /// <summary>Rank: property. The data files are the list: each of their materials has its word in every language, and there are words for nothing else.</summary>
    [Theory]
    [InlineData("en")]
    [InlineData("es")]
    [InlineData("fr")]
    public void EveryMaterial_HasItsWord_AndOnlyThose(string language)
    {
        const string start = "evidence.material.";
        var listed = Lists.SelectMany(l => Materials(l.File, l.List)).ToHashSet(StringComparer.Ordinal);
        var book = Phrasebook.In(language);
        var named = book.Keys.Where(k => k.StartsWith(start, StringComparison.Ordinal)).Select(k => k[start.Length..]).ToHashSet(StringComparer.Ordinal);
        Assert.Equal(listed.Order(), named.Order());
        Assert.All(listed, material => Assert.DoesNotContain('\u27e8', book.Material(material)));
    }

    /// <summary>Rank: property. What somebody named himself stays; a word that a language lacks is taken from English and marked.</summary>
    [Fact]
    public void AnUnknownMaterial_IsSaidAsItWasWritten()
    {
        Assert.Equal("Douglas fir No. 2", Phrasebook.English.Material("douglas-fir-no2"));
        Assert.Equal("piedra en seco", Phrasebook.In("es").Material("dry-stone"));
        Assert.Equal("slate", Phrasebook.In("fr").Material("slate"));
        Assert.Equal("\u27e8cork\u27e9", Phrasebook.Of([], Phrasebook.Of([new("evidence.material.cork", "cork")])).Material("cork"));
    }

    private static IEnumerable<string> Materials(string file, string list)
    {
        using var json = JsonDocument.Parse(SourceText.Files(Path.Combine("data", "materials"), file + ".json").Single().Text);
        return [.. json.RootElement.GetProperty(list).EnumerateArray().Select(m => m.GetProperty("key").GetString()!)];
    }
}
