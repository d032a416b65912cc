using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Study;
using Clomwright.Testing;

namespace Clomwright.Papers.Tests;

/// <summary>Sets of papers for tests.</summary>
internal static class Papers
{
    public static DateOnly Date { get; } = new(2027, 5, 20);

    /// <summary>Forecasts of the complete house are worked out once: another study of it takes them over.</summary>
    internal static readonly HouseStudy Study = HouseStudy.Of(Houses.HeronPoint);

    public static PaperSet HeronPoint { get; } = Set(Houses.HeronPoint, PaperSize.A4);

    public static Sequence<Sheet> HeronPointSite { get; } = Book.Site(HeronPoint);

    public static Sequence<Sheet> HeronPointOffice { get; } = Book.Office(HeronPoint);

    /// <summary>As <see cref="Book.Of(PaperSet)"/> makes it.</summary>
    public static Sequence<Sheet> HeronPointBook { get; } = [.. HeronPointSite, .. HeronPointOffice];

    /// <summary>The complete house on other paper: nothing of it is worked out again.</summary>
    public static PaperSet On(PaperSize paper, UnitSystem? units = null) => HeronPoint with { Options = HeronPoint.Options with { Paper = paper, Units = units } };

    public static PaperSet Set(House house, PaperSize paper, UnitSystem? units = null) =>
        FromStudy.Set(HouseStudy.Of(house, StudyOptions.Quick, Study), new PaperOptions(Date) { Paper = paper, Units = units });

    /// <summary>The house alone, placed and counted: enough for what is drawn from geometry, and quick.</summary>
    public static PaperSet Placed(House house, PaperSize paper)
    {
        var study = HouseStudy.Of(house);
        return new PaperSet { Geometry = study.Geometry, Quantities = study.Quantities, Options = new PaperOptions(Date) { Paper = paper } };
    }

    public static IEnumerable<Text> Texts(this Sheet sheet) => sheet.Marks.All().OfType<Text>();
}
