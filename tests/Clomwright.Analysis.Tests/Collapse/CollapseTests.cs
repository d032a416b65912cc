using Clomwright.Analysis.Collapse;
using Clomwright.Analysis.Foundation;
using Clomwright.Analysis.Steps;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Numerics.RigidBlocks;
using Clomwright.Testing;
using CollapseOf = Clomwright.Analysis.Collapse.FromRoof;
using Placing = Clomwright.Geometry.FromBuilding;
using RoofOf = Clomwright.Analysis.Roof.FromGeometry;
using TopOf = Clomwright.Analysis.WallTop.FromRoof;

namespace Clomwright.Analysis.Tests.Collapse;

/// <summary>The wall as rigid blocks. That the limit itself is right is shown in Numerics; here that the blocks are those of the house.</summary>
public sealed class CollapseTests(ITestOutputHelper output)
{
    private static readonly JointStrength Dry = new(0.6, 0);

    private CollapseResult Of(House house)
    {
        var geometry = Placing.Of(house);
        var roof = RoofOf.Of(geometry);
        var known = CollapseOf.Of(geometry, roof, TopOf.Of(geometry, roof).Seats, 6e5);
        Assert.True(known.Is, known.NotChecked?.Key);
        var found = known.Value!;
        output.WriteLine($"{house.Name}: {string.Join(", ", found.Directions.Select(d => $"{180 / Math.PI * d.Bearing:F0}: {d.Factor:F4}"))}; without beam {found.WithoutBeam.Value?.Factor:F4}; {string.Join(", ", found.Trend.Select(t => $"{t.Blocks}: {t.Factor:F4}"))}");
        output.WriteLine($"cracking: {string.Join("; ", found.Cracked.Drift.Select(d => $"{d.Factor:F3}: {1000 * d.Drift:F2} mm, {100 * d.Cracked:F0} %"))}; none at {found.Cracked.Beyond:F3}; {found.Cracked.Unknowns} unknowns");
        return found;
    }

    /// <summary>Rank independent: the blocks weigh what the volumes of Geometry, by Steiner's rule, come to. A hole is taken here as wide as it reaches anywhere in the thickness, so a little more of it goes: some 7 % of its volume in this wall.</summary>
    [Fact]
    public void Blocks_WeighWhatTheWallDoes()
    {
        var house = Houses.Round(Length.FromFeet(16)) with { Openings = [Houses.Door("door", 180), Houses.Window("window", 90, Length.FromInches(30), Length.FromInches(36))], BondBeam = null };
        var geometry = Placing.Of(house);
        var blocks = new WallBlocks(geometry, 0.45, Dry, withBeam: false);
        var expected = (geometry.Measures.GrossVolume - geometry.Measures.OpeningVolume) * TakeDown.CobDensity * UsUnits.Gravity;
        var holes = geometry.Measures.OpeningVolume * TakeDown.CobDensity * UsUnits.Gravity;
        Assert.InRange(expected - blocks.Weight, 0, 0.08 * holes);
        Near.Relative(geometry.Measures.GrossVolume * TakeDown.CobDensity * UsUnits.Gravity, new WallBlocks(Placing.Of(house with { Openings = [] }), 0.45, Dry, withBeam: false).Weight, 1e-9);
    }

    /// <summary>Rank property: forces never bear more than the mechanism takes, the beam never weakens, smaller blocks never strengthen by more than the search's gap, and the fastest block moves at one.</summary>
    [Fact]
    public void TheExample_StandsAndIsBracketed()
    {
        var found = Of(Houses.HeronPoint);
        Assert.All(found.Directions, d => Assert.InRange(d.Above - d.Factor, -1e-3 * d.Factor, 1e-3 * d.Factor));
        Assert.Equal(found.Directions.Min(d => d.Factor), found.Weakest.Factor);
        Assert.True(found.WithoutBeam.Value!.Factor <= found.Weakest.Factor * 1.001);
        Assert.True(found.Trend[^1].Factor <= found.Trend[0].Factor * 1.001);
        Printed.Holds(found.Calculations);
        // The mechanism's factor is the balance of its works: rank property, to what equilibrium and compatibility still miss (LimitLoad.LeastGood).
        Assert.Equal(found.Weakest.Above, found.How.Steps.Single(s => s.Key == "collapse-work").Result.Value.Si, 1e-4);
        Assert.Equal(1, found.Mechanism.Max(m => Math.Sqrt(m.Outward * m.Outward + m.Along * m.Along + m.Up * m.Up)), 1e-12);
    }

    /// <summary>Rank analytic: a niche takes its own volume out of the blocks (its box between the offsets of its back and its face: here 12 x 16 x 4 in on a curve of 8 ft, within 2 % for its straight shaft), and blocks round it meet those behind it on what is left.</summary>
    [Fact]
    public void ANiche_IsCutOut()
    {
        var house = Houses.Round(Length.FromFeet(16)) with { BondBeam = null };
        var with = house with { Niches = [new Niche { Name = "lamp", Along = Along.At(new Angle(20)), Width = Length.FromInches(12), Height = Length.FromInches(16), Depth = Length.FromInches(4), Sill = Length.FromFeet(4), Head = NicheHead.Flat }] };
        var geometry = Placing.Of(with);
        var whole = new WallBlocks(Placing.Of(house), 0.45, Dry, withBeam: false).Weight;
        var blocks = new WallBlocks(geometry, 0.45, Dry, withBeam: false);
        Near.Relative(Assert.Single(geometry.Niches).Volume * TakeDown.CobDensity * UsUnits.Gravity, whole - blocks.Weight, 0.02);
        var sheet = blocks.Pushed(0, [], [], []);
        Assert.All(sheet.Joints, joint => Assert.True(joint.Area > 0));
        Assert.Equal(LimitLoadEnd.Found, LimitLoad.Of(sheet).End);
        var thickness = geometry.Wall.ThicknessAt(4 * 0.3048 + 0.2);
        Assert.Contains(sheet.Joints, joint => joint.Normal.Z > 0.5 && joint.Points.Max(p => Math.Sqrt(p.X * p.X + p.Y * p.Y)) - joint.Points.Min(p => Math.Sqrt(p.X * p.X + p.Y * p.Y)) < thickness - 0.09);
    }

    /// <summary>Rank property: rafters that push outward all the time leave less for a push, and the deeper the niche the less the wall bears.</summary>
    [Fact]
    public void Thrust_TakesFromWhatThePushMay()
    {
        var geometry = Placing.Of(Houses.HeronPoint);
        var blocks = new WallBlocks(geometry, 0.7, Dry, withBeam: false);
        double[] press = [.. geometry.Landings.Where(l => !l.Secondary).Select(_ => 8000.0)];
        double Bears(double thrust) => LimitLoad.Of(blocks.Pushed(0, press, [], [.. press.Select(_ => thrust)])).StaticFactor;
        Assert.True(Bears(300) < Bears(0) - 1e-3);
    }

    /// <summary>Rank analytic: a plumb wall without roof tips square to its plane at t/h, on a toe crushed by c at (t - 2c)/h, slides at mu, and a house without bond beam has no wall that bows between foot and beam.</summary>
    [Fact]
    public void TheHand_HasTheClosedForms()
    {
        var house = Houses.Round(Length.FromFeet(16)) with { BondBeam = null, Roof = null, Openings = [] };
        house = house with { Wall = house.Wall with { InsideTaper = default, OutsideTaper = default } };
        var geometry = Placing.Of(house);
        var all = new HandMechanisms(geometry, WallNumbers.Of(house.Assumed), [], [], 6e5).All;
        Printed.Holds(all.Select(m => m.How));
        double t = geometry.Wall.ThicknessAt(geometry.Wall.Base.Metres), h = (geometry.Wall.Top - geometry.Wall.Base).Metres;
        double Of(string kind) => all.Single(m => m.Kind == kind).Factor;
        // The curve of the wall is not counted; 1e-9: sums over slices of a weight that falls evenly.
        Near.Relative(t / h, Of("free"), 1e-9);
        var c = TakeDown.CobDensity * UsUnits.Gravity * h * t / (2 * 0.85 * 6e5);
        Near.Relative((t - 2 * c) / h, Of("crushes"), 1e-9);
        Assert.Equal(0.4, Of("slides"));
        Assert.DoesNotContain(all, m => m.Kind == "held");
    }

    /// <summary>Rank property: a round house turned by a quarter has the same limits a quarter further on.</summary>
    [Fact]
    public void ATurnedHouse_HasTurnedLimits()
    {
        var house = Houses.Round(Length.FromFeet(14)) with { Openings = [Houses.Door("door", 180), Houses.Window("window", 45, Length.FromInches(30), Length.FromInches(36))] };
        var turned = house with { Openings = [Houses.Door("door", 270), Houses.Window("window", 135, Length.FromInches(30), Length.FromInches(36))] };
        var (was, now) = (Pushes(house), Pushes(turned));
        for (var d = 0; d < was.Length; d++)
        {
            Assert.Equal(was[d], now[(d + 2) % was.Length], 1e-4);
        }
    }

    /// <summary>Rank property: a thicker wall of the same height bears no smaller push.</summary>
    [Fact]
    public void AThickerWall_BearsMore()
    {
        House Thick(int inches) => Houses.Round(Length.FromFeet(14)) is var h ? h with { Wall = h.Wall with { ThicknessAtTop = Length.FromInches(inches) }, Openings = [Houses.Door("door", 180)] } : null!;
        var (thin, thick) = (Pushes(Thick(12)), Pushes(Thick(18)));
        Assert.All(thin.Zip(thick), pair => Assert.True(pair.First <= pair.Second + 1e-4));
    }

    private static double[] Pushes(House house)
    {
        var blocks = new WallBlocks(Placing.Of(house), 0.7, Dry, withBeam: false);
        return [.. Enumerable.Range(0, 8).Select(d => LimitLoad.Of(blocks.Pushed(d * Math.PI / 4, [], [], []))).Select(answer =>
        {
            Assert.Equal(LimitLoadEnd.Found, answer.End);
            return answer.StaticFactor;
        })];
    }
}
