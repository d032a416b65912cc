using Clomwright.Evidence;

namespace Clomwright.Files.Forms;

/// <summary>What may stand in one place of the house file, as data: the schema and the guide are made from it.</summary>
internal abstract record Kind
{
    /// <summary>Any text.</summary>
    public sealed record Text : Kind;

    /// <summary>A calendar date.</summary>
    public sealed record Date : Kind;

    /// <summary>A number.</summary>
    public sealed record Number : Kind;

    /// <summary>A whole number.</summary>
    public sealed record Whole : Kind;

    /// <summary>True or false.</summary>
    public sealed record Truth : Kind;

    /// <summary>The format number of the file itself.</summary>
    public sealed record Format(int Newest) : Kind;

    /// <summary>A text with a unit.</summary>
    public sealed record Quantity(Dimension Dimension) : Kind;

    /// <summary>One of some words.</summary>
    public sealed record Word(Sequence<string> Words) : Kind;

    /// <summary>A list.</summary>
    public sealed record List(Kind Item) : Kind;

    /// <summary>East and north, in a list of two.</summary>
    public sealed record Position : Kind;

    /// <summary>One of two kinds.</summary>
    public sealed record Either(Kind One, Kind Other) : Kind;

    /// <summary>An object.</summary>
    /// <param name="Name">Of the object, kebab case.</param>
    /// <param name="Keys">In the order in which they are written.</param>
    /// <param name="ExactlyOne">Pairs of keys of which exactly one is given.</param>
    public sealed record Thing(string Name, Sequence<KeyKind> Keys, Sequence<(string One, string Other)> ExactlyOne) : Kind;

    /// <summary>An object whose keys depend on one of them.</summary>
    public sealed record Union(string Name, string Key, Sequence<(string Word, Thing Thing)> Cases) : Kind;
}

/// <summary>A key of an object, as data.</summary>
/// <param name="Name">As it is written.</param>
/// <param name="Kind">What stands in it.</param>
/// <param name="Required">Whether it has to be given.</param>
/// <param name="Default">What is taken when it is not given, as it would be written; null where nothing is.</param>
internal sealed record KeyKind(string Name, Kind Kind, bool Required, string? Default);

/// <summary>What a key means, in words.</summary>
internal static class Meaning
{
    /// <summary>The message for a key of an object: <c>files.key.house.bond-beam</c>.</summary>
    public static Message Of(string thing, string key) =>
        new($"files.key.{thing}.{string.Concat(key.Select(c => char.IsAsciiLetterUpper(c) ? $"-{char.ToLowerInvariant(c)}" : c.ToString()))}");
}
