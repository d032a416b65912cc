using Clomwright.Building;
using Clomwright.Files.Forms;
using static Clomwright.Files.Forms.Plain;
using static Clomwright.Files.Forms.Quantities;

namespace Clomwright.Files.Shape;

/// <summary>How soil, batch, tests and crew stand in the file.</summary>
internal static class MixShape
{
    public static Thing<Mix> Mix { get; } = MakeMix();

    public static Thing<Crew> Crew { get; } = MakeCrew();

    private static Thing<Mix> MakeMix()
    {
        var soil = Keys<Mix>.Or("soilTests", MakeSoilTests(), m => m.SoilTests, new SoilTests(), leavesOut: true);
        var recipe = Keys<Mix>.Or("recipe", MakeRecipe(), m => m.Recipe, new Recipe(), leavesOut: true);
        var batch = Keys<Mix>.MaybeThing("batch", MakeBatch(), m => m.Batch, leavesOut: true);
        var bars = Keys<Mix>.List("testBars", MakeTestBar(), m => m.TestBars, leavesOut: true);
        var prisms = Keys<Mix>.List("prisms", MakePrism(), m => m.Prisms, leavesOut: true);
        return new Thing<Mix>("mix", [soil, recipe, batch, bars, prisms],
            v => new Mix { SoilTests = v.Of(soil), Recipe = v.Of(recipe), Batch = v.Of(batch), TestBars = v.Of(bars), Prisms = v.Of(prisms) });
    }

    private static Thing<SoilTests> MakeSoilTests()
    {
        var sand = Keys<SoilTests>.Maybe("jarSand", Lengths, s => s.JarSand);
        var silt = Keys<SoilTests>.Maybe("jarSilt", Lengths, s => s.JarSilt);
        var clay = Keys<SoilTests>.Maybe("jarClay", Lengths, s => s.JarClay);
        return new Thing<SoilTests>("soil-tests", [sand, silt, clay], v => new SoilTests { JarSand = v.Of(sand), JarSilt = v.Of(silt), JarClay = v.Of(clay) });
    }

    private static Thing<Recipe> MakeRecipe()
    {
        var soil = Keys<Recipe>.Maybe("soil", Number, r => r.Soil);
        var clay = Keys<Recipe>.Maybe("clay", Number, r => r.Clay);
        var sand = Keys<Recipe>.Maybe("sand", Number, r => r.Sand);
        var water = Keys<Recipe>.Maybe("water", Number, r => r.Water);
        var straw = Keys<Recipe>.Maybe("straw", Masses, r => r.Straw);
        return new Thing<Recipe>("recipe", [soil, clay, sand, water, straw],
            v => new Recipe { Soil = v.Of(soil), Clay = v.Of(clay), Sand = v.Of(sand), Water = v.Of(water), Straw = v.Of(straw) });
    }

    private static Thing<Batch> MakeBatch()
    {
        var buckets = Keys<Batch>.Needed("buckets", Number, b => b.Buckets);
        var volume = Keys<Batch>.Needed("bucketVolume", Volumes, b => b.BucketVolume);
        var trials = Keys<Batch>.Needed("trialBatches", Whole, b => b.TrialBatches);
        var ring = Keys<Batch>.Needed("ringLength", Lengths, b => b.RingLength);
        var raised = Keys<Batch>.Needed("raised", Lengths, b => b.Raised);
        var started = Keys<Batch>.Needed("startedAt", Lengths, b => b.StartedAt);
        return new Thing<Batch>("batch", [buckets, volume, trials, ring, raised, started],
            v => new Batch(v.Of(buckets), v.Of(volume), v.Of(trials), v.Of(ring), v.Of(raised), v.Of(started)));
    }

    private static Thing<TestBar> MakeTestBar()
    {
        var length = Keys<TestBar>.Needed("length", Lengths, b => b.Length);
        var shrinkage = Keys<TestBar>.Needed("shrinkage", Lengths, b => b.Shrinkage);
        var date = Keys<TestBar>.Maybe("date", Date, b => b.Date);
        return new Thing<TestBar>("test-bar", [length, shrinkage, date], v => new TestBar(v.Of(length), v.Of(shrinkage)) { Date = v.Of(date) });
    }

    private static Thing<Prism> MakePrism()
    {
        var width = Keys<Prism>.Needed("width", Lengths, p => p.Width);
        var depth = Keys<Prism>.Needed("depth", Lengths, p => p.Depth);
        var height = Keys<Prism>.Needed("height", Lengths, p => p.Height);
        var load = Keys<Prism>.Needed("failureLoad", Forces, p => p.FailureLoad);
        var days = Keys<Prism>.Needed("curedDays", Whole, p => p.CuredDays);
        var oven = Keys<Prism>.Or("oven", Truth, p => p.Oven, false);
        var date = Keys<Prism>.Maybe("date", Date, p => p.Date);
        var tester = Keys<Prism>.MaybeThing("tester", Text, p => p.Tester);
        return new Thing<Prism>("prism", [width, depth, height, load, days, oven, date, tester],
            v => new Prism(v.Of(width), v.Of(depth), v.Of(height), v.Of(load), v.Of(days), v.Of(oven)) { Date = v.Of(date), Tester = v.Of(tester) });
    }

    private static Thing<Crew> MakeCrew()
    {
        var people = Keys<Crew>.Needed("people", Whole, c => c.People);
        var skill = Keys<Crew>.Needed("skill", new WordForm<Skill>(), c => c.Skill);
        var start = Keys<Crew>.Needed("start", Date, c => c.Start);
        var days = Keys<Crew>.Needed("daysPerWeek", Whole, c => c.DaysPerWeek);
        var hours = Keys<Crew>.Needed("hoursPerDay", Number, c => c.HoursPerDay);
        return new Thing<Crew>("crew", [people, skill, start, days, hours], v => new Crew(v.Of(people), v.Of(skill), v.Of(start), v.Of(days), v.Of(hours)));
    }
}
