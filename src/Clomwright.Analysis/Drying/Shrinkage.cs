namespace Clomwright.Analysis.Drying;

/// <summary>How far a band of wet cob comes down while it dries.</summary>
/// <param name="Grains">Gs, density of the grains over that of water.</param>
/// <param name="Limit">Water content at which shrinking ends.</param>
/// <param name="Effective">Share of the loss of water that shows as loss of volume: 1 for clay alone, less where sand and straw hold each other apart.</param>
public sealed record Shrinkage(double Grains, double Limit, double Effective)
{
    /// <summary>Loss of volume from one water content to dry, as a share: e (w0 - wSL) Gs/(1 + w0 Gs).</summary>
    public double Volume(double water) => Effective * Math.Max(0, water - Limit) * Grains / (1 + water * Grains);

    /// <summary>Loss of height, as a share: 1 - (1 - dV)^(1/3).</summary>
    public double Linear(double water) => 1 - Math.Cbrt(1 - Volume(water));

    /// <summary>What a fresh band of cob settles under its own weight, as a share: half the stress at its foot over its stiffness.</summary>
    /// <param name="footStress">Pa.</param>
    /// <param name="undrained">su, Pa.</param>
    /// <param name="stiffness">E over su.</param>
    public static double Creep(double footStress, double undrained, double stiffness) => footStress / (2 * stiffness * undrained);
}
