using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Web.Editing;

/// <summary>A blank of the earth page.</summary>
/// <param name="Key">Its address: <c>jar.jar-sand</c>, <c>prism.2.load</c>.</param>
/// <param name="Name">Which field.</param>
/// <param name="Text">What stands in it.</param>
/// <param name="Choices">Words to choose from; empty for a blank to write in.</param>
/// <param name="Written">The edit that a text asks for, or what is wrong with it.</param>
internal sealed record EarthBlank(string Key, string Name, string Text, IReadOnlyList<string> Choices, Func<string, (Edit? Edit, Message? Problem)> Written);

/// <summary>The blanks of the earth of a house: jar, recipe, batch, and each bar and prism.</summary>
internal sealed class EarthBlanks(House house)
{
    private const string No = "no";
    private const string Yes = "yes";
    private readonly Mix mix = house.Mix;

    /// <summary>The jar.</summary>
    public IReadOnlyList<EarthBlank> Jar => Of("jar", mix.SoilTests, Soil(), soil => mix with { SoilTests = soil });

    /// <summary>The recipe of the wall.</summary>
    public IReadOnlyList<EarthBlank> Recipe => Of("recipe", mix.Recipe, Parts(), recipe => mix with { Recipe = recipe });

    /// <summary>What the crew carries.</summary>
    public IReadOnlyList<EarthBlank> Carried =>
    [
        .. mix.Batch is { } batch ? Of("batch", batch, BatchFields(), changed => mix with { Batch = changed }) : [],
        .. Of("measures", mix.Measures, MeasureFields(), measures => mix with { Measures = measures }),
    ];

    /// <summary>Each bar.</summary>
    public IReadOnlyList<IReadOnlyList<EarthBlank>> Bars =>
        [.. mix.TestBars.Select((bar, i) => Of($"bar.{i}", bar, BarFields(), changed => mix with { TestBars = mix.TestBars.With(i, changed) }))];

    /// <summary>Each prism.</summary>
    public IReadOnlyList<IReadOnlyList<EarthBlank>> Prisms =>
        [.. mix.Prisms.Select((prism, i) => Of($"prism.{i}", prism, PrismFields(), changed => mix with { Prisms = mix.Prisms.With(i, changed) }))];

    /// <summary>What a bar or prism still to be added is asked for; sizes stand as they are usual. What was measured is never filled in.</summary>
    public IReadOnlyList<EarthBlank> New(EarthTest test)
    {
        return test == EarthTest.Bar ? Fresh("bar.new", BarFields(), "length", mix.TestBars.Count > 0 ? mix.TestBars[^1].Length : Inches(24, 600))
            : mix.Prisms.Count > 0 ? Sized(mix.Prisms[^1].Width, mix.Prisms[^1].Depth, mix.Prisms[^1].Height) : Sized(Inches(4, 100), Inches(4, 100), Inches(8, 200));

        IReadOnlyList<EarthBlank> Sized(Length width, Length depth, Length height) =>
        [
            .. Fresh("prism.new", PrismFields()).Select(blank => blank.Name switch
            {
                "width" => blank with { Text = Tape(width) },
                "depth" => blank with { Text = Tape(depth) },
                "height" => blank with { Text = Tape(height) },
                _ => blank,
            }),
        ];
    }

    /// <summary>Every blank that stands.</summary>
    public IEnumerable<EarthBlank> All => [.. Jar, .. Recipe, .. Carried, .. Bars.SelectMany(b => b), .. Prisms.SelectMany(b => b)];

    /// <summary>The edit that adds a bar or prism of what was written, or what is wrong and in which blank.</summary>
    public (Edit? Edit, Message? Problem) Add(EarthTest test, IReadOnlyDictionary<string, string> texts) => test == EarthTest.Bar
        ? Added(new TestBar(Length.Zero, Length.Zero), BarFields(), texts, bar => mix with { TestBars = mix.TestBars.Plus(bar) })
        : Added(new Prism(Length.Zero, Length.Zero, Length.Zero, new Force(0), 0), PrismFields(), texts, prism => mix with { Prisms = mix.Prisms.Plus(prism) });

    /// <summary>The edit that takes a bar or prism out; null where there is none.</summary>
    public Edit? Without(EarthTest test, int index) => test switch
    {
        EarthTest.Bar when index >= 0 && index < mix.TestBars.Count => new Edit.ChangeMix(mix with { TestBars = mix.TestBars.Without(index) }),
        EarthTest.Prism when index >= 0 && index < mix.Prisms.Count => new Edit.ChangeMix(mix with { Prisms = mix.Prisms.Without(index) }),
        _ => null,
    };

    private static (Edit? Edit, Message? Problem) Added<T>(T part, IReadOnlyList<EarthField<T>> fields, IReadOnlyDictionary<string, string> texts, Func<T, Mix> to)
    {
        foreach (var field in fields)
        {
            (part, var problem) = field.Write(part, texts.GetValueOrDefault(field.Name, field.Fresh));
            if (problem is not null)
            {
                return (null, Message.Of("web.earth.in-blank", ("blank", new Message($"web.earth.blank.{field.Name}")), ("problem", problem)));
            }
        }

        return (new Edit.ChangeMix(to(part)), null);
    }

    private static IReadOnlyList<EarthBlank> Of<T>(string of, T part, IReadOnlyList<EarthField<T>> fields, Func<T, Mix> to) =>
    [
        .. fields.Select(field => new EarthBlank($"{of}.{field.Name}", field.Name, field.Text(part), field.Choices, text =>
        {
            var (changed, problem) = field.Write(part, text);
            return problem is null ? (new Edit.ChangeMix(to(changed)), null) : (null, problem);
        })),
    ];

    private static EarthBlank[] Fresh<T>(string of, IReadOnlyList<EarthField<T>> fields) =>
        [.. fields.Select(field => new EarthBlank($"{of}.{field.Name}", field.Name, field.Fresh, field.Choices, _ => (null, null)))];

    private EarthBlank[] Fresh<T>(string of, IReadOnlyList<EarthField<T>> fields, string name, Length usual) =>
        [.. Fresh(of, fields).Select(blank => blank.Name == name ? blank with { Text = Tape(usual) } : blank)];

    private static EarthField<T> Word<T>(string name, IReadOnlyList<string> choices, Func<T, string> of, Func<T, string, T> with) => new(
        name, of,
        (part, text) => choices.Contains(text) ? (with(part, text), null) : (part, Message.Of("web.earth.not-choice", ("text", text.Length <= 40 ? text : text[..40] + "…"))))
    {
        Choices = choices,
        Fresh = choices[0],
    };

    private string Tape(Length length) => LengthText.Written(length, house.Units);

    private Length Inches(long inches, long millimetres) => house.Units == UnitSystem.Imperial ? Length.FromInches(inches) : Length.FromMillimetres(millimetres);

    private EarthFields<T> In<T>() => new(house.Units);

    private IReadOnlyList<EarthField<SoilTests>> Soil()
    {
        var of = In<SoilTests>();
        return
        [
            of.Length("jar-sand", s => s.JarSand, (s, v) => s with { JarSand = v }),
            of.Length("jar-silt", s => s.JarSilt, (s, v) => s with { JarSilt = v }),
            of.Length("jar-clay", s => s.JarClay, (s, v) => s with { JarClay = v }),
            of.Length("jar-column", s => s.JarColumn, (s, v) => s with { JarColumn = v }),
            of.Quantity("jar-water", Dimension.Temperature, s => s.JarWater?.Celsius, (s, v) => s with { JarWater = v is { } c ? new Temperature(c) : null }),
        ];
    }

    private IReadOnlyList<EarthField<Recipe>> Parts()
    {
        var of = In<Recipe>();
        return
        [
            of.Quantity("soil", Dimension.Number, r => r.Soil, (r, v) => r with { Soil = v }),
            of.Quantity("clay", Dimension.Number, r => r.Clay, (r, v) => r with { Clay = v }),
            of.Quantity("sand", Dimension.Number, r => r.Sand, (r, v) => r with { Sand = v }),
            of.Quantity("water", Dimension.Number, r => r.Water, (r, v) => r with { Water = v }),
            of.Quantity("straw", Dimension.Mass, r => r.Straw?.Kilograms, (r, v) => r with { Straw = v is { } kg ? new Mass(kg) : null }),
        ];
    }

    private IReadOnlyList<EarthField<Batch>> BatchFields()
    {
        var of = In<Batch>();
        return
        [
            of.Quantity("buckets", Dimension.Number, b => b.Buckets, (b, v) => b with { Buckets = v!.Value }, needed: true),
            of.Quantity("bucket-volume", Dimension.Volume, b => b.BucketVolume.CubicMetres, (b, v) => b with { BucketVolume = new Volume(v!.Value) }, needed: true),
        ];
    }

    private IReadOnlyList<EarthField<Measures>> MeasureFields()
    {
        var of = In<Measures>();
        return
        [
            of.Quantity("soil-bucket", Dimension.Mass, m => m.SoilBucket?.Kilograms, (m, v) => m with { SoilBucket = v is { } kg ? new Mass(kg) : null }),
            of.Quantity("sand-bucket", Dimension.Mass, m => m.SandBucket?.Kilograms, (m, v) => m with { SandBucket = v is { } kg ? new Mass(kg) : null }),
            of.Quantity("armful", Dimension.Mass, m => m.Armful?.Kilograms, (m, v) => m with { Armful = v is { } kg ? new Mass(kg) : null }),
        ];
    }

    private IReadOnlyList<EarthField<TestBar>> BarFields()
    {
        var of = In<TestBar>();
        return
        [
            of.Length("length", b => b.Length, (b, v) => b with { Length = v!.Value }, needed: true),
            of.Length("shrinkage", b => b.Shrinkage, (b, v) => b with { Shrinkage = v!.Value }, needed: true),
            Word<TestBar>("cracked", [No, Yes], b => b.Cracked ? Yes : No, (b, v) => b with { Cracked = v == Yes }),
            .. mix.Trials.Count == 0 ? (EarthField<TestBar>[])[] : [Word<TestBar>("trial", Trials, b => b.Trial ?? "", (b, v) => b with { Trial = v.Length == 0 ? null : v })],
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
            .. mix.Trials.Count == 0 ? (EarthField<Prism>[])[] : [Word<Prism>("trial", Trials, p => p.Trial ?? "", (p, v) => p with { Trial = v.Length == 0 ? null : v })],
        ];
    }

    private IReadOnlyList<string> Trials => ["", .. mix.Trials.Select(trial => trial.Name).Distinct()];
}
