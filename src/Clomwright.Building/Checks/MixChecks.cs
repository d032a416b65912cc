using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>Soil, batch, tests, crew and rules.</summary>
internal static class MixChecks
{
    private const double BucketsMost = 1000;

    public static void Of(House house, Checks checks)
    {
        var mix = house.Mix;
        checks.Size("mix.soilTests.jarSand", mix.SoilTests.JarSand, Limits.Thick);
        checks.Size("mix.soilTests.jarSilt", mix.SoilTests.JarSilt, Limits.Thick);
        checks.Size("mix.soilTests.jarClay", mix.SoilTests.JarClay, Limits.Thick);
        checks.Within("mix.recipe.soil", Number(mix.Recipe.Soil), 0, BucketsMost);
        checks.Within("mix.recipe.clay", Number(mix.Recipe.Clay), 0, BucketsMost);
        checks.Within("mix.recipe.sand", Number(mix.Recipe.Sand), 0, BucketsMost);
        checks.Within("mix.recipe.water", Number(mix.Recipe.Water), 0, BucketsMost);
        checks.Within("mix.recipe.straw", mix.Recipe.Straw, 0, 1000);
        if (mix.Batch is { } batch)
        {
            checks.Positive("mix.batch.buckets", Amount.Number(batch.Buckets), BucketsMost);
            checks.Positive("mix.batch.bucketVolume", batch.BucketVolume, 1);
            checks.Count("mix.batch.trialBatches", batch.TrialBatches, 1, 1000);
            checks.Size("mix.batch.ringLength", batch.RingLength, 4 * Limits.Plan);
            checks.Size("mix.batch.raised", batch.Raised, Limits.Height);
            checks.Height("mix.batch.startedAt", batch.StartedAt);
        }

        Tests(mix, checks);
        if (house.Crew is { } crew)
        {
            checks.Count("crew.people", crew.People, 1, 500);
            checks.Count("crew.daysPerWeek", crew.DaysPerWeek, 1, 7);
            checks.Positive("crew.hoursPerDay", Amount.Number(crew.HoursPerDay), 24);
        }

        Rules(house.Rules, checks);
    }

    private static void Tests(Mix mix, Checks checks)
    {
        checks.Count("mix.testBars", mix.TestBars.Count, 0, Limits.Items);
        for (var i = 0; i < mix.TestBars.Count; i++)
        {
            var bar = mix.TestBars[i];
            if (checks.Size($"mix.testBars[{i}].length", bar.Length, Limits.Height) && checks.NotNegative($"mix.testBars[{i}].shrinkage", bar.Shrinkage) && bar.Shrinkage >= bar.Length)
            {
                checks.Error($"mix.testBars[{i}].shrinkage", "building.bar-shrinkage", ("shrinkage", new Argument.Exact(bar.Shrinkage)), ("length", new Argument.Exact(bar.Length)));
            }
        }

        checks.Count("mix.prisms", mix.Prisms.Count, 0, Limits.Items);
        for (var i = 0; i < mix.Prisms.Count; i++)
        {
            var (path, prism) = ($"mix.prisms[{i}]", mix.Prisms[i]);
            checks.Size($"{path}.width", prism.Width, Limits.Thick);
            checks.Size($"{path}.depth", prism.Depth, Limits.Thick);
            checks.Size($"{path}.height", prism.Height, Limits.Thick);
            checks.Positive($"{path}.failureLoad", prism.FailureLoad, 1e8);
            checks.Count($"{path}.curedDays", prism.CuredDays, 0, 10_000);
            checks.Word($"{path}.tester", prism.Tester);
        }
    }

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
