using Clomwright.Analysis.Loads;
using Clomwright.Analysis.WallByHand;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Testing;

namespace Clomwright.Analysis.Tests.WallByHand;

/// <summary>What tips and slides walls: closed forms, and an independent search for a line of thrust.</summary>
public sealed class MechanismTests
{
    private static BowedWall Even(double thickness, double height, double unitWeight, double load, double line)
    {
        var weight = unitWeight * thickness * height;
        return new(height, load, line, weight, thickness / 2, thickness, x => (weight * x / height, thickness / 2), _ => 0);
    }

    // Rank published: a wall without tension tips at t/h (West 1882, Milne 1885); 0.4 by 2.4 m with 5 kN on its middle, 17 kN/m3, at 0.1350 (the formula of C8A.4 worked in another program, to its last digit).
    [Fact]
    public void FreeWall_TipsAtItsThicknessOverHeight()
    {
        Near.Relative(0.4 / 2.4, Rocking.Free(16_320, 0.4, 2.4), 1e-12);
        Near.Printed(0.1350, Rocking.Free(16_320, 0.4, 2.4, 5000, 0.2), 1e-4);
    }

    // Rank published: held at its top and hinged half-way up it bows at 4 t/h of its weight. Rank analytic: just under the top, where hardly anything presses the hinge, at 2 t/h.
    [Fact]
    public void HeldWall_BowsAtFourTimesThat_AndWeakestAtTwice()
    {
        var wall = Even(0.4, 2.4, 17_000, 0, 0.2);
        Near.Relative(4 * 0.4 / 2.4 * wall.Weight, Rocking.Held(wall, 1.2) * 2.4, 1e-9);
        // 1e-5: the search stops a millionth of the height under the top.
        Near.Relative(2 * 0.4 / 2.4 * wall.Weight, Rocking.Weakest(wall).Push * 2.4, 1e-5);
    }

    // Rank independent: the greatest even push for which some force at the top keeps the line of thrust inside the wall at every height, found by halving and without any hinge. 0.5 %: thrust is looked at in 2000 cuts.
    [Theory]
    [InlineData(0.0, 0.2)]
    [InlineData(2000.0, 0.2)]
    [InlineData(9000.0, 0.12)]
    [InlineData(9000.0, 0.33)]
    public void HeldWall_IsTheBestLineOfThrust(double load, double line)
    {
        const double t = 0.4, h = 2.4, gamma = 17_000;
        var (low, high) = (0.0, 60_000.0);
        for (var i = 0; i < 60; i++)
        {
            var q = (low + high) / 2;
            (low, high) = Stands(q) ? (q, high) : (low, q);
        }

        Near.Relative(low, Rocking.Weakest(Even(t, h, gamma, load, line)).Push, 5e-3);

        bool Stands(double q)
        {
            // From the top down: moment of the push and of the holding force H about each cut moves the load by (q x^2/2 - H x)/N toward the lee.
            var (least, most) = (double.NegativeInfinity, double.PositiveInfinity);
            for (var i = 1; i <= 2000; i++)
            {
                var x = h * i / 2000;
                var n = load + gamma * t * x;
                var plain = (load * line + gamma * t * x * t / 2 + q * x * x / 2) / n;
                least = Math.Max(least, (plain - t) * n / x);
                most = Math.Min(most, plain * n / x);
            }

            return least <= most;
        }
    }

    // Rank published (second-hand): on 12 kN and its own weight a pier of 1.2 by 0.45 by 2.1 m rocks at 7.92 kN, slides at 28.71 and cracks across at 26.44 (the formulas worked in another program, to their last digits).
    [Fact]
    public void Pier_IsTheWorkedOne()
    {
        const double load = 12_000 + 17_000 * 1.2 * 0.45 * 2.1;
        Near.Printed(7.92, PierStrength.Rocking(load, 1.2, 0.45, 2.1, 600_000) / 1000, 0.01);
        Near.Printed(28.71, PierStrength.Sliding(load, 1.2, 0.45, 30_000, 0.4) / 1000, 0.01);
        Near.Printed(26.44, PierStrength.Cracking(load, 1.2, 0.45, 2.1, 50_000) / 1000, 0.01);
    }

    // Rank analytic: the crushed toe of a centred load leaves t - N/(0.85 f) to turn about.
    [Fact]
    public void CrushedToe_IsHalfOfTheBlock() => Near.Relative(40_000 / (0.85 * 600_000) / 2, Rocking.Crushed(40_000, 600_000, 1), 1e-12);

    // Rank published (second-hand): 0.4 S_DS I, and 0.1 where that is less (ASCE 7-05, 12.11.1).
    [Theory]
    [InlineData(0.25, "II", 0.1)]
    [InlineData(0.5, "II", 0.2)]
    [InlineData(0.5, "IV", 0.3)]
    [InlineData(0.1, "II", 0.1)]
    public void SquareToAWall_IsTheCodes(double sds, string risk, double share) => Assert.Equal(share, Seismic.SquareToWall(sds, risk), 1e-12);

    // Rank analytic: a straight piece tips half its length and half its thickness off its middle; a thin quarter ring where its chord through the middle leaves it, R sqrt(1 - (sin f/f)^2) with f an eighth of a turn.
    [Fact]
    public void CutShape_TipsAtItsOutline()
    {
        var straight = FromBuilding.Of(Houses.RoundedRectangle(Length.FromFeet(40), Length.FromFeet(20), Length.FromFeet(2))).Curve;
        var shape = CutShape.Of(straight, 5, 6.5, 0, 0.4);
        Assert.Equal(0.75, shape.Reach(shape.Along), 1e-9);
        Assert.Equal(0.2, shape.Reach(shape.Across), 1e-9);
        var round = FromBuilding.Of(Houses.Round(Length.FromFeet(20))).Curve;
        double radius = 3.048, f = Math.PI / 4;
        var quarter = CutShape.Of(round, 0, round.Length / 4, 0, 1e-6);
        // 2 %: the arc is drawn with twelve chords.
        Near.Relative(radius * Math.Sqrt(1 - Math.Pow(Math.Sin(f) / f, 2)), quarter.Reach(quarter.Along), 0.02);
    }

    // Rank analytic: whatever the pieces, their shares add up to the force and to its moment about the middle; four equal walls of a square take half each of two, and a twist evenly.
    [Fact]
    public void Plate_SharesBalance()
    {
        static Piece Wall(double east, double north, double alongEast, double alongNorth, double holds) => new()
        {
            Stretch = 0, Along = new(alongEast, alongNorth), Across = new(-alongNorth, alongEast), Load = 1, Area = 1, Thickness = 1, Height = 1, Reach = 1,
            ArmAlong = new PlanPoint(east, north).Cross(new(alongEast, alongNorth)), ArmAcross = new PlanPoint(east, north).Cross(new(-alongNorth, alongEast)),
            Rocking = holds, Sliding = 1e9, Cracking = 1e9, RockingAcross = holds / 1000,
        };
        Piece[] uneven = [Wall(3, 1, 0, 1, 900), Wall(-2, 0.5, 0.6, 0.8, 400), Wall(0, 2, 1, 0, 1500), Wall(1, -3, 0.8, -0.6, 700)];
        foreach (var (direction, past) in new[] { (0.3, 0.0), (1.9, 0.7), (4.4, -1.2) })
        {
            var shares = Plate.Of(uneven)!.Shares(direction, past);
            double Sum(Func<Piece, double> along, Func<Piece, double> across) => uneven.Zip(shares).Sum(x => along(x.First) * x.Second.Along + across(x.First) * x.Second.Across);
            Assert.Equal(Math.Sin(direction), Sum(p => p.Along.East, p => p.Across.East), 1e-9);
            Assert.Equal(Math.Cos(direction), Sum(p => p.Along.North, p => p.Across.North), 1e-9);
            Assert.Equal(past, Sum(p => p.ArmAlong, p => p.ArmAcross), 1e-9);
        }

        Piece[] square = [Wall(2, 0, 0, 1, 100), Wall(-2, 0, 0, 1, 100), Wall(0, 2, 1, 0, 100), Wall(0, -2, 1, 0, 100)];
        // 0.2 %: walls pushed square hold a thousandth.
        Assert.Equal(0.5, Plate.Of(square)!.Shares(0, 0)[0].Along, 1e-3);
        Assert.Equal(-0.125, Plate.Of(square)!.Shares(0, 1)[2].Along, 1e-3);
        // One wall by itself holds no twist.
        Assert.Null(Plate.Of([Wall(0, 0, 0, 1, 100)]));
    }

    // Rank analytic: a round house turns over its outer circle; the moment of wind is half its height over the whole width.
    [Fact]
    public void RoundHouse_TurnsOverItsOuterCircle()
    {
        var house = Houses.HeronPoint with { Plan = new Plan.Round(Length.FromFeet(14)), Openings = [], Niches = [], Embeds = [] };
        var (geometry, _, _, hand) = PierTests.Of(house);
        var lever = hand.Overturning.Check.Value!.How.Steps[^1].Symbols.Single(s => s.Name == "a").Value.Si;
        // 1e-3: the circle has 180 corners.
        Near.Relative(7 * 0.3048 + geometry.Wall.OutsideOffset(geometry.Wall.Base.Metres), lever, 1e-3);
        Assert.True(hand.Overturning.Check.Value.Use < 1);
    }

    // Rank property: a thicker wall is used less by wind and earthquake square to it; one held at its top less than one that is free.
    [Fact]
    public void Thicker_AndHeld_IsUsedLess()
    {
        var thin = PierTests.Of(Houses.HeronPoint).Hand;
        var thick = PierTests.Of(Houses.HeronPoint with { Wall = Houses.HeronPoint.Wall with { ThicknessAtTop = Length.FromInches(18) }, Stem = Houses.HeronPoint.Stem with { Width = Length.FromInches(24) } }).Hand;
        foreach (var (a, b) in thin.OutOfPlane.Zip(thick.OutOfPlane))
        {
            Assert.True(b.Check.Value!.Use < a.Check.Value!.Use, a.Subject);
        }

        foreach (var pair in thin.OutOfPlane.Chunk(2))
        {
            Assert.True(pair[1].Check.Value!.Use < pair[0].Check.Value!.Use, pair[0].Subject);
        }
    }

    // Rank property: taking the windows of one side to the other leaves the same forces and a weaker side: the most used pier is used more.
    [Fact]
    public void WeakSide_IsFound()
    {
        Opening At(string name, double bearing) => Houses.Window(name, bearing, Length.FromInches(36), Length.FromInches(44)) with { Header = null };
        House With(params double[] bearings) => Houses.HeronPoint with { Plan = new Plan.Round(Length.FromFeet(16)), Niches = [], Embeds = [], Openings = bearings.Select((b, i) => At($"w{i}", b)).ToSequence() };
        double Most(House house) => PierTests.Of(house).Hand.InPlane.Max(m => m.Check.Value!.Use);
        Assert.True(Most(With(130, 155, 180, 205, 230)) > Most(With(0, 72, 144, 216, 288)));
    }

    // Rank independent: 0.7 m of ground (30 degrees, 1900 kg/m3) against a plumb wall of 0.4 by 2.2 m: P = 0.5 x 1900 x 9.80665 x 0.49/2 = 2282.5 N, turning 532.6 Nm; W = 14 000 x 0.88 = 12 320 N holds
    // 12 320 x (0.2 - 12 320/(1.7 f_a)) and slides at 0.4 W. Worked here.
    [Fact]
    public void GroundOnOneSide_TurnsAndSlidesAMetreOfWall()
    {
        var house = Houses.Round(Length.FromMillimetres(4800)) with
        {
            Wall = new Wall(Length.FromMillimetres(2400), Length.FromMillimetres(400)), Stem = new Stem(Length.FromMillimetres(500), Length.FromMillimetres(200)),
            Site = new Site { Grade = Length.FromMillimetres(900), Soil = new Soil { Friction = new Angle(30), Density = new Density(1900) } },
        };
        const double allowed = 150e3;
        var checks = SoilPush.Of(FromBuilding.Of(house), WallNumbers.Of([]), 14_000, new Cited<double>(allowed, Sources.Get("mechanics"), Tag.Assumed)).ToList();
        var push = 0.5 * 1900 * 9.80665 * 0.7 * 0.7 / 2;
        Near.Relative(push * 0.7 / 3, checks[0].Check.Value!.Demand.Si, 1e-9);
        Near.Relative(12_320 * (0.2 - 12_320 / (1.7 * allowed)), checks[0].Check.Value!.Capacity.Si, 1e-9);
        Near.Relative(push, checks[1].Check.Value!.Demand.Si, 1e-9);
        Near.Relative(0.4 * 12_320, checks[1].Check.Value!.Capacity.Si, 1e-9);
        Printed.Holds([.. checks.Select(c => c.How!)]);
        Assert.Empty(SoilPush.Of(FromBuilding.Of(house with { Site = new Site { Grade = Length.FromMillimetres(200) } }), WallNumbers.Of([]), 14_000, new Cited<double>(allowed, Sources.Get("mechanics"), Tag.Assumed)));
        Assert.False(Assert.Single(SoilPush.Of(FromBuilding.Of(house with { Site = new Site() }), WallNumbers.Of([]), 14_000, new Cited<double>(allowed, Sources.Get("mechanics"), Tag.Assumed))).Check.Is);
    }
}
