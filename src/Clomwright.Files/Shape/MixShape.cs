using Clomwright.Building;
using Clomwright.Files.Forms;
using static Clomwright.Files.Forms.Plain;
using static Clomwright.Files.Forms.Quantities;

namespace Clomwright.Files.Shape;

/// <summary>How soil, recipe, batch and crew stand in the file.</summary>
internal static class MixShape
{
    public static Thing<Mix> Mix { get; } = MakeMix();

    public static Thing<Crew> Crew { get; } = MakeCrew();

    public static Thing<AssumedNumber> Assumed { get; } = MakeAssumed();

    private static Thing<Mix> MakeMix()
    {
        var parts = MakeRecipe();
        var soil = Keys<Mix>.Or("soilTests", MakeSoilTests(), m => m.SoilTests, new SoilTests(), leavesOut: true);
        var target = Keys<Mix>.Or("target", MakeTarget(), m => m.Target, new MixTarget(), leavesOut: true);
        var recipe = Keys<Mix>.Or("recipe", parts, m => m.Recipe, new Recipe(), leavesOut: true);
        var measures = Keys<Mix>.Or("measures", MakeMeasures(), m => m.Measures, new Measures(), leavesOut: true);
        var batch = Keys<Mix>.MaybeThing("batch", MakeBatch(), m => m.Batch, leavesOut: true);
        var trials = Keys<Mix>.List("trials", MixTestsShape.Trial(parts), m => m.Trials, leavesOut: true);
        var bars = Keys<Mix>.List("testBars", MixTestsShape.TestBar, m => m.TestBars, leavesOut: true);
        var prisms = Keys<Mix>.List("prisms", MixTestsShape.Prism, m => m.Prisms, leavesOut: true);
        var bricks = Keys<Mix>.List("bricks", MixTestsShape.Brick, m => m.Bricks, leavesOut: true);
        var drops = Keys<Mix>.List("drops", MixTestsShape.Drop, m => m.Drops, leavesOut: true);
        var erosions = Keys<Mix>.List("erosions", MixTestsShape.Erosion, m => m.Erosions, leavesOut: true);
        var blocks = Keys<Mix>.List("blocks", MixTestsShape.Block, m => m.Blocks, leavesOut: true);
        return new Thing<Mix>("mix", [soil, target, recipe, measures, batch, trials, bars, prisms, bricks, drops, erosions, blocks],
            v => new Mix
            {
                SoilTests = v.Of(soil), Target = v.Of(target), Recipe = v.Of(recipe), Measures = v.Of(measures), Batch = v.Of(batch), Trials = v.Of(trials),
                TestBars = v.Of(bars), Prisms = v.Of(prisms), Bricks = v.Of(bricks), Drops = v.Of(drops), Erosions = v.Of(erosions), Blocks = v.Of(blocks),
            });
    }

    private static Thing<SoilTests> MakeSoilTests()
    {
        var sand = Keys<SoilTests>.Maybe("jarSand", Lengths, s => s.JarSand);
        var silt = Keys<SoilTests>.Maybe("jarSilt", Lengths, s => s.JarSilt);
        var clay = Keys<SoilTests>.Maybe("jarClay", Lengths, s => s.JarClay);
        var column = Keys<SoilTests>.Maybe("jarColumn", Lengths, s => s.JarColumn);
        var water = Keys<SoilTests>.Maybe("jarWater", Temperatures, s => s.JarWater);
        var liquid = Keys<SoilTests>.Maybe("liquidLimit", Shares, s => s.LiquidLimit);
        var plastic = Keys<SoilTests>.Maybe("plasticLimit", Shares, s => s.PlasticLimit);
        var moisture = Keys<SoilTests>.Maybe("moisture", Shares, s => s.Moisture);
        var sandMoisture = Keys<SoilTests>.Maybe("sandMoisture", Shares, s => s.SandMoisture);
        var ribbon = Keys<SoilTests>.Maybe("ribbon", Lengths, s => s.Ribbon);
        var worm = Keys<SoilTests>.Maybe("worm", Lengths, s => s.Worm);
        var ball = Keys<SoilTests>.Maybe("ball", new WordForm<BallDrop>(), s => s.Ball);
        var wash = Keys<SoilTests>.Maybe("wash", new WordForm<HandWash>(), s => s.Wash);
        return new Thing<SoilTests>("soil-tests", [sand, silt, clay, column, water, liquid, plastic, moisture, sandMoisture, ribbon, worm, ball, wash],
            v => new SoilTests
            {
                JarSand = v.Of(sand), JarSilt = v.Of(silt), JarClay = v.Of(clay), JarColumn = v.Of(column), JarWater = v.Of(water), LiquidLimit = v.Of(liquid), PlasticLimit = v.Of(plastic),
                Moisture = v.Of(moisture), SandMoisture = v.Of(sandMoisture), Ribbon = v.Of(ribbon), Worm = v.Of(worm), Ball = v.Of(ball), Wash = v.Of(wash),
            });
    }

    private static Thing<MixTarget> MakeTarget()
    {
        var clay = Keys<MixTarget>.Maybe("clay", Shares, t => t.Clay);
        var straw = Keys<MixTarget>.Maybe("straw", Shares, t => t.Straw);
        var water = Keys<MixTarget>.Maybe("water", Shares, t => t.Water);
        return new Thing<MixTarget>("mix-target", [clay, straw, water], v => new MixTarget { Clay = v.Of(clay), Straw = v.Of(straw), Water = v.Of(water) });
    }

    private static Thing<Measures> MakeMeasures()
    {
        var armful = Keys<Measures>.Maybe("armful", Masses, m => m.Armful);
        var bale = Keys<Measures>.Maybe("bale", Masses, m => m.Bale);
        var soil = Keys<Measures>.Maybe("soilBucket", Masses, m => m.SoilBucket);
        var clay = Keys<Measures>.Maybe("clayBucket", Masses, m => m.ClayBucket);
        var sand = Keys<Measures>.Maybe("sandBucket", Masses, m => m.SandBucket);
        var water = Keys<Measures>.Maybe("waterBucket", Masses, m => m.WaterBucket);
        var label = Keys<Measures>.Maybe("bucketLabel", Volumes, m => m.BucketLabel);
        var truck = Keys<Measures>.Maybe("truck", Volumes, m => m.Truck);
        return new Thing<Measures>("measures", [armful, bale, soil, clay, sand, water, label, truck],
            v => new Measures
            {
                Armful = v.Of(armful), Bale = v.Of(bale), SoilBucket = v.Of(soil), ClayBucket = v.Of(clay), SandBucket = v.Of(sand), WaterBucket = v.Of(water),
                BucketLabel = v.Of(label), Truck = v.Of(truck),
            });
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

    private static Thing<AssumedNumber> MakeAssumed()
    {
        var key = Keys<AssumedNumber>.Needed("key", Text, a => a.Key);
        var value = Keys<AssumedNumber>.Needed("value", Number, a => a.Value);
        var note = Keys<AssumedNumber>.MaybeThing("note", Text, a => a.Note);
        return new Thing<AssumedNumber>("assumed-number", [key, value, note], v => new AssumedNumber(v.Of(key), v.Of(value)) { Note = v.Of(note) });
    }

    private static Thing<Crew> MakeCrew()
    {
        var people = Keys<Crew>.Needed("people", Whole, c => c.People);
        var skill = Keys<Crew>.Needed("skill", new WordForm<Skill>(), c => c.Skill);
        var start = Keys<Crew>.Needed("start", Date, c => c.Start);
        var days = Keys<Crew>.Needed("daysPerWeek", Whole, c => c.DaysPerWeek);
        var hours = Keys<Crew>.Needed("hoursPerDay", Number, c => c.HoursPerDay);
        var roof = Keys<Crew>.Maybe("roofOn", Date, c => c.RoofOn);
        var begins = Keys<Crew>.Or("begins", new WordForm<WorkBegins>(), c => c.Begins, WorkBegins.Wall);
        var members = Keys<Crew>.List("members", MakeMember(), c => c.Members);
        return new Thing<Crew>("crew", [people, skill, start, days, hours, roof, begins, members],
            v => new Crew(v.Of(people), v.Of(skill), v.Of(start), v.Of(days), v.Of(hours)) { RoofOn = v.Of(roof), Begins = v.Of(begins), Members = v.Of(members) });
    }

    private static Thing<CrewMember> MakeMember()
    {
        var name = Keys<CrewMember>.Needed("name", Text, m => m.Name);
        var knows = Keys<CrewMember>.List("knows", new WordForm<CrewSkill>(), m => m.Knows);
        var wishes = Keys<CrewMember>.List("wishes", new WordForm<CrewSkill>(), m => m.Wishes);
        var cannot = Keys<CrewMember>.List("cannot", new WordForm<CannotDo>(), m => m.Cannot);
        var away = Keys<CrewMember>.List("away", Date, m => m.Away);
        return new Thing<CrewMember>("crew-member", [name, knows, wishes, cannot, away],
            v => new CrewMember(v.Of(name)) { Knows = v.Of(knows), Wishes = v.Of(wishes), Cannot = v.Of(cannot), Away = v.Of(away) });
    }
}
