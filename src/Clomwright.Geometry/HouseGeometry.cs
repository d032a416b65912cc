using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Geometry;

/// <summary>Where everything in one house is. What could not be placed is missing here and named in <see cref="Diagnostics"/>; the rest stands.</summary>
public sealed record HouseGeometry
{
    /// <summary>The description it was made from.</summary>
    public required House House { get; init; }

    /// <summary>The inside face at the wall base.</summary>
    public required PlanCurve Curve { get; init; }

    /// <summary>The wall's two faces.</summary>
    public required WallSolid Wall { get; init; }

    /// <summary>The stem's two faces, as offsets outward from the inside face at the wall base, m: centred under the cob where nothing else is given.</summary>
    public (double Inside, double Outside) Stem => WallBands.Stem(House.Stem, Wall);

    /// <summary>Volumes and face areas of the whole wall.</summary>
    public required WallMeasures Measures { get; init; }

    /// <summary>Lifts, bottom up.</summary>
    public required Sequence<LiftSlice> Lifts { get; init; }

    /// <summary>Openings that could be placed, clockwise from the zero mark.</summary>
    public required Sequence<OpeningPlace> Openings { get; init; }

    /// <summary>Piers between neighbouring openings, clockwise, the first one beginning at the first opening. With one opening there is one pier, from it round to itself; with none there is none.</summary>
    public required Sequence<Pier> Piers { get; init; }

    /// <summary>Niches that could be placed.</summary>
    public required Sequence<NichePlace> Niches { get; init; }

    /// <summary>Embeds one by one, rows taken apart.</summary>
    public required Sequence<EmbedPlace> Embeds { get; init; }

    /// <summary>Where poles and secondaries land on the bond beam.</summary>
    public required Sequence<Landing> Landings { get; init; }

    /// <summary>Tees under the bond beam.</summary>
    public required Sequence<TeePlace> Tees { get; init; }

    /// <summary>Width of a circle as large as the house outside, at the foot of the cob, m: what wind and shaking see of any plan.</summary>
    public double EvenWidth => 2 * Math.Sqrt(Math.Max(0, Curve.OffsetArea(Wall.OutsideOffset(Wall.Base.Metres))) / Math.PI);

    /// <summary>What could not be placed, and why.</summary>
    public required Sequence<Diagnostic> Diagnostics { get; init; }
}

/// <summary>Volumes in m3, areas in m2.</summary>
/// <param name="GrossVolume">Cob envelope as trimmed, between both faces from the stem's top to the wall top.</param>
/// <param name="NetVolume">Less openings, headers, niches and embeds.</param>
/// <param name="OpeningVolume">Cob displaced by openings.</param>
/// <param name="HeaderVolume">Cob displaced by headers.</param>
/// <param name="NicheVolume">Cob displaced by niches.</param>
/// <param name="EmbedVolume">Cob displaced by embeds (bottles, filler).</param>
/// <param name="InsideArea">Gross floor area inside, at the wall base.</param>
/// <param name="OutsideArea">Gross area over the outside face at the wall base.</param>
/// <param name="InsideFaceArea">Inside face of the cob, net of openings (their rough outline where they meet the face).</param>
/// <param name="OutsideFaceArea">Outside face of the cob, net of openings.</param>
/// <param name="OpeningLengthShare">Sum of opening widths over the inside length of the wall.</param>
public sealed record WallMeasures(
    double GrossVolume, double NetVolume, double OpeningVolume, double HeaderVolume, double NicheVolume, double EmbedVolume,
    double InsideArea, double OutsideArea, double InsideFaceArea, double OutsideFaceArea, double OpeningLengthShare);

/// <summary>One lift of the wall as a solid.</summary>
/// <param name="Index">From 0 at the bottom.</param>
/// <param name="Bottom">Height of its bottom, exact.</param>
/// <param name="Top">Height of its top, exact.</param>
/// <param name="GrossVolume">Between the trimmed faces, m3.</param>
/// <param name="NetVolume">Less openings, headers, niches and embeds, m3.</param>
/// <param name="LaidVolume">Net volume as laid before trimming, m3: the first lift fills the stem's width where that is wider than the wall.</param>
public sealed record LiftSlice(int Index, Length Bottom, Length Top, double GrossVolume, double NetVolume, double LaidVolume)
{
    /// <summary>Addressed as people say it: lift 1 is the lowest.</summary>
    public int Number => Index + 1;

    /// <summary>Whether something that begins at a height, m, is set in with it: what begins below the cob is with the first.</summary>
    public bool Takes(double height) => height < Top.Metres && (height >= Bottom.Metres || Index == 0);
}

/// <summary>An opening in its place. Stations in m along the inside face at the wall base; heights in m from the finished floor.</summary>
public sealed record OpeningPlace
{
    /// <summary>Its description.</summary>
    public required Opening Opening { get; init; }

    /// <summary>Its place in the house file's list.</summary>
    public required int Index { get; init; }

    /// <summary>Station of its middle, 0 to the ring's length.</summary>
    public required double Station { get; init; }

    /// <summary>Bearing of its middle from the plan centre, radians clockwise from north.</summary>
    public required double Bearing { get; init; }

    /// <summary>Its middle on the inside curve.</summary>
    public required PlanPoint Middle { get; init; }

    /// <summary>Outward normal at its middle: the direction of the prism.</summary>
    public required PlanPoint Normal { get; init; }

    /// <summary>Sill height, m.</summary>
    public required double Sill { get; init; }

    /// <summary>Head height at the crown, m.</summary>
    public required double Head { get; init; }

    /// <summary>Where the jambs (splay included) meet the inside face at sill height or the wall base if higher: stations.</summary>
    public required Span Inside { get; init; }

    /// <summary>Where the jambs (splay included) meet the outside face, as stations of the feet of the normals from the inside curve.</summary>
    public required Span Outside { get; init; }

    /// <summary>The widest reach of the hole over the whole thickness, as stations: what a pier loses.</summary>
    public required Span Widest { get; init; }

    /// <summary>Cob displaced by the hole, m3.</summary>
    public required double Volume { get; init; }

    /// <summary>Distance that a flat frame as wide as the opening stands proud of the inside face at its middle, m (a chord inside a convex wall), from jamb to jamb.</summary>
    public required double BowInside { get; init; }

    /// <summary>Distance that the outside face bulges past a flat frame flush at the jambs, m.</summary>
    public required double BowOutside { get; init; }

    /// <summary>The timber over it, if it has one.</summary>
    public HeaderPlace? Header { get; init; }
}

/// <summary>A header in its place.</summary>
/// <param name="Length">Whole length, m: rough width and both bearings.</param>
/// <param name="Span">Stations its ends reach, projected to the inside curve.</param>
/// <param name="Bottom">Height of its underside, m.</param>
/// <param name="Top">Height of its top, m.</param>
/// <param name="TotalWidth">Pieces side by side, m.</param>
/// <param name="WallThickness">Of the wall at its underside, m.</param>
/// <param name="Volume">Cob displaced, m3, less what lies inside the hole.</param>
/// <param name="ProudInside">How far its straight inside face stands out of the curved wall at the ends, m; negative where it is buried.</param>
public sealed record HeaderPlace(double Length, Span Span, double Bottom, double Top, double TotalWidth, double WallThickness, double Volume, double ProudInside)
{
    /// <summary>How far its straight outside face stands out of the curved wall at the ends, m; negative where it is buried.</summary>
    public double ProudOutside { get; init; }
}

/// <summary>The cob between two openings.</summary>
public sealed record Pier
{
    /// <summary><c>pier door|south-window</c>: the opening before it and the one after it, clockwise.</summary>
    public required string Address { get; init; }

    /// <summary>Name of the opening before it.</summary>
    public required string Before { get; init; }

    /// <summary>Name of the opening after it.</summary>
    public required string After { get; init; }

    /// <summary>Between the rough jambs, as stations.</summary>
    public required Span Span { get; init; }

    /// <summary>Arc width on the inside face, m, jamb to jamb at the wall base or the higher sill.</summary>
    public required double WidthInside { get; init; }

    /// <summary>Arc width along the middle of the wall, m.</summary>
    public required double WidthMiddle { get; init; }

    /// <summary>Arc width on the outside face, m.</summary>
    public required double WidthOutside { get; init; }

    /// <summary>The narrowest section over thickness and height, splays and niches included, m.</summary>
    public required double Narrowest { get; init; }

    /// <summary>Height at which it is narrowest, m.</summary>
    public required double NarrowestAt { get; init; }

    /// <summary>Bottom and top of the pier: the stretch of height over which both openings exist, else the lower of the taller ones, m.</summary>
    public required Span Heights { get; init; }

    /// <summary>Niches cut into it, by name.</summary>
    public Sequence<string> Niches { get; init; }
}

/// <summary>A niche in its place.</summary>
/// <param name="Niche">Its description.</param>
/// <param name="Index">Its place in the house file's list.</param>
/// <param name="Station">Of its middle.</param>
/// <param name="Span">Stations it reaches.</param>
/// <param name="Bottom">Sill height, m.</param>
/// <param name="Top">Crown height, m.</param>
/// <param name="Volume">Cob displaced, m3.</param>
/// <param name="LeftBehind">Least thickness left behind it, m.</param>
/// <param name="Pier">Address of the pier it is in, or null.</param>
public sealed record NichePlace(Niche Niche, int Index, double Station, Span Span, double Bottom, double Top, double Volume, double LeftBehind, string? Pier);

/// <summary>One embed of a row in its place.</summary>
/// <param name="Embed">Its description.</param>
/// <param name="Index">Its place in the house file's list.</param>
/// <param name="Address">The author's name, with <c>#2</c> and on for the further ones of a row.</param>
/// <param name="Station">Along.</param>
/// <param name="Height">Of its middle, m.</param>
/// <param name="Lift">Index of the lift that it is set in; -1 in the stem or below, the number of lifts when above the wall.</param>
/// <param name="Volume">Cob displaced, m3.</param>
public sealed record EmbedPlace(Embed Embed, int Index, string Address, double Station, double Height, int Lift, double Volume);

/// <summary>Where a pole or secondary lands on the bond beam.</summary>
/// <param name="Name"><c>pole 1</c>, <c>secondary 3</c>.</param>
/// <param name="Secondary">Whether it is a secondary.</param>
/// <param name="Bearing">From the plan centre, radians clockwise from north.</param>
/// <param name="Station">Foot of the normal on the inside curve.</param>
/// <param name="BeamStation">Arc along the bond-beam centreline from the zero mark, m.</param>
/// <param name="ChordToNext">Straight distance to the next landing, m: what a string measures.</param>
/// <param name="ArcToNext">Distance along the bond-beam centreline to the next landing, m.</param>
/// <param name="Point">On the bond-beam centreline in plan.</param>
public sealed record Landing(string Name, bool Secondary, double Bearing, double Station, double BeamStation, double ChordToNext, double ArcToNext, PlanPoint Point);

/// <summary>One tee.</summary>
/// <param name="Number">From 1, clockwise.</param>
/// <param name="Station">Foot of the normal on the inside curve.</param>
/// <param name="BarHeight">Height of the underside of its bar, m.</param>
/// <param name="Lift">Index of the lift that it is set in.</param>
public sealed record TeePlace(int Number, double Station, double BarHeight, int Lift)
{
    /// <summary>The pole that it stands for, as landings are named; null for one between poles.</summary>
    public string? Pole { get; init; }

    /// <summary>Distance along the bond-beam centreline to the next tee, m; the whole ring where there is only one.</summary>
    public double ToNext { get; init; }

    /// <summary>Whether its bar lies in whole cob: clear of openings, of headers and what they rest on, and of niches.</summary>
    public bool InSolidCob { get; init; } = true;
}
