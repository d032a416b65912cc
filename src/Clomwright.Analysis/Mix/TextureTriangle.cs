using Clomwright.Evidence;

namespace Clomwright.Analysis.Mix;

/// <summary>Where the twelve classes lie in the triangle of sand, silt and clay, for drawing. Corners from the limits of the USDA's definitions; <see cref="Texture"/> decides, a drawing never does.</summary>
public static class TextureTriangle
{
    /// <summary>The fields, as the classes are listed.</summary>
    public static Sequence<TextureField> Fields { get; } =
    [
        Field("sand", (1, 0, 0), (0.85, 0.15, 0), (0.9, 0, 0.1)),
        Field("loamy-sand", (0.85, 0.15, 0), (0.7, 0.3, 0), (0.85, 0, 0.15), (0.9, 0, 0.1)),
        Field("sandy-loam", (0.7, 0.3, 0), (0.5, 0.5, 0), (0.43, 0.5, 0.07), (0.52, 0.41, 0.07), (0.52, 0.28, 0.2), (0.8, 0, 0.2), (0.85, 0, 0.15)),
        Field("loam", (0.43, 0.5, 0.07), (0.23, 0.5, 0.27), (0.45, 0.28, 0.27), (0.52, 0.28, 0.2), (0.52, 0.41, 0.07)),
        Field("silt-loam", (0.5, 0.5, 0), (0.2, 0.8, 0), (0.08, 0.8, 0.12), (0, 0.88, 0.12), (0, 0.73, 0.27), (0.23, 0.5, 0.27)),
        Field("silt", (0.2, 0.8, 0), (0, 1, 0), (0, 0.88, 0.12), (0.08, 0.8, 0.12)),
        Field("sandy-clay-loam", (0.8, 0, 0.2), (0.52, 0.28, 0.2), (0.45, 0.28, 0.27), (0.45, 0.2, 0.35), (0.65, 0, 0.35)),
        Field("clay-loam", (0.45, 0.28, 0.27), (0.2, 0.53, 0.27), (0.2, 0.4, 0.4), (0.45, 0.15, 0.4)),
        Field("silty-clay-loam", (0.2, 0.53, 0.27), (0, 0.73, 0.27), (0, 0.6, 0.4), (0.2, 0.4, 0.4)),
        Field("sandy-clay", (0.65, 0, 0.35), (0.45, 0.2, 0.35), (0.45, 0, 0.55)),
        Field("silty-clay", (0.2, 0.4, 0.4), (0, 0.6, 0.4), (0, 0.4, 0.6)),
        Field("clay", (0.45, 0.15, 0.4), (0.2, 0.4, 0.4), (0, 0.4, 0.6), (0, 0, 1), (0.45, 0, 0.55)),
    ];

    private static TextureField Field(string key, params (double Sand, double Silt, double Clay)[] corners) => new(key, corners.Select(c => new SoilShares(c.Sand, c.Silt, c.Clay)).ToSequence());
}

/// <summary>Shares of the mass finer than 2 mm; they make one.</summary>
/// <param name="Sand">2 to 0.05 mm.</param>
/// <param name="Silt">0.05 to 0.002 mm.</param>
/// <param name="Clay">Below 0.002 mm.</param>
public readonly record struct SoilShares(double Sand, double Silt, double Clay);

/// <summary>A class in the triangle.</summary>
/// <param name="Key">Of the class.</param>
/// <param name="Corners">Round it.</param>
public sealed record TextureField(string Key, Sequence<SoilShares> Corners)
{
    /// <summary>Its centre of area.</summary>
    public SoilShares Middle
    {
        get
        {
            var (area, silt, clay) = (0.0, 0.0, 0.0);
            for (var i = 0; i < Corners.Count; i++)
            {
                var (a, b) = (Corners[i], Corners[(i + 1) % Corners.Count]);
                var part = a.Silt * b.Clay - b.Silt * a.Clay;
                (area, silt, clay) = (area + part, silt + (a.Silt + b.Silt) * part, clay + (a.Clay + b.Clay) * part);
            }

            return new SoilShares(1 - (silt + clay) / (3 * area), silt / (3 * area), clay / (3 * area));
        }
    }
}
