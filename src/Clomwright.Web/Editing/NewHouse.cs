using System.Text;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Files;

namespace Clomwright.Web.Editing;

/// <summary>What somebody typed to begin a house: a blank plot, or a copy of one that is there.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Units">imperial or metric.</param>
/// <param name="Shape">A word of the plan's shapes.</param>
/// <param name="Length">Across, or long; a bare number in the units' own tape.</param>
/// <param name="Width">Wide; not asked of a circle.</param>
/// <param name="Copy">Key of the house that is copied; null for a blank plot.</param>
internal sealed record NewHouse(string? Name, string? Units, string? Shape, string? Length, string? Width, string? Copy)
{
    private const int IdMost = 40;

    /// <summary>The house, or the blank that is not understood and one sentence on it.</summary>
    public (House? House, string? Blank, Message? Problem) Read(Func<string, House?> find)
    {
        var name = Name?.Trim() ?? "";
        var id = IdOf(name);
        if (id.Length == 0)
        {
            return (null, "name", new Message("web.new.no-name"));
        }

        if (Copy is { } copy)
        {
            return find(copy) is { } copied ? Checked(copied with { Id = id, Name = name }) : (null, "copy", new Message("web.new.no-copy"));
        }

        var units = Units == "metric" ? UnitSystem.Metric : UnitSystem.Imperial;
        var shape = PlanShaping.Shapes.Contains(Shape ?? "") ? Shape! : "round";
        var (length, wrong) = Size(Length, units);
        if (wrong is not null)
        {
            return (null, "length", wrong);
        }

        var (width, amiss) = shape == "round" ? (length, null) : Size(Width, units);
        return amiss is not null ? (null, "width", amiss)
            : width > length ? (null, "width", new Message("web.new.wider"))
            : Checked(BlankPlot.Make(id, name, units, BlankPlot.PlanOf(shape, length, width, units)));
    }

    /// <summary>The name as a short key: small letters, digits and hyphens.</summary>
    internal static string IdOf(string name)
    {
        var id = new StringBuilder();
        foreach (var c in name.Normalize(NormalizationForm.FormD).ToLowerInvariant())
        {
            if (char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c))
            {
                id.Append(c);
            }
            else if (id.Length > 0 && id[^1] != '-' && !char.IsLetter(c) && char.GetUnicodeCategory(c) != System.Globalization.UnicodeCategory.NonSpacingMark)
            {
                id.Append('-');
            }
        }

        return id.ToString()[..Math.Min(id.Length, IdMost)].Trim('-');
    }

    private static (Length Length, Message? Problem) Size(string? text, UnitSystem units) =>
        LengthText.TryParse(text ?? "", units == UnitSystem.Imperial ? Clomwright.Evidence.Units.Foot : Clomwright.Evidence.Units.Metre, out var length, out var problem) ? (length, null) : (default, problem);

    /// <summary>What the description itself would call wrong is not begun.</summary>
    private static (House?, string?, Message?) Checked(House house) => HouseDiagnostics.Of(house).FirstOrDefault(said => said.Severity == Severity.Error) is { } wrong
        ? (null, wrong.Path.StartsWith("plan", StringComparison.Ordinal) ? "length" : "name", wrong.What) : (house, null, null);
}

/// <summary>The house that was begun.</summary>
/// <param name="Key">Its key in addresses.</param>
internal sealed record NewHouseMade(string Key);
