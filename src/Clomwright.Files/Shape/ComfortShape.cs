using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Files.Forms;
using static Clomwright.Files.Forms.Plain;
using static Clomwright.Files.Forms.Quantities;

namespace Clomwright.Files.Shape;

/// <summary>How living in the house and what keeps it warm stand in the file.</summary>
internal static class ComfortShape
{
    public static Thing<Comfort> Comfort { get; } = MakeComfort();

    private static Thing<Comfort> MakeComfort()
    {
        var people = Keys<Comfort>.Maybe("people", Number, c => c.People, leavesOut: true);
        var airing = Keys<Comfort>.Maybe("airing", Number, c => c.Airing, leavesOut: true);
        var warm = Keys<Comfort>.Maybe("warm", Temperatures, c => c.Warm, leavesOut: true);
        var wood = Keys<Comfort>.MaybeThing("wood", Text, c => c.Wood, leavesOut: true);
        var stove = Keys<Comfort>.Maybe("stove", Shares, c => c.Stove, leavesOut: true);
        var glazing = Keys<Comfort>.MaybeThing("glazing", Text, c => c.Glazing, leavesOut: true);
        var linings = Keys<Comfort>.List("linings", MakeLining(), c => c.Linings, leavesOut: true);
        var edge = Keys<Comfort>.MaybeThing("floorEdge", MakeEdge(), c => c.FloorEdge, leavesOut: true);
        return new Thing<Comfort>("comfort", [people, airing, warm, wood, stove, glazing, linings, edge], v => new Comfort
        {
            People = v.Of(people), Airing = v.Of(airing), Warm = v.Of(warm), Wood = v.Of(wood), Stove = v.Of(stove), Glazing = v.Of(glazing),
            Linings = v.Of(linings), FloorEdge = v.Of(edge),
        });
    }

    private static Thing<Lining> MakeLining()
    {
        var name = Keys<Lining>.Needed("name", Text, l => l.Name);
        var face = Keys<Lining>.Needed("face", new WordForm<Face>(), l => l.Face);
        var material = Keys<Lining>.Needed("material", Text, l => l.Material);
        var depth = Keys<Lining>.Needed("depth", Lengths, l => l.Depth);
        var from = Keys<Lining>.Maybe("from", Angles, l => l.From);
        var to = Keys<Lining>.Maybe("to", Angles, l => l.To);
        var bottom = Keys<Lining>.Maybe("bottom", Lengths, l => l.Bottom);
        var top = Keys<Lining>.Maybe("top", Lengths, l => l.Top);
        return new Thing<Lining>("lining", [name, face, material, depth, from, to, bottom, top],
            v => new Lining(v.Of(name), v.Of(face), v.Of(material), v.Of(depth)) { From = v.Of(from), To = v.Of(to), Bottom = v.Of(bottom), Top = v.Of(top) });
    }

    private static Thing<FloorEdge> MakeEdge()
    {
        var material = Keys<FloorEdge>.Needed("material", Text, e => e.Material);
        var thickness = Keys<FloorEdge>.Needed("thickness", Lengths, e => e.Thickness);
        var depth = Keys<FloorEdge>.Needed("depth", Lengths, e => e.Depth);
        return new Thing<FloorEdge>("floor-edge", [material, thickness, depth], v => new FloorEdge(v.Of(material), v.Of(thickness), v.Of(depth)));
    }
}
