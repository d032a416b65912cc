using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Clomwright.Numerics.Diffusion;

/// <summary>What leaves through a surface per unit area and time: g = (p B(u) - q)/(1 + r B(u)) - s (U - u).</summary>
/// <remarks>With B = u and r = s = 0 it is the third kind of boundary, g = p (u - q/p); a fixed value is a very large p. It never falls with u while q r + p is not negative.</remarks>
/// <param name="P">p, not negative.</param>
/// <param name="Q">q.</param>
/// <param name="R">r, not negative.</param>
/// <param name="S">s, not negative: uptake that ends when the surface is full.</param>
/// <param name="Full">U, the full state.</param>
public readonly record struct Exchange(double P, double Q, double R = 0, double S = 0, double Full = 0)
{
    /// <summary>Nothing passes.</summary>
    public static Exchange None { get; }

    /// <summary>Outflow and its slope with u.</summary>
    public void Evaluate(double u, double b, double slopeB, out double flow, out double slope)
    {
        // B below its range can only be met while a step is tried.
        var below = 1 / (1 + R * Math.Max(b, 0));
        flow = (P * b - Q) * below - S * (Full - u);
        slope = (P + R * Q) * below * below * slopeB + S;
    }

    /// <summary>The same at four states.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal void Evaluate(Vector256<double> u, Vector256<double> b, Vector256<double> slopeB, out Vector256<double> flow, out Vector256<double> slope)
    {
        var below = Vector256<double>.One / (Vector256<double>.One + R * Vector256.Max(b, Vector256<double>.Zero));
        flow = (P * b - Vector256.Create(Q)) * below - S * (Vector256.Create(Full) - u);
        slope = (P + R * Q) * below * below * slopeB + Vector256.Create(S);
    }
}

/// <summary>The scales of a medium's two potentials and what surrounds its faces and its top, at one time or as a mean over some.</summary>
/// <param name="ScaleA">Of A.</param>
/// <param name="ScaleB">Of B.</param>
/// <param name="First">At the first face.</param>
/// <param name="Last">At the last face.</param>
/// <param name="Top">On the topmost row.</param>
/// <param name="Bottom">Under the lowest row.</param>
public readonly record struct Condition(double ScaleA, double ScaleB, Exchange First, Exchange Last, Exchange Top = default, Exchange Bottom = default);

/// <summary>Conditions over time, as means.</summary>
public interface ISurroundings
{
    /// <summary>The mean condition between two times, s.</summary>
    Condition Mean(double from, double to);
}

/// <summary>Conditions that do not change.</summary>
public sealed record Steady(Condition Condition) : ISurroundings
{
    /// <inheritdoc/>
    public Condition Mean(double from, double to) => Condition;
}

/// <summary>What went out, per unit of the strip's third dimension.</summary>
public readonly record struct Outflow(double First, double Last, double Top, double Bottom)
{
    /// <summary>All of it.</summary>
    public double Total => First + Last + Top + Bottom;
}
