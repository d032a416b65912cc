using Clomwright.Analysis;
using Clomwright.Analysis.Mix;
using Clomwright.Evidence;
using static Clomwright.Study.Figures;

namespace Clomwright.Study;

/// <summary>The mix's part of the figures. Lists of specimens run as they stand in the house file.</summary>
internal static class MixFigures
{
    private static readonly Message NotMeasured = new("study.not-measured");

    public static Figure Of(MixResult mix) => Tree(
        ("strength", Strength(mix.Strength)),
        ("jar", Of(mix.Jar, jar => Tree(
            ("sand", Computed(jar.Sand, Dimension.Fraction)), ("silt", Computed(jar.Silt, Dimension.Fraction)), ("clay", Computed(jar.Clay, Dimension.Fraction)), ("texture", Name(jar.Texture)),
            ("times", Of(jar.Times, t => Tree(("sand", Computed(t.Sand, Dimension.Time)), ("silt", Computed(t.Silt, Dimension.Time)))))))),
        ("liquidLimit", Settled(mix.LiquidLimit, Dimension.Fraction)),
        ("plasticLimit", Settled(mix.PlasticLimit, Dimension.Fraction)),
        ("dryDensity", Settled(mix.DryDensity, Dimension.Density)),
        ("mixingWater", Settled(mix.MixingWater, Dimension.Fraction)),
        ("asLaid", Tree(
            ("saturation", Computed(mix.AsLaid.Saturation, Dimension.Fraction)), ("wetDensity", Computed(mix.AsLaid.WetDensity, Dimension.Density)),
            ("waterPerVolume", Computed(mix.AsLaid.Water, Dimension.Density)))),
        ("blend", Of(mix.Blend, Batch)),
        ("recipe", Of(mix.AsWritten, Batch)),
        ("next", Tree(
            ("key", Name(mix.Next.Key)), ("sandShare", Computed(mix.Next.SandShare, Dimension.Fraction, NotMeasured)), ("soil", Computed(mix.Next.Soil, Dimension.Number, NotMeasured)),
            ("sand", Computed(mix.Next.Sand, Dimension.Number, NotMeasured)))),
        ("register", Register(mix.Register)),
        ("deliveries", Row(mix.Deliveries, d => Tree(
            ("key", Name(d.Key)),
            ("mass", d.Mass is { } kg ? new Figure.Number(new Amount(kg, Dimension.Mass), d.MassTag, FromDescription) : new Figure.NotChecked(NotMeasured)),
            ("loads", Computed(d.Loads, Dimension.Count, NotMeasured))))));

    private static Figure Strength(CobStrength strength)
    {
        var from = strength.Assumption?.Source.Title ?? FromDescription;
        Figure Tagged(double value) => new Figure.Number(new Amount(value, Dimension.Stress), strength.Tag, from);
        return Tree(
            ("mean", strength.Mean is { } mean ? new Figure.Number(new Amount(mean, Dimension.Stress), Tag.Measured, FromDescription) : new Figure.NotChecked(strength.Why)),
            ("characteristic", Tagged(strength.Characteristic)),
            ("allowable", Tagged(strength.Allowable)),
            ("specimens", Computed(strength.Count, Dimension.Count)),
            ("divisor", Computed(strength.Divisor, Dimension.Number)));
    }

    private static Figure Batch(BatchParts batch) => Tree(
        ("soil", Computed(batch.Soil, Dimension.Number)), ("clay", Computed(batch.Clay, Dimension.Number)), ("sand", Computed(batch.Sand, Dimension.Number)),
        ("water", Computed(batch.Water, Dimension.Number, NotMeasured)), ("straw", Computed(batch.Straw, Dimension.Mass, NotMeasured)), ("armfuls", Computed(batch.Armfuls, Dimension.Number, NotMeasured)),
        ("minerals", Computed(batch.Minerals, Dimension.Mass)), ("clayShare", Computed(batch.ClayShare, Dimension.Fraction)), ("strawShare", Computed(batch.StrawShare, Dimension.Fraction, NotMeasured)));

    private static Figure Register(TestRegister register) => Tree(
        ("bars", Row(register.Bars, b => Tree(
            ("number", Computed(b.Number, Dimension.Count)), ("shrinkage", new Figure.Number(Amount.Fraction(b.Shrinkage), Tag.Measured, FromDescription)), ("ofThisMix", new Figure.Flag(b.OfThisMix))))),
        ("specimens", Row(register.Specimens, s => Tree(
            ("number", Computed(s.Number, Dimension.Count)), ("strength", new Figure.Number(new Amount(s.Strength, Dimension.Stress), Tag.Measured, FromDescription)),
            ("asPrism", Computed(s.AsPrism, Dimension.Stress)), ("counts", new Figure.Flag(s.Counts))))),
        ("variation", register.Sample.Value is { Count: > 1 } sample ? Computed(sample.Variation, Dimension.Fraction) : new Figure.NotChecked(register.Sample.NotChecked ?? NotMeasured)),
        ("byRule", Row(register.ByRule, r => Tree(("key", Name(r.Key)), ("strength", Of(r.Value, v => new Figure.Number(new Amount(v.Value, Dimension.Stress), Tag.Computed, r.Source.Title)))))),
        ("bricks", Row(register.Ruptures, r => Tree(("number", Computed(r.Number, Dimension.Count)), ("modulus", Computed(r.Modulus.Value, Dimension.Stress)), ("ofThisMix", new Figure.Flag(r.OfThisMix))))));

    private static Figure.Number Settled(Settled<double> value, Dimension dimension) =>
        new Figure.Number(new Amount(value.Value, dimension), value.Tag, value.Assumption?.Source.Title ?? FromDescription);

    private static Figure Of<T>(Known<T> known, Func<T, Figure> figure) where T : class =>
        known.Value is { } value ? figure(value) : new Figure.NotChecked(known.NotChecked!);
}
