using Clomwright.Analysis.Mix;
using Clomwright.Evidence;
using Clomwright.Study;
using Clomwright.Web.Editing;

namespace Clomwright.Web.Scenes;

/// <summary>Tests and the strength they give, in words.</summary>
internal sealed class EarthTests(HouseStudy study, EarthBlanks blanks, Pen pen)
{
    /// <summary>A bar at its limit is within it, whatever its last bit says.</summary>
    private const double AtLimit = 1 + 1e-9;

    private readonly MixResult mix = study.Mix;

    public TestTable Bars => new([.. blanks.Of(EarthTest.Bar).Select(Bar)], New(EarthTest.Bar));

    public TestTable Prisms => new([.. blanks.Of(EarthTest.Prism).Select(Prism)], New(EarthTest.Prism));

    public TestTable Bricks => new([.. blanks.Of(EarthTest.Brick).Select(Brick)], New(EarthTest.Brick));

    public TestTable Drops => new([.. blanks.Of(EarthTest.Drop).Select(Drop)], New(EarthTest.Drop));

    public TestTable Blocks => new([.. blanks.Of(EarthTest.Block).Select(Block)], New(EarthTest.Block));

    public StrengthView Strength
    {
        get
        {
            var strength = mix.Strength;
            var tag = strength.Tag == Tag.Measured ? "measured" : "assumed";
            List<Figure> lines = [Stress("allowable", strength.Allowable), Stress("characteristic", strength.Characteristic)];
            if (strength.Mean is { } mean)
            {
                lines.Add(Stress("mean", mean));
            }

            if (mix.Register.Sample.Value is { Count: > 1 } sample)
            {
                lines.Add(new Figure(pen.Say("web.earth.strength.scatter"), pen.Short(Amount.Fraction(sample.Variation))));
            }

            lines.Add(new Figure(pen.Say("web.earth.strength.divisor"), pen.Short(Amount.Number(strength.Divisor))));
            return new StrengthView(
                tag, pen.Say($"evidence.tag-{tag}"), lines, pen.Say(strength.Why),
                [.. mix.Register.ByRule.Select(rule => new Figure(pen.Say(rule.Name), rule.Value.Value is { } value ? pen.Say(new Amount(value.Value, Dimension.Stress)) : pen.Say("web.earth.unchecked-because", ("why", rule.Value.NotChecked!))))],
                [.. mix.Register.Missing.Select(pen.Say)]);
        }
    }

    private Figure Stress(string key, double pascals) => new(pen.Say($"web.earth.strength.{key}"), pen.Say(new Amount(pascals, Dimension.Stress)));

    private IReadOnlyList<BlankCard> New(EarthTest test) => [.. blanks.New(test).Select(blank => EarthSceneOf.Card(blank, pen))];

    private TestRow Bar(IReadOnlyList<EarthBlank> of, int index)
    {
        var read = mix.Register.Bars.FirstOrDefault(bar => bar.Number == index + 1);
        IEnumerable<string> notes = read is null ? [pen.Say("web.earth.unread")] :
        [
            .. read.OfThisMix ? [] : (string[])[pen.Say("web.earth.other-mix")],
            .. mix.Register.BarLimits.Select(limit => pen.Say(
                read.Shrinkage <= limit.Share.Value * AtLimit ? "web.earth.within" : "web.earth.over",
                ("share", Amount.Fraction(limit.Share.Value)))
                + (limit.Fits(read.Length) ? "" : pen.Say("web.earth.other-box"))),
        ];
        return new TestRow(
            pen.Say("web.earth.bar", ("n", index + 1)), [.. of.Select(blank => EarthSceneOf.Card(blank, pen))],
            read is null ? pen.Say("web.not-checked") : pen.Short(Amount.Fraction(read.Shrinkage)), read is { OfThisMix: true }, [.. notes]);
    }

    private TestRow Brick(IReadOnlyList<EarthBlank> of, int index)
    {
        var read = mix.Register.Ruptures.FirstOrDefault(r => r.Number == index + 1);
        return Row("brick", of, index, read is null ? null : pen.Say(new Amount(read.Modulus.Value, Dimension.Stress)), read?.OfThisMix, read is null ? pen.Say("web.earth.unread") : pen.Say("web.earth.rupture"));
    }

    private TestRow Drop(IReadOnlyList<EarthBlank> of, int index)
    {
        var read = mix.Register.Drops.FirstOrDefault(r => r.Number == index + 1);
        return Row("drop", of, index, read is null ? null : pen.Say(read.Says), read?.OfThisMix, read is null ? pen.Say("web.earth.unread") : pen.Say(read.Source));
    }

    private TestRow Block(IReadOnlyList<EarthBlank> of, int index)
    {
        var fit = study.Blocks.FirstOrDefault(r => r.Number == index + 1)?.Fit;
        return Row(
            "block", of, index, fit?.Value is { } told ? pen.Say("web.earth.block-says", ("d", Amount.Number(told.DiffusivityPrinted)), ("error", Amount.Fraction(told.DiffusivitySpread))) : null,
            fit?.Value is not null, fit?.Value is not null ? pen.Say("web.earth.block-counts") : fit?.NotChecked is { } why ? pen.Say(why) : pen.Say("web.earth.unread"));
    }

    private TestRow Row(string test, IReadOnlyList<EarthBlank> of, int index, string? reads, bool? counts, string note) => new(
        pen.Say($"web.earth.{test}", ("n", index + 1)), [.. of.Select(blank => EarthSceneOf.Card(blank, pen))], reads ?? pen.Say("web.not-checked"), counts == true,
        [.. counts == false && reads is not null ? (string[])[pen.Say("web.earth.other-mix")] : [], note]);

    private TestRow Prism(IReadOnlyList<EarthBlank> of, int index)
    {
        var read = mix.Register.Specimens.FirstOrDefault(specimen => specimen.Number == index + 1);
        IEnumerable<string> notes = read is null ? [pen.Say("web.earth.unread")] :
        [
            read.LeftOut is { } why ? pen.Say("web.earth.left-out", ("why", why)) : pen.Say("web.earth.counts"),
            .. read.AsPrism == read.Strength ? [] : (string[])[pen.Say("web.earth.as-prism", ("strength", new Amount(read.AsPrism, Dimension.Stress)))],
        ];
        return new TestRow(
            pen.Say("web.earth.prism", ("n", index + 1)), [.. of.Select(blank => EarthSceneOf.Card(blank, pen))],
            read is null ? pen.Say("web.not-checked") : pen.Say(new Amount(read.Strength, Dimension.Stress)), read is { Counts: true }, [.. notes]);
    }
}
