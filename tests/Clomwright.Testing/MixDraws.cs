using Clomwright.Building;
using Clomwright.Evidence;
using CsCheck;

namespace Clomwright.Testing;

/// <summary>Draws soil, mix and tests that a crew may have made.</summary>
internal static class MixDraws
{
    public static Gen<Mix> Mix(Tape tape) =>
        from soil in Soil(tape)
        from parts in Parts
        from batch in Gen.Select(Gen.Int[4, 12], Gen.Int[1, 5], tape.Between(48, 144), tape.Between(4, 14),
            (n, trials, ring, raised) => new Batch(n, new Volume(0.019), trials, ring, raised, tape.AtLeast(8))).OrNothing()
        from measures in Weighed
        from trials in Gen.Select(Parts, RestDraws.Date.OrNull()).Array[0, 2]
        from bars in Gen.Select(tape.Between(20, 24), tape.Between(0.25, 1), RestDraws.Date.OrNull(), Gen.Bool, (l, s, d, cracked) => new TestBar(l, s) { Date = d, Cracked = cracked, Width = cracked ? tape.AtLeast(3) : null }).Array[0, 3]
        from prisms in Gen.Select(Gen.Int[30, 120], Gen.Int[20, 60], Gen.Bool, RestDraws.Date.OrNull(), Gen.Int[0, 3],
            (kn, days, oven, d, kind) => Crushed(tape, kn, days, oven, d, kind)).Array[0, 7]
        from bricks in Gen.Select(Gen.Int[3, 20], Gen.Bool, (n, oven) => new Brick(tape.AtLeast(6), tape.AtLeast(4), tape.AtLeast(10), new Force(100.0 * n), 30, oven)).Array[0, 3]
        from worn in Gen.Select(Gen.Enum<ErosionKind>(), tape.Between(0.25, 2), (kind, depth) => new Erosion(kind, depth, 60)).Array[0, 2]
        from dropped in Gen.Enum<DropOutcome>().Select(o => new Drop(tape.AtLeast(36), o)).Array[0, 2]
        from block in Gen.Int[0, 4].Select(n => new DryingBlock(tape.AtLeast(6), tape.AtLeast(6), tape.AtLeast(6), 5)
        {
            DryMass = n > 2 ? new Mass(6.5) : null, Weighings = Enumerable.Range(0, n).Select(i => new Weighing(i * 2, new Mass(8 - i / 4.0))).ToSequence(),
        }).OrNothing()
        select new Mix
        {
            SoilTests = soil, Recipe = parts, Batch = batch, Measures = measures,
            Target = batch is null ? new MixTarget() : new MixTarget { Clay = new Share(0.18), Straw = new Share(0.015) },
            Trials = trials.Select((t, i) => new MixTrial($"trial {i + 1}", t.Item1) { Date = t.Item2 }).ToSequence(),
            TestBars = bars.Select(b => b with { Trial = trials.Length > 0 && b.Cracked ? "trial 1" : null }).ToSequence(),
            Prisms = prisms.ToSequence(), Bricks = bricks.ToSequence(), Erosions = worn.ToSequence(), Drops = dropped.ToSequence(), Blocks = block is null ? [] : [block],
        };

    private static Gen<Recipe> Parts =>
        from soil in Gen.Int[4, 16].Select(n => n / 4.0).OrNull()
        from straw in Gen.Int[2, 30].Select(n => new Mass(n / 10.0)).OrNull()
        select new Recipe { Soil = soil, Sand = soil, Water = soil / 4, Straw = straw };

    private static Gen<Measures> Weighed =>
        Gen.Int[0, 8].Select(n => new Measures { Armful = n > 4 ? new Mass(n / 8.0) : null, Bale = n > 5 ? new Mass(15) : null, SandBucket = n > 6 ? new Mass(27) : null, Truck = n > 3 ? new Volume(n) : null });

    private static Gen<SoilTests> Soil(Tape tape) =>
        from sand in tape.Between(1, 4).OrNull()
        from clay in tape.Between(0.5, 2).OrNull()
        from celsius in Gen.Int[5, 28].Select(n => new Temperature(n)).OrNull()
        from plastic in Gen.Int[12, 24].Select(n => new Share(n / 100.0)).OrNull()
        from ball in Gen.Enum<BallDrop>().OrNull()
        from wash in Gen.Enum<HandWash>().OrNull()
        select new SoilTests
        {
            JarSand = sand, JarSilt = clay, JarClay = clay, JarColumn = sand is null ? null : tape.AtLeast(9), JarWater = celsius, PlasticLimit = plastic,
            LiquidLimit = plastic is { } p ? new Share(p.OfOne + 0.125) : null, Ball = ball, Wash = wash, Ribbon = clay is null ? null : tape.AtLeast(4), Moisture = plastic,
        };

    private static Prism Crushed(Tape tape, int kn, int days, bool oven, DateOnly? date, int kind)
    {
        var (side, height) = (tape.AtLeast(4), tape.AtLeast(kind == 1 ? 4 : 8));
        return new Prism(side, side, height, new Force(100.0 * kn), days, oven)
        {
            Date = date, Tester = oven ? "A. Tester" : null, Shape = kind switch { 1 => SpecimenShape.Cube, 2 => SpecimenShape.Cylinder, _ => SpecimenShape.Prism },
            From = kind == 3 ? SpecimenOrigin.Wall : SpecimenOrigin.Batch, Moisture = oven ? new Share(0.02) : null,
        };
    }
}
