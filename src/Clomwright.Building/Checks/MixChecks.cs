using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>Soil, batch, tests, crew and rules.</summary>
internal static class MixChecks
{
    private const double BucketsMost = 1000;

    /// <summary>kg/m3.</summary>
    private const double WaterDensity = 1000;

    /// <summary>Buckets that differ by no more than this are the same bucket.</summary>
    private const double BucketsAgree = 0.05;

    public static void Of(House house, Checks checks)
    {
        var mix = house.Mix;
        Soil(mix.SoilTests, checks);
        Parts("mix.recipe", mix.Recipe, checks);
        Weighed(mix, checks);
        if (mix.Batch is { } batch)
        {
            checks.Positive("mix.batch.buckets", Amount.Number(batch.Buckets), BucketsMost);
            checks.Positive("mix.batch.bucketVolume", batch.BucketVolume, 1);
            checks.Count("mix.batch.trialBatches", batch.TrialBatches, 1, 1000);
            checks.Size("mix.batch.ringLength", batch.RingLength, 4 * Limits.Plan);
            checks.Size("mix.batch.raised", batch.Raised, Limits.Height);
            checks.Height("mix.batch.startedAt", batch.StartedAt);
        }

        TestChecks.Of(mix, checks);
        if (house.Crew is { } crew)
        {
            checks.Count("crew.people", crew.People, 1, 500);
            checks.Count("crew.daysPerWeek", crew.DaysPerWeek, 1, 7);
            checks.Positive("crew.hoursPerDay", Amount.Number(crew.HoursPerDay), 24);
            Members(crew, checks);
        }

        checks.Count("assumed", house.Assumed.Count, 0, Limits.Items);
        for (var i = 0; i < house.Assumed.Count; i++)
        {
            checks.Word($"assumed[{i}].key", house.Assumed[i].Key);
            checks.Within($"assumed[{i}].value", Amount.Number(house.Assumed[i].Value), -1e12, 1e12);
        }

        Rules(house.Rules, checks);
    }

    /// <summary>Each by a name of their own, as many as the crew counts.</summary>
    private static void Members(Crew crew, Checks checks)
    {
        checks.Count("crew.members", crew.Members.Count, 0, Limits.Items);
        if (crew.Members.Count > 0 && crew.Members.Count != crew.People)
        {
            checks.Warning("crew.members", "building.members-count", ("named", crew.Members.Count), ("people", crew.People));
        }

        var names = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        for (var i = 0; i < crew.Members.Count; i++)
        {
            if (checks.Word($"crew.members[{i}].name", crew.Members[i].Name) && !names.Add(crew.Members[i].Name.Trim()))
            {
                checks.Error($"crew.members[{i}].name", "building.member-twice", ("name", crew.Members[i].Name));
            }
        }
    }

    /// <summary>The parts of one batch.</summary>
    public static void Parts(string path, Recipe recipe, Checks checks)
    {
        checks.Within($"{path}.soil", Number(recipe.Soil), 0, BucketsMost);
        checks.Within($"{path}.clay", Number(recipe.Clay), 0, BucketsMost);
        checks.Within($"{path}.sand", Number(recipe.Sand), 0, BucketsMost);
        checks.Within($"{path}.water", Number(recipe.Water), 0, BucketsMost);
        checks.Within($"{path}.straw", recipe.Straw, 0, 1000);
    }

    private static void Soil(SoilTests soil, Checks checks)
    {
        checks.Size("mix.soilTests.jarSand", soil.JarSand, Limits.Thick);
        checks.Size("mix.soilTests.jarSilt", soil.JarSilt, Limits.Thick);
        checks.Size("mix.soilTests.jarClay", soil.JarClay, Limits.Thick);
        if (checks.Size("mix.soilTests.jarColumn", soil.JarColumn, Limits.Thick) && soil is { JarColumn: { } column, JarSand: { } sand, JarSilt: { } silt, JarClay: { } clay } && sand + silt + clay > column)
        {
            checks.Error("mix.soilTests.jarColumn", "building.jar-overfull", ("column", new Argument.Exact(column)), ("layers", new Argument.Exact(sand + silt + clay)));
        }

        checks.Within("mix.soilTests.jarWater", soil.JarWater, 0.1, 60);
        checks.Within("mix.soilTests.liquidLimit", soil.LiquidLimit, 0.05, 3);
        if (checks.Within("mix.soilTests.plasticLimit", soil.PlasticLimit, 0.01, 3) && soil is { LiquidLimit: { } liquid, PlasticLimit: { } plastic } && plastic.OfOne > liquid.OfOne)
        {
            checks.Error("mix.soilTests.plasticLimit", "building.plastic-over-liquid", ("plastic", (Amount)plastic), ("liquid", (Amount)liquid));
        }

        checks.Within("mix.soilTests.moisture", soil.Moisture, 0, 1);
        checks.Within("mix.soilTests.sandMoisture", soil.SandMoisture, 0, 1);
        checks.Size("mix.soilTests.ribbon", soil.Ribbon, Limits.Thick);
        checks.Size("mix.soilTests.worm", soil.Worm, Limits.Thick);
    }

    private static void Weighed(Mix mix, Checks checks)
    {
        checks.Within("mix.target.clay", mix.Target.Clay, 0, 1);
        checks.Within("mix.target.straw", mix.Target.Straw, 0, 0.5);
        checks.Within("mix.target.water", mix.Target.Water, 0, 1);
        var measures = mix.Measures;
        checks.Positive("mix.measures.armful", measures.Armful, 50);
        checks.Positive("mix.measures.bale", measures.Bale, 1000);
        checks.Positive("mix.measures.soilBucket", measures.SoilBucket, 200);
        checks.Positive("mix.measures.clayBucket", measures.ClayBucket, 200);
        checks.Positive("mix.measures.sandBucket", measures.SandBucket, 200);
        checks.Positive("mix.measures.waterBucket", measures.WaterBucket, 200);
        checks.Positive("mix.measures.truck", measures.Truck, 100);
        if (checks.Positive("mix.measures.bucketLabel", measures.BucketLabel, 1) && mix.Batch is { } batch)
        {
            Bucket(measures, batch.BucketVolume, checks);
        }
    }

    /// <summary>Orders go wrong by as much as the bucket: a label, a weighed bucket of water and what is written of the batch have to agree.</summary>
    private static void Bucket(Measures measures, Volume written, Checks checks)
    {
        if (measures.WaterBucket is { } water && Apart(water.Kilograms / WaterDensity, written.CubicMetres))
        {
            checks.Warning("mix.batch.bucketVolume", "building.bucket-weighed", ("written", (Amount)written), ("weighed", (Amount)new Volume(water.Kilograms / WaterDensity)));
        }
        else if (measures is { WaterBucket: null, BucketLabel: { } label } && written.CubicMetres > label.CubicMetres * (1 + BucketsAgree))
        {
            checks.Warning("mix.batch.bucketVolume", "building.bucket-label", ("written", (Amount)written), ("label", (Amount)label));
        }
    }

    private static bool Apart(double a, double b) => Math.Abs(a - b) > BucketsAgree * b;

    private static void Rules(RuleChoices rules, Checks checks)
    {
        checks.Count("rules.adopted", rules.Adopted.Count, 0, Limits.Items);
        var bodies = new HashSet<string>();
        for (var i = 0; i < rules.Adopted.Count; i++)
        {
            if (checks.Word($"rules.adopted[{i}]", rules.Adopted[i]) && !bodies.Add(rules.Adopted[i]))
            {
                checks.Error($"rules.adopted[{i}]", "building.adopted-twice", ("body", rules.Adopted[i]));
            }
        }

        checks.Count("rules.entered", rules.Entered.Count, 0, Limits.Items);
        for (var i = 0; i < rules.Entered.Count; i++)
        {
            var entered = rules.Entered[i];
            checks.Word($"rules.entered[{i}].body", entered.Body);
            checks.Word($"rules.entered[{i}].rule", entered.Rule);
            checks.Word($"rules.entered[{i}].limit", entered.Limit);
            checks.Word($"rules.entered[{i}].by", entered.By);
        }

        checks.Count("rules.answers", rules.Answers.Count, 0, Limits.Items);
        for (var i = 0; i < rules.Answers.Count; i++)
        {
            var answer = rules.Answers[i];
            checks.Word($"rules.answers[{i}].question", answer.Question);
            checks.Word($"rules.answers[{i}].by", answer.By);
            checks.Word($"rules.answers[{i}].note", answer.Note, Checks.NoteLengthMax);
        }
    }

    private static Amount? Number(double? value) => value is { } number ? Amount.Number(number) : null;
}
