using Clomwright.Evidence;

namespace Clomwright.Geometry;

/// <summary>How high the crew has to stand to lay a lift with its top at the waist.</summary>
public static class WorkHeight
{
    /// <summary>Height of the waist above the feet, m. Common practice, no source: work at waist height; 3 ft 3 in.</summary>
    public const double Waist = 39 * 0.0254;

    /// <summary>Height of the platform above the finished floor for a lift that ends at a height, m; zero while standing on the floor serves.</summary>
    public static double Platform(double liftTop) => Math.Max(0, liftTop - Waist);
}
