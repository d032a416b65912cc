using Clomwright.Analysis.Steps;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Mix;

/// <summary>Batches in what the crew carries: the one that the target asks for, and the one that the recipe has.</summary>
internal sealed class Batches
{
    private static readonly Source Balance = Sources.Get("mix-balance");

    private readonly Building.Mix mix;
    private readonly double bucket;
    private readonly Settled<double> soilClay, soilWater, sandWater, drinks, straw, water, target;
    private readonly Stuff soil, sand, clay;
    private readonly List<Assumption> assumed = [];

    /// <param name="mix">What was measured.</param>
    /// <param name="bucketVolume">m3.</param>
    /// <param name="clayOfSoil">Share of clay in the dry soil; null where no jar was read.</param>
    public Batches(Building.Mix mix, double bucketVolume, double? clayOfSoil)
    {
        this.mix = mix;
        bucket = bucketVolume;
        soilClay = MixValues.Or(clayOfSoil, "soil-clay", Dimension.Fraction);
        soilWater = MixValues.Or(mix.SoilTests.Moisture?.OfOne, "soil-moisture", Dimension.Fraction);
        sandWater = MixValues.Or(mix.SoilTests.SandMoisture?.OfOne, "sand-moisture", Dimension.Fraction);
        drinks = MixValues.Or(null, "straw-drinks", Dimension.Number);
        straw = MixValues.Or(mix.Target.Straw?.OfOne, "target-straw", Dimension.Fraction);
        water = MixValues.Or(mix.Target.Water?.OfOne, "target-water", Dimension.Fraction);
        target = MixValues.Or(mix.Target.Clay?.OfOne, "target-clay", Dimension.Fraction);
        soil = new Stuff("s", "soil", soilClay, soilWater, mix.Measures.SoilBucket, bucketVolume);
        sand = new Stuff("g", "sand", MixValues.Or(null, "sand-clay", Dimension.Fraction), sandWater, mix.Measures.SandBucket, bucketVolume);
        clay = new Stuff("g", "clay", MixValues.Or(null, "bought-clay", Dimension.Fraction), new Settled<double>(0, null), mix.Measures.ClayBucket, bucketVolume);
    }

    /// <summary>What was assumed for the batches that were made.</summary>
    public IEnumerable<Assumption> Assumed => assumed.Distinct();

    /// <summary>Site soil brought to the target with sand, or with clay where it has too little of its own.</summary>
    /// <param name="buckets">Dry buckets in the batch.</param>
    public BatchParts Blend(double buckets)
    {
        var sheet = new Worksheet("blend");
        var lean = soilClay.Value < target.Value;
        var other = lean ? clay : sand;
        Uses(soil, other, target, straw, water, drinks);
        var x = Math.Clamp((target.Value - other.Clay.Value) / (soilClay.Value - other.Clay.Value), 0, 1);
        var share = sheet.Step(
            "soil-share", "x", "min(1,max(0,(c_t-c_g)/(c_s-c_g)))", x, Dimension.Fraction, Balance, target.Symbol("c_t", "target-clay", Dimension.Fraction),
            other.ClaySymbol, soil.ClaySymbol);
        var (ms, mo) = (soil.Put(sheet, bucket), other.Put(sheet, bucket));
        var count = Worksheet.Given("N", "dry-buckets", buckets, Dimension.Number);
        var ns = buckets * (x / soil.Dry) / (x / soil.Dry + (1 - x) / other.Dry);
        var soilBuckets = sheet.Step("soil-buckets", "N_s", "N*(x/m_s)/(x/m_s+(1-x)/m_g)", ns, Dimension.Number, Balance, count, share, ms, mo);
        var otherBuckets = sheet.Step(lean ? "clay-buckets" : "sand-buckets", "N_g", "N-N_s", buckets - ns, Dimension.Number, Balance, count, soilBuckets);
        var minerals = ns * soil.Dry + (buckets - ns) * other.Dry;
        var m = sheet.Step("minerals", "M", "N_s*m_s+N_g*m_g", minerals, Dimension.Mass, Balance, soilBuckets, ms, otherBuckets, mo);
        var fibre = straw.Value * minerals;
        var s = sheet.Step("straw-mass", "S", "s*M", fibre, Dimension.Mass, Balance, straw.Symbol("s", "straw-share", Dimension.Fraction), m);
        var own = ns * soil.Dry * soil.Water.Value + (buckets - ns) * other.Dry * other.Water.Value;
        var add = Math.Max(0, water.Value * minerals + drinks.Value * fibre - own);
        var mass = sheet.Step(
            "water-to-add", "W", "max(0,w*M+a*S-N_s*m_s*w_s-N_g*m_g*w_g)", add, Dimension.Mass, Balance, water.Symbol("w", "mixing-water", Dimension.Fraction), m,
            drinks.Symbol("a", "straw-drinks", Dimension.Number), s, soilBuckets, ms, soil.WaterSymbol, otherBuckets, mo, other.WaterSymbol);
        sheet.Step("water-buckets", "N_w", "W/(1000*V)", add / 1000 / bucket, Dimension.Number, Balance, mass, Worksheet.Given("V", "bucket", bucket, Dimension.Volume));
        var share2 = (ns * soil.Dry * soilClay.Value + (buckets - ns) * other.Dry * other.Clay.Value) / minerals;
        return new BatchParts(
            ns, lean ? buckets - ns : 0, lean ? 0 : buckets - ns, add / 1000 / bucket, fibre, Armfuls(fibre), minerals, share2, straw.Value, drinks.Value * fibre, soil.Moist, sand.Moist, sheet.Done);
    }

    /// <summary>The batch of the recipe; null where it does not say how much soil goes in.</summary>
    public (BatchParts Parts, double? Water)? Written()
    {
        var recipe = mix.Recipe;
        if (recipe.Soil is not >= 0 || !((recipe.Soil ?? 0) + (recipe.Sand ?? 0) + (recipe.Clay ?? 0) > 0))
        {
            return null;
        }

        var (ns, ng, nc) = (recipe.Soil!.Value, recipe.Sand ?? 0, recipe.Clay ?? 0);
        Uses(soil, sand, drinks);
        var sheet = new Worksheet("recipe-batch");
        var (ms, mg) = (soil.Put(sheet, bucket), sand.Put(sheet, bucket));
        var soilBuckets = Worksheet.Given("N_s", "soil-buckets", ns, Dimension.Number);
        var sandBuckets = Worksheet.Given("N_g", "sand-buckets", ng, Dimension.Number);
        if (nc > 0)
        {
            Uses(clay);
        }

        var minerals = ns * soil.Dry + ng * sand.Dry + nc * clay.Dry;
        var added = Worksheet.Given("m_c", "added-clay", nc * clay.Dry, Dimension.Mass);
        var m = sheet.Step("minerals", "M", "N_s*m_s+N_g*m_g+m_c", minerals, Dimension.Mass, Balance, soilBuckets, ms, sandBuckets, mg, added);
        var clayMass = ns * soil.Dry * soilClay.Value + ng * sand.Dry * sand.Clay.Value + nc * clay.Dry * clay.Clay.Value;
        sheet.Step(
            "clay-share", "c", "(N_s*m_s*c_s+N_g*m_g*c_g+m_c*c_c)/M", clayMass / minerals, Dimension.Fraction, Balance, soilBuckets, ms, soil.ClaySymbol, sandBuckets, mg, sand.ClaySymbol, added,
            clay.Clay.Symbol("c_c", "bought-clay", Dimension.Fraction), m);
        double? fibre = recipe.Straw?.Kilograms, content = null;
        if (recipe.Water is >= 0 && fibre is { } kg)
        {
            content = (1000 * bucket * recipe.Water.Value + ns * soil.Dry * soil.Water.Value + ng * sand.Dry * sand.Water.Value - drinks.Value * kg) / minerals;
            sheet.Step(
                "mixing-water", "w", "(1000*V*N_w+N_s*m_s*w_s+N_g*m_g*w_g-a*S)/M", content.Value, Dimension.Fraction, Balance, Worksheet.Given("V", "bucket", bucket, Dimension.Volume),
                Worksheet.Given("N_w", "water-buckets", recipe.Water.Value, Dimension.Number), soilBuckets, ms, soil.WaterSymbol, sandBuckets, mg, sand.WaterSymbol,
                drinks.Symbol("a", "straw-drinks", Dimension.Number), Worksheet.Given("S", "straw-mass", kg, Dimension.Mass), m);
        }

        var parts = new BatchParts(
            ns, nc, ng, recipe.Water, fibre, Armfuls(fibre), minerals, clayMass / minerals, fibre / minerals, drinks.Value * fibre, soil.Moist, sand.Moist, sheet.Done);
        return (parts, content);
    }

    private double? Armfuls(double? fibre) => mix.Measures.Armful is { Kilograms: > 0 } armful ? fibre / armful.Kilograms : null;

    private void Uses(Stuff a, Stuff b, params ReadOnlySpan<Settled<double>> values)
    {
        assumed.AddRange(a.Assumed.Concat(b.Assumed));
        Uses(values);
    }

    private void Uses(Stuff a) => assumed.AddRange(a.Assumed);

    private void Uses(Stuff a, Stuff b, Settled<double> value) => Uses(a, b, [value]);

    private void Uses(ReadOnlySpan<Settled<double>> values)
    {
        foreach (var value in values)
        {
            assumed.AddRange(value.Assumptions);
        }
    }

    /// <summary>One of the heaps: its clay, its water, and what a bucket of it holds.</summary>
    private sealed class Stuff(string letter, string key, Settled<double> clay, Settled<double> water, Mass? bucketMass, double volume)
    {
        private readonly Settled<double> loose = MixValues.Or(bucketMass is { } m ? m.Kilograms / volume / (1 + water.Value) : null, $"{key}-loose", Dimension.Density);

        public Settled<double> Clay => clay;

        public Settled<double> Water => water;

        /// <summary>Dry, in a bucket, kg.</summary>
        public double Dry => loose.Value * volume;

        /// <summary>As filled, in a bucket, kg.</summary>
        public double Moist => Dry * (1 + water.Value);

        public Symbol ClaySymbol => clay.Symbol($"c_{letter}", $"{key}-clay-share", Dimension.Fraction);

        public Symbol WaterSymbol => water.Symbol($"w_{letter}", $"{key}-water", Dimension.Fraction);

        public IEnumerable<Assumption> Assumed => [.. clay.Assumptions, .. water.Assumptions, .. loose.Assumptions];

        /// <summary>Puts down what a bucket of it weighs dry.</summary>
        public Symbol Put(Worksheet sheet, double bucket) => sheet.Step(
            $"{key}-bucket", $"m_{letter}", $"rho_{letter}*V", Dry, Dimension.Mass, Balance, loose.Symbol($"rho_{letter}", $"{key}-loose", Dimension.Density), Worksheet.Given("V", "bucket", bucket, Dimension.Volume));
    }
}
