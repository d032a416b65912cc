using Clomwright.Building;
using Clomwright.Files.Forms;
using static Clomwright.Files.Forms.Plain;
using static Clomwright.Files.Forms.Quantities;

namespace Clomwright.Files.Shape;

/// <summary>How openings, niches and embeds stand in the file.</summary>
internal static class OpeningsShape
{
    public static Thing<Opening> Opening { get; } = MakeOpening();

    public static Thing<Niche> Niche { get; } = MakeNiche();

    public static Thing<Embed> Embed { get; } = MakeEmbed();

    private static Thing<Opening> MakeOpening()
    {
        var name = Keys<Opening>.Needed("name", Text, o => o.Name);
        var kind = Keys<Opening>.Needed("kind", new WordForm<OpeningKind>(), o => o.Kind);
        var bearing = Keys<Opening>.Maybe("bearing", Angles, o => o.Along.Bearing);
        var station = Keys<Opening>.Maybe("station", Lengths, o => o.Along.Station);
        var width = Keys<Opening>.Needed("width", Lengths, o => o.Width);
        var height = Keys<Opening>.Needed("height", Lengths, o => o.Height);
        var sill = Keys<Opening>.Needed("sill", Lengths, o => o.Sill);
        var shape = Keys<Opening>.Or("shape", new WordForm<OpeningShape>(), o => o.Shape, OpeningShape.Rectangular);
        var rise = Keys<Opening>.Maybe("rise", Lengths, o => o.Rise);
        var splay = Keys<Opening>.Or("splay", MakeSplay(), o => o.Splay, default);
        var frame = Keys<Opening>.MaybeThing("frame", MakeFrame(), o => o.Frame);
        var glazing = Keys<Opening>.MaybeThing("glazing", Text, o => o.Glazing, leavesOut: true);
        var glazed = Keys<Opening>.Maybe("glazed", Shares, o => o.Glazed, leavesOut: true);
        var header = Keys<Opening>.MaybeThing("header", MakeHeader(), o => o.Header);
        var escape = Keys<Opening>.Or("escape", Truth, o => o.Escape, false);
        var leaf = Keys<Opening>.MaybeThing("leaf", MakeLeaf(), o => o.Leaf);
        var clear = Keys<Opening>.MaybeThing("clear", MakeClear(), o => o.Clear, leavesOut: true);
        return new Thing<Opening>("opening", [name, kind, bearing, station, width, height, sill, shape, rise, splay, frame, glazing, glazed, header, escape, leaf, clear],
            v => new Opening
            {
                Name = v.Of(name), Kind = v.Of(kind), Along = new Along(v.Of(bearing), v.Of(station)), Width = v.Of(width), Height = v.Of(height), Sill = v.Of(sill),
                Shape = v.Of(shape), Rise = v.Of(rise), Splay = v.Of(splay), Frame = v.Of(frame), Glazing = v.Of(glazing), Glazed = v.Of(glazed), Header = v.Of(header), Escape = v.Of(escape), Leaf = v.Of(leaf), Clear = v.Of(clear),
            },
            (bearing, station));
    }

    private static Thing<DoorLeaf> MakeLeaf()
    {
        var swing = Keys<DoorLeaf>.Needed("swing", new WordForm<Swing>(), l => l.Swing);
        var bottom = Keys<DoorLeaf>.Needed("bottom", Lengths, l => l.Bottom);
        var step = Keys<DoorLeaf>.Maybe("step", Lengths, l => l.Step);
        return new Thing<DoorLeaf>("door-leaf", [swing, bottom, step], v => new DoorLeaf(v.Of(swing), v.Of(bottom)) { Step = v.Of(step) });
    }

    private static Thing<ClearOpening> MakeClear()
    {
        var width = Keys<ClearOpening>.Needed("width", Lengths, c => c.Width);
        var height = Keys<ClearOpening>.Needed("height", Lengths, c => c.Height);
        return new Thing<ClearOpening>("clear-opening", [width, height], v => new ClearOpening(v.Of(width), v.Of(height)));
    }

    private static Thing<Splay> MakeSplay()
    {
        var inside = Keys<Splay>.Or("inside", Angles, s => s.Inside, default);
        var outside = Keys<Splay>.Or("outside", Angles, s => s.Outside, default);
        return new Thing<Splay>("splay", [inside, outside], v => new Splay(v.Of(inside), v.Of(outside)));
    }

    private static Thing<Frame> MakeFrame()
    {
        var width = Keys<Frame>.Needed("width", Lengths, f => f.Width);
        var height = Keys<Frame>.Needed("height", Lengths, f => f.Height);
        var depth = Keys<Frame>.Needed("depth", Lengths, f => f.Depth);
        var stock = Keys<Frame>.Needed("stock", Lengths, f => f.Stock);
        var gap = Keys<Frame>.Maybe("gap", Lengths, f => f.Gap);
        var setback = Keys<Frame>.Maybe("setback", Lengths, f => f.Setback);
        var first = Keys<Frame>.Or("first", Truth, f => f.First, true);
        return new Thing<Frame>("frame", [width, height, depth, stock, gap, setback, first],
            v => new Frame(v.Of(width), v.Of(height), v.Of(depth), v.Of(stock), v.Of(gap)) { Setback = v.Of(setback), First = v.Of(first) });
    }

    private static Thing<Header> MakeHeader()
    {
        var pieces = Keys<Header>.Needed("pieces", Whole, h => h.Pieces);
        var width = Keys<Header>.Needed("width", Lengths, h => h.Width);
        var depth = Keys<Header>.Needed("depth", Lengths, h => h.Depth);
        var bearing = Keys<Header>.Needed("bearing", Lengths, h => h.Bearing);
        var material = Keys<Header>.Or("material", Text, h => h.Material, WallShape.Timber);
        var pad = Keys<Header>.Or("crossPad", Truth, h => h.CrossPad, false);
        return new Thing<Header>("header", [pieces, width, depth, bearing, material, pad],
            v => new Header(v.Of(pieces), v.Of(width), v.Of(depth), v.Of(bearing), v.Of(material)) { CrossPad = v.Of(pad) });
    }

    private static Thing<Niche> MakeNiche()
    {
        var name = Keys<Niche>.Needed("name", Text, n => n.Name);
        var face = Keys<Niche>.Or("face", new WordForm<Face>(), n => n.Face, Face.Inside);
        var bearing = Keys<Niche>.Maybe("bearing", Angles, n => n.Along.Bearing);
        var station = Keys<Niche>.Maybe("station", Lengths, n => n.Along.Station);
        var width = Keys<Niche>.Needed("width", Lengths, n => n.Width);
        var height = Keys<Niche>.Needed("height", Lengths, n => n.Height);
        var depth = Keys<Niche>.Needed("depth", Lengths, n => n.Depth);
        var sill = Keys<Niche>.Needed("sill", Lengths, n => n.Sill);
        var head = Keys<Niche>.Or("head", new WordForm<NicheHead>(), n => n.Head, NicheHead.Arch);
        return new Thing<Niche>("niche", [name, face, bearing, station, width, height, depth, sill, head],
            v => new Niche
            {
                Name = v.Of(name), Face = v.Of(face), Along = new Along(v.Of(bearing), v.Of(station)), Width = v.Of(width), Height = v.Of(height),
                Depth = v.Of(depth), Sill = v.Of(sill), Head = v.Of(head),
            },
            (bearing, station));
    }

    private static Thing<Embed> MakeEmbed()
    {
        var name = Keys<Embed>.Needed("name", Text, e => e.Name);
        var kind = Keys<Embed>.Needed("kind", new WordForm<EmbedKind>(), e => e.Kind);
        var face = Keys<Embed>.Or("face", new WordForm<Face>(), e => e.Face, Face.Inside);
        var bearing = Keys<Embed>.Maybe("bearing", Angles, e => e.Along.Bearing);
        var station = Keys<Embed>.Maybe("station", Lengths, e => e.Along.Station);
        var height = Keys<Embed>.Needed("height", Lengths, e => e.Height);
        var count = Keys<Embed>.Or("count", Whole, e => e.Count, 1);
        var spacing = Keys<Embed>.Maybe("spacing", Lengths, e => e.Spacing);
        var width = Keys<Embed>.Maybe("width", Lengths, e => e.Width);
        var size = Keys<Embed>.Maybe("size", Lengths, e => e.Size);
        var depth = Keys<Embed>.Maybe("depth", Lengths, e => e.Depth);
        var through = Keys<Embed>.Or("through", Truth, e => e.Through, false);
        var anchor = Keys<Embed>.MaybeThing("anchor", MakeAnchor(), e => e.Anchor, leavesOut: true);
        var note = Keys<Embed>.MaybeThing("note", Text, e => e.Note);
        return new Thing<Embed>("embed", [name, kind, face, bearing, station, height, count, spacing, width, size, depth, through, anchor, note],
            v => new Embed
            {
                Name = v.Of(name), Kind = v.Of(kind), Face = v.Of(face), Along = new Along(v.Of(bearing), v.Of(station)), Height = v.Of(height), Count = v.Of(count),
                Spacing = v.Of(spacing), Width = v.Of(width), Size = v.Of(size), Depth = v.Of(depth), Through = v.Of(through), Anchor = v.Of(anchor), Note = v.Of(note),
            },
            (bearing, station));
    }

    private static Thing<StrapAnchor> MakeAnchor()
    {
        var depth = Keys<StrapAnchor>.Needed("depth", Lengths, a => a.Depth);
        var bar = Keys<StrapAnchor>.Needed("bar", Lengths, a => a.Bar);
        var thickness = Keys<StrapAnchor>.Maybe("thickness", Lengths, a => a.Thickness, leavesOut: true);
        var pull = Keys<StrapAnchor>.Maybe("pull", Forces, a => a.Pull, leavesOut: true);
        return new Thing<StrapAnchor>("strap-anchor", [depth, bar, thickness, pull], v => new StrapAnchor(v.Of(depth), v.Of(bar)) { Thickness = v.Of(thickness), Pull = v.Of(pull) });
    }
}
