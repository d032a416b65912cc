using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Files.Forms;
using static Clomwright.Files.Forms.Plain;
using static Clomwright.Files.Forms.Quantities;

namespace Clomwright.Files.Shape;

/// <summary>How plasters, test panels and the floor stand in the file.</summary>
internal static class FinishShape
{
    private static readonly Thing<PlasterParts> Parts = MakeParts();

    public static Thing<Finish> Finish { get; } = MakeFinish();

    public static Thing<TestPanel> TestPanel { get; } = MakePanel();

    public static Thing<Floor> Floor { get; } = MakeFloor();

    private static Thing<Finish> MakeFinish()
    {
        var face = Keys<Finish>.Needed("face", new WordForm<Face>(), f => f.Face);
        var material = Keys<Finish>.Needed("material", Text, f => f.Material);
        var depth = Keys<Finish>.Maybe("depth", Lengths, f => f.Depth);
        var coats = Keys<Finish>.List("coats", MakeCoat(), f => f.Coats, leavesOut: true);
        var lath = Keys<Finish>.MaybeThing("lath", MakeLath(), f => f.Lath);
        var start = Keys<Finish>.Maybe("start", Date, f => f.Start);
        return new Thing<Finish>("finish", [face, material, depth, coats, lath, start],
            v => new Finish(v.Of(face), v.Of(material), v.Of(depth)) { Coats = v.Of(coats), Lath = v.Of(lath), Start = v.Of(start) });
    }

    private static Thing<Coat> MakeCoat()
    {
        var role = Keys<Coat>.Needed("role", new WordForm<CoatRole>(), c => c.Role);
        var depth = Keys<Coat>.Or("depth", Lengths, c => c.Depth, Length.Zero);
        var passes = Keys<Coat>.Or("passes", Whole, c => c.Passes, 1);
        var material = Keys<Coat>.MaybeThing("material", Text, c => c.Material);
        var parts = Keys<Coat>.MaybeThing("parts", Parts, c => c.Parts);
        var panel = Keys<Coat>.MaybeThing("panel", Text, c => c.Panel);
        return new Thing<Coat>("coat", [role, depth, passes, material, parts, panel], v => new Coat(v.Of(role), v.Of(depth))
        {
            Passes = v.Of(passes), Material = v.Of(material), Parts = v.Of(parts), Panel = v.Of(panel),
        });
    }

    private static Thing<PlasterParts> MakeParts()
    {
        var clay = Keys<PlasterParts>.Maybe("clay", Number, p => p.Clay);
        var lime = Keys<PlasterParts>.Maybe("lime", Number, p => p.Lime);
        var sand = Keys<PlasterParts>.Maybe("sand", Number, p => p.Sand);
        var straw = Keys<PlasterParts>.Maybe("straw", Number, p => p.Straw);
        var manure = Keys<PlasterParts>.Maybe("manure", Number, p => p.Manure);
        var paste = Keys<PlasterParts>.Maybe("paste", Number, p => p.Paste);
        var water = Keys<PlasterParts>.Maybe("water", Number, p => p.Water);
        return new Thing<PlasterParts>("plaster-parts", [clay, lime, sand, straw, manure, paste, water], v => new PlasterParts
        {
            Clay = v.Of(clay), Lime = v.Of(lime), Sand = v.Of(sand), Straw = v.Of(straw), Manure = v.Of(manure), Paste = v.Of(paste), Water = v.Of(water),
        });
    }

    private static Thing<Lath> MakeLath()
    {
        var material = Keys<Lath>.Needed("material", Text, l => l.Material);
        var lap = Keys<Lath>.Needed("lap", Lengths, l => l.Lap);
        return new Thing<Lath>("lath", [material, lap], v => new Lath(v.Of(material), v.Of(lap)));
    }

    private static Thing<TestPanel> MakePanel()
    {
        var name = Keys<TestPanel>.Needed("name", Text, p => p.Name);
        var face = Keys<TestPanel>.Needed("face", new WordForm<Face>(), p => p.Face);
        var material = Keys<TestPanel>.Needed("material", Text, p => p.Material);
        var role = Keys<TestPanel>.Or("role", new WordForm<CoatRole>(), p => p.Role, CoatRole.Finish);
        var parts = Keys<TestPanel>.Needed("parts", Parts, p => p.Parts);
        var depth = Keys<TestPanel>.Maybe("depth", Lengths, p => p.Depth);
        var cracks = Keys<TestPanel>.Needed("cracks", new WordForm<PanelCracks>(), p => p.Cracks);
        var dust = Keys<TestPanel>.Needed("dust", new WordForm<PanelDust>(), p => p.Dust);
        var bond = Keys<TestPanel>.Needed("bond", new WordForm<PanelBond>(), p => p.Bond);
        var date = Keys<TestPanel>.Maybe("date", Date, p => p.Date);
        var tester = Keys<TestPanel>.MaybeThing("tester", Text, p => p.Tester);
        var note = Keys<TestPanel>.MaybeThing("note", Text, p => p.Note);
        return new Thing<TestPanel>("test-panel", [name, face, material, role, parts, depth, cracks, dust, bond, date, tester, note],
            v => new TestPanel(v.Of(name), v.Of(face), v.Of(material), v.Of(parts), v.Of(cracks), v.Of(dust), v.Of(bond))
            {
                Role = v.Of(role), Depth = v.Of(depth), Date = v.Of(date), Tester = v.Of(tester), Note = v.Of(note),
            });
    }

    private static Thing<Floor> MakeFloor()
    {
        var layers = Keys<Floor>.List("layers", MakeLayer(), f => f.Layers);
        var oil = Keys<Floor>.MaybeThing("oil", MakeOil(), f => f.Oil);
        return new Thing<Floor>("floor", [layers, oil], v => new Floor { Layers = v.Of(layers), Oil = v.Of(oil) });
    }

    private static Thing<FloorLayer> MakeLayer()
    {
        var name = Keys<FloorLayer>.Needed("name", Text, l => l.Name);
        var depth = Keys<FloorLayer>.Needed("depth", Lengths, l => l.Depth);
        var material = Keys<FloorLayer>.MaybeThing("material", Text, l => l.Material);
        var role = Keys<FloorLayer>.Maybe("role", new WordForm<FloorRole>(), l => l.Role);
        var parts = Keys<FloorLayer>.MaybeThing("parts", Parts, l => l.Parts);
        return new Thing<FloorLayer>("floor-layer", [name, depth, material, role, parts],
            v => new FloorLayer(v.Of(name), v.Of(depth), v.Of(material)) { Role = v.Of(role), Parts = v.Of(parts) });
    }

    private static Thing<FloorOil> MakeOil()
    {
        var material = Keys<FloorOil>.Needed("material", Text, o => o.Material);
        var coats = Keys<FloorOil>.Needed("coats", Whole, o => o.Coats);
        return new Thing<FloorOil>("floor-oil", [material, coats], v => new FloorOil(v.Of(material), v.Of(coats)));
    }
}
