namespace Clomwright.Numerics.Cracking;

/// <summary>
/// A material that carries little tension: its stress is the elastic one brought back between two bounds of the principal stresses, in the norm of the complementary
/// energy, with a small share of the elastic stress left everywhere. See README.md.
/// </summary>
/// <param name="Modulus">Young's modulus E, Pa, above zero.</param>
/// <param name="Poisson">Poisson's ratio nu, 0 or more and below 1/2.</param>
/// <param name="Tension">Largest principal stress f_t, Pa, above zero; below some 1 kPa equilibria become hard to find.</param>
/// <param name="Compression">Largest pressure f_c, Pa, above zero.</param>
/// <param name="Residual">Share eta of the elastic stress that is always left, above 0 and below 1; 1e-4 or less leaves limits as they are.</param>
public sealed record LowTension(double Modulus, double Poisson, double Tension, double Compression, double Residual)
{
    private readonly bool isSound = Modulus > 0 && Poisson is >= 0 and < 0.5 && Tension > 0 && Compression > 0 && Residual is > 0 and < 1
        ? true
        : throw new ArgumentException($"No material has E {Modulus}, nu {Poisson}, f_t {Tension}, f_c {Compression}, eta {Residual}.");

    /// <summary>The stress at a strain, both listed xx, yy, zz, xy, yz, zx, shear strains the engineering ones.</summary>
    /// <param name="strain">Six strains.</param>
    /// <param name="stress">Takes six stresses, Pa.</param>
    /// <param name="tangent">Takes the 6 x 6 derivative of stress by strain, row by row; empty when it is not wanted.</param>
    internal PointState Respond(ReadOnlySpan<double> strain, Span<double> stress, Span<double> tangent)
    {
        var axes = PrincipalAxes.Of(strain);
        Span<double> principal = [axes.First, axes.Second, axes.Third];
        Span<double> projected = stackalloc double[3];
        var set = Project(principal, projected);
        Span<double> total = stackalloc double[3];
        var elastic = 0.0;
        var trace = axes.First + axes.Second + axes.Third;
        var (lame, twoG) = (Modulus * Poisson / ((1 + Poisson) * (1 - 2 * Poisson)), Modulus / (1 + Poisson));
        var kept = 1 - Residual;
        for (var i = 0; i < 3; i++)
        {
            var free = lame * trace + twoG * principal[i];
            elastic += free * principal[i] / 2;
            total[i] = kept * projected[i] + Residual * free;
        }

        axes.Compose(total, stress);
        if (!tangent.IsEmpty)
        {
            axes.Tangent(total, principal, Slopes(set, lame, twoG), tangent);
        }

        return new PointState(kept * Energy(principal, projected) + Residual * elastic, Math.Max(0, axes.First - Strain(projected, 0)), set.Upper, set.Lower);
    }

    /// <summary>Which principal stresses are held: the largest <paramref name="Upper"/> at f_t, the smallest <paramref name="Lower"/> at -f_c.</summary>
    private readonly record struct ActiveSet(int Upper, int Lower)
    {
        public int Free => 3 - Upper - Lower;
    }

    private static readonly ActiveSet[] Sets = [.. from held in Enumerable.Range(0, 4) from upper in Enumerable.Range(0, held + 1) select new ActiveSet(upper, held - upper)];

    /// <summary>The stresses nearest to the elastic ones: the one of ten sets of held stresses that fits, or fits best where rounding leaves none.</summary>
    private ActiveSet Project(ReadOnlySpan<double> strain, Span<double> stress)
    {
        var (best, least) = (default(ActiveSet), double.PositiveInfinity);
        Span<double> trial = stackalloc double[3];
        foreach (var set in Sets)
        {
            Stresses(set, strain, trial);
            var misfit = Misfit(set, strain, trial);
            if (misfit < least)
            {
                (best, least) = (set, misfit);
                trial.CopyTo(stress);
                if (misfit == 0)
                {
                    break;
                }
            }
        }

        return best;
    }

    /// <summary>With some stresses held: ((1 + nu) s_i - nu sum of free s) = E e_i + nu sum of held s, solved for the free ones.</summary>
    private void Stresses(ActiveSet set, ReadOnlySpan<double> strain, Span<double> stress)
    {
        var held = set.Upper * Tension - set.Lower * Compression;
        var sum = 0.0;
        for (var i = set.Upper; i < 3 - set.Lower; i++)
        {
            sum += Modulus * strain[i] + Poisson * held;
        }

        var shared = Poisson / (1 + Poisson - set.Free * Poisson) * sum;
        for (var i = 0; i < 3; i++)
        {
            stress[i] = i < set.Upper ? Tension : i >= 3 - set.Lower ? -Compression : (Modulus * strain[i] + Poisson * held + shared) / (1 + Poisson);
        }
    }

    /// <summary>How far a set is from fitting, Pa: free stresses beyond a bound, or held ones that their strain would let go.</summary>
    private double Misfit(ActiveSet set, ReadOnlySpan<double> strain, ReadOnlySpan<double> stress)
    {
        var worst = 0.0;
        for (var i = 0; i < 3; i++)
        {
            var cracked = Modulus * (strain[i] - Strain(stress, i));
            var off = i < set.Upper ? -cracked : i >= 3 - set.Lower ? cracked : Math.Max(stress[i] - Tension, -Compression - stress[i]);
            worst = Math.Max(worst, off);
        }

        return worst;
    }

    private double Strain(ReadOnlySpan<double> stress, int i) => ((1 + Poisson) * stress[i] - Poisson * (stress[0] + stress[1] + stress[2])) / Modulus;

    /// <summary>s'e - s'Cs/2: the energy of which the projected stress is the derivative.</summary>
    private double Energy(ReadOnlySpan<double> strain, ReadOnlySpan<double> stress)
    {
        var energy = 0.0;
        for (var i = 0; i < 3; i++)
        {
            energy += stress[i] * (strain[i] - Strain(stress, i) / 2);
        }

        return energy;
    }

    /// <summary>The 3 x 3 derivative of principal stresses by principal strains.</summary>
    private double[] Slopes(ActiveSet set, double lame, double twoG)
    {
        var slopes = new double[9];
        var shared = Modulus / (1 + Poisson) * Poisson / (1 + Poisson - set.Free * Poisson);
        for (var i = 0; i < 3; i++)
        {
            for (var j = 0; j < 3; j++)
            {
                var areFree = i >= set.Upper && i < 3 - set.Lower && j >= set.Upper && j < 3 - set.Lower;
                slopes[3 * i + j] = Residual * (lame + (i == j ? twoG : 0)) + (areFree ? (1 - Residual) * (shared + (i == j ? Modulus / (1 + Poisson) : 0)) : 0);
            }
        }

        return slopes;
    }
}

/// <summary>What a point of the material is up to.</summary>
/// <param name="Energy">For each volume, J/m3.</param>
/// <param name="Opening">Largest principal strain beyond what its stress accounts for: cracks, smeared.</param>
/// <param name="Cracked">Directions at the bound of tension, 0 to 3.</param>
/// <param name="Crushed">Directions at the bound of pressure, 0 to 3.</param>
internal readonly record struct PointState(double Energy, double Opening, int Cracked, int Crushed);
