using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry.Solids;
using Clomwright.Testing;

namespace Clomwright.Geometry.Tests;

/// <summary>Bodies of triangles are closed and hold what the formulas say.</summary>
public sealed class SolidTests
{
    /// <summary>
    /// A face of N flat pieces over a ring lies inside the curve: for a circle a ring of cob of mean radius R is short by 1 - sin(x)/x, x = 2 pi/N, about x^2/6; 1.8e-4 with 192 pieces, a little more on
    /// curves that are tighter in places. Arches of 16 steps lose of the hole about (pi/32)^2/6 = 1.6e-3 of a part of the hole.
    /// </summary>
    private const double Flat = 1e-3;

    private static readonly House Whole = Houses.HeronPoint;

    public static TheoryData<string> Plans => new("heron", "tapered", "splayed", "oval", "niches");

    private static House Of(string name) => name switch
    {
        "tapered" => Whole with { Wall = Whole.Wall with { InsideTaper = new Slope(0.02), OutsideTaper = new Slope(0.06) } },
        "splayed" => Whole with { Openings = Whole.Openings.Select(o => o with { Splay = new Splay(new Angle(20), new Angle(8)) }).ToSequence() },
        "oval" => Whole with { Plan = new Plan.Oval(Length.FromMillimetres(5200), Length.FromMillimetres(4000)) { ZeroBearing = Whole.Plan.ZeroBearing } },
        "niches" => Whole with { Niches = [.. Whole.Niches.Select(n => n with { Head = NicheHead.Flat }), .. Whole.Niches.Select(n => n with { Name = n.Name + " out", Face = Face.Outside, Depth = Length.FromInches(2) })] },
        _ => Whole,
    };

    [Theory]
    [MemberData(nameof(Plans))]
    public void TheWallHoldsWhatTheIntegralsSayAndEverySolidIsClosed(string plan)
    {
        var geometry = FromBuilding.Of(Of(plan));
        var solids = HouseSolids.Of(geometry);
        var wall = solids.Single(s => s.Part == SolidPart.Wall);

        // Independent: the divergence theorem over the triangles against integrals of areas between curved faces.
        Assert.Equal(1, wall.Volume / (geometry.Measures.GrossVolume - geometry.Measures.OpeningVolume - geometry.Measures.NicheVolume), Flat);
        Assert.True(geometry.Measures.OpeningVolume > 20 * Flat * geometry.Measures.GrossVolume, "an opening left out would not be seen");

        // Analytic: pi R^2 h of pipes, b h l of timbers.
        foreach (var place in geometry.Openings.Where(o => o.Header is not null))
        {
            var header = solids.Single(s => s.Name == "header " + place.Opening.Name);
            Assert.Equal(place.Header!.Length * place.Header.TotalWidth * (place.Header.Top - place.Header.Bottom), header.Volume, 1e-12);
        }

        // Property: joined by place, every side of a triangle meets one that runs the other way.
        foreach (var solid in solids)
        {
            Assert.True(IsClosed(solid, out var why), $"{solid.Name}: {why}");
            Assert.True(solid.Volume > 0, solid.Name);
            Assert.Equal(solid.Points.Count, solid.Normals.Count);
            Assert.All(solid.Normals, n => Assert.Equal(1, n.Norm, 1e-9));
        }

        Assert.Equal(solids.Count, solids.Select(s => s.Name).Distinct().Count());
        Assert.True(solids.Sum(s => s.Triangles.Count / 3) < 120_000, $"{solids.Sum(s => s.Triangles.Count / 3)} triangles");
    }

    [Fact]
    public void AnyPlausibleHouse_IsClosedAndHoldsItsVolume() => Houses.Plausible.ForAll(
        house =>
        {
            var geometry = FromBuilding.Of(house);
            foreach (var solid in HouseSolids.Of(geometry))
            {
                Assert.True(IsClosed(solid, out var why), $"{solid.Name}: {why}");
                if (solid.Part == SolidPart.Wall)
                {
                    Assert.Equal(1, solid.Volume / (geometry.Measures.GrossVolume - geometry.Measures.OpeningVolume - geometry.Measures.NicheVolume), 5 * Flat);
                }
            }
        },
        iter: Counts.Of(25, 400));

    [Fact]
    public void ARoundStem_Volume_IsThatOfARing()
    {
        // Analytic: pi (R^2 - r^2) h, in flat pieces x sin x cos x shorter than the arc; without a door that cuts it.
        var geometry = FromBuilding.Of(Houses.Round(Length.FromMillimetres(5000)));
        var stem = HouseSolids.Of(geometry).Single(s => s.Part == SolidPart.Stem);
        var (width, top) = (geometry.House.Stem.Width.Metres, geometry.House.Stem.Top.Metres);
        var thickness = geometry.Wall.ThicknessAt(geometry.Wall.Base.Metres);
        var inner = 2.5 - (width - thickness) / 2;
        var bottom = stem.Points.Min(p => p.Up);
        var short_ = Math.Sin(2 * Math.PI / 192) / (2 * Math.PI / 192);
        Assert.Equal(Math.PI * ((inner + width) * (inner + width) - inner * inner) * (top - bottom) * short_, stem.Volume, 1e-9);
    }

    private static bool IsClosed(SolidMesh solid, out string why)
    {
        var place = new Dictionary<SpacePoint, int>();
        var at = solid.Points.Select(p => place.TryGetValue(p, out var known) ? known : place[p] = place.Count).ToArray();
        var sides = new Dictionary<(int, int), int>();
        for (var i = 0; i < solid.Triangles.Count; i++)
        {
            var (a, b) = (at[solid.Triangles[i]], at[solid.Triangles[i % 3 == 2 ? i - 2 : i + 1]]);
            sides[(a, b)] = sides.GetValueOrDefault((a, b)) + 1;
        }

        var open = sides.Where(s => sides.GetValueOrDefault((s.Key.Item2, s.Key.Item1)) != s.Value).Select(s => (From: solid.Points[Array.IndexOf(at, s.Key.Item1)], To: solid.Points[Array.IndexOf(at, s.Key.Item2)])).Take(3).ToArray();
        why = string.Join("; ", open);
        return open.Length == 0;
    }
}
