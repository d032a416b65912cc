namespace Clomwright.Analysis.WallByHand;

/// <summary>What is left of the strength of a wall without tension when its load stands off its middle and it is slender: EN 1996-1-1, 6.1.2.2 and annex G. Symbols are those of the standard.</summary>
public static class Buckling
{
    /// <summary>Least eccentricity as a share of the thickness.</summary>
    public const double Least = 0.05;

    /// <summary>e_init = h_ef/450.</summary>
    public const double Initial = 450;

    /// <summary>Phi_i = 1 - 2 e/t at the top or bottom of a wall; nothing at e = t/2 and beyond.</summary>
    /// <param name="share">e/t.</param>
    public static double End(double share) => Math.Max(0, 1 - 2 * share);

    /// <summary>Phi_m = A_1 exp(-u^2/2) at the middle of the height; A_1 = 1 - 2 e/t, u = (lambda - 0.063)/(0.73 - 1.17 e/t), lambda = h_ef/t sqrt(f_k/E).</summary>
    /// <param name="slenderness">h_ef/t.</param>
    /// <param name="share">e_mk/t, under 0.5.</param>
    /// <param name="stiffness">E/f_k.</param>
    public static double Middle(double slenderness, double share, double stiffness)
    {
        if (share >= 0.5)
        {
            return 0;
        }

        var u = Bend(slenderness, share, stiffness);
        return End(share) * Math.Exp(-u * u / 2);
    }

    /// <summary>u; never under nothing.</summary>
    public static double Bend(double slenderness, double share, double stiffness) => Math.Max(0, (slenderness * Math.Sqrt(1 / stiffness) - 0.063) / (0.73 - 1.17 * share));

    /// <summary>Greatest over mean pressure where nothing pulls: 1 + 6 e/b inside the middle third, beyond it 2/(3 (1/2 - e/b)). Off the joint there is none: it is held at 49 % of the width, 66.7.</summary>
    /// <param name="share">e/b.</param>
    public static double Edge(double share) => share <= 1.0 / 6 ? 1 + 6 * share : 2 / (3 * (0.5 - Math.Min(share, Farthest)));

    /// <summary>Beyond this share of the width a load has no joint left to stand on.</summary>
    public const double Farthest = 0.49;
}
