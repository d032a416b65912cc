using Clomwright.Evidence;

namespace Clomwright.Papers.Layout;

/// <summary>A usual scale of drawings.</summary>
/// <param name="Denominator">The house is this many times larger than the paper.</param>
/// <param name="PerFoot">Sixteenths of an inch on paper for a foot; 0 for a metric scale.</param>
internal sealed record DrawingScale(int Denominator, int PerFoot = 0)
{
    private static readonly DrawingScale[] Imperial =
        [new(8, 24), new(12, 16), new(16, 12), new(24, 8), new(32, 6), new(48, 4), new(64, 3), new(96, 2), new(192, 1), new(384), new(768), new(1536)];

    private static readonly DrawingScale[] Metric =
        [new(5), new(10), new(20), new(25), new(50), new(75), new(100), new(200), new(500), new(1000), new(2000)];

    /// <summary>Millimetres on paper for each metre.</summary>
    public double PaperPerMetre => 1000.0 / Denominator;

    /// <summary>The usual scales, largest drawing first.</summary>
    public static IReadOnlyList<DrawingScale> Usual(UnitSystem units) => units == UnitSystem.Imperial ? Imperial : Metric;

    /// <summary>The largest usual scale at which something fits; the smallest of all where none does.</summary>
    public static DrawingScale Fitting(UnitSystem units, Func<DrawingScale, bool> fits) => Usual(units).FirstOrDefault(fits) ?? Usual(units)[^1];

    /// <summary>The same of several pictures that all have to fit, with what is drawn at that scale. They are drawn one by one until one does not fit, and what fits is not drawn again.</summary>
    public static (DrawingScale Scale, IReadOnlyList<T> Drawn) Fitting<T>(UnitSystem units, Func<DrawingScale, IEnumerable<T>> draw, Func<T, bool> fits)
    {
        List<T> drawn = [];
        bool AllFit(DrawingScale scale)
        {
            drawn = [];
            foreach (var one in draw(scale))
            {
                if (!fits(one))
                {
                    return false;
                }

                drawn.Add(one);
            }

            return true;
        }

        return Usual(units).FirstOrDefault(AllFit) is { } found ? (found, drawn) : (Usual(units)[^1], [.. draw(Usual(units)[^1])]);
    }

    /// <summary>As printed: <c>1:48, 1/4 in to 1 ft</c>.</summary>
    public Message Label => PerFoot == 0
        ? Message.Of("papers.scale", ("of", $"1:{Denominator}"))
        : Message.Of("papers.scale-foot", ("of", $"1:{Denominator}"), ("inches", LengthText.Written(new Length(Length.PerInch / 16 * PerFoot))));
}
