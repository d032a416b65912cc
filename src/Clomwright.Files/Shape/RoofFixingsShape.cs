using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Files.Forms;
using static Clomwright.Files.Forms.Plain;
using static Clomwright.Files.Forms.Quantities;

namespace Clomwright.Files.Shape;

/// <summary>How nails, straps, seats, posts, flue and battens of a roof stand in the file.</summary>
internal static class RoofFixingsShape
{
    public static Thing<DeckNails> Nails { get; } = MakeNails();

    public static Thing<RoofBraces> Braces { get; } = MakeBraces();

    public static Thing<SeatMade> Seat { get; } = MakeSeat();

    public static Thing<CentrePost> Post { get; } = MakePost();

    public static Thing<CompressionRing> Ring { get; } = MakeRing();

    public static Thing<Flue> Flue { get; } = MakeFlue();

    public static Thing<DripEdge> Drip { get; } = MakeDrip();

    public static Thing<SoilBattens> Battens { get; } = MakeBattens();

    private static Thing<DeckNails> MakeNails()
    {
        var diameter = Keys<DeckNails>.Needed("diameter", Lengths, n => n.Diameter);
        var length = Keys<DeckNails>.Needed("length", Lengths, n => n.Length);
        var count = Keys<DeckNails>.Or("count", Whole, n => n.Count, 2, leavesOut: true);
        var kind = Keys<DeckNails>.Or("kind", new WordForm<DeckFastener>(), n => n.Kind, DeckFastener.Nail, leavesOut: true);
        var board = Keys<DeckNails>.Maybe("board", Lengths, n => n.Board, leavesOut: true);
        return new Thing<DeckNails>("deck-nails", [diameter, length, count, kind, board],
            v => new DeckNails(v.Of(diameter), v.Of(length)) { Count = v.Of(count), Kind = v.Of(kind), Board = v.Of(board) });
    }

    private static Thing<RoofBraces> MakeBraces()
    {
        var width = Keys<RoofBraces>.Needed("width", Lengths, b => b.Width);
        var thickness = Keys<RoofBraces>.Needed("thickness", Lengths, b => b.Thickness);
        var nails = Keys<RoofBraces>.Needed("nails", Whole, b => b.Nails);
        var diameter = Keys<RoofBraces>.Needed("diameter", Lengths, b => b.Diameter);
        var length = Keys<RoofBraces>.Needed("length", Lengths, b => b.Length);
        return new Thing<RoofBraces>("braces", [width, thickness, nails, diameter, length],
            v => new RoofBraces(v.Of(width), v.Of(thickness), v.Of(nails), v.Of(diameter), v.Of(length)));
    }

    private static Thing<SeatMade> MakeSeat()
    {
        var flat = Keys<SeatMade>.Maybe("flat", Lengths, s => s.Flat, leavesOut: true);
        var bolt = Keys<SeatMade>.Maybe("bolt", Lengths, s => s.Bolt, leavesOut: true);
        var washer = Keys<SeatMade>.Maybe("washer", Lengths, s => s.Washer, leavesOut: true);
        var lag = Keys<SeatMade>.Maybe("lag", Lengths, s => s.Lag, leavesOut: true);
        return new Thing<SeatMade>("pole-seat", [flat, bolt, washer, lag], v => new SeatMade { Flat = v.Of(flat), Bolt = v.Of(bolt), Washer = v.Of(washer), Lag = v.Of(lag) });
    }

    private static Thing<CentrePost> MakePost()
    {
        var diameter = Keys<CentrePost>.Needed("diameter", Lengths, p => p.Diameter);
        var footing = Keys<CentrePost>.Needed("footing", Lengths, p => p.Footing);
        return new Thing<CentrePost>("centre-post", [diameter, footing], v => new CentrePost(v.Of(diameter), v.Of(footing)));
    }

    private static Thing<CompressionRing> MakeRing()
    {
        var width = Keys<CompressionRing>.Needed("width", Lengths, r => r.Width);
        var depth = Keys<CompressionRing>.Needed("depth", Lengths, r => r.Depth);
        var material = Keys<CompressionRing>.Needed("material", Text, r => r.Material);
        return new Thing<CompressionRing>("compression-ring", [width, depth, material], v => new CompressionRing(v.Of(width), v.Of(depth), v.Of(material)));
    }

    private static Thing<Flue> MakeFlue()
    {
        var diameter = Keys<Flue>.Needed("diameter", Lengths, f => f.Diameter);
        var bearing = Keys<Flue>.Or("bearing", Angles, f => f.Bearing, default, leavesOut: true);
        var distance = Keys<Flue>.Or("distance", Lengths, f => f.Distance, Length.Zero, leavesOut: true);
        var clear = Keys<Flue>.Maybe("clear", Lengths, f => f.Clear, leavesOut: true);
        return new Thing<Flue>("flue", [bearing, distance, diameter, clear], v => new Flue(v.Of(diameter)) { Bearing = v.Of(bearing), Distance = v.Of(distance), Clear = v.Of(clear) });
    }

    private static Thing<DripEdge> MakeDrip()
    {
        var @out = Keys<DripEdge>.Needed("out", Lengths, d => d.Out);
        var down = Keys<DripEdge>.Needed("down", Lengths, d => d.Down);
        return new Thing<DripEdge>("drip", [@out, down], v => new DripEdge(v.Of(@out), v.Of(down)));
    }

    private static Thing<SoilBattens> MakeBattens()
    {
        var spacing = Keys<SoilBattens>.Needed("spacing", Lengths, b => b.Spacing);
        var height = Keys<SoilBattens>.Needed("height", Lengths, b => b.Height);
        return new Thing<SoilBattens>("battens", [spacing, height], v => new SoilBattens(v.Of(spacing), v.Of(height)));
    }
}
