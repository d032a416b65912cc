namespace Clomwright.Analysis.WallByHand;

/// <summary>What one pier holds along itself when nothing ties it down, SI. The weakest of three counts.</summary>
public static class PierStrength
{
    /// <summary>V = N L/(2 h) (1 - s/(0.85 f)), s = N/(L t): it turns about a crushed toe (Magenes and Calvi); nothing where the toe takes all of it.</summary>
    /// <param name="load">N, N.</param>
    /// <param name="length">L, m.</param>
    /// <param name="thickness">t, m.</param>
    /// <param name="height">h: from where it turns to where it is pushed, m.</param>
    /// <param name="strength">f, Pa.</param>
    public static double Rocking(double load, double length, double thickness, double height, double strength) =>
        Math.Max(0, load * length / (2 * height) * (1 - load / (length * thickness * WallByHand.Rocking.Block * strength)));

    /// <summary>V = tau_0 L t + mu N.</summary>
    /// <param name="load">N, N.</param>
    /// <param name="length">L, m.</param>
    /// <param name="thickness">t, m.</param>
    /// <param name="cohesion">tau_0, Pa; nothing across a joint that dried.</param>
    /// <param name="friction">mu.</param>
    public static double Sliding(double load, double length, double thickness, double cohesion, double friction) => Math.Max(0, cohesion * length * thickness + friction * load);

    /// <summary>V = L t f_t/b sqrt(1 + s/f_t): it cracks from corner to corner (Turnsek and Cacovic); b is h/L between 1 and 1.5.</summary>
    /// <param name="load">N, N.</param>
    /// <param name="length">L, m.</param>
    /// <param name="thickness">t, m.</param>
    /// <param name="height">h, m.</param>
    /// <param name="tension">f_t, Pa.</param>
    public static double Cracking(double load, double length, double thickness, double height, double tension) =>
        length * thickness * tension / Shape(height, length) * Math.Sqrt(1 + Math.Max(0, load) / (length * thickness) / tension);

    /// <summary>b: h/L, from 1 to 1.5.</summary>
    public static double Shape(double height, double length) => Math.Clamp(height / length, 1, 1.5);
}
