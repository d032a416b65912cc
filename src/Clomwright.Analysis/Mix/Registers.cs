using Clomwright.Analysis.Steps;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Mix;

/// <summary>Reads every specimen, and says which count and what is missing.</summary>
internal static class Registers
{
    private const int Enough = 5;
    private const int YoungDays = 28;
    private const double ScatterMost = 0.30;

    public static TestRegister Of(Building.Mix mix)
    {
        var specimens = Specimens(mix);
        var counted = specimens.Where(s => s.Counts).ToList();
        var sample = counted.Count == 0 ? (Known<Sample>)new Message("analysis.mix.no-specimens") : Samples.Of([.. counted.Select(s => s.AsPrism)]);
        var bars = mix.TestBars.Index().Where(b => b.Item.Length > Length.Zero).Select(b =>
            new BarReading(
                b.Index + 1, b.Item.Trial, OfThisMix(mix, b.Item.Trial), b.Item.Length.Metres, b.Item.Shrinkage.Metres / b.Item.Length.Metres, b.Item.Cracked, b.Item.Date, b.Item.Tester)).ToSequence();
        var ruptures = mix.Bricks.Index().Where(b => b.Item.Width > Length.Zero && b.Item.Depth > Length.Zero && b.Item.Span > Length.Zero)
            .Select(b => new RuptureReading(b.Index + 1, b.Item.Trial, OfThisMix(mix, b.Item.Trial), b.Item.Oven, Rupture(b.Item))).ToSequence();
        return new TestRegister
        {
            Bars = bars,
            BarLimits = MixValues.BarLimits,
            Specimens = specimens,
            Sample = sample,
            ByRule = StrengthRules.Of([.. counted.Select(s => s.AsPrism)]),
            Ruptures = ruptures,
            Drops = mix.Drops.Select((d, i) => new OtherReading(
                i + 1, d.Trial, OfThisMix(mix, d.Trial), Message.Of($"analysis.drop.{d.Outcome.ToString().ToLowerInvariant()}", ("height", d.Height)), Sources.Get("common-practice"))).ToSequence(),
            Erosions = mix.Erosions.Select((e, i) => new OtherReading(i + 1, e.Trial, OfThisMix(mix, e.Trial), Worn(e), MixValues.Spray.Source)).ToSequence(),
            Missing = Missing(specimens, counted, sample.Value, bars, ruptures),
        };
    }

    /// <summary>3 P L/(2 b d^2): a brick on two bars, loaded in the middle; its own weight left out.</summary>
    internal static Calculated<double> Rupture(Brick brick)
    {
        var sheet = new Worksheet("modulus-of-rupture");
        var value = 3 * brick.FailureLoad.Newtons * brick.Span.Metres / (2 * brick.Width.Metres * brick.Depth.Metres * brick.Depth.Metres);
        sheet.Step(
            "modulus-of-rupture", "f_r", "3*P*L/(2*b*d^2)", value, Dimension.Stress, Sources.Get("mechanics"), Worksheet.Given("P", "failure-load", brick.FailureLoad.Newtons, Dimension.Force),
            Worksheet.Given("L", "brick-span", brick.Span.Metres, Dimension.Length), Worksheet.Given("b", "brick-width", brick.Width.Metres, Dimension.Length),
            Worksheet.Given("d", "brick-depth", brick.Depth.Metres, Dimension.Length));
        return new Calculated<double>(value, sheet.Done);
    }

    /// <summary>Whether a test is of the mix that the recipe has; one that names no trial is.</summary>
    internal static bool OfThisMix(Building.Mix mix, string? trial) =>
        trial is null || (mix.Trials.FirstOrDefault(t => t.Name == trial) is { } made && Parts.Same(made.Recipe, mix.Recipe));

    /// <summary>Strength of a specimen brought to a prism twice as tall as wide.</summary>
    internal static double ShapeFactor(double heightOverWidth) => MixValues.ShapeFactors.Between(heightOverWidth) / MixValues.ShapeFactors.Between(2);

    private static Sequence<SpecimenReading> Specimens(Building.Mix mix)
    {
        var read = mix.Prisms.Index()
            .Where(p => p.Item.Width > Length.Zero && p.Item.Depth > Length.Zero && p.Item.Height > Length.Zero && double.IsFinite(p.Item.FailureLoad.Newtons))
            .Select(p => Read(mix, p.Item, p.Index + 1)).ToList();
        var largest = read.Where(s => s.Counts).GroupBy(Kind).OrderByDescending(g => g.Count()).FirstOrDefault();
        return read.Select(s => s.Counts && Kind(s) != largest!.Key ? s with { LeftOut = new Message("analysis.left-out.shape") } : s).ToSequence();
    }

    /// <summary>Specimens of one kind may be averaged: one shape, one size to 5 mm.</summary>
    private static (string Shape, long Width, long Depth, long Height) Kind(SpecimenReading s) =>
        (s.Shape, (long)Math.Round(s.Width / 0.005), (long)Math.Round(s.Depth / 0.005), (long)Math.Round(s.Height / 0.005));

    private static SpecimenReading Read(Building.Mix mix, Prism p, int number)
    {
        var (b, d, h) = (p.Width.Metres, p.Depth.Metres, p.Height.Metres);
        var strength = p.FailureLoad.Newtons / (p.Shape == SpecimenShape.Cylinder ? Math.PI / 4 * b * b : b * d);
        var leftOut = p.Oven ? new Message("analysis.left-out.oven")
            : OfThisMix(mix, p.Trial) ? null
            : mix.Trials.Any(t => t.Name == p.Trial) ? Message.Of("analysis.left-out.mix", ("trial", p.Trial!))
            : Message.Of("analysis.left-out.trial", ("trial", p.Trial!));
        return new SpecimenReading(
            number, p.Trial, p.Shape.ToString().ToLowerInvariant(), b, d, h, p.CuredDays, p.Oven, p.From == SpecimenOrigin.Wall, strength, strength * ShapeFactor(h / Math.Min(b, d)), leftOut, p.Date, p.Tester,
            p.Moisture?.OfOne);
    }

    private static Message Worn(Erosion erosion)
    {
        var spray = erosion.Kind == ErosionKind.Spray;
        var depth = erosion.Depth.Metres * 1000 * (spray ? 60 / erosion.Minutes : 1);
        return !double.IsFinite(depth) ? new Message("analysis.erosion.unread")
            : (spray ? MixValues.Spray : MixValues.Drip).Below(depth) is { } index
                ? Message.Of(spray ? "analysis.erosion.spray" : "analysis.erosion.drip", ("depth", Amount.Metres(depth / 1000)), ("index", Amount.Count((long)index)))
                : Message.Of(spray ? "analysis.erosion.spray-fails" : "analysis.erosion.drip-fails", ("depth", Amount.Metres(depth / 1000)));
    }

    private static Sequence<Message> Missing(Sequence<SpecimenReading> all, List<SpecimenReading> counted, Sample? sample, Sequence<BarReading> bars, Sequence<RuptureReading> ruptures)
    {
        List<Message> missing = [];
        if (!bars.Any(b => b.OfThisMix))
        {
            missing.Add(new Message("analysis.missing.bars"));
        }

        if (counted.Count < Enough)
        {
            missing.Add(Message.Of("analysis.missing.specimens", ("n", counted.Count), ("enough", Enough)));
        }

        AddIf(all.Count(s => s.Oven), "analysis.missing.oven");
        AddIf(all.Count(s => !s.Oven && s.LeftOut?.Key is "analysis.left-out.mix" or "analysis.left-out.trial"), "analysis.missing.changed");
        AddIf(all.Count(s => s.LeftOut?.Key == "analysis.left-out.shape"), "analysis.missing.shapes");
        AddIf(counted.Count(s => s.CuredDays < YoungDays), "analysis.missing.young");
        AddIf(counted.Count(s => s.Moisture is null), "analysis.missing.moisture");
        AddIf(counted.Count(s => s.Tester is null || s.Date is null), "analysis.missing.who");
        if (sample is { Variation: > ScatterMost })
        {
            missing.Add(Message.Of("analysis.missing.scatter", ("variation", Amount.Fraction(sample.Variation))));
        }

        if (!all.Any(s => s.FromWall))
        {
            missing.Add(new Message("analysis.missing.wall"));
        }

        if (!ruptures.Any(r => r.OfThisMix && !r.Oven))
        {
            missing.Add(new Message("analysis.missing.bricks"));
        }

        return missing.ToSequence();

        void AddIf(int count, string key)
        {
            if (count > 0)
            {
                missing.Add(Message.Of(key, ("n", count)));
            }
        }
    }
}
