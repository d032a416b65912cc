using Clomwright.Building;
using Clomwright.Files.Forms;
using static Clomwright.Files.Forms.Plain;
using static Clomwright.Files.Forms.Quantities;

namespace Clomwright.Files.Shape;

/// <summary>How trials of the mix and their tests stand in the file.</summary>
internal static class MixTestsShape
{
    public static Thing<TestBar> TestBar { get; } = MakeTestBar();

    public static Thing<Prism> Prism { get; } = MakePrism();

    public static Thing<Brick> Brick { get; } = MakeBrick();

    public static Thing<Drop> Drop { get; } = MakeDrop();

    public static Thing<Erosion> Erosion { get; } = MakeErosion();

    public static Thing<DryingBlock> Block { get; } = MakeBlock();

    public static Thing<MixTrial> Trial(Thing<Recipe> parts)
    {
        var name = Keys<MixTrial>.Needed("name", Text, t => t.Name);
        var recipe = Keys<MixTrial>.Needed("recipe", parts, t => t.Recipe);
        var date = Keys<MixTrial>.Maybe("date", Date, t => t.Date);
        var note = Keys<MixTrial>.MaybeThing("note", Text, t => t.Note);
        return new Thing<MixTrial>("mix-trial", [name, recipe, date, note], v => new MixTrial(v.Of(name), v.Of(recipe)) { Date = v.Of(date), Note = v.Of(note) });
    }

    private static Thing<TestBar> MakeTestBar()
    {
        var length = Keys<TestBar>.Needed("length", Lengths, b => b.Length);
        var shrinkage = Keys<TestBar>.Needed("shrinkage", Lengths, b => b.Shrinkage);
        var width = Keys<TestBar>.Maybe("width", Lengths, b => b.Width);
        var depth = Keys<TestBar>.Maybe("depth", Lengths, b => b.Depth);
        var cracked = Keys<TestBar>.Or("cracked", Truth, b => b.Cracked, false);
        var trial = Keys<TestBar>.MaybeThing("trial", Text, b => b.Trial);
        var date = Keys<TestBar>.Maybe("date", Date, b => b.Date);
        var tester = Keys<TestBar>.MaybeThing("tester", Text, b => b.Tester);
        return new Thing<TestBar>("test-bar", [length, shrinkage, width, depth, cracked, trial, date, tester],
            v => new TestBar(v.Of(length), v.Of(shrinkage))
            {
                Width = v.Of(width), Depth = v.Of(depth), Cracked = v.Of(cracked), Trial = v.Of(trial), Date = v.Of(date), Tester = v.Of(tester),
            });
    }

    private static Thing<Prism> MakePrism()
    {
        var width = Keys<Prism>.Needed("width", Lengths, p => p.Width);
        var depth = Keys<Prism>.Needed("depth", Lengths, p => p.Depth);
        var height = Keys<Prism>.Needed("height", Lengths, p => p.Height);
        var load = Keys<Prism>.Needed("failureLoad", Forces, p => p.FailureLoad);
        var days = Keys<Prism>.Needed("curedDays", Whole, p => p.CuredDays);
        var oven = Keys<Prism>.Or("oven", Truth, p => p.Oven, false);
        var shape = Keys<Prism>.Or("shape", new WordForm<SpecimenShape>(), p => p.Shape, SpecimenShape.Prism);
        var from = Keys<Prism>.Or("from", new WordForm<SpecimenOrigin>(), p => p.From, SpecimenOrigin.Batch);
        var trial = Keys<Prism>.MaybeThing("trial", Text, p => p.Trial);
        var mass = Keys<Prism>.Maybe("mass", Masses, p => p.Mass);
        var moisture = Keys<Prism>.Maybe("moisture", Shares, p => p.Moisture);
        var date = Keys<Prism>.Maybe("date", Date, p => p.Date);
        var tester = Keys<Prism>.MaybeThing("tester", Text, p => p.Tester);
        return new Thing<Prism>("prism", [width, depth, height, load, days, oven, shape, from, trial, mass, moisture, date, tester],
            v => new Prism(v.Of(width), v.Of(depth), v.Of(height), v.Of(load), v.Of(days), v.Of(oven))
            {
                Shape = v.Of(shape), From = v.Of(from), Trial = v.Of(trial), Mass = v.Of(mass), Moisture = v.Of(moisture), Date = v.Of(date), Tester = v.Of(tester),
            });
    }

    private static Thing<Brick> MakeBrick()
    {
        var width = Keys<Brick>.Needed("width", Lengths, b => b.Width);
        var depth = Keys<Brick>.Needed("depth", Lengths, b => b.Depth);
        var span = Keys<Brick>.Needed("span", Lengths, b => b.Span);
        var load = Keys<Brick>.Needed("failureLoad", Forces, b => b.FailureLoad);
        var days = Keys<Brick>.Needed("curedDays", Whole, b => b.CuredDays);
        var oven = Keys<Brick>.Or("oven", Truth, b => b.Oven, false);
        var trial = Keys<Brick>.MaybeThing("trial", Text, b => b.Trial);
        var date = Keys<Brick>.Maybe("date", Date, b => b.Date);
        var tester = Keys<Brick>.MaybeThing("tester", Text, b => b.Tester);
        return new Thing<Brick>("brick", [width, depth, span, load, days, oven, trial, date, tester],
            v => new Brick(v.Of(width), v.Of(depth), v.Of(span), v.Of(load), v.Of(days), v.Of(oven)) { Trial = v.Of(trial), Date = v.Of(date), Tester = v.Of(tester) });
    }

    private static Thing<Drop> MakeDrop()
    {
        var height = Keys<Drop>.Needed("height", Lengths, d => d.Height);
        var outcome = Keys<Drop>.Needed("outcome", new WordForm<DropOutcome>(), d => d.Outcome);
        var trial = Keys<Drop>.MaybeThing("trial", Text, d => d.Trial);
        var date = Keys<Drop>.Maybe("date", Date, d => d.Date);
        return new Thing<Drop>("drop", [height, outcome, trial, date], v => new Drop(v.Of(height), v.Of(outcome)) { Trial = v.Of(trial), Date = v.Of(date) });
    }

    private static Thing<Erosion> MakeErosion()
    {
        var kind = Keys<Erosion>.Needed("kind", new WordForm<ErosionKind>(), e => e.Kind);
        var depth = Keys<Erosion>.Needed("depth", Lengths, e => e.Depth);
        var minutes = Keys<Erosion>.Needed("minutes", Number, e => e.Minutes);
        var trial = Keys<Erosion>.MaybeThing("trial", Text, e => e.Trial);
        var date = Keys<Erosion>.Maybe("date", Date, e => e.Date);
        return new Thing<Erosion>("erosion", [kind, depth, minutes, trial, date], v => new Erosion(v.Of(kind), v.Of(depth), v.Of(minutes)) { Trial = v.Of(trial), Date = v.Of(date) });
    }

    private static Thing<DryingBlock> MakeBlock()
    {
        var day = Keys<Weighing>.Needed("day", Number, w => w.Day);
        var of = Keys<Weighing>.Needed("mass", Masses, w => w.Mass);
        var weighing = new Thing<Weighing>("weighing", [day, of], v => new Weighing(v.Of(day), v.Of(of)));
        var width = Keys<DryingBlock>.Needed("width", Lengths, b => b.Width);
        var depth = Keys<DryingBlock>.Needed("depth", Lengths, b => b.Depth);
        var height = Keys<DryingBlock>.Needed("height", Lengths, b => b.Height);
        var faces = Keys<DryingBlock>.Needed("openFaces", Whole, b => b.OpenFaces);
        var dry = Keys<DryingBlock>.Maybe("dryMass", Masses, b => b.DryMass);
        var trial = Keys<DryingBlock>.MaybeThing("trial", Text, b => b.Trial);
        var weighings = Keys<DryingBlock>.List("weighings", weighing, b => b.Weighings);
        return new Thing<DryingBlock>("drying-block", [width, depth, height, faces, dry, trial, weighings],
            v => new DryingBlock(v.Of(width), v.Of(depth), v.Of(height), v.Of(faces)) { DryMass = v.Of(dry), Trial = v.Of(trial), Weighings = v.Of(weighings) });
    }
}
