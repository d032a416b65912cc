using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Testing;

/// <summary>Plasters, test panels and floor layers made from what was drawn.</summary>
internal static class FinishDraws
{
    public static FloorLayer Layer(string name, Length depth) => new(name, depth)
    {
        Role = name switch { "gravel" => FloorRole.Drain, "earth base" => FloorRole.Base, _ => depth.Inches > 3 ? null : FloorRole.Finish },
        Parts = name == "earth base" && depth.Inches < 3 ? new PlasterParts { Clay = 1, Sand = 4, Straw = 0.5 } : null,
    };

    /// <summary>Without a depth the coats say it.</summary>
    public static Finish Finish(Tape tape, Face face, string material, Length? depth) => new(face, material, depth)
    {
        Coats = depth is null
            ? [new Coat(CoatRole.Scratch, tape.AtLeast(0.375)) { Parts = Parts(material) }, new Coat(CoatRole.Finish, tape.AtLeast(0.25)) { Passes = 2 }, new Coat(CoatRole.Wash, Length.Zero) { Material = "limewash" }]
            : [],
        Start = depth is null && face == Face.Outside ? new DateOnly(2028, 5, 2) : null,
        Lath = face == Face.Inside ? new Lath("reed mat", tape.AtLeast(2)) : null,
    };

    public static TestPanel Panel(string name, Finish finish) => new(name, finish.Face, finish.Material, Parts(finish.Material), PanelCracks.Hair, PanelDust.Some, PanelBond.Holds)
    {
        Depth = finish.Depth, Role = CoatRole.Brown, Note = finish.Face == Face.Inside ? "invented" : null,
    };

    private static PlasterParts Parts(string material) =>
        material == "lime-plaster" ? new PlasterParts { Lime = 1, Sand = 2.5, Water = 0.25 } : new PlasterParts { Clay = 1, Sand = 3, Straw = 1, Manure = 0.5, Paste = 0.25 };
}
