using Clomwright.Analysis.FreeZone;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Study;

namespace Clomwright.Papers.Views;

/// <summary>How the unrolled wall is drawn.</summary>
/// <param name="Face">Which face is seen.</param>
/// <param name="PaperPerMetre">Scale, mm on paper for each metre of arc or height.</param>
public sealed record WallView(Face Face, double PaperPerMetre)
{
    /// <summary>Which units come first.</summary>
    public UnitSystem Units { get; init; } = UnitSystem.Imperial;

    /// <summary>The language of its numbers.</summary>
    public Phrasebook Book { get; init; } = Phrasebook.English;

    /// <summary>Heights beside the wall, the arc scale and the chain of widths.</summary>
    public bool Measures { get; init; } = true;

    /// <summary>Tees, the numbers of embeds, and what is written inside openings beside their letters.</summary>
    public bool Details { get; init; } = true;

    /// <summary>Where a crew may improvise, hatched; null where that is not drawn.</summary>
    public FreeZoneResult? Free { get; init; }

    /// <summary>What was found otherwise than drawn, marked beside.</summary>
    public Sequence<AsBuiltMark> AsBuilt { get; init; }

    /// <summary>Height of the digits of the chain of widths, mm.</summary>
    public double Digits { get; init; } = 2.5;
}

/// <summary>The unrolled wall as drawn.</summary>
/// <param name="Marks">Display list; every opening, pier, header, niche, embed, lift, landing and tee is a group with its id.</param>
/// <param name="View">The part of the paper it takes.</param>
/// <param name="Strip">Where arcs and heights lie on that paper.</param>
public sealed record WallDrawing(Sequence<Mark> Marks, PaperBox View, WallStrip Strip);

/// <summary>Draws the unrolled wall, seen as it is from one side: inside arcs run to the right, outside arcs to the left.</summary>
public static class UnrolledWall
{
    /// <summary>The whole ring in one strip.</summary>
    public static WallDrawing Of(HouseGeometry geometry, WallView view)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        ArgumentNullException.ThrowIfNull(view);
        var cuts = StripCuts.Of(geometry, view.Face, 1);
        return Band(geometry, view, cuts[0], cuts[1]);
    }

    /// <summary>The ring in several strips of about equal length, cut where no opening is.</summary>
    internal static IReadOnlyList<WallDrawing> Bands(HouseGeometry geometry, WallView view, int count)
    {
        var cuts = StripCuts.Of(geometry, view.Face, count);
        return [.. Enumerable.Range(0, cuts.Count - 1).Select(i => Band(geometry, view, cuts[i], cuts[i + 1]))];
    }

    /// <summary>The room that each of several strips would take, without drawing it.</summary>
    internal static IReadOnlyList<PaperBox> Rooms(HouseGeometry geometry, WallView view, IReadOnlyList<double> cuts) =>
        [.. Enumerable.Range(0, cuts.Count - 1).Select(i => StripMeasures.Room(new WallStrip(geometry, view.Face, view.PaperPerMetre, cuts[i], cuts[i + 1], default), view))];

    private static WallDrawing Band(HouseGeometry geometry, WallView view, double from, double to)
    {
        var strip = new WallStrip(geometry, view.Face, view.PaperPerMetre, from, to, default);
        var board = new Board();
        var frame = StripMeasures.Room(strip, view);
        var taken = new Taken(new PaperBox(strip.Corner.X + 0.8, strip.Y(StripBody.Highest(strip)), strip.Right - 0.8, strip.Y(StripBody.Lowest(strip))));
        if (view.Free is { } zone)
        {
            StripFree.Zone(board, strip, zone);
        }

        StripBody.Draw(board, strip);
        StripEmbeds.Seats(board, strip, view);
        StripHoles.Draw(board, strip, view, taken);
        StripEmbeds.Draw(board, strip, view, taken);
        StripFree.Found(board, strip, view.AsBuilt, taken);
        if (view.Measures)
        {
            StripMeasures.Draw(board, strip, view);
        }

        return new WallDrawing(board.Marks, frame, strip);
    }
}
