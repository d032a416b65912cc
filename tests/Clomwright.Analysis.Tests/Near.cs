namespace Clomwright.Analysis.Tests;

/// <summary>Comparisons whose tolerance says why. Where no other reason stands beside it, 1e-12 is the rounding of a few operations on doubles and 1e-9 that of a long chain of them, or of an iteration that stops there.</summary>
internal static class Near
{
    /// <summary>Equal within a relative tolerance; also absolute below one.</summary>
    public static void Relative(double expected, double actual, double tolerance)
    {
        Assert.True(
            Math.Abs(actual - expected) <= tolerance * Math.Abs(expected),
            $"expected {expected:R}, got {actual:R}, off by {(actual - expected) / expected:E2}, allowed {tolerance:E1}");
    }

    /// <summary>Equal to the last printed digit of a table: half of it either way.</summary>
    public static void Printed(double expected, double actual, double lastDigit) =>
        Assert.True(Math.Abs(actual - expected) <= 0.5001 * lastDigit, $"expected {expected:R} to {lastDigit}, got {actual:R}");
}
