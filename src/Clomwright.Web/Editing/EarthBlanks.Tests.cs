using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Web.Editing;

internal sealed partial class EarthBlanks
{
    /// <summary>The blanks of each test of a kind.</summary>
    public IReadOnlyList<IReadOnlyList<EarthBlank>> Of(EarthTest test) => test switch
    {
        EarthTest.Bar => Each("bar", mix.TestBars, BarFields(), all => mix with { TestBars = all }),
        EarthTest.Prism => Each("prism", mix.Prisms, PrismFields(), all => mix with { Prisms = all }),
        EarthTest.Brick => Each("brick", mix.Bricks, BrickFields(), all => mix with { Bricks = all }),
        EarthTest.Drop => Each("drop", mix.Drops, DropFields(), all => mix with { Drops = all }),
        _ => Each("block", mix.Blocks, BlockFields(), all => mix with { Blocks = all }),
    };

    /// <summary>What a test still to be added is asked for; sizes stand as they are usual, or as those of the last. What was measured is never filled in.</summary>
    public IReadOnlyList<EarthBlank> New(EarthTest test) => test switch
    {
        EarthTest.Bar => Sized(Fresh("bar.new", BarFields()), ("length", mix.TestBars.Count > 0 ? mix.TestBars[^1].Length : Inches(24, 600))),
        EarthTest.Prism => Sized(Fresh("prism.new", PrismFields()),
            ("width", mix.Prisms.Count > 0 ? mix.Prisms[^1].Width : Inches(4, 100)), ("depth", mix.Prisms.Count > 0 ? mix.Prisms[^1].Depth : Inches(4, 100)),
            ("height", mix.Prisms.Count > 0 ? mix.Prisms[^1].Height : Inches(8, 200))),
        EarthTest.Brick => mix.Bricks.Count == 0 ? Fresh("brick.new", BrickFields())
            : Sized(Fresh("brick.new", BrickFields()), ("width", mix.Bricks[^1].Width), ("depth", mix.Bricks[^1].Depth), ("span", mix.Bricks[^1].Span)),
        EarthTest.Drop => Fresh("drop.new", DropFields()),
        _ => [.. Fresh("block.new", BlockFields()).Select(blank => blank.Name == "open-faces" ? blank with { Text = "2" } : blank)],
    };

    /// <summary>The edit that adds a test of what was written, or what is wrong and in which blank.</summary>
    public (Edit? Edit, Message? Problem) Add(EarthTest test, IReadOnlyDictionary<string, string> texts) => test switch
    {
        EarthTest.Bar => Added(new TestBar(Length.Zero, Length.Zero), BarFields(), texts, bar => mix with { TestBars = mix.TestBars.Plus(bar) }),
        EarthTest.Prism => Added(new Prism(Length.Zero, Length.Zero, Length.Zero, new Force(0), 0), PrismFields(), texts, prism => mix with { Prisms = mix.Prisms.Plus(prism) }),
        EarthTest.Brick => Added(new Brick(Length.Zero, Length.Zero, Length.Zero, new Force(0), 0), BrickFields(), texts, brick => mix with { Bricks = mix.Bricks.Plus(brick) }),
        EarthTest.Drop => Added(new Drop(Length.Zero, DropOutcome.Whole), DropFields(), texts, drop => mix with { Drops = mix.Drops.Plus(drop) }),
        _ => Added(new DryingBlock(Length.Zero, Length.Zero, Length.Zero, 0), BlockFields(), texts, block => mix with { Blocks = mix.Blocks.Plus(block) }),
    };

    /// <summary>The edit that takes a test out; null where there is none.</summary>
    public Edit? Without(EarthTest test, int index) => index < 0 || index >= Of(test).Count ? null : new Edit.ChangeMix(test switch
    {
        EarthTest.Bar => mix with { TestBars = mix.TestBars.Without(index) },
        EarthTest.Prism => mix with { Prisms = mix.Prisms.Without(index) },
        EarthTest.Brick => mix with { Bricks = mix.Bricks.Without(index) },
        EarthTest.Drop => mix with { Drops = mix.Drops.Without(index) },
        _ => mix with { Blocks = mix.Blocks.Without(index) },
    });

    private static IReadOnlyList<IReadOnlyList<EarthBlank>> Each<T>(string of, Sequence<T> tests, IReadOnlyList<EarthField<T>> fields, Func<Sequence<T>, Mix> to)
        where T : notnull => [.. tests.Select((test, i) => Of($"{of}.{i}", test, fields, changed => to(tests.With(i, changed))))];

    private EarthBlank[] Sized(EarthBlank[] blanks, params (string Name, Length Usual)[] sizes) =>
        [.. blanks.Select(blank => sizes.FirstOrDefault(s => s.Name == blank.Name) is { Name: not null } size ? blank with { Text = Tape(size.Usual) } : blank)];

    private IReadOnlyList<EarthField<TestBar>> BarFields()
    {
        var of = In<TestBar>();
        return
        [
            of.Length("length", b => b.Length, (b, v) => b with { Length = v!.Value }, needed: true),
            of.Length("shrinkage", b => b.Shrinkage, (b, v) => b with { Shrinkage = v!.Value }, needed: true),
            Word<TestBar>("cracked", [No, Yes], b => b.Cracked ? Yes : No, (b, v) => b with { Cracked = v == Yes }),
            EarthFields<TestBar>.Date("date", b => b.Date, (b, v) => b with { Date = v }),
            .. Trial<TestBar>(b => b.Trial, (b, v) => b with { Trial = v }),
        ];
    }

    private IReadOnlyList<EarthField<Prism>> PrismFields()
    {
        var of = In<Prism>();
        return
        [
            of.Length("width", p => p.Width, (p, v) => p with { Width = v!.Value }, needed: true),
            of.Length("depth", p => p.Depth, (p, v) => p with { Depth = v!.Value }, needed: true),
            of.Length("height", p => p.Height, (p, v) => p with { Height = v!.Value }, needed: true),
            of.Quantity("load", Dimension.Force, p => p.FailureLoad.Newtons, (p, v) => p with { FailureLoad = new Force(v!.Value) }, needed: true),
            of.Quantity("days", Dimension.Count, p => p.CuredDays, (p, v) => p with { CuredDays = (int)v!.Value }, needed: true),
            Word<Prism>("oven", [No, Yes], p => p.Oven ? Yes : No, (p, v) => p with { Oven = v == Yes }),
            Word<Prism>("from", ["batch", "wall"], p => p.From == SpecimenOrigin.Wall ? "wall" : "batch", (p, v) => p with { From = v == "wall" ? SpecimenOrigin.Wall : SpecimenOrigin.Batch }),
            EarthFields<Prism>.Date("date", p => p.Date, (p, v) => p with { Date = v }),
            .. Trial<Prism>(p => p.Trial, (p, v) => p with { Trial = v }),
        ];
    }

    private IReadOnlyList<EarthField<Brick>> BrickFields()
    {
        var of = In<Brick>();
        return
        [
            of.Length("width", b => b.Width, (b, v) => b with { Width = v!.Value }, needed: true),
            of.Length("depth", b => b.Depth, (b, v) => b with { Depth = v!.Value }, needed: true),
            of.Length("span", b => b.Span, (b, v) => b with { Span = v!.Value }, needed: true),
            of.Quantity("load", Dimension.Force, b => b.FailureLoad.Newtons, (b, v) => b with { FailureLoad = new Force(v!.Value) }, needed: true),
            of.Quantity("days", Dimension.Count, b => b.CuredDays, (b, v) => b with { CuredDays = (int)v!.Value }, needed: true),
            Word<Brick>("oven", [No, Yes], b => b.Oven ? Yes : No, (b, v) => b with { Oven = v == Yes }),
            EarthFields<Brick>.Date("date", b => b.Date, (b, v) => b with { Date = v }),
            .. Trial<Brick>(b => b.Trial, (b, v) => b with { Trial = v }),
        ];
    }

    private IReadOnlyList<EarthField<Drop>> DropFields()
    {
        var of = In<Drop>();
        return
        [
            of.Length("fall", d => d.Height, (d, v) => d with { Height = v!.Value }, needed: true),
            Outcome,
            EarthFields<Drop>.Date("date", d => d.Date, (d, v) => d with { Date = v }),
            .. Trial<Drop>(d => d.Trial, (d, v) => d with { Trial = v }),
        ];
    }

    /// <summary>What it did is measured: nothing stands until somebody says.</summary>
    private static EarthField<Drop> Outcome { get; } = new(
        "outcome", drop => drop.Outcome.ToString().ToLowerInvariant(),
        (drop, text) => Outcomes.Contains(text) ? (drop with { Outcome = Enum.Parse<DropOutcome>(text, ignoreCase: true) }, null) : (drop, new Message("web.earth.needed")))
    {
        Choices = ["", .. Outcomes],
    };

    private static IEnumerable<string> Outcomes => Enum.GetValues<DropOutcome>().Select(outcome => outcome.ToString().ToLowerInvariant());

    private IReadOnlyList<EarthField<DryingBlock>> BlockFields()
    {
        var of = In<DryingBlock>();
        return
        [
            of.Length("width", b => b.Width, (b, v) => b with { Width = v!.Value }, needed: true),
            of.Length("depth", b => b.Depth, (b, v) => b with { Depth = v!.Value }, needed: true),
            of.Length("height", b => b.Height, (b, v) => b with { Height = v!.Value }, needed: true),
            of.Quantity("open-faces", Dimension.Count, b => b.OpenFaces, (b, v) => b with { OpenFaces = (int)v!.Value }, needed: true),
            of.Quantity("dry-mass", Dimension.Mass, b => b.DryMass?.Kilograms, (b, v) => b with { DryMass = v is { } kg ? new Mass(kg) : null }),
            EarthFields<DryingBlock>.Weighings("weighings", b => b.Weighings, (b, v) => b with { Weighings = v }),
            .. Trial<DryingBlock>(b => b.Trial, (b, v) => b with { Trial = v }),
        ];
    }

    private IEnumerable<EarthField<T>> Trial<T>(Func<T, string?> of, Func<T, string?, T> with) =>
        mix.Trials.Count == 0 ? [] : [Word<T>("trial", Trials, part => of(part) ?? "", (part, text) => with(part, text.Length == 0 ? null : text))];

    private IReadOnlyList<string> Trials => ["", .. mix.Trials.Select(trial => trial.Name).Distinct()];
}
