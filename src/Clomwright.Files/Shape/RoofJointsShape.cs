using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Files.Forms;
using static Clomwright.Files.Forms.Plain;
using static Clomwright.Files.Forms.Quantities;

namespace Clomwright.Files.Shape;

/// <summary>How the pins of a reciprocal frame, and what holds it when one pole fails, stand in the file.</summary>
internal static class RoofJointsShape
{
    public static Thing<Pin> Pin { get; } = MakePin();

    public static Union<IfOneFails> IfOneFails { get; } = new("way-out", "way",
    [
        new Union<IfOneFails>.CaseOf<IfOneFails.Strap>("strap", Strap()),
        new Union<IfOneFails>.CaseOf<IfOneFails.Doubled>("doubled", new Thing<IfOneFails.Doubled>("way-out", [], _ => new IfOneFails.Doubled())),
        new Union<IfOneFails>.CaseOf<IfOneFails.Post>("post", Post()),
    ]);

    private static Thing<Pin> MakePin()
    {
        var diameter = Keys<Pin>.Needed("diameter", Lengths, p => p.Diameter);
        var washer = Keys<Pin>.Maybe("washer", Lengths, p => p.Washer, leavesOut: true);
        var material = Keys<Pin>.Or("material", Text, p => p.Material, "steel-bolt", leavesOut: true);
        return new Thing<Pin>("pin", [diameter, washer, material], v => new Pin(v.Of(diameter)) { Washer = v.Of(washer), Material = v.Of(material) });
    }

    private static Thing<IfOneFails.Strap> Strap()
    {
        var width = Keys<IfOneFails.Strap>.Needed("width", Lengths, s => s.Width);
        var thickness = Keys<IfOneFails.Strap>.Needed("thickness", Lengths, s => s.Thickness);
        return new Thing<IfOneFails.Strap>("way-out", [width, thickness], v => new IfOneFails.Strap(v.Of(width), v.Of(thickness)));
    }

    private static Thing<IfOneFails.Post> Post()
    {
        var diameter = Keys<IfOneFails.Post>.Needed("diameter", Lengths, p => p.Diameter);
        var footing = Keys<IfOneFails.Post>.Needed("footing", Lengths, p => p.Footing);
        return new Thing<IfOneFails.Post>("way-out", [diameter, footing], v => new IfOneFails.Post(v.Of(diameter), v.Of(footing)));
    }
}
