using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Testing;

namespace Clomwright.Geometry.Tests;

/// <summary>Volumes cut by openings against integrations that share nothing with the program's own: Cartesian, with dense fixed rules.</summary>
public sealed class OpeningVolumeTests
{
    private const double Radius = 2.0;
    private const double InsideTaper = 0.02;
    private const double OutsideTaper = 0.06;

    private static House Round => Leaning(Houses.Round(Length.FromMillimetres(4000)));

    private static House Leaning(House house) => house with { Wall = house.Wall with { OutsideTaper = new Slope(OutsideTaper), InsideTaper = new Slope(InsideTaper) } };

    private static Opening Window(OpeningShape shape, double splayInside = 0, double splayOutside = 0, Frame? frame = null) => new()
    {
        Name = "window", Kind = OpeningKind.Fixed, Along = Along.At(new Angle(40)), Width = Length.FromMillimetres(900), Height = Length.FromMillimetres(1100),
        Sill = Length.FromMillimetres(700), Shape = shape, Rise = shape == OpeningShape.Arched ? Length.FromMillimetres(300) : null,
        Splay = new Splay(new Angle(splayInside), new Angle(splayOutside)), Frame = frame,
    };

    private static double InsideOffset(HouseGeometry g, double z) => InsideTaper * (z - g.Wall.Base.Metres);

    private static double OutsideOffset(HouseGeometry g, double z) =>
        g.Wall.ThicknessAtTop.Metres + InsideTaper * (g.Wall.Top - g.Wall.Base).Metres + OutsideTaper * (g.Wall.Top.Metres - z);

    /// <summary>Share of the half width open at a height, from the shapes' definitions.</summary>
    private static double Share(OpeningShape shape, double z)
    {
        switch (shape)
        {
            case OpeningShape.Round:
                return Math.Sqrt(Math.Max(0, 1 - Math.Pow((z - 1.25) / 0.55, 2)));
            case OpeningShape.Arched when z > 1.5:
                var radius = (0.45 * 0.45 + 0.3 * 0.3) / 0.6;
                return Math.Sqrt(Math.Max(0, radius * radius - Math.Pow(z - (1.8 - radius), 2))) / 0.45;
            default:
                return 1;
        }
    }

    /// <summary>Simpson's rule over the height of the test window in pieces, each after z = a + h (1 - cos t) / 2, which smooths a round head.</summary>
    private static double OverHeight(Func<double, double> area, int steps)
    {
        var sum = 0.0;
        foreach (var (from, to) in new[] { (0.7, 1.5), (1.5, 1.8) })
        {
            sum += Simpson(t => area(from + (to - from) / 2 * (1 - Math.Cos(t))) * (to - from) / 2 * Math.Sin(t), 0, Math.PI, steps);
        }

        return sum;
    }

    /// <summary>Simpson's rule in u of the depth in w that is open.</summary>
    private static double CartesianVolume(HouseGeometry g, OpeningShape shape, double splayInside, double splayOutside, double frameInside, double frameOutside, int steps)
    {
        double Widening(double w) => Math.Tan(splayInside * Math.PI / 180) * Math.Max(0, frameInside - w) + Math.Tan(splayOutside * Math.PI / 180) * Math.Max(0, w - frameOutside);
        double AreaAt(double z)
        {
            var (near, far) = (Radius + InsideOffset(g, z), Radius + OutsideOffset(g, z));
            var share = Share(shape, z);
            double Depth(double u)
            {
                double Edge(double level) => Math.Sqrt(level * level - u * u) - Radius;
                double Open(double w) => share * (0.45 + Widening(w)) - u;
                var (from, to) = (Edge(near), Edge(far));
                // The set of w between the faces that is open at this u: all of it in the middle, else the splayed ends.
                double First() => Open(from) <= 0 ? from : Bisected(Open, from, Math.Min(Math.Max(from, frameInside), to));
                double Last() => Open(to) <= 0 ? to : Bisected(Open, to, Math.Max(Math.Min(to, frameOutside), from));
                return Open(Math.Clamp(frameInside, from, to)) >= 0 ? to - from : First() - from + (to - Last());
            }

            var reach = share * (0.45 + Math.Max(Widening(-0.6), Widening(0.9)));
            var most = share * 0.45;
            // The depth jumps at the rough jamb where a side without splay closes.
            return 2 * (Simpson(Depth, 0, most, steps) + Simpson(Depth, most + 1e-12, reach, 4 * steps));
        }

        return OverHeight(AreaAt, steps);
    }

    private static double Bisected(Func<double, double> f, double positive, double other)
    {
        if (f(other) >= 0)
        {
            return other;
        }

        for (var i = 0; i < 60; i++)
        {
            var middle = (positive + other) / 2;
            (positive, other) = f(middle) >= 0 ? (middle, other) : (positive, middle);
        }

        return other;
    }

    private static double Simpson(Func<double, double> f, double a, double b, int steps)
    {
        if (b <= a)
        {
            return 0;
        }

        var sum = f(a) + f(b);
        for (var i = 1; i < steps; i++)
        {
            sum += (i % 2 == 0 ? 2 : 4) * f(a + i * (b - a) / steps);
        }

        return sum * (b - a) / steps / 3;
    }

    [Theory]
    [InlineData(OpeningShape.Rectangular)]
    [InlineData(OpeningShape.Arched)]
    [InlineData(OpeningShape.Round)]
    public void StraightJambs_InARoundLeaningWall_DisplaceTheIndependentVolume(OpeningShape shape)
    {
        // Independent. 1e-6 is the aim for openings.
        var g = FromBuilding.Of(Round with { Openings = [Window(shape)] });
        Assert.Empty(g.Diagnostics);
        Assert.Equal(1, g.Measures.OpeningVolume / CartesianVolume(g, shape, 0, 0, 0, 0, 120), 1e-6);
    }

    [Theory]
    [InlineData(OpeningShape.Rectangular, 20, 0)]
    [InlineData(OpeningShape.Rectangular, 15, 30)]
    [InlineData(OpeningShape.Arched, 20, 10)]
    [InlineData(OpeningShape.Round, 0, 25)]
    public void SplayedJambs_InARoundLeaningWall_DisplaceTheIndependentVolume(OpeningShape shape, double inside, double outside)
    {
        // Independent; without a frame the splays begin at the middle of the wall at sill height (at the middle of a round one).
        var g = FromBuilding.Of(Round with { Openings = [Window(shape, inside, outside)] });
        var z = shape == OpeningShape.Round ? 1.25 : 0.7;
        var middle = (InsideOffset(g, z) + OutsideOffset(g, z)) / 2;
        Assert.Empty(g.Diagnostics);
        Assert.Equal(1, g.Measures.OpeningVolume / CartesianVolume(g, shape, inside, outside, middle, middle, 120), 1e-6);
    }

    [Fact]
    public void SplaysOfAFrame_BeginAtItsTwoFaces()
    {
        // Independent.
        var frame = new Frame(Length.FromMillimetres(880), Length.FromMillimetres(1080), Length.FromMillimetres(100), Length.FromMillimetres(40)) { Setback = Length.FromMillimetres(120) };
        var g = FromBuilding.Of(Round with { Openings = [Window(OpeningShape.Rectangular, 25, 15, frame)] });
        var outer = OutsideOffset(g, 0.7) - 0.12;
        Assert.Empty(g.Diagnostics);
        Assert.Equal(1, g.Measures.OpeningVolume / CartesianVolume(g, OpeningShape.Rectangular, 25, 15, outer - 0.1, outer, 120), 1e-6);
    }

    [Theory]
    [InlineData(OpeningShape.Rectangular)]
    [InlineData(OpeningShape.Arched)]
    [InlineData(OpeningShape.Round)]
    public void StraightJambs_InAnOvalLeaningWall_DisplaceTheIndependentVolume(OpeningShape shape)
    {
        // Independent: faces found by halving on the ellipse's own parameter, no arc length.
        double a = 2.4, b = 1.8;
        var g = FromBuilding.Of(Leaning(Houses.Oval(Length.FromMillimetres(4800), Length.FromMillimetres(3600))) with { Openings = [Window(shape)] });
        var place = g.Openings[0];
        double FaceAt(double u, double offset)
        {
            // The long axis runs north: p(t) = (b sin t, a cos t), clockwise.
            double U(double t, out double w)
            {
                var (sin, cos) = Math.SinCos(t);
                var speed = Math.Sqrt(a * a * sin * sin + b * b * cos * cos);
                var point = new PlanPoint(b * sin + offset * a * sin / speed, a * cos + offset * b * cos / speed) - place.Middle;
                w = point.Dot(place.Normal);
                return point.Dot(new PlanPoint(place.Normal.North, -place.Normal.East));
            }

            var middle = Math.Atan2(place.Middle.East / b, place.Middle.North / a);
            double low = middle - 0.9, high = middle + 0.9, w = 0;
            for (var i = 0; i < 60; i++)
            {
                var t = (low + high) / 2;
                (low, high) = U(t, out w) < u ? (t, high) : (low, t);
            }

            return w;
        }

        double AreaAt(double z)
        {
            var half = 0.45 * Share(shape, z);
            return half <= 0 ? 0 : Simpson(u => FaceAt(u, OutsideOffset(g, z)) - FaceAt(u, InsideOffset(g, z)), -half, half, 32);
        }

        Assert.Equal(1, g.Measures.OpeningVolume / OverHeight(AreaAt, 120), 1e-6);
    }

    [Theory]
    [InlineData(OpeningShape.Rectangular)]
    [InlineData(OpeningShape.Round)]
    public void StraightJambs_AcrossTheStartOfACorner_DisplaceTheIndependentVolume(OpeningShape shape)
    {
        // Independent: on the straight side the face of offset d lies at w = d, past the corner's start at sqrt((r + d)^2 - (u - u0)^2) - r.
        const double Corner = 0.8, Start = 0.15;
        var house = Leaning(Houses.RoundedRectangle(Length.FromMillimetres(5000), Length.FromMillimetres(3600), Length.FromMillimetres(800)));
        // The zero mark is the middle of the short north side, 1.0 m before the corner begins.
        var g = FromBuilding.Of(house with { Openings = [Window(shape) with { Along = Along.At(Length.FromMillimetres(850)) }] });
        double FaceAt(double u, double d) => u <= Start ? d : Math.Sqrt((Corner + d) * (Corner + d) - (u - Start) * (u - Start)) - Corner;
        double AreaAt(double z)
        {
            var half = 0.45 * Share(shape, z);
            double Depth(double u) => FaceAt(u, OutsideOffset(g, z)) - FaceAt(u, InsideOffset(g, z));
            return half <= Start ? 2 * half * Depth(0) : Simpson(Depth, -half, Start, 2) + Simpson(Depth, Start, half, 40);
        }

        Assert.Empty(g.Diagnostics);
        Assert.Equal(1, g.Measures.OpeningVolume / OverHeight(AreaAt, 400), 1e-6);
    }

    [Fact]
    public void Window_InAPathThroughACircle_DisplacesNearlyWhatItDoesInTheCircle()
    {
        // Analytic limit: 48 points of a circle of 2 m; the spline's curvature is out by some 1e-4 and the depth of the cut by far less.
        var points = Enumerable.Range(0, 48).Select(i => Math.SinCos(2 * Math.PI * i / 48)).Select(p => new PlanPosition(Length.Nearest(2 * p.Sin), Length.Nearest(2 * p.Cos))).ToArray();
        var path = FromBuilding.Of(Leaning(Houses.Path(points)) with { Openings = [Window(OpeningShape.Arched, 15, 10)] });
        var circle = FromBuilding.Of(Round with { Openings = [Window(OpeningShape.Arched, 15, 10)] });
        Assert.Equal(1, path.Measures.OpeningVolume / circle.Measures.OpeningVolume, 1e-5);
    }

    [Fact]
    public void Door_DisplacesOnlyCobAboveTheStem()
    {
        // Analytic: without taper, integral over u of sqrt(R^2 - u^2) - sqrt(r^2 - u^2) times the height above the stem.
        var g = FromBuilding.Of(Houses.Round(Length.FromMillimetres(4000)) with { Openings = [Houses.Door("door", 0)] });
        double Under(double r) => 0.4572 * Math.Sqrt(r * r - 0.4572 * 0.4572) + r * r * Math.Asin(0.4572 / r);
        Assert.Equal((Under(2.3556) - Under(2)) * (2.032 - 0.2032), g.Measures.OpeningVolume, 1e-11);
    }

    [Fact]
    public void FlatFrame_FourFeetInAnEighteenFootCircle_BowsAsTheSheetSays()
    {
        // Published in the project's notes on setting out [calc]: 2.7 in proud in an 18 ft outer circle; the sagitta R - sqrt(R^2 - 24^2), R = 108 in.
        var house = Houses.Round(Length.FromInches(216 - 28));
        var g = FromBuilding.Of(house with { Openings = [Houses.Window("w", 90, Length.FromInches(48), Length.FromInches(40))] });
        Assert.Equal((108 - Math.Sqrt(108 * 108 - 24 * 24)) * 0.0254, g.Openings[0].BowOutside, 1e-12);
        Assert.Equal(2.7, g.Openings[0].BowOutside / 0.0254, 0.05);
        Assert.Equal((94 - Math.Sqrt(94 * 94 - 24 * 24)) * 0.0254, g.Openings[0].BowInside, 1e-12);
    }

    [Fact]
    public void Header_BuriedInTheWall_DisplacesItsOwnVolumeAndSitsOnTheHead()
    {
        // Analytic: pieces x width x depth x length, wholly inside a wall that is wide enough for it.
        var window = Houses.Window("w", 90, Length.FromInches(24), Length.FromInches(30)) with { Header = new Header(2, Length.FromInches(3), Length.FromInches(5), Length.FromInches(8)) };
        var g = FromBuilding.Of(Houses.Round(Length.FromFeet(18)) with { Openings = [window] });
        var header = g.Openings[0].Header!;
        Assert.Equal(40 * 0.0254, header.Length, 1e-12);
        Assert.Equal(66 * 0.0254, header.Bottom, 1e-12);
        Assert.Equal(6 * 5 * 40 * Math.Pow(0.0254, 3), header.Volume, 1e-12);
        Assert.True(header.ProudInside < 0 && header.ProudOutside < 0);
    }

    [Fact]
    public void Header_AsWideAsTheWall_StandsOutAtItsEndsAndCountsOnlyWhatIsInTheWall()
    {
        // Independent: the header's plan clipped by two circles, midpoint rule of 200,000 strips.
        var window = Houses.Window("w", 90, Length.FromInches(36), Length.FromInches(30)) with { Header = new Header(1, Length.FromInches(14), Length.FromInches(6), Length.FromInches(12)) };
        var g = FromBuilding.Of(Houses.Round(Length.FromFeet(12)) with { Openings = [window] });
        var header = g.Openings[0].Header!;
        double r = 72, R = 86, area = 0;
        const int N = 200_000;
        for (var i = 0; i < N; i++)
        {
            var u = -30 + 60 * (i + 0.5) / N;
            area += Math.Max(0, Math.Min(R, Math.Sqrt(R * R - u * u)) - Math.Max(r, Math.Sqrt(r * r - u * u))) * 60 / N;
        }

        Assert.Equal(1, header.Volume / (area * 6 * Math.Pow(0.0254, 3)), 1e-6);
        Assert.Equal((R - Math.Sqrt(R * R - 900)) * 0.0254, header.ProudOutside, 1e-10);
    }
}
