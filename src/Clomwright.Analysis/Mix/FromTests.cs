using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Mix;

/// <summary>From the tests of soil and mix to a recipe, the next test and the strength that may be counted on.</summary>
public static class FromTests
{
    /// <summary>The mix of a house.</summary>
    /// <param name="mix">What was measured.</param>
    /// <param name="quantities">What the house takes.</param>
    public static MixResult Of(Building.Mix mix, HouseQuantities quantities)
    {
        ArgumentNullException.ThrowIfNull(mix);
        ArgumentNullException.ThrowIfNull(quantities);
        var (jar, jarAssumed) = Jar.Of(mix.SoilTests);
        var register = Registers.Of(mix);
        var bucket = mix.Batch?.BucketVolume.CubicMetres;
        var batches = bucket is > 0 && mix.Batch!.Buckets > 0 ? new Batches(mix, bucket.Value, jar.Value?.Clay) : null;
        var blend = batches is null ? (Known<BatchParts>)new Message("analysis.mix.no-batch") : batches.Blend(mix.Batch!.Buckets);
        var written = batches?.Written();
        var water = written?.Water is > 0.05 and < 0.6 and var w ? new Settled<double>(w, null) : MixValues.Or(mix.Target.Water?.OfOne, "target-water", Dimension.Fraction);
        var (liquid, plastic) = Limits(mix.SoilTests, jar.Value);
        var density = Density(mix);
        var (strength, strengthAssumed) = Strengths.Of(register);
        var (deliveries, deliveryAssumed) = DeliveriesOf.Orders(mix, quantities);
        return new MixResult
        {
            Jar = jar,
            HandTests = HandTests.Of(mix.SoilTests),
            LiquidLimit = liquid,
            PlasticLimit = plastic,
            Cob = CobOf(written?.Parts ?? blend.Value, jar.Value),
            DryDensity = density,
            MixingWater = water,
            AsLaid = Phases.Of(water.Value, density.Value, MixValues.Of("grain-density").Value),
            Blend = blend,
            AsWritten = written is { } parts ? parts.Parts : new Message(batches is null ? "analysis.mix.no-batch" : "analysis.mix.no-recipe"),
            Next = NextTests.Of(mix, register, blend.Value, jar.Is),
            Register = register,
            Strength = strength,
            Deliveries = deliveries,
            Assumptions =
            [
                .. jarAssumed.Concat(batches?.Assumed ?? []).Concat(water.Assumptions).Concat(liquid.Assumptions).Concat(plastic.Assumptions).Concat(density.Assumptions)
                    .Concat(strengthAssumed).Concat(deliveryAssumed).Distinct(),
            ],
            Calculations = Calculations(jar.Value, blend.Value, written?.Parts, register, strength),
        };
    }

    private static Sequence<Calculation> Calculations(JarReading? jar, BatchParts? blend, BatchParts? written, TestRegister register, CobStrength strength) =>
    [
        .. new[] { jar?.How, jar?.Times.Value?.Sizes.First(s => s.Key == "usda-sand").How, jar?.Times.Value?.Sizes[^1].How, blend?.How, written?.How, strength.How }.OfType<Calculation>(),
        .. register.ByRule.Where(r => r.Key is "en-1990" or "nzs-4298").Select(r => r.Value.Value?.How).OfType<Calculation>(),
        .. register.Ruptures.Select(r => r.Modulus.How),
    ];

    /// <summary>Measured limits, or those of a soil half-way between A- and U-line whose activity is usual; without a jar a usual lean clay.</summary>
    private static (Settled<double> Liquid, Settled<double> Plastic) Limits(SoilTests soil, JarReading? jar)
    {
        if (soil is { LiquidLimit: { } ll, PlasticLimit: { } pl })
        {
            return (new Settled<double>(ll.OfOne, null), new Settled<double>(pl.OfOne, null));
        }

        if (jar is null)
        {
            return (MixValues.Or(soil.LiquidLimit?.OfOne, "liquid-limit", Dimension.Fraction), MixValues.Or(soil.PlasticLimit?.OfOne, "plastic-limit", Dimension.Fraction));
        }

        var index = MixValues.Of("activity").Value * jar.Clay;
        var liquid = Plasticity.LiquidLimit(index);
        return (Estimated(liquid, "liquid-limit-estimated"), Estimated(liquid - index, "plastic-limit-estimated"));

        Settled<double> Estimated(double value, string key) =>
            new(value, new Assumption($"mix-{key}", Message.Of($"analysis.assumed.mix-{key}", ("clay", Amount.Fraction(jar.Clay))), Amount.Fraction(value), Sources.Get("casagrande-lines")));
    }

    /// <summary>Clay of the cob; its plasticity index is activity times clay (Skempton 1953).</summary>
    private static Known<CobClay> CobOf(BatchParts? batch, JarReading? jar)
    {
        if (batch is not { ClayShare: > 0 and < 1 })
        {
            return new Message("analysis.mix.no-recipe");
        }

        var activity = MixValues.Or(null, "activity", Dimension.Number);
        return new CobClay(batch.ClayShare, jar?.Clay ?? MixValues.Of("soil-clay").Value, new Settled<double>(activity.Value * batch.ClayShare, activity.Assumption));
    }

    /// <summary>Mean dry density of specimens of this mix that were weighed and whose water is known.</summary>
    private static Settled<double> Density(Building.Mix mix)
    {
        var weighed = mix.Prisms.Where(p => p is { Mass: not null, Moisture: not null } && p.Width > Length.Zero && p.Depth > Length.Zero && p.Height > Length.Zero && Registers.OfThisMix(mix, p.Trial))
            .Select(p => p.Mass!.Value.Kilograms / (1 + p.Moisture!.Value.OfOne) / (p.Width.Metres * p.Depth.Metres * p.Height.Metres * (p.Shape == SpecimenShape.Cylinder ? Math.PI / 4 : 1)))
            .Where(d => d is > 600 and < 2400).ToList();
        return MixValues.Or(weighed.Count > 0 ? weighed.Average() : null, "dry-density", Dimension.Density);
    }
}
