using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>Which way each pole of a reciprocal frame crosses its neighbour, seen from above.</summary>
public enum Turn
{
    /// <summary>Clockwise.</summary>
    Clockwise,

    /// <summary>Anticlockwise.</summary>
    Anticlockwise,
}

/// <summary>How two poles meet.</summary>
public enum PoleJoint
{
    /// <summary>A pin or bolt through the crossing.</summary>
    Pinned,

    /// <summary>Notched over each other.</summary>
    Notched,

    /// <summary>Lashed.</summary>
    Lashed,
}

/// <summary>The size of a round pole.</summary>
/// <param name="Butt">Diameter at the thick end, which lies outward.</param>
/// <param name="Tip">Diameter at the thin end.</param>
public readonly record struct PoleSize(Length Butt, Length Tip)
{
    /// <summary>A pole without taper.</summary>
    public static PoleSize Even(Length diameter) => new(diameter, diameter);
}

/// <summary>Round poles between the main ones.</summary>
/// <param name="PerBay">How many in each bay.</param>
/// <param name="Diameter">Of each.</param>
public sealed record Secondaries(int PerBay, Length Diameter)
{
    /// <summary>Diameter of the one bolt at each end; null where it is not described.</summary>
    public Length? Bolt { get; init; }
}

/// <summary>What closes the ring.</summary>
public enum Eye
{
    /// <summary>Decked over.</summary>
    Closed,

    /// <summary>Glass on a curb.</summary>
    Glazed,

    /// <summary>A raised vent.</summary>
    Vent,
}

/// <summary>The roof: what all kinds share.</summary>
public abstract record Roof
{
    private Roof()
    {
    }

    /// <summary>How many poles lie side by side in every place of a pole: 2 in a doubled frame, otherwise 1.</summary>
    public int SideBySide => this is Reciprocal { IfOneFails: IfOneFails.Doubled } ? 2 : 1;

    /// <summary>Overhang beyond the outside face at the wall top, in plan.</summary>
    public required Length Eave { get; init; }

    /// <summary>Key of the pole or rafter timber.</summary>
    public string Species { get; init; } = "douglas-fir-pole";

    /// <summary>Poles between the main ones.</summary>
    public Secondaries? Secondaries { get; init; }

    /// <summary>Thickness of the deck boards.</summary>
    public Length? Deck { get; init; }

    /// <summary>Key of the deck boards' timber.</summary>
    public string DeckMaterial { get; init; } = "douglas-fir-no2";

    /// <summary>Layers on the deck, from the bottom up.</summary>
    public Sequence<Layer> Layers { get; init; }

    /// <summary>Height of the edge board that holds the soil; null where there is none.</summary>
    public Length? EdgeBoard { get; init; }

    /// <summary>How the deck boards are fixed; null where it is not described.</summary>
    public DeckNails? DeckNails { get; init; }

    /// <summary>Crossed straps in every bay, in the plane of the roof; null where there are none.</summary>
    public RoofBraces? Braces { get; init; }

    /// <summary>How poles sit on the bond beam; null where it is not described.</summary>
    public SeatMade? Seat { get; init; }

    /// <summary>The flue that passes the roof; null where none does.</summary>
    public Flue? Flue { get; init; }

    /// <summary>Height over the deck at which water runs out through the edge board; null where it has no overflow.</summary>
    public Length? Overflow { get; init; }

    /// <summary>The drip edge all round the eave; null where it is not described.</summary>
    public DripEdge? Drip { get; init; }

    /// <summary>Battens that keep soil from sliding; null where there are none.</summary>
    public SoilBattens? Battens { get; init; }

    /// <summary>Widest sheet of membrane that can be got; null for one piece of any size.</summary>
    public Length? SheetRoll { get; init; }

    /// <summary>Bearing of the first pole or of the fall.</summary>
    public Angle FirstBearing { get; init; }

    /// <summary>Bearings from the plan centre at which poles land on the bond beam; empty spaces them equally from <see cref="FirstBearing"/>.</summary>
    public Sequence<Angle> Landings { get; init; }

    /// <summary>Poles that carry each other round a ring.</summary>
    public sealed record Reciprocal(int Poles, Length RingRadius, PoleSize Pole) : Roof
    {
        /// <summary>Which way each pole crosses its neighbour.</summary>
        public Turn Turn { get; init; }

        /// <summary>Depth of the notch in each pole.</summary>
        public Length Notch { get; init; }

        /// <summary>How the crossings are held.</summary>
        public PoleJoint Joint { get; init; }

        /// <summary>What closes the ring.</summary>
        public Eye Eye { get; init; }

        /// <summary>The pins through the crossings; null where they are not described.</summary>
        public Pin? Pin { get; init; }

        /// <summary>What holds the frame when one pole fails; null where nothing does.</summary>
        public IfOneFails? IfOneFails { get; init; }
    }

    /// <summary>Poles from the wall to a centre post or compression ring.</summary>
    public sealed record Radial(int Poles, PoleSize Pole, Slope Pitch) : Roof
    {
        /// <summary>A post stands under the centre; otherwise a compression ring.</summary>
        public bool CentrePost { get; init; }

        /// <summary>Radius of the ring in plan.</summary>
        public Length RingRadius { get; init; }

        /// <summary>The centre post; null where it is not described.</summary>
        public CentrePost? Post { get; init; }

        /// <summary>The compression ring; null where it is not described.</summary>
        public CompressionRing? Ring { get; init; }

        /// <summary>What closes the ring.</summary>
        public Eye Eye { get; init; }
    }

    /// <summary>One plane falling toward <see cref="Roof.FirstBearing"/>.</summary>
    public sealed record Shed(PoleSize Pole, Length Spacing, Slope Pitch) : Roof;

    /// <summary>Two planes with the ridge square to <see cref="Roof.FirstBearing"/>.</summary>
    public sealed record Gable(PoleSize Pole, Length Spacing, Slope Pitch) : Roof;
}
