using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>The pin through every crossing of a reciprocal frame: a bolt through both poles with a washer and nut at each end.</summary>
/// <param name="Diameter">Of its shank.</param>
public sealed record Pin(Length Diameter)
{
    /// <summary>Diameter of the washers, that hold a crossing which is pulled open; three pins wide when not given.</summary>
    public Length? Washer { get; init; }

    /// <summary>Key of its metal in <c>data/materials/metal.json</c>.</summary>
    public string Material { get; init; } = "steel-bolt";
}

/// <summary>What holds a reciprocal frame when one pole fails.</summary>
public abstract record IfOneFails
{
    private IfOneFails()
    {
    }

    /// <summary>A continuous steel strap round the ring, fixed over every pole, with the nailed deck as a diaphragm: the pole that rested on the lost one hangs in the strap, and the deck holds it sideways.</summary>
    /// <param name="Width">Of the strap.</param>
    /// <param name="Thickness">Of the strap.</param>
    public sealed record Strap(Length Width, Length Thickness) : IfOneFails;

    /// <summary>Each pole is a pair side by side, one of which alone carries the whole load of both.</summary>
    public sealed record Doubled : IfOneFails;

    /// <summary>A post under every crossing of the ring, fixed to the upper pole there.</summary>
    /// <param name="Diameter">Of the round posts, of the poles' timber.</param>
    /// <param name="Footing">Side of the square footing under each.</param>
    public sealed record Post(Length Diameter, Length Footing) : IfOneFails;
}
