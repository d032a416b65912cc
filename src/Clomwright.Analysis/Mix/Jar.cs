using Clomwright.Analysis.Steps;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Mix;

/// <summary>Reads the jar.</summary>
internal static class Jar
{
    private static readonly (string Key, double Diameter)[] Sizes = [("iso-sand", 63e-6), ("usda-sand", 50e-6), ("silt-middle", 20e-6), ("silt-fine", 6e-6), ("usda-silt", 2e-6)];

    /// <summary>The jar of a house; the temperature of its water is settled beside it.</summary>
    public static (Known<JarReading> Reading, Sequence<Assumption> Assumptions) Of(SoilTests soil)
    {
        if (soil is not { JarSand: { } sand, JarSilt: { } silt, JarClay: { } clay } || sand + silt + clay <= Length.Zero)
        {
            return (new Message("analysis.mix.no-jar"), []);
        }

        var sheet = new Worksheet("jar");
        var source = Sources.Get("mix-balance");
        var (rs, ri, rc) = (MixValues.Or(null, "sand-layer", Dimension.Density), MixValues.Or(null, "silt-layer", Dimension.Density), MixValues.Or(null, "clay-layer", Dimension.Density));
        double[] mass = [sand.Metres * rs.Value, silt.Metres * ri.Value, clay.Metres * rc.Value];
        var all = mass.Sum();
        Symbol[] symbols =
        [
            Worksheet.Given("h_s", "jar-sand", sand.Metres, Dimension.Length), Worksheet.Given("h_i", "jar-silt", silt.Metres, Dimension.Length), Worksheet.Given("h_c", "jar-clay", clay.Metres, Dimension.Length),
            rs.Symbol("rho_1", "sand-layer", Dimension.Density), ri.Symbol("rho_2", "silt-layer", Dimension.Density), rc.Symbol("rho_3", "clay-layer", Dimension.Density),
        ];
        const string total = "(h_s*rho_1+h_i*rho_2+h_c*rho_3)";
        sheet.Step("jar-sand-share", "x_s", $"h_s*rho_1/{total}", mass[0] / all, Dimension.Fraction, source, symbols);
        sheet.Step("jar-silt-share", "x_i", $"h_i*rho_2/{total}", mass[1] / all, Dimension.Fraction, source, symbols);
        sheet.Step("jar-clay-share", "x_c", $"h_c*rho_3/{total}", mass[2] / all, Dimension.Fraction, source, symbols);
        var (times, temperature) = Times(soil);
        var reading = new JarReading(times, mass[0] / all, mass[1] / all, mass[2] / all, Texture.Of(mass[0] / all, mass[1] / all, 1 - (mass[0] + mass[1]) / all)!, clay.Metres / (sand + silt + clay).Metres, sheet.Done);
        return (reading, [.. rs.Assumptions, .. ri.Assumptions, .. rc.Assumptions, .. temperature]);
    }

    private static (Known<SettlingTimes> Times, Sequence<Assumption> Assumptions) Times(SoilTests soil)
    {
        if (soil.JarColumn is not { } column || column <= Length.Zero)
        {
            return (new Message("analysis.mix.no-column"), []);
        }

        var celsius = MixValues.Or(soil.JarWater?.Celsius, "jar-water", Dimension.Temperature);
        var grain = MixValues.Of("grain-density");
        return (new SettlingTimes(Sizes.Select(s =>
        {
            var time = Settling.Time(s.Key, s.Diameter, column.Metres, celsius, grain);
            return new SettlingTime(s.Key, s.Diameter, time.Value, time.How);
        }).ToSequence()), celsius.Assumptions);
    }
}
