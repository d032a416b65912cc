using Clomwright.Numerics.Linear;

namespace Clomwright.Numerics.Solid;

/// <summary>Elastic constants along s, z and t. nu_ij is the shortening along j for an elongation along i; nu_ij/E_i = nu_ji/E_j.</summary>
/// <param name="S">Young's modulus along s.</param>
/// <param name="Z">Young's modulus along z.</param>
/// <param name="T">Young's modulus along t.</param>
/// <param name="PoissonSZ">nu_sz.</param>
/// <param name="PoissonZT">nu_zt.</param>
/// <param name="PoissonST">nu_st.</param>
/// <param name="ShearSZ">Shear modulus in the plane of s and z.</param>
/// <param name="ShearZT">Shear modulus in the plane of z and t.</param>
/// <param name="ShearTS">Shear modulus in the plane of t and s.</param>
public readonly record struct OrthotropicModuli(
    double S, double Z, double T, double PoissonSZ, double PoissonZT, double PoissonST, double ShearSZ, double ShearZT, double ShearTS);

/// <summary>A linear elastic material, the same in all directions or with planes of symmetry square to s, z and t.</summary>
/// <remarks>
/// Stresses and strains are listed ss, zz, tt, sz, zt, ts; shear strains are the engineering ones. The stiffness is the inverse of the compliance
/// (Lekhnitskii, Theory of Elasticity of an Anisotropic Body, section 3).
/// </remarks>
public sealed class ElasticMaterial
{
    private readonly double[] stiffness;

    private ElasticMaterial(double density, bool isIsotropic, double[] stiffness) =>
        (Density, IsIsotropic, this.stiffness) = (density, isIsotropic, stiffness);

    /// <summary>Mass for each volume.</summary>
    public double Density { get; }

    /// <summary>Whether all directions are alike.</summary>
    public bool IsIsotropic { get; }

    /// <summary>The 6 x 6 stiffness in (s, z, t), row by row.</summary>
    public ReadOnlySpan<double> Stiffness => stiffness;

    /// <summary>A material that is the same in all directions.</summary>
    /// <param name="modulus">Young's modulus E, above zero.</param>
    /// <param name="poisson">Poisson's ratio, above -1 and below 1/2.</param>
    /// <param name="density">Mass for each volume, not negative.</param>
    /// <exception cref="ArgumentException">Values that no elastic body has.</exception>
    public static ElasticMaterial Isotropic(double modulus, double poisson, double density)
    {
        var shear = modulus / (2 * (1 + poisson));
        return Of(new OrthotropicModuli(modulus, modulus, modulus, poisson, poisson, poisson, shear, shear, shear), density, isIsotropic: true);
    }

    /// <summary>A material with its own constants along s, z and t, such as timber.</summary>
    /// <param name="moduli">The nine constants.</param>
    /// <param name="density">Mass for each volume, not negative.</param>
    /// <exception cref="ArgumentException">Values that no elastic body has.</exception>
    public static ElasticMaterial Orthotropic(OrthotropicModuli moduli, double density) => Of(moduli, density, isIsotropic: false);

    private static ElasticMaterial Of(OrthotropicModuli m, double density, bool isIsotropic)
    {
        if (!(density >= 0 && double.IsFinite(density)))
        {
            throw new ArgumentException($"A density is zero or more, not {density}.");
        }

        var (sz, zt, st) = (-m.PoissonSZ / m.S, -m.PoissonZT / m.Z, -m.PoissonST / m.S);
        double[] compliance = new double[36];
        double[][] normal = [[1 / m.S, sz, st], [sz, 1 / m.Z, zt], [st, zt, 1 / m.T]];
        for (var i = 0; i < 3; i++)
        {
            normal[i].CopyTo(compliance, 6 * i);
        }

        (compliance[21], compliance[28], compliance[35]) = (1 / m.ShearSZ, 1 / m.ShearZT, 1 / m.ShearTS);
        if (!IsStable(m, sz, zt, st) || Elimination.Of(compliance, 6) is not { } inverse)
        {
            throw new ArgumentException($"No elastic body has these constants: {m}.");
        }

        var stiffness = new double[36];
        for (var j = 0; j < 6; j++)
        {
            var unit = new double[6];
            unit[j] = 1;
            var column = inverse.Solve(unit);
            for (var i = 0; i < 6; i++)
            {
                stiffness[6 * i + j] = column[i];
            }
        }

        return new ElasticMaterial(density, isIsotropic, stiffness);
    }

    /// <summary>Sylvester's criterion on the compliance: a body stores energy under any stress.</summary>
    private static bool IsStable(OrthotropicModuli m, double sz, double zt, double st)
    {
        var second = 1 / (m.S * m.Z) - sz * sz;
        var third = second / m.T + 2 * sz * zt * st - zt * zt / m.S - st * st / m.Z;
        double[] positive = [m.S, m.Z, m.T, m.ShearSZ, m.ShearZT, m.ShearTS, second, third];
        return positive.All(value => value > 0 && double.IsFinite(value));
    }
}
