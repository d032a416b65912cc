using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Testing;

namespace Clomwright.Files.Tests;

/// <summary>Descriptions that no file could hold but an edit could make: nothing throws, and what is wrong is said.</summary>
public class WildHousesTests
{
    private static readonly Gen<Length> Lengths = Gen.OneOf(Gen.OneOf(long.MinValue, long.MaxValue, 0, -1, 1, 1_000_000_000_000).Select(n => new Length(n)), Gen.Long.Select(n => new Length(n)), Gen.Long[-9_000_000_000, 9_000_000_000].Select(n => new Length(n)));

    private static readonly Gen<double> Numbers = Gen.OneOf(Gen.OneOf(double.NaN, double.PositiveInfinity, double.NegativeInfinity, double.MaxValue, double.Epsilon, -0.0, 0), Gen.Double, Gen.Double[-2, 2]);

    private static readonly Gen<int> Wholes = Gen.OneOf(Gen.OneOf(int.MinValue, int.MaxValue, 0, -1), Gen.Int[-5, 5]);

    private static readonly Gen<string> Names = Gen.OneOf(Gen.OneOf("", " ", "door", "a/b", "\n", "\"", "\\", "😀", new string('x', 300)), Gen.Char['\u0000', '\ud7ff'].Array[0, 6].Select(c => new string(c)));

    private static readonly Gen<House> Wild =
        from house in Houses.Plausible
        from l in Lengths.Array[16]
        from d in Numbers.Array[10]
        from n in Wholes.Array[4]
        from name in Names.Array[4]
        select house with
        {
            Id = name[0],
            Name = name[1],
            Site = house.Site with { Latitude = d[0], Grade = l[0], GroundSnow = new Stress(d[1]), WindSpeed = new Speed(d[2]), FrostDepth = l[1] },
            Plan = n[0] % 2 == 0 ? new Plan.RoundedRectangle(l[2], l[3], l[4]) { Bearing = new Angle(d[3]) } : new Plan.Path([new(l[2], l[3]), new(l[4], l[2])]),
            Stem = new Stem(l[5], l[6]),
            Wall = new Wall(l[7], l[8], new Slope(d[4]), new Slope(d[5])),
            Lifts = n[1] % 2 == 0 ? new LiftPlan { Height = l[9] } : new LiftPlan { Tops = [l[9], l[10], l[11]] },
            Openings = house.Openings.Plus(new Opening
            {
                Name = name[2], Kind = OpeningKind.Door, Along = new Along(n[2] > 0 ? new Angle(d[6]) : null, n[2] % 2 == 0 ? l[12] : null), Width = l[13], Height = l[14], Sill = l[15],
                Shape = OpeningShape.Arched, Rise = l[0], Splay = new Splay(new Angle(d[7]), new Angle(d[8])),
                Frame = new Frame(l[1], l[2], l[3], l[4], l[5]) { Setback = l[6] }, Header = new Header(n[3], l[7], l[8], l[9], name[3]),
            }),
            Niches = house.Niches.Plus(new Niche { Name = name[3], Along = Along.At(new Angle(d[9])), Width = l[10], Height = l[11], Depth = l[12], Sill = l[13] }),
            Embeds = house.Embeds.Plus(new Embed { Name = name[2], Kind = EmbedKind.Bottle, Along = Along.At(l[14]), Height = l[15], Count = n[0], Spacing = l[0], Width = l[1] }),
            BondBeam = new BondBeam(l[2], l[3], l[4]),
            Tees = new Tees(l[5], l[6], l[7]),
            Roof = n[3] % 2 == 0 ? new Roof.Reciprocal(n[1], l[8], new PoleSize(l[9], l[10])) { Eave = l[11], Notch = l[12], Landings = [new Angle(d[0]), new Angle(d[1])] } : new Roof.Shed(PoleSize.Even(l[8]), l[9], new Slope(d[2])) { Eave = l[10] },
            Mix = house.Mix with { Batch = new Batch(d[3], new Volume(d[4]), n[2], l[13], l[14], l[15]), Prisms = [new Prism(l[0], l[1], l[2], new Force(d[5]), n[3])], Recipe = new Recipe { Soil = d[6], Straw = new Mass(d[7]) } },
        };

    [Fact]
    public void A_wild_house_is_checked_written_read_and_edited_without_an_exception() =>
        Wild.ForAll(house =>
        {
            Assert.All(HouseDiagnostics.Of(house), d => Assert.NotEmpty(Sentence.Of(d)));
            var document = HouseDocument.Of(house);
            Assert.NotNull(HouseDocument.Read(document.Text).Document);
            var renamed = house with { Name = "Tame", Openings = house.Openings.Without(0) };
            Assert.Equal(renamed, document.With(renamed).House);
        }, iter: Counts.Of(500, 20_000));

    [Fact]
    public void What_is_wrong_in_a_house_stands_at_a_place_of_its_file() =>
        Wild.ForAll(house =>
        {
            var document = HouseDocument.Of(house);
            foreach (var diagnostic in HouseDiagnostics.Of(house))
            {
                var line = document.Text.Split('\n')[document.PositionOf(diagnostic.Path).Line - 1];
                var key = diagnostic.Path.Split('.')[^1].Split('[')[0];
                Assert.True(line.Contains($"\"{key}\"", StringComparison.Ordinal) || Defaulted.Contains(key), $"{diagnostic.Path}: {line}");
            }
        }, iter: Counts.Of(200, 5_000));

    /// <summary>Keys that are left out of the file because they have their default, or whose absence is what is wrong.</summary>
    private static readonly string[] Defaulted = ["outsideTaper", "insideTaper", "openings", "landings", "tops", "points", "splay", "inside", "outside", "count", "notch", "bearing", "zeroBearing", "station"];
}
