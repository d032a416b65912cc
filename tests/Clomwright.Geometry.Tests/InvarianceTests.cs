using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Testing;

namespace Clomwright.Geometry.Tests;

/// <summary>Turning, mirroring or renaming a house changes nothing that is measured along or within the wall.</summary>
public sealed class InvarianceTests
{
    // A path's points and mirrored stations are rounded to whole nanometres; a few of these in a row make 1e-8.
    private const double Tolerance = 1e-7;

    private static House Changed(House house, Func<double, double> bearing, Func<Length, Length> station, Func<PlanPosition, PlanPosition> point, bool reversed)
    {
        Angle Turned(Angle angle) => new(bearing(angle.Degrees));
        Along Moved(Along along) => along.Bearing is { } b ? Along.At(Turned(b)) : Along.At(station(along.Station!.Value));
        var plan = house.Plan switch
        {
            Plan.Path path => path with { Points = (reversed ? path.Points.Reverse() : path.Points).Select(point).ToSequence() },
            var other => other,
        };
        return house with
        {
            Plan = plan with { Bearing = Turned(house.Plan.Bearing), ZeroBearing = Turned(house.Plan.ZeroBearing), Centre = house.Plan.Centre is { } c ? point(c) : null },
            Openings = house.Openings.Select(o => o with { Along = Moved(o.Along) }).ToSequence(),
            Niches = house.Niches.Select(n => n with { Along = Moved(n.Along) }).ToSequence(),
            Embeds = house.Embeds.Select(e => e with { Along = Moved(e.Along), Count = 1 }).ToSequence(),
            Roof = house.Roof is null ? null : house.Roof with { FirstBearing = Turned(house.Roof.FirstBearing), Landings = house.Roof.Landings.Select(Turned).ToSequence() },
        };
    }

    private static House Single(House house) => Changed(house, b => b, s => s, p => p, false);

    private static double[] Numbers(HouseGeometry g)
    {
        var m = g.Measures;
        return
        [
            m.GrossVolume, m.NetVolume, m.OpeningVolume, m.HeaderVolume, m.NicheVolume, m.EmbedVolume, m.InsideArea, m.OutsideArea, m.InsideFaceArea, m.OutsideFaceArea, m.OpeningLengthShare,
            .. g.Lifts.SelectMany(l => new[] { l.GrossVolume, l.NetVolume, l.LaidVolume }),
            .. g.Openings.OrderBy(o => o.Index).SelectMany(o => new[] { o.Volume, o.BowInside, o.BowOutside, o.Inside.Width, o.Outside.Width, o.Widest.Width, o.Header?.Volume ?? 0, o.Header?.ProudInside ?? 0 }),
            .. g.Niches.OrderBy(n => n.Index).SelectMany(n => new[] { n.Volume, n.LeftBehind }),
        ];
    }

    private static void AreEqual(double[] expected, double[] actual)
    {
        Assert.Equal(expected.Length, actual.Length);
        for (var i = 0; i < expected.Length; i++)
        {
            Assert.Equal(expected[i], actual[i], Tolerance);
        }
    }

    private static IEnumerable<(string, double, double, double, double)> Piers(HouseGeometry g, bool mirrored) =>
        g.Piers.Select(p => (mirrored ? $"pier {p.After}|{p.Before}" : p.Address, p.WidthInside, p.WidthMiddle, p.WidthOutside, p.Narrowest)).OrderBy(p => p.Item1, StringComparer.Ordinal);

    private static void SamePiers(HouseGeometry a, HouseGeometry b, bool mirrored)
    {
        foreach (var (x, y) in Piers(a, false).Zip(Piers(b, mirrored)))
        {
            Assert.Equal(x.Item1, y.Item1);
            AreEqual([x.Item2, x.Item3, x.Item4, x.Item5], [y.Item2, y.Item3, y.Item4, y.Item5]);
        }
    }

    private static PlanPosition Rotated(PlanPosition p, double degrees)
    {
        var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
        return new PlanPosition(Length.Nearest(p.East.Metres * cos + p.North.Metres * sin), Length.Nearest(p.North.Metres * cos - p.East.Metres * sin));
    }

    [Fact]
    public void Turning_AnyPlausibleHouse_ChangesNoMeasure() =>
        Gen.Select(Houses.Plausible, Gen.Int[0, 3599]).ForAll((any, tenths) =>
        {
            var house = Single(any);
            var turned = Changed(house, b => b + tenths / 10.0, s => s, p => Rotated(p, tenths / 10.0), false);
            var (before, after) = (FromBuilding.Of(house), FromBuilding.Of(turned));
            AreEqual(Numbers(before), Numbers(after));
            SamePiers(before, after, false);
            AreEqual([.. before.Openings.Select(o => o.Station)], [.. after.Openings.Select(o => o.Station)]);
            Assert.Equal(before.Diagnostics.Select(d => d.What.Key), after.Diagnostics.Select(d => d.What.Key));
        }, iter: Counts.Of(25, 2000));

    [Fact]
    public void Mirroring_AnyPlausibleHouse_ChangesNoMeasure() =>
        Houses.Plausible.ForAll(any =>
        {
            var house = Single(any);
            var before = FromBuilding.Of(house);
            var ring = Length.Nearest(before.Curve.Length);
            Length Other(Length s) => s <= ring ? ring - s : ring + ring - s;
            var mirrored = Changed(house, b => -b, Other, p => new PlanPosition(-p.East, p.North), true);
            var after = FromBuilding.Of(mirrored);
            AreEqual(Numbers(before), Numbers(after));
            SamePiers(before, after, true);
        }, iter: Counts.Of(25, 2000));

    [Fact]
    public void Renaming_AnyPlausibleHouse_ChangesOnlyNames() =>
        Houses.Plausible.ForAll(house =>
        {
            var renamed = house with
            {
                Id = "other", Name = "Other", Openings = house.Openings.Select(o => o with { Name = "x" + o.Name }).ToSequence(), Niches = house.Niches.Select(n => n with { Name = "y" + n.Name }).ToSequence(),
            };
            var (before, after) = (FromBuilding.Of(house), FromBuilding.Of(renamed));
            Assert.Equal(before.Measures, after.Measures);
            Assert.Equal(before.Lifts, after.Lifts);
            Assert.Equal(before.Piers.Select(p => p.Narrowest), after.Piers.Select(p => p.Narrowest));
        }, iter: Counts.Of(15, 1000));
}
