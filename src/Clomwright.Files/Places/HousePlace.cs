using Clomwright.Evidence;

namespace Clomwright.Files;

/// <summary>What is written in a place of a house.</summary>
public enum PlaceKind
{
    /// <summary>Any text.</summary>
    Text,

    /// <summary>A day, year first.</summary>
    Date,

    /// <summary>A number.</summary>
    Number,

    /// <summary>A whole number.</summary>
    Whole,

    /// <summary>Yes or no.</summary>
    Truth,

    /// <summary>A quantity with its unit.</summary>
    Quantity,

    /// <summary>One of some words.</summary>
    Word,

    /// <summary>Several of one kind, one after another.</summary>
    Several,
}

/// <summary>One place of a house where something is or may be written: a leaf of the table of keys, in one house.</summary>
/// <param name="Path">As in diagnostics: <c>openings[2].width</c>.</param>
/// <param name="Thing">The object it is a key of, kebab case: <c>opening</c>.</param>
/// <param name="Key">Its key, kebab case: <c>width</c>.</param>
/// <param name="Kind">What stands there.</param>
/// <param name="Dimension">Of a quantity; null for all else.</param>
/// <param name="Words">The words of a word; yes and no of a truth.</param>
/// <param name="Text">As it stands, or what is taken where nothing does; empty where nobody said.</param>
/// <param name="Needed">It cannot be left empty.</param>
public sealed record HousePlace(string Path, string Thing, string Key, PlaceKind Kind, Dimension? Dimension, Sequence<string> Words, string Text, bool Needed)
{
    /// <summary>What it means, in the words of the house file's own table.</summary>
    public Message Meaning => new($"files.key.{Thing}.{Key}");
}

/// <summary>A part of a house that may hold other parts: an object of the table of keys, in one house.</summary>
/// <param name="Path">As in diagnostics: <c>openings[2].frame</c>.</param>
/// <param name="Thing">Kebab case: <c>frame</c>.</param>
/// <param name="Case">The word on which its keys depend, for a plan, a roof or what holds one; null for all else.</param>
/// <param name="IsThere">It is in the house.</param>
/// <param name="CanGo">It may be left out.</param>
public sealed record HousePart(string Path, string Thing, string? Case, bool IsThere, bool CanGo);
