using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>What holds a deck board to a pole.</summary>
public enum DeckFastener
{
    /// <summary>A common wire nail with a smooth shank.</summary>
    Nail,

    /// <summary>A wood screw.</summary>
    Screw,
}

/// <summary>How each deck board is fixed at each pole or secondary that it meets.</summary>
/// <param name="Diameter">Of the shank.</param>
/// <param name="Length">From under the head to the point.</param>
public sealed record DeckNails(Length Diameter, Length Length)
{
    /// <summary>How many in each board at each end, in a line across it.</summary>
    public int Count { get; init; } = 2;

    /// <summary>Nail or screw.</summary>
    public DeckFastener Kind { get; init; }

    /// <summary>Width of the boards; 5.5 in when not given.</summary>
    public Length? Board { get; init; }
}

/// <summary>Two crossed steel straps in the plane of the roof in every bay, each from a pole's seat to the inner end of the next pole, nailed to the poles.</summary>
/// <param name="Width">Of each strap.</param>
/// <param name="Thickness">Of each strap.</param>
/// <param name="Nails">Nails at each end of each strap.</param>
/// <param name="Diameter">Of those nails.</param>
/// <param name="Length">Of those nails.</param>
public sealed record RoofBraces(Length Width, Length Thickness, int Nails, Length Diameter, Length Length);

/// <summary>How a pole sits on the bond beam.</summary>
public sealed record SeatMade
{
    /// <summary>How deep the flat is cut into the pole; 1 in when not given.</summary>
    public Length? Flat { get; init; }

    /// <summary>Diameter of the one upright bolt through pole and bond beam; null where it is not described.</summary>
    public Length? Bolt { get; init; }

    /// <summary>Diameter of its washers, one on the pole and one under the bond beam; three bolts wide when not given.</summary>
    public Length? Washer { get; init; }

    /// <summary>Length of a lag screw that goes through the pole into the bond beam; null for a bolt with a nut under the beam.</summary>
    public Length? Lag { get; init; }
}

/// <summary>The post under the centre of a radial roof.</summary>
/// <param name="Diameter">Of the round post, of the poles' timber.</param>
/// <param name="Footing">Side of the square footing under it.</param>
public sealed record CentrePost(Length Diameter, Length Footing);

/// <summary>The sawn timber ring that radial poles lean on.</summary>
/// <param name="Width">Along the radius.</param>
/// <param name="Depth">Upright.</param>
/// <param name="Material">Key of its timber.</param>
public sealed record CompressionRing(Length Width, Length Depth, string Material);

/// <summary>The flue of a stove where it passes the roof.</summary>
/// <param name="Diameter">Outside, of the pipe.</param>
public sealed record Flue(Length Diameter)
{
    /// <summary>Bearing of its middle from the plan centre.</summary>
    public Angle Bearing { get; init; }

    /// <summary>Distance of its middle from the plan centre; nothing is through the middle of the ring.</summary>
    public Length Distance { get; init; }

    /// <summary>Clearance to anything that burns, from the outside of the pipe, as its maker writes; null when it is not known.</summary>
    public Length? Clear { get; init; }
}

/// <summary>The strip under the edge of deck and membrane, all round the eave, from which water drops clear of the edge board.</summary>
/// <param name="Out">How far its lip stands out from the edge board.</param>
/// <param name="Down">How far its lip hangs below the deck.</param>
public sealed record DripEdge(Length Out, Length Down);

/// <summary>Battens across the slope that keep soil from sliding.</summary>
/// <param name="Spacing">Between two of them, down the slope.</param>
/// <param name="Height">Over the membrane.</param>
public sealed record SoilBattens(Length Spacing, Length Height);
