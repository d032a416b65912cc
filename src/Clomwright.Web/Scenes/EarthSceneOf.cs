using Clomwright.Analysis.Mix;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Rules;
using Clomwright.Study;
using Clomwright.Web.Editing;

namespace Clomwright.Web.Scenes;

/// <summary>The scene of the earth: where the numbers of the mix become drawn places and words.</summary>
public static class EarthSceneOf
{
    /// <summary>The scene, in the words of a phrasebook, with the house's own units first.</summary>
    /// <param name="study">The study.</param>
    /// <param name="words">The language.</param>
    /// <param name="diagnostics">What is wrong or odd in the file, with paths as in the file.</param>
    public static EarthScene Scene(HouseStudy study, Phrasebook words, IEnumerable<Diagnostic> diagnostics)
    {
        ArgumentNullException.ThrowIfNull(study);
        var pen = new Pen(words, study.House.Units);
        var (mix, blanks) = (study.Mix, new EarthBlanks(study.House));
        var tests = new EarthTests(study, blanks, pen);
        var findings = FindingLines.Of(EarthFindings.Of(study.Findings), pen, _ => false);
        return new EarthScene
        {
            Jar = Jar(study.House.Mix.SoilTests, mix, blanks, pen),
            Triangle = Triangle(mix, pen),
            Soil = [.. Soil(mix, pen)],
            HandTests = [.. mix.HandTests.Select(hand => new Figure(pen.Say($"web.earth.hand.{hand.Key}"), pen.Say("web.earth.hand-says", ("says", hand.Says), ("not", hand.DoesNot))))],
            Recipe = [.. blanks.Recipe.Select(blank => Card(blank, pen))],
            Carried = [.. blanks.Carried.Select(blank => Card(blank, pen))],
            Recipes = [Recipe("written", mix.AsWritten, pen), Recipe("target", mix.Blend, pen)],
            Next = new NextView(mix.Next.Key, pen.Say(mix.Next.What), pen.Say(mix.Next.Because)),
            Bars = tests.Bars,
            BarLimits = [.. mix.Register.BarLimits.Select(limit => new Figure(pen.Say(limit.Name), pen.Say("web.earth.limit", ("share", Amount.Fraction(limit.Share.Value)), ("source", pen.Say(limit.Share.Source)))))],
            Prisms = tests.Prisms,
            Bricks = tests.Bricks,
            Drops = tests.Drops,
            Blocks = tests.Blocks,
            Strength = tests.Strength,
            Tightest = RoofFindings.Tightest(findings, pen),
            Findings = [.. findings.Select(f => f.Line)],
            Totals = FindingLines.Totals(Tally.Of(findings.Select(f => f.Finding)), pen),
            House = FindingLines.Totals(study, pen).Line,
            Diagnostics = [.. diagnostics.Select(d => new DiagnosticLine(d.Path, pen.Say(d.What), d.Severity == Severity.Error))],
        };
    }

    /// <summary>A blank as the page shows it.</summary>
    internal static BlankCard Card(EarthBlank blank, Pen pen) => new(
        blank.Key, blank.Name, pen.Say($"web.earth.blank.{blank.Name}"), blank.Text,
        [.. blank.Choices.Select(choice => new KnobChoice(choice, (choice, blank.Name) switch
        {
            ("", "trial") => pen.Say("web.earth.choice.recipe"),
            ("", _) => pen.Say("web.earth.choice.unsaid"),
            (_, "trial") => choice,
            _ => pen.Say($"web.earth.choice.{choice}"),
        }))]);

    private static JarView Jar(SoilTests soil, MixResult mix, EarthBlanks blanks, Pen pen)
    {
        List<string> missing = [];
        List<JarLayer> layers = [];
        List<Figure> times = [];
        string? temperature = null;
        if (mix.Jar.Value is { } jar)
        {
            double[] tops = [soil.JarSand!.Value.Metres, (soil.JarSand + soil.JarSilt)!.Value.Metres, (soil.JarSand + soil.JarSilt + soil.JarClay)!.Value.Metres];
            (string Kind, double Share)[] shares = [("sand", jar.Sand), ("silt", jar.Silt), ("clay", jar.Clay)];
            layers.AddRange(shares.Select((layer, i) => new JarLayer(
                layer.Kind, i == 0 ? 0 : Pen.Round(tops[i - 1]), Pen.Round(tops[i]),
                pen.Say("web.earth.layer", ("kind", new Message($"web.earth.{layer.Kind}")), ("share", Amount.Fraction(layer.Share))))));
            if (jar.Times.Value is { } known)
            {
                times.AddRange(known.Sizes.Select(size => new Figure(
                    pen.Say("web.earth.grain", ("grain", new Message($"analysis.symbol.grain-{size.Key}")), ("size", Amount.Number(1000 * size.Diameter))), pen.Short(new Amount(size.Seconds, Dimension.Time)))));
                temperature = soil.JarWater is { } given
                    ? pen.Say("web.earth.water-given", ("temperature", new Amount(given.Celsius, Dimension.Temperature)))
                    : mix.Assumptions.FirstOrDefault(a => a.Key == "mix-jar-water") is { } assumed ? pen.Say("web.earth.water-assumed", ("temperature", assumed.Value)) : null;
            }
            else
            {
                missing.Add(pen.Say(jar.Times.NotChecked!));
            }
        }
        else
        {
            missing.Add(pen.Say(mix.Jar.NotChecked!));
        }

        return new JarView(
            [.. blanks.Jar.Select(blank => Card(blank, pen))], layers, soil.JarColumn is { } column ? Pen.Round(column.Metres) : null,
            pen.Say("web.earth.jar-said", ("layers", string.Join(", ", layers.Select(layer => layer.Text)))), times, missing, temperature);
    }

    private static TriangleView Triangle(MixResult mix, Pen pen)
    {
        var jar = mix.Jar.Value;
        return new TriangleView(
            [
                .. TextureTriangle.Fields.Select(field => new TriangleField(
                    field.Key, pen.Say(Texture.Named(field.Key)), [.. field.Corners.Select(Placed)], Placed(field.Middle))),
            ],
            jar is null ? null : Placed(new SoilShares(jar.Sand, jar.Silt, jar.Clay)),
            jar?.Texture,
            jar is null ? pen.Say(mix.Jar.NotChecked!) : pen.Say("web.earth.class", ("class", Texture.Named(jar.Texture))),
            jar is null ? null : pen.Say("web.earth.shares", ("sand", Amount.Fraction(jar.Sand)), ("silt", Amount.Fraction(jar.Silt)), ("clay", Amount.Fraction(jar.Clay)), ("seen", Amount.Fraction(jar.ClayByVolume))),
            pen.Say(Sources.Get("usda-texture")));
    }

    /// <summary>Right and up, in shares of one: the corners are sand, silt and clay.</summary>
    private static double[] Placed(SoilShares soil) => Pen.Point(soil.Silt + soil.Clay / 2, soil.Clay);

    private static IEnumerable<Figure> Soil(MixResult mix, Pen pen)
    {
        yield return Of("liquid-limit", mix.LiquidLimit, Dimension.Fraction);
        yield return Of("plastic-limit", mix.PlasticLimit, Dimension.Fraction);
        yield return Of("mixing-water", mix.MixingWater, Dimension.Fraction);
        yield return Of("dry-density", mix.DryDensity, Dimension.Density);

        Figure Of(string key, Settled<double> value, Dimension dimension) => new(
            pen.Say($"web.earth.soil.{key}"), pen.Say("web.earth.tagged", ("value", new Amount(value.Value, dimension)), ("tag", new Message(value.Tag == Tag.Given ? "evidence.tag-given" : "evidence.tag-assumed"))));
    }

    private static RecipeView Recipe(string key, Analysis.Known<BatchParts> known, Pen pen)
    {
        if (known.Value is not { } batch)
        {
            return new RecipeView(key, pen.Say($"web.earth.recipe.{key}"), [], pen.Say(known.NotChecked!));
        }

        List<Figure> lines = [Buckets("soil", batch.Soil)];
        if (batch.Clay > 0)
        {
            lines.Add(Buckets("clay", batch.Clay));
        }

        lines.Add(Buckets("sand", batch.Sand));
        lines.Add(batch.Water is { } water ? Buckets("water", water) : Unknown("water"));
        lines.Add(batch.Straw is not { } straw ? Unknown("straw")
            : new Figure(pen.Say("web.earth.blank.straw"), batch.Armfuls is { } armfuls
                ? pen.Say("web.earth.armfuls", ("n", Amount.Number(Nearest(armfuls, 2))), ("mass", new Amount(straw, Dimension.Mass)))
                : pen.Say("web.earth.straw", ("mass", new Amount(straw, Dimension.Mass)))));
        lines.Add(new Figure(pen.Say("web.earth.clay-share"), pen.Short(Amount.Fraction(batch.ClayShare))));
        lines.Add(new Figure(pen.Say("web.earth.straw-share"), batch.StrawShare is { } share ? pen.Short(Amount.Fraction(share)) : pen.Say("web.earth.unknown")));
        return new RecipeView(key, pen.Say($"web.earth.recipe.{key}"), lines, null);

        Figure Buckets(string name, double count) => new(pen.Say($"web.earth.blank.{name}"), pen.Say("web.earth.buckets", ("n", Amount.Number(Nearest(count, 4)))));

        Figure Unknown(string name) => new(pen.Say($"web.earth.blank.{name}"), pen.Say("web.earth.unknown"));
    }

    /// <summary>As fine as a crew fills a bucket or an arm.</summary>
    private static double Nearest(double count, int parts) => Math.Round(count * parts) / parts;
}
