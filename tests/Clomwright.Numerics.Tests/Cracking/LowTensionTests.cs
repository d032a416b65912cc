using Clomwright.Numerics.Cracking;

namespace Clomwright.Numerics.Tests.Cracking;

/// <summary>The law of little tension at a point.</summary>
public sealed class LowTensionTests
{
    private static readonly LowTension Cob = new(2e8, 0.15, 5e3, 1e6, 1e-4);

    private static double[] Stress(LowTension law, double[] strain)
    {
        var stress = new double[6];
        law.Respond(strain, stress, []);
        return stress;
    }

    private static IEnumerable<double[]> Strains(int count)
    {
        var random = new Random(11);
        for (var i = 0; i < count; i++)
        {
            // From far below cracking to far beyond crushing.
            var size = Math.Pow(10, -6 + 5 * random.NextDouble());
            yield return [.. Enumerable.Range(0, 6).Select(_ => size * (2 * random.NextDouble() - 1))];
        }
    }

    /// <summary>Analytic: below both bounds it is Hooke's law.</summary>
    [Fact]
    public void Small_strains_are_elastic()
    {
        double[] strain = [1e-6, -2e-6, 3e-6, 1e-6, -1e-6, 2e-6];
        var stress = Stress(Cob, strain);
        var (g, lame) = (Cob.Modulus / 2 / 1.15, Cob.Modulus * 0.15 / (1.15 * 0.7));
        double[] expected = [lame * 2e-6 + 2 * g * 1e-6, lame * 2e-6 - 4 * g * 1e-6, lame * 2e-6 + 6 * g * 1e-6, g * 1e-6, -g * 1e-6, 2 * g * 1e-6];
        for (var i = 0; i < 6; i++)
        {
            Assert.Equal(expected[i], stress[i], 1e-9 * 1e3);
        }
    }

    /// <summary>Analytic: pulled along x with its sides free the stress stays at f_t plus the residual share; the strain beyond is crack.</summary>
    [Fact]
    public void A_pulled_bar_carries_its_tension()
    {
        const double strain = 1e-3;
        var state = Cob.Respond([strain, 0, 0, 0, 0, 0], stackalloc double[6], []);
        var stress = Stress(Cob, [strain, 0, 0, 0, 0, 0]);
        // Sides held: they strain by nothing, and stand at nu f_t/(1 - nu) free.
        var side = 0.15 / (1 - 0.15) * Cob.Tension;
        var (lame, twoG) = (Cob.Modulus * 0.15 / (1.15 * 0.7), Cob.Modulus / 1.15);
        Assert.Equal((1 - 1e-4) * Cob.Tension + 1e-4 * (lame + twoG) * strain, stress[0], 1e-6);
        Assert.Equal((1 - 1e-4) * side + 1e-4 * lame * strain, stress[1], 1e-6);
        Assert.Equal(strain - (Cob.Tension - 2 * 0.15 * side) / Cob.Modulus, state.Opening, 1e-12);
        Assert.Equal(1, state.Cracked);
    }

    /// <summary>Independent: the projected stress minimises s'Cs/2 - s'e within its bounds; coordinate descent with thousands of sweeps finds the same principal stresses.</summary>
    [Fact]
    public void The_projection_is_the_least_complementary_energy()
    {
        var sharp = Cob with { Residual = 1e-15 };
        foreach (var strain in Strains(400).Select(s => new[] { s[0], s[1], s[2], 0.0, 0, 0 }))
        {
            var stress = Stress(sharp, strain);
            var s = new double[3];
            for (var sweep = 0; sweep < 2000; sweep++)
            {
                for (var i = 0; i < 3; i++)
                {
                    var others = s.Sum() - s[i];
                    s[i] = Math.Clamp(sharp.Modulus * strain[i] + sharp.Poisson * others, -sharp.Compression, sharp.Tension);
                }
            }

            for (var i = 0; i < 3; i++)
            {
                Assert.Equal(s[i], stress[i], 1e-9 * sharp.Compression);
            }
        }
    }

    /// <summary>Property: stress is the slope of the energy, and the tangent that of the stress: central differences, whose own error is 1e-6 or so away from the edges between sets.</summary>
    [Fact]
    public void Energy_stress_and_tangent_belong_together()
    {
        var (off, tried) = (0, 0);
        foreach (var strain in Strains(400))
        {
            var tangent = new double[36];
            var stress = new double[6];
            Cob.Respond(strain, stress, tangent);
            var h = 1e-5 * strain.Max(Math.Abs);
            for (var i = 0; i < 6; i++)
            {
                double[] more = [.. strain], less = [.. strain];
                more[i] += h;
                less[i] -= h;
                double[] up = new double[6], down = new double[6];
                var slope = (Cob.Respond(more, up, []).Energy - Cob.Respond(less, down, []).Energy) / (2 * h);
                Assert.Equal(stress[i], slope, 1e-4 * stress.Max(Math.Abs));
                for (var j = 0; j < 6; j++)
                {
                    tried++;
                    off += Math.Abs((up[j] - down[j]) / (2 * h) - tangent[6 * j + i]) > 1e-4 * Cob.Modulus ? 1 : 0;
                }
            }
        }

        // An edge between sets of held stresses lies within the difference now and then.
        Assert.InRange(off, 0, tried / 500);
    }

    /// <summary>Property: the energy is convex: the middle of two strains has no more than the mean of both.</summary>
    [Fact]
    public void The_energy_is_convex()
    {
        var all = Strains(400).ToArray();
        for (var i = 1; i < all.Length; i++)
        {
            double[] middle = [.. all[i].Zip(all[i - 1], (a, b) => (a + b) / 2)];
            double Energy(double[] strain) => Cob.Respond(strain, new double[6], []).Energy;
            Assert.True(Energy(middle) <= (Energy(all[i]) + Energy(all[i - 1])) / 2 * (1 + 1e-12));
        }
    }

    /// <summary>Numbers that no material has are refused.</summary>
    [Fact]
    public void Impossible_materials_are_refused() => Assert.Throws<ArgumentException>(() => Cob with { Poisson = 0.5 } is var wrong ? new LowTension(wrong.Modulus, 0.5, 1, 1, 0.1) : null);
}
