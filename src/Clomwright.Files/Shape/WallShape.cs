using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Files.Forms;
using static Clomwright.Files.Forms.Plain;
using static Clomwright.Files.Forms.Quantities;

namespace Clomwright.Files.Shape;

/// <summary>How stem, wall, lifts, bond beam and tees stand in the file.</summary>
internal static class WallShape
{
    public const string Timber = "douglas-fir-no2";

    public static Thing<Stem> Stem { get; } = MakeStem();

    public static Thing<Wall> Wall { get; } = MakeWall();

    public static Thing<LiftPlan> Lifts { get; } = MakeLifts();

    public static Thing<BondBeam> BondBeam { get; } = MakeBondBeam();

    public static Thing<Tees> Tees { get; } = MakeTees();

    private static Thing<Stem> MakeStem()
    {
        var width = Keys<Stem>.Needed("width", Lengths, s => s.Width);
        var top = Keys<Stem>.Needed("top", Lengths, s => s.Top);
        var material = Keys<Stem>.Or("material", Text, s => s.Material, "mortared-stone");
        var offset = Keys<Stem>.Maybe("insideOffset", Lengths, s => s.InsideOffset);
        var damp = Keys<Stem>.MaybeThing("dampBreak", Text, s => s.DampBreak);
        var allowed = Keys<Stem>.Maybe("allowedPressure", Stresses, s => s.AllowedPressure);
        var keys = Keys<Stem>.MaybeThing("keys", MakeStemKeys(), s => s.Keys);
        return new Thing<Stem>("stem", [width, top, material, offset, damp, allowed, keys], v => new Stem(v.Of(width), v.Of(top), v.Of(material))
        {
            InsideOffset = v.Of(offset), DampBreak = v.Of(damp), AllowedPressure = v.Of(allowed), Keys = v.Of(keys),
        });
    }

    private static Thing<StemKeys> MakeStemKeys()
    {
        var spacing = Keys<StemKeys>.Needed("spacing", Lengths, k => k.Spacing);
        var height = Keys<StemKeys>.Needed("height", Lengths, k => k.Height);
        var width = Keys<StemKeys>.Needed("width", Lengths, k => k.Width);
        return new Thing<StemKeys>("stem-keys", [spacing, height, width], v => new StemKeys(v.Of(spacing), v.Of(height), v.Of(width)));
    }

    private static Thing<Wall> MakeWall()
    {
        var top = Keys<Wall>.Needed("top", Lengths, w => w.Top);
        var thickness = Keys<Wall>.Needed("thicknessAtTop", Lengths, w => w.ThicknessAtTop);
        var outside = Keys<Wall>.Or("outsideTaper", Slopes, w => w.OutsideTaper, default);
        var inside = Keys<Wall>.Or("insideTaper", Slopes, w => w.InsideTaper, default);
        return new Thing<Wall>("wall", [top, thickness, outside, inside], v => new Wall(v.Of(top), v.Of(thickness), v.Of(outside), v.Of(inside)));
    }

    private static Thing<LiftPlan> MakeLifts()
    {
        var height = Keys<LiftPlan>.Maybe("height", Lengths, l => l.Height);
        var tops = Keys<LiftPlan>.List("tops", Lengths, l => l.Tops);
        var method = Keys<LiftPlan>.Or("method", new WordForm<LiftMethod>(), l => l.Method, LiftMethod.Tossed);
        return new Thing<LiftPlan>("lifts", [height, tops, method],
            v => new LiftPlan { Height = v.Of(height), Tops = v.Of(tops), Method = v.Of(method) }, (height, tops));
    }

    private static Thing<BondBeam> MakeBondBeam()
    {
        var width = Keys<BondBeam>.Needed("width", Lengths, b => b.Width);
        var depth = Keys<BondBeam>.Needed("depth", Lengths, b => b.Depth);
        var offset = Keys<BondBeam>.Or("offset", Lengths, b => b.Offset, Length.Zero);
        var material = Keys<BondBeam>.Or("material", Text, b => b.Material, Timber);
        var lap = Keys<BondBeam>.Maybe("lap", Lengths, b => b.Lap);
        var bolt = Keys<BondBeam>.Maybe("bolt", Lengths, b => b.Bolt);
        var bolts = Keys<BondBeam>.Or("bolts", Whole, b => b.Bolts, 2);
        return new Thing<BondBeam>("bond-beam", [width, depth, offset, material, lap, bolt, bolts],
            v => new BondBeam(v.Of(width), v.Of(depth), v.Of(offset), v.Of(material)) { Lap = v.Of(lap), Bolt = v.Of(bolt), Bolts = v.Of(bolts) });
    }

    private static Thing<Tees> MakeTees()
    {
        var spacing = Keys<Tees>.Needed("spacing", Lengths, t => t.Spacing);
        var depth = Keys<Tees>.Needed("depth", Lengths, t => t.Depth);
        var bar = Keys<Tees>.Needed("bar", Lengths, t => t.Bar);
        var timber = Keys<Tees>.Maybe("timber", Lengths, t => t.Timber);
        var bolt = Keys<Tees>.Maybe("bolt", Lengths, t => t.Bolt);
        var material = Keys<Tees>.Or("material", Text, t => t.Material, Timber);
        return new Thing<Tees>("tees", [spacing, depth, bar, timber, bolt, material],
            v => new Tees(v.Of(spacing), v.Of(depth), v.Of(bar)) { Timber = v.Of(timber), Bolt = v.Of(bolt), Material = v.Of(material) });
    }
}
