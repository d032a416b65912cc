using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Finishes;

/// <summary>Plasters, lath, test panels and floor: how much, of what, in which order. Numbers, never a verdict.</summary>
public sealed record FinishesResult
{
    /// <summary>Inside, then outside.</summary>
    public required Sequence<FacePlaster> Faces { get; init; }

    /// <summary>Timber near a plastered face, in the order of the description.</summary>
    public required Sequence<LathPlace> Lath { get; init; }

    /// <summary>Test panels by face and material of a finish.</summary>
    public required Sequence<PanelChoice> Panels { get; init; }

    /// <summary>The floor; or why there is none.</summary>
    public required Known<FloorResult> Floor { get; init; }

    /// <summary>What is set against the faces to keep them warm, in the order of the description.</summary>
    public Sequence<LiningPlace> Linings { get; init; }

    /// <summary>What to order for all of it.</summary>
    public required Sequence<OrderLine> Orders { get; init; }

    /// <summary>What nobody gave.</summary>
    public required Sequence<Assumption> Assumptions { get; init; }

    /// <summary>How the numbers were made.</summary>
    public required Sequence<Calculation> Calculations { get; init; }

    /// <summary>The same with what the forecast of drying says of when plaster may go on; nothing else depends on it.</summary>
    /// <param name="ready">Of both faces: the forecast is of the mean of each lift.</param>
    public FinishesResult WithReady(Known<PlasterReady> ready) => this with { Faces = Faces.Select(f => f with { Ready = ready }).ToSequence() };

    /// <summary>One face.</summary>
    public FacePlaster Of(Face face) => Faces.First(f => f.Face == face);
}

/// <summary>One face with its coats. Areas in m2.</summary>
public sealed record FacePlaster
{
    /// <summary>Which.</summary>
    public required Face Face { get; init; }

    /// <summary>The face of the cob, net of openings.</summary>
    public required double Plain { get; init; }

    /// <summary>Reveals from the frames to it.</summary>
    public required double Reveals { get; init; }

    /// <summary>Backs and sides of niches less their mouths.</summary>
    public required double Niches { get; init; }

    /// <summary>All that is plastered.</summary>
    public required double Area { get; init; }

    /// <summary>Coats from the wall outward; none where no finish is described.</summary>
    public required Sequence<CoatResult> Coats { get; init; }

    /// <summary>A material that closes the face; null where none does.</summary>
    public string? Sealing { get; init; }

    /// <summary>Days after the last cob until it may go on; or why that is not known.</summary>
    public required Known<PlasterReady> Ready { get; init; }

    /// <summary>Months in which it may be laid; or why that is not known.</summary>
    public required Known<SeasonWindow> Season { get; init; }

    /// <summary>The rule of the season in words; null where nothing is plastered.</summary>
    public Message? SeasonRule { get; init; }
}

/// <summary>One coat of one face.</summary>
public sealed record CoatResult
{
    /// <summary>Which.</summary>
    public required CoatRole Role { get; init; }

    /// <summary>Key of its material.</summary>
    public required string Material { get; init; }

    /// <summary>What makes it hard.</summary>
    public required Binder Binder { get; init; }

    /// <summary>Thickness, m; 0 for slip and wash.</summary>
    public required double Depth { get; init; }

    /// <summary>How many times it is laid on.</summary>
    public required int Passes { get; init; }

    /// <summary>Laid volume with waste, m3; 0 for slip and wash.</summary>
    public required double Volume { get; init; }

    /// <summary>One batch in buckets; null where no mix is known.</summary>
    public PlasterParts? Parts { get; init; }

    /// <summary>Given, or practice with its source.</summary>
    public Tag PartsTag { get; init; }

    /// <summary>Whose mix it is where the author gave none.</summary>
    public Source? PartsSource { get; init; }

    /// <summary>Name of the panel that it comes from.</summary>
    public string? Panel { get; init; }

    /// <summary>Batches; or why they are not known.</summary>
    public required Known<Calculated<double>> Batches { get; init; }

    /// <summary>Each part, loose.</summary>
    public Sequence<Ingredient> Ingredients { get; init; }

    /// <summary>Water for all of it, litres, least and most; null where it goes in by feel.</summary>
    public (double Low, double High)? Water { get; init; }

    /// <summary>When the next may follow, in words.</summary>
    public required Message Next { get; init; }
}

/// <summary>One part of a mix.</summary>
/// <param name="Key"><c>clay</c>, <c>lime</c>, <c>sand</c>, <c>straw</c>, <c>manure</c>, <c>paste</c>.</param>
/// <param name="PerBatch">Buckets in one batch.</param>
/// <param name="Volume">Loose, for all of it, m3; null where batches cannot be told from volume.</param>
public sealed record Ingredient(string Key, double PerBatch, double Volume);

/// <summary>Days after the last cob until plaster may go on.</summary>
/// <param name="Low">With everything uncertain taken so that it dries faster.</param>
/// <param name="High">The slow way; null where it was not reached in the time looked at.</param>
public sealed record PlasterReady(double Low, double? High);

/// <summary>One month of a climate: mean daily high and low, °C.</summary>
public readonly record struct MonthRange(int Number, double High, double Low);

/// <summary>The twelve months of a climate.</summary>
public sealed record Months(Sequence<MonthRange> All);

/// <summary>Months, 1 to 12, in which a plaster may be laid.</summary>
public sealed record SeasonWindow(Sequence<int> Months);

/// <summary>What lies under plaster.</summary>
public enum LathKind
{
    /// <summary>The upright side of a header.</summary>
    Header,

    /// <summary>The underside of a header.</summary>
    Soffit,

    /// <summary>The edge of a frame.</summary>
    Frame,

    /// <summary>A side of the bond beam.</summary>
    BondBeam,

    /// <summary>A nailer.</summary>
    Nailer,

    /// <summary>A deadman.</summary>
    Deadman,
}

/// <summary>Timber that wants lath or mesh.</summary>
/// <param name="Address">What it is, by the author's name.</param>
/// <param name="Kind">What lies there.</param>
/// <param name="Face">Face that it is under.</param>
/// <param name="Length">Along the wall or the edge, m; null where it is not given.</param>
/// <param name="Width">Across, m; null where it is not given.</param>
/// <param name="Cover">Cob before it, m; null where it is at the face.</param>
/// <param name="Area">Lath with its laps, m2; where no size is given, of the size assumed.</param>
public sealed record LathPlace(string Address, LathKind Kind, Face Face, double? Length, double? Width, double? Cover, double Area);

/// <summary>What the panels of one finish say.</summary>
/// <param name="Face">The face.</param>
/// <param name="Material">The finish.</param>
/// <param name="Tried">All of them, the best first.</param>
/// <param name="Chosen">The one to take; null where none is sound.</param>
/// <param name="Why">Why that one, or why none.</param>
/// <param name="Next">The panel to make next; null where one is chosen.</param>
public sealed record PanelChoice(Face Face, string Material, Sequence<TestPanel> Tried, TestPanel? Chosen, Message Why, Message? Next);

/// <summary>The floor from the ground up. Levels in m from the finished floor.</summary>
public sealed record FloorResult
{
    /// <summary>Inside the stem, m2.</summary>
    public required double Area { get; init; }

    /// <summary>Level to which the ground is dug.</summary>
    public required double Formation { get; init; }

    /// <summary>Layers from the ground up.</summary>
    public required Sequence<FloorLayerResult> Layers { get; init; }

    /// <summary>Lowest earth over the outside grade, m; or why it is not known.</summary>
    public required Known<Calculated<double>> EarthOverGrade { get; init; }

    /// <summary>Stem top over the finished floor, m.</summary>
    public required double StemOverFloor { get; init; }

    /// <summary>Oil for all coats, m3; null where none is described.</summary>
    public double? Oil { get; init; }

    /// <summary>Doors against the finished level.</summary>
    public required Sequence<DoorLevel> Doors { get; init; }
}

/// <summary>One layer of the floor.</summary>
public sealed record FloorLayerResult
{
    /// <summary>Its description.</summary>
    public required FloorLayer Layer { get; init; }

    /// <summary>Its top.</summary>
    public required double Top { get; init; }

    /// <summary>Its bottom.</summary>
    public required double Bottom { get; init; }

    /// <summary>As it lies, m3.</summary>
    public required double Volume { get; init; }

    /// <summary>To bring, loose and with waste, m3; 0 for a sheet.</summary>
    public required double Brought { get; init; }

    /// <summary>The mix of an earth layer; null for others.</summary>
    public PlasterParts? Parts { get; init; }

    /// <summary>Whose mix it is where the author gave none.</summary>
    public Source? PartsSource { get; init; }

    /// <summary>Batches of an earth layer; or why there are none.</summary>
    public required Known<Calculated<double>> Batches { get; init; }

    /// <summary>Each part of an earth layer, loose.</summary>
    public Sequence<Ingredient> Ingredients { get; init; }

    /// <summary>Area of a sheet with what turns up to the finished floor and laps, m2; null for other layers.</summary>
    public double? Sheet { get; init; }

    /// <summary>Truckloads; null where the truck is not given.</summary>
    public double? Trucks { get; init; }

    /// <summary>Days before the next may follow where it is laid in inch layers, least and most; null for what does not dry.</summary>
    public (double Low, double High)? Days { get; init; }
}

/// <summary>A door against the finished floor, m.</summary>
/// <param name="Name">The author's name.</param>
/// <param name="Sill">Rough sill over the finished floor.</param>
/// <param name="Clear">Under the leaf where it sweeps; or why it is not known.</param>
public sealed record DoorLevel(string Name, double Sill, Known<Calculated<double>> Clear);
