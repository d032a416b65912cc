using System.Diagnostics;
using Clomwright.Analysis.Roof;
using Clomwright.Analysis.Structure;
using Clomwright.Analysis.WallTop;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Testing;
using MixOf = Clomwright.Analysis.Mix.FromTests;
using Placing = Clomwright.Geometry.FromBuilding;
using RoofOf = Clomwright.Analysis.Roof.FromGeometry;
using TopOf = Clomwright.Analysis.WallTop.FromRoof;

namespace Clomwright.Analysis.Tests.Structure;

/// <summary>The wall while an opening is moved, against the wall at rest.</summary>
public sealed class LiveWallTests(ITestOutputHelper output)
{
    private const string Window = "tub-window";

    private static (HouseGeometry Geometry, RoofResult Roof, WallTopResult Top, Clomwright.Analysis.Mix.CobStrength Strength) Known(House house)
    {
        var geometry = Placing.Of(house);
        var roof = RoofOf.Of(geometry);
        var strength = MixOf.Of(house.Mix, Quantities.Of(geometry)).Strength;
        return (geometry, roof, TopOf.Of(geometry, roof, strength.Settled), strength);
    }

    private static House Moved(double metres)
    {
        var house = Houses.HeronPoint;
        var station = Placing.Of(house).Openings.First(o => o.Opening.Name == Window).Station;
        return house with { Openings = house.Openings.Select(o => o.Name == Window ? o with { Along = Along.At(Length.FromInches((long)Math.Round((station + metres) / 0.0254))) } : o).ToSequence() };
    }

    private static Sequence<double> Seats(WallTopResult top) => top.Seats.Select(s => s.OffCentre).ToSequence();

    /// <summary>Rank independent: before it moves, every edge of a pier that its governing case gives with a foot that also pulls is that of the wall at rest (the same grid and cases, another way to the sums).</summary>
    [Fact]
    public void AtRest_ItIsTheWallAtRest()
    {
        var (geometry, roof, top, strength) = Known(Houses.HeronPoint);
        var rested = FromWallTop.Of(geometry, roof, top, strength).Value!;
        using var live = LiveWall.Grab(geometry, strength, rested, Window).Value!;
        var seen = live.Move(geometry, Seats(top), roof).Value!;
        Assert.Equal(rested.Piers.Select(p => p.Address), seen.Piers.Select(p => p.Address));
        output.WriteLine(string.Join("; ", rested.Piers.Zip(seen.Piers, (r, l) => $"{r.Address} {r.EdgeMost:F0} {l.EdgeMost:F0}")));
        foreach (var (r, l) in rested.Piers.Zip(seen.Piers))
        {
            // A case solved again with a foot that lets go may stand over the sum; no sum may stand over what rests.
            Assert.InRange(l.EdgeMost, 0.9 * r.EdgeMost, r.EdgeMost * (1 + 1e-9));
        }

        Assert.Contains(rested.Piers.Zip(seen.Piers), pair => Math.Abs(pair.First.EdgeMost - pair.Second.EdgeMost) <= 1e-9 * pair.First.EdgeMost);
    }

    /// <summary>Rank property: where it cannot be followed (here the roof has two poles less) it says why, and once it can be again it says what it said.</summary>
    [Fact]
    public void WhereItCannotBeFollowed_ItSaysWhy_AndGoesOn()
    {
        var (geometry, roof, top, strength) = Known(Houses.HeronPoint);
        var rested = FromWallTop.Of(geometry, roof, top, strength).Value!;
        using var live = LiveWall.Grab(geometry, strength, rested, Window).Value!;
        var first = live.Move(geometry, Seats(top), roof).Value!;
        var house = Houses.HeronPoint;
        var (fewer, fewerRoof, fewerTop, _) = Known(house with { Roof = ((Clomwright.Building.Roof.Reciprocal)house.Roof!) with { Poles = ((Clomwright.Building.Roof.Reciprocal)house.Roof!).Poles - 2 } });
        Assert.Equal("analysis.structure.other-loads", live.Move(fewer, Seats(fewerTop), fewerRoof).NotChecked!.Key);
        Assert.Equal(first.Piers, live.Move(geometry, Seats(top), roof).Value!.Piers);
        Assert.Equal("analysis.structure.not-in-wall", LiveWall.Grab(geometry, strength, rested, "no such window").NotChecked!.Key);
    }

    /// <summary>Rank property: moved away through many places and back it says what it said (1e-10, as the factor's own round trip), and at the far place it is within the grid's own error of the wall at rest there.</summary>
    [Fact]
    public void MovedAwayAndBack_ItSaysTheSame()
    {
        var (geometry, roof, top, strength) = Known(Houses.HeronPoint);
        var rested = FromWallTop.Of(geometry, roof, top, strength).Value!;
        using var live = LiveWall.Grab(geometry, strength, rested, Window).Value!;
        var first = live.Move(geometry, Seats(top), roof).Value!;
        var times = new List<double>();
        LiveStress? far = null;
        foreach (var step in (double[])[0.03, 0.06, 0.1, 0.15, 0.2, 0.25, 0.3, 0.25, 0.2, 0.15, 0.1, 0.05])
        {
            var (place, roofThere, topThere, _) = Known(Moved(step));
            var watch = Stopwatch.GetTimestamp();
            var there = live.Move(place, Seats(topThere), roofThere).Value!;
            times.Add(Stopwatch.GetElapsedTime(watch).TotalMilliseconds);
            far = step == 0.3 ? there : far;
        }

        output.WriteLine($"moves, ms: {string.Join(' ', times.Select(t => t.ToString("F1")))}; {live.Bytes / 1e6:F0} MB; {live.Cases.Count} cases");
        var back = live.Move(geometry, Seats(top), roof).Value!;
        foreach (var (was, now) in first.Picture.Compression.Zip(back.Picture.Compression))
        {
            Assert.Equal(was, now, 1e-10 * Math.Max(1, was));
        }

        var (awayGeometry, awayRoof, awayTop, _) = Known(Moved(0.3));
        var away = FromWallTop.Of(awayGeometry, awayRoof, awayTop, strength).Value!;
        output.WriteLine(string.Join("; ", away.Piers.Zip(far!.Piers, (r, l) => $"{r.Address} {r.EdgeMost:F0} {l.EdgeMost:F0}")));
        // Jambs cut cells here and lie on lines there; another case may govern there: a preview within a fifth of the wall at rest.
        Assert.All(away.Piers.Zip(far!.Piers), pair => Assert.InRange(pair.Second.EdgeMost, 0.8 * pair.First.EdgeMost, 1.2 * pair.First.EdgeMost));
    }
}
