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

/// <summary>The blanks of the earth of a house: jar, recipe, batch, and each test.</summary>
internal sealed partial class EarthBlanks(House house)
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

    /// <summary>Every blank that stands.</summary>
    public IEnumerable<EarthBlank> All => [.. Jar, .. Recipe, .. Carried, .. Enum.GetValues<EarthTest>().SelectMany(Of).SelectMany(b => b)];

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
}
