using Clomwright.Analysis.Steps;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Comfort;

/// <summary>One layer of a part, of one material.</summary>
/// <param name="Name">The author's or the material's word for it.</param>
/// <param name="Depth">m.</param>
/// <param name="Conductivity">W/(m K).</param>
/// <param name="Density">kg/m3.</param>
/// <param name="Capacity">J/(kg K).</param>
/// <param name="Vapour">Resistance to vapour, times that of air.</param>
/// <param name="Tag">What told the conductivity.</param>
/// <param name="Source">Whose it is; null where the author gave it.</param>
public sealed record HeatLayer(string Name, double Depth, double Conductivity, double Density, double Capacity, double Vapour, Tag Tag, Source? Source)
{
    /// <summary>m2 K/W.</summary>
    public double Resistance => Depth / Conductivity;
}

/// <summary>Layers of a part from inside to outside, with the films of air on both faces.</summary>
/// <param name="Layers">From inside to outside.</param>
/// <param name="Inside">Resistance of the film inside, m2 K/W.</param>
/// <param name="Outside">Resistance of the film outside, m2 K/W.</param>
public sealed record BuildUp(Sequence<HeatLayer> Layers, double Inside, double Outside)
{
    /// <summary>Whole resistance, films and all, m2 K/W: ISO 6946.</summary>
    public double Resistance => Inside + Layers.Sum(l => l.Resistance) + Outside;

    /// <summary>U, W/(m2 K).</summary>
    public double Transmittance => 1 / Resistance;

    /// <summary>Thickness, m.</summary>
    public double Depth => Layers.Sum(l => l.Depth);

    /// <summary>Mass that a square metre holds, kg.</summary>
    public double Mass => Layers.Sum(l => l.Depth * l.Density);

    /// <summary>Temperature of the inside face over the difference between both airs, 0 to 1, with its own film or a weaker one.</summary>
    /// <param name="film">Resistance of the air at the face, m2 K/W.</param>
    public double Factor(double? film = null)
    {
        var inside = film ?? Inside;
        return 1 - inside / (Resistance - Inside + inside);
    }

    /// <summary>The resistances in series, step by step.</summary>
    /// <param name="numbers">For the films' sources.</param>
    /// <param name="place">Which part.</param>
    /// <param name="film">Key of the film inside.</param>
    /// <param name="outside">Key of the film outside.</param>
    internal Calculation Worked(ComfortNumbers numbers, string place, string film, string outside)
    {
        var sheet = new Worksheet("heat-resistance");
        var source = Sources.Get("iso-6946-memory");
        var layers = new List<Symbol>();
        for (var i = 0; i < Layers.Count; i++)
        {
            var layer = Layers[i];
            var (d, k) = (Worksheet.Computed($"d_{i + 1}", "layer-depth", layer.Depth, Dimension.Length),
                new Symbol($"k_{i + 1}", new Message("analysis.symbol.layer-conductivity"), new Amount(layer.Conductivity, Dimension.Conductivity), layer.Tag, layer.Source));
            layers.Add(sheet.Step("layer-resistance", $"R_{i + 1}", $"d_{i + 1}/k_{i + 1}", layer.Resistance, Dimension.Resistance, source, d, k));
        }

        Symbol[] all = [numbers.Symbol("R_i", film), .. layers, numbers.Symbol("R_e", outside)];
        var whole = sheet.Step("whole-resistance", "R", string.Join("+", all.Select(s => s.Name)), Resistance, Dimension.Resistance, source, all);
        sheet.Step("transmittance", "U", "1/R", Transmittance, Dimension.Transmittance, source, whole);
        return sheet.Done with { Place = place };
    }
}

/// <summary>Parts side by side in one plane: ISO 6946, the combined method, the mean of an upper and a lower bound.</summary>
public static class SideBySide
{
    /// <summary>Whole resistance, m2 K/W, of parts that share films and have layers of the same depths.</summary>
    /// <param name="parts">Each with its share of the area; shares come to 1.</param>
    public static double Resistance(Sequence<(double Share, BuildUp Part)> parts)
    {
        var upper = 1 / parts.Sum(p => p.Share / p.Part.Resistance);
        var first = parts[0].Part;
        var lower = first.Inside + first.Outside;
        for (var i = 0; i < first.Layers.Count; i++)
        {
            lower += 1 / parts.Sum(p => p.Share / p.Part.Layers[i].Resistance);
        }

        return (upper + lower) / 2;
    }
}
