using System.Text.Json.Serialization;

namespace Clomwright.Web.Editing;

/// <summary>What the page may ask to be changed.</summary>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "kind")]
[JsonDerivedType(typeof(Move), "move")]
[JsonDerivedType(typeof(Nudge), "nudge")]
[JsonDerivedType(typeof(Write), "write")]
public abstract record Change(string Opening)
{
    /// <summary>An opening dragged.</summary>
    /// <param name="Opening">Its name.</param>
    /// <param name="Station">Where it was dropped along the inside face, m; set on the builder's grid.</param>
    /// <param name="Sill">Where its sill was dropped, m; null leaves it.</param>
    public sealed record Move(string Opening, double Station, double? Sill) : Change(Opening);

    /// <summary>An opening moved by the arrow keys.</summary>
    /// <param name="Opening">Its name.</param>
    /// <param name="Along">Steps clockwise.</param>
    /// <param name="Up">Steps up.</param>
    /// <param name="Large">Large steps.</param>
    public sealed record Nudge(string Opening, int Along, int Up, bool Large) : Change(Opening);

    /// <summary>A length written in a blank.</summary>
    /// <param name="Opening">Its name.</param>
    /// <param name="Field">Which blank.</param>
    /// <param name="Text">As it was written.</param>
    public sealed record Write(string Opening, OpeningField Field, string Text) : Change(Opening);
}

/// <summary>A blank of an opening's sentence.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<OpeningField>))]
public enum OpeningField
{
    /// <summary>Station of its middle.</summary>
    [JsonStringEnumMemberName("station")]
    Station,

    /// <summary>Rough sill.</summary>
    [JsonStringEnumMemberName("sill")]
    Sill,

    /// <summary>Rough width.</summary>
    [JsonStringEnumMemberName("width")]
    Width,

    /// <summary>Rough height.</summary>
    [JsonStringEnumMemberName("height")]
    Height,
}
