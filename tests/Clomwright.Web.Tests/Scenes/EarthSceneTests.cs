using System.Text.Json;
using Clomwright.Analysis.Mix;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Study;
using Clomwright.Testing;
using Clomwright.Web.Scenes;

namespace Clomwright.Web.Tests.Scenes;

/// <summary>From a study to the earth page. Rank: property, against the results that it is drawn from.</summary>
public sealed class EarthSceneTests
{
    [Fact]
    public void Soil_LiesInTheFieldOfItsClass()
    {
        var triangle = Of(Houses.HeronPoint).Triangle;
        Assert.Equal(HouseStudy.Of(Houses.HeronPoint).Mix.Jar.Value!.Texture, triangle.Class);
        Assert.Equal([triangle.Class], triangle.Fields.Where(field => Inside(field.Outline, triangle.Soil!)).Select(field => field.Key));
    }

    [Fact]
    public void Fields_FillTheTriangle_AndTheirNamesStandInThem()
    {
        var fields = Of(Houses.HeronPoint).Triangle.Fields;
        Assert.Equal(Texture.Classes.Order(StringComparer.Ordinal), fields.Select(field => field.Key).Order(StringComparer.Ordinal));
        // Analytic: the triangle of these corners has an area of one half. Coordinates are rounded to 1e-4, so each field is off by no more than its perimeter times that.
        Assert.Equal(0.5, fields.Sum(field => Math.Abs(Area(field.Outline))), 12 * 3 * 1e-4);
        Assert.All(fields, field => Assert.True(Inside(field.Outline, field.Middle), field.Key));
    }

    [Fact]
    public void Strength_IsAssumedWithFourPrisms_AndMeasuredWithFive()
    {
        Assert.Equal("measured", Of(Houses.HeronPoint).Strength.Tag);
        var four = Of(Houses.HeronPoint with { Mix = Houses.HeronPoint.Mix with { Prisms = Houses.HeronPoint.Mix.Prisms.Without(0) } });
        Assert.Equal("assumed", four.Strength.Tag);
        Assert.NotEmpty(four.Strength.Missing);
        Assert.Equal(4, four.Prisms.Rows.Count(row => row.Counts));
    }

    [Fact]
    public void NothingMeasured_SaysWhatIsMissing_AndNothingIsMetForIt()
    {
        var scene = Of(Houses.HeronPoint with { Mix = new Mix() });
        Assert.Empty(scene.Jar.Layers);
        Assert.NotEmpty(scene.Jar.Missing);
        Assert.Null(scene.Triangle.Class);
        Assert.Equal("assumed", scene.Strength.Tag);
        Assert.All(scene.Recipes, recipe => Assert.NotNull(recipe.Missing));
        Assert.DoesNotContain(scene.Findings, f => f.Standing == "met" && f.Title.Contains("Crushing", StringComparison.Ordinal));
        Assert.Contains(scene.Findings, f => f.Standing == "unchecked");
        Assert.Equal("jar", scene.Next.Key);
    }

    [Fact]
    public void EveryTest_IsARowWithItsBlanks()
    {
        var scene = Of(Houses.HeronPoint);
        Assert.Equal(Houses.HeronPoint.Mix.TestBars.Count, scene.Bars.Rows.Count);
        Assert.Equal(Houses.HeronPoint.Mix.Prisms.Count, scene.Prisms.Rows.Count);
        Assert.False(scene.Bars.Rows[0].Counts); // of trial A, which is not the recipe
        Assert.True(scene.Bars.Rows[1].Counts);
        Assert.Equal("1600 lbf", scene.Prisms.Rows[0].Blanks.Single(blank => blank.Name == "load").Text);
    }

    // Rank analytic: 3 P L/(2 b d^2) with 380 lbf over 10 in on a brick 6 by 4 in is 59.4 psi.
    [Fact]
    public void BricksDropsAndBlocks_SayWhatTheyComeTo()
    {
        var scene = Of(Houses.HeronPoint with
        {
            Mix = Houses.HeronPoint.Mix with
            {
                Drops = [new Drop(Length.FromFeet(5), DropOutcome.Halved), new Drop(Length.FromFeet(5), DropOutcome.Whole) { Trial = "A" }],
                Blocks = [new DryingBlock(Length.FromInches(8), Length.FromInches(8), Length.FromInches(4), 2) { Weighings = [new(0, new Mass(7.4))] }],
            },
        });
        Assert.StartsWith("59.4 psi", Assert.Single(scene.Bricks.Rows).Reads, StringComparison.Ordinal);
        Assert.True(scene.Bricks.Rows[0].Counts);
        Assert.Contains("broken in two", scene.Drops.Rows[0].Reads, StringComparison.Ordinal);
        Assert.False(scene.Drops.Rows[1].Counts);
        Assert.False(Assert.Single(scene.Blocks.Rows).Counts);
        Assert.Contains("dry mass", scene.Blocks.Rows[0].Notes[0], StringComparison.Ordinal);
        Assert.Equal("2027-05-14", scene.Prisms.Rows[0].Blanks.Single(blank => blank.Name == "date").Text);
        Assert.All(scene.Drops.New, blank => Assert.True(blank.Text.Length == 0, blank.Name));
    }

    [Fact]
    public void AnyJar_HoweverSilly_GivesASceneThatCanBeSent() =>
        Gen.Select(Gen.Int[-50, 4000], Gen.Int[0, 900], Gen.Int[0, 900], Gen.Int[0, 5000]).ForAll(
            (sand, silt, clay, column) => JsonSerializer.Serialize(
                Of(Houses.HeronPoint with
                {
                    Mix = Houses.HeronPoint.Mix with
                    {
                        SoilTests = new SoilTests
                        {
                            JarSand = Length.FromMillimetres(sand), JarSilt = Length.FromMillimetres(silt), JarClay = Length.FromMillimetres(clay), JarColumn = Length.FromMillimetres(column),
                        },
                    },
                }),
                JsonSerializerOptions.Web),
            iter: Counts.Of(40, 1_000));

    private static EarthScene Of(House house)
    {
        var study = HouseStudy.Of(house);
        return EarthSceneOf.Scene(study, Phrasebook.English, study.Diagnostics);
    }

    private static double Area(double[][] outline) =>
        outline.Select((a, i) => (A: a, B: outline[(i + 1) % outline.Length])).Sum(side => side.A[0] * side.B[1] - side.B[0] * side.A[1]) / 2;

    /// <summary>By the number of sides that a line to the right crosses.</summary>
    private static bool Inside(double[][] outline, double[] point) =>
        outline.Select((a, i) => (A: a, B: outline[(i + 1) % outline.Length]))
            .Count(side => side.A[1] > point[1] != side.B[1] > point[1] && point[0] < side.A[0] + (point[1] - side.A[1]) / (side.B[1] - side.A[1]) * (side.B[0] - side.A[0])) % 2 == 1;
}
