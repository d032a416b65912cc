using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>Trials of the mix and what was tested of them.</summary>
internal static class TestChecks
{
    private const int DaysMost = 10_000;

    public static void Of(Mix mix, Checks checks)
    {
        var names = Trials(mix.Trials, checks);
        checks.Count("mix.testBars", mix.TestBars.Count, 0, Limits.Items);
        for (var i = 0; i < mix.TestBars.Count; i++)
        {
            Bar($"mix.testBars[{i}]", mix.TestBars[i], names, checks);
        }

        checks.Count("mix.prisms", mix.Prisms.Count, 0, Limits.Items);
        for (var i = 0; i < mix.Prisms.Count; i++)
        {
            Specimen($"mix.prisms[{i}]", mix.Prisms[i], names, checks);
        }

        checks.Count("mix.bricks", mix.Bricks.Count, 0, Limits.Items);
        for (var i = 0; i < mix.Bricks.Count; i++)
        {
            var (path, brick) = ($"mix.bricks[{i}]", mix.Bricks[i]);
            checks.Size($"{path}.width", brick.Width, Limits.Thick);
            checks.Size($"{path}.depth", brick.Depth, Limits.Thick);
            checks.Size($"{path}.span", brick.Span, Limits.Thick);
            checks.Positive($"{path}.failureLoad", brick.FailureLoad, 1e8);
            checks.Count($"{path}.curedDays", brick.CuredDays, 0, DaysMost);
            checks.Word($"{path}.tester", brick.Tester);
            Trial($"{path}.trial", brick.Trial, names, checks);
        }

        checks.Count("mix.drops", mix.Drops.Count, 0, Limits.Items);
        for (var i = 0; i < mix.Drops.Count; i++)
        {
            checks.Size($"mix.drops[{i}].height", mix.Drops[i].Height, Limits.Height);
            Trial($"mix.drops[{i}].trial", mix.Drops[i].Trial, names, checks);
        }

        checks.Count("mix.erosions", mix.Erosions.Count, 0, Limits.Items);
        for (var i = 0; i < mix.Erosions.Count; i++)
        {
            checks.NotNegative($"mix.erosions[{i}].depth", mix.Erosions[i].Depth);
            checks.Positive($"mix.erosions[{i}].minutes", Amount.Number(mix.Erosions[i].Minutes), 1440);
            Trial($"mix.erosions[{i}].trial", mix.Erosions[i].Trial, names, checks);
        }

        checks.Count("mix.blocks", mix.Blocks.Count, 0, Limits.Items);
        for (var i = 0; i < mix.Blocks.Count; i++)
        {
            Block($"mix.blocks[{i}]", mix.Blocks[i], names, checks);
        }
    }

    private static HashSet<string> Trials(Sequence<MixTrial> trials, Checks checks)
    {
        checks.Count("mix.trials", trials.Count, 0, Limits.Items);
        var names = new HashSet<string>();
        for (var i = 0; i < trials.Count; i++)
        {
            MixChecks.Parts($"mix.trials[{i}].recipe", trials[i].Recipe, checks);
            checks.Word($"mix.trials[{i}].note", trials[i].Note, Checks.NoteLengthMax);
            if (checks.Word($"mix.trials[{i}].name", trials[i].Name) && !names.Add(trials[i].Name))
            {
                checks.Error($"mix.trials[{i}].name", "building.trial-twice", ("name", trials[i].Name));
            }
        }

        return names;
    }

    private static void Trial(string path, string? trial, HashSet<string> names, Checks checks)
    {
        if (checks.Word(path, trial) && trial is not null && !names.Contains(trial))
        {
            checks.Error(path, "building.trial-unknown", ("name", trial), ("names", new Argument.List(names.Order(StringComparer.Ordinal).Select(n => (Argument)n).ToSequence())));
        }
    }

    private static void Bar(string path, TestBar bar, HashSet<string> names, Checks checks)
    {
        if (checks.Size($"{path}.length", bar.Length, Limits.Height) && checks.NotNegative($"{path}.shrinkage", bar.Shrinkage) && bar.Shrinkage >= bar.Length)
        {
            checks.Error($"{path}.shrinkage", "building.bar-shrinkage", ("shrinkage", new Argument.Exact(bar.Shrinkage)), ("length", new Argument.Exact(bar.Length)));
        }

        checks.Size($"{path}.width", bar.Width, Limits.Thick);
        checks.Size($"{path}.depth", bar.Depth, Limits.Thick);
        checks.Word($"{path}.tester", bar.Tester);
        Trial($"{path}.trial", bar.Trial, names, checks);
    }

    private static void Specimen(string path, Prism prism, HashSet<string> names, Checks checks)
    {
        checks.Size($"{path}.width", prism.Width, Limits.Thick);
        checks.Size($"{path}.depth", prism.Depth, Limits.Thick);
        checks.Size($"{path}.height", prism.Height, Limits.Thick);
        checks.Positive($"{path}.failureLoad", prism.FailureLoad, 1e8);
        checks.Count($"{path}.curedDays", prism.CuredDays, 0, DaysMost);
        checks.Positive($"{path}.mass", prism.Mass, 5000);
        checks.Within($"{path}.moisture", prism.Moisture, 0, 1);
        checks.Word($"{path}.tester", prism.Tester);
        Trial($"{path}.trial", prism.Trial, names, checks);
        if ((prism.Shape == SpecimenShape.Cube && (prism.Width != prism.Depth || prism.Width != prism.Height)) || (prism.Shape == SpecimenShape.Cylinder && prism.Width != prism.Depth))
        {
            checks.Error($"{path}.shape", "building.specimen-shape", ("width", new Argument.Exact(prism.Width)), ("depth", new Argument.Exact(prism.Depth)), ("height", new Argument.Exact(prism.Height)));
        }
    }

    private static void Block(string path, DryingBlock block, HashSet<string> names, Checks checks)
    {
        checks.Size($"{path}.width", block.Width, Limits.Thick);
        checks.Size($"{path}.depth", block.Depth, Limits.Thick);
        checks.Size($"{path}.height", block.Height, Limits.Thick);
        checks.Count($"{path}.openFaces", block.OpenFaces, 1, 6);
        checks.Positive($"{path}.dryMass", block.DryMass, 5000);
        Trial($"{path}.trial", block.Trial, names, checks);
        checks.Count($"{path}.weighings", block.Weighings.Count, 0, Limits.Items);
        for (var i = 0; i < block.Weighings.Count; i++)
        {
            checks.Within($"{path}.weighings[{i}].day", Amount.Number(block.Weighings[i].Day), 0, DaysMost);
            if (checks.Positive($"{path}.weighings[{i}].mass", block.Weighings[i].Mass, 5000) && i > 0 && block.Weighings[i].Day <= block.Weighings[i - 1].Day)
            {
                checks.Error($"{path}.weighings[{i}].day", "building.weighing-order");
            }
        }
    }
}
