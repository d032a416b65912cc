using Clomwright.Evidence;

namespace Clomwright.Analysis.Comfort;

/// <summary>Where vapour turns to water inside a part in one steady climate: ISO 13788 (the method of Glaser), from memory.</summary>
/// <remarks>
/// Steady, of vapour alone: it knows no capillarity, no sorption, no rain, no sun, no building moisture, no air that leaks in. It condemns earth lined inside too harshly where capillaries carry the
/// water back, and too mildly where rain wets the outside.
/// </remarks>
/// <param name="Temperatures">At the faces of the layers, from inside out, C.</param>
/// <param name="Pressures">Of vapour there, held to saturation, Pa.</param>
/// <param name="Flow">Vapour that leaves the room, kg/(m2 s).</param>
/// <param name="Planes">Where water gathers, by face from inside.</param>
public sealed record Condensation(Sequence<double> Temperatures, Sequence<double> Pressures, double Flow, Sequence<CondensationPlane> Planes)
{
    /// <summary>Vapour permeability of air in the standard, kg/(m s Pa).</summary>
    private const double Air = 2e-10;

    /// <summary>Saturation pressure of the standard, Pa.</summary>
    public static double Saturation(double celsius) => celsius >= 0
        ? 610.5 * Math.Exp(17.269 * celsius / (237.3 + celsius))
        : 610.5 * Math.Exp(21.875 * celsius / (265.5 + celsius));

    /// <summary>One steady climate. Materials that soak are taken as they stand.</summary>
    /// <param name="part">Layers from inside to outside.</param>
    /// <param name="inside">Air inside, C.</param>
    /// <param name="pressureInside">Vapour inside, Pa.</param>
    /// <param name="outside">Air outside, C.</param>
    /// <param name="pressureOutside">Vapour outside, Pa.</param>
    /// <param name="cut">Thickest slice, m: thick layers are cut so that water inside them is seen.</param>
    public static Condensation Of(BuildUp part, double inside, double pressureInside, double outside, double pressureOutside, double cut = double.PositiveInfinity)
    {
        ArgumentNullException.ThrowIfNull(part);
        var (through, way) = (new List<double> { part.Inside }, new List<double> { 0 });
        foreach (var layer in part.Layers)
        {
            var slices = Math.Max(1, (int)Math.Ceiling(layer.Depth / cut));
            for (var i = 0; i < slices; i++)
            {
                through.Add(through[^1] + layer.Resistance / slices);
                way.Add(way[^1] + layer.Vapour * layer.Depth / slices);
            }
        }

        var temperatures = through.Select(r => inside - r / part.Resistance * (inside - outside)).ToArray();
        var saturated = temperatures.Select(Saturation).ToArray();
        var (touching, pressures) = Hull(way, saturated, pressureInside, pressureOutside);
        var planes = new List<CondensationPlane>();
        for (var k = 1; k + 1 < touching.Count; k++)
        {
            double Between(int a, int b) => Air * (pressures[a] - pressures[b]) / (way[b] - way[a]);
            planes.Add(new(touching[k], temperatures[touching[k]], Between(touching[k - 1], touching[k]) - Between(touching[k], touching[k + 1])));
        }

        var first = touching[1];
        return new(temperatures.ToSequence(), pressures.ToSequence(), Air * (pressures[0] - pressures[first]) / (way[first] - way[0]), planes.ToSequence());
    }

    /// <summary>The line of vapour pressure from inside to outside that nowhere passes saturation: a string drawn tight under the saturation curve.</summary>
    private static (List<int> Touching, double[] Pressures) Hull(List<double> way, double[] saturated, double inside, double outside)
    {
        var last = way.Count - 1;
        double Limit(int i) => i == 0 ? Math.Min(inside, saturated[0]) : i == last ? Math.Min(outside, saturated[last]) : saturated[i];
        var touching = new List<int> { 0 };
        while (touching[^1] < last)
        {
            // The next point touched is the one towards which the line falls most steeply.
            var from = touching[^1];
            var best = from + 1;
            for (var i = from + 1; i <= last; i++)
            {
                if ((Limit(i) - Limit(from)) / (way[i] - way[from]) <= (Limit(best) - Limit(from)) / (way[best] - way[from]))
                {
                    best = i;
                }
            }

            touching.Add(best);
        }

        var pressures = new double[way.Count];
        for (var k = 0; k + 1 < touching.Count; k++)
        {
            for (var i = touching[k]; i <= touching[k + 1]; i++)
            {
                var share = (way[i] - way[touching[k]]) / (way[touching[k + 1]] - way[touching[k]]);
                pressures[i] = Limit(touching[k]) + share * (Limit(touching[k + 1]) - Limit(touching[k]));
            }
        }

        return (touching, pressures);
    }
}

/// <summary>A face between layers where water gathers.</summary>
/// <param name="Face">Counted from the inside face, 0.</param>
/// <param name="Temperature">There, C.</param>
/// <param name="Rate">kg/(m2 s); below 0 where water that lies there dries.</param>
public readonly record struct CondensationPlane(int Face, double Temperature, double Rate);
