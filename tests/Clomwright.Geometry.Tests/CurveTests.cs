using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Testing;

namespace Clomwright.Geometry.Tests;

public sealed class CurveTests
{
    private static Length Mm(double millimetres) => Length.Nearest(millimetres / 1000);

    private static PlanCurve Curve(House house) => FromBuilding.Of(house).Curve;

    private static House PathThrough(int points, Func<double, (double East, double North)> at) =>
        Houses.Path([.. Enumerable.Range(0, points).Select(i => at(2 * Math.PI * i / points)).Select(p => new PlanPosition(Length.Nearest(p.East), Length.Nearest(p.North)))]);

    [Fact]
    public void Oval_Length_EqualsThePerimeterByTheArithmeticGeometricMean()
    {
        // Analytic: perimeter = 2 pi a (1 - sum 2^(n-1) c_n^2) / M(1, b/a), Gauss. Tolerance: rounding.
        double a = 2.4, b = 1.7;
        double x = 1, y = b / a, c = Math.Sqrt(1 - y * y), sum = c * c / 2, power = 1;
        for (var i = 0; i < 8; i++)
        {
            (x, y, c) = ((x + y) / 2, Math.Sqrt(x * y), (x - y) / 2);
            sum += power * c * c;
            power *= 2;
        }

        var curve = Curve(Houses.Oval(Mm(4800), Mm(3400)));
        Assert.Equal(1, curve.Length / (2 * Math.PI * a * (1 - sum) / x), 1e-13);
        Assert.Equal(Math.PI * a * b, curve.Area, 1e-13);
    }

    [Fact]
    public void Oval_FlattestAllowed_StillMeasuresItsArc()
    {
        // Independent: midpoint rule on the parameter, which converges faster than any power for a periodic function; 2^20 points.
        var curve = Curve(Houses.Oval(Mm(10_000), Mm(500)));
        const int N = 1 << 20;
        var sum = 0.0;
        for (var i = 0; i < N; i++)
        {
            var (sin, cos) = Math.SinCos(2 * Math.PI * (i + 0.5) / N);
            sum += Math.Sqrt(25 * sin * sin + 0.0625 * cos * cos);
        }

        Assert.Equal(1, curve.Length / (sum * 2 * Math.PI / N), 1e-12);
    }

    [Fact]
    public void RoundedRectangle_LengthAndArea_EqualTheClosedForm()
    {
        // Analytic.
        var curve = Curve(Houses.RoundedRectangle(Mm(6000), Mm(4000), Mm(900)));
        Assert.Equal(2 * (6 + 4) - (8 - 2 * Math.PI) * 0.9, curve.Length, 1e-13);
        Assert.Equal(24 - (4 - Math.PI) * 0.81, curve.Area, 1e-13);
    }

    [Theory]
    [InlineData(12, 2.5e-4)]
    [InlineData(24, 1.5e-5)]
    [InlineData(48, 1e-6)]
    public void Path_ThroughPointsOfACircle_ConvergesToTheCircle(int points, double tolerance)
    {
        // Analytic: the circle. Error falls with the fourth power of the spacing; seen are 2.2e-4, 1.3e-5 and below 1e-6.
        var curve = Curve(PathThrough(points, t => (2.5 * Math.Sin(t), 2.5 * Math.Cos(t))));
        Assert.Equal(1, curve.Length / (5 * Math.PI), tolerance);
        Assert.Equal(1, curve.Area / (6.25 * Math.PI), tolerance);
        Assert.Equal(0, curve.Centre.Norm, 1e-9);
    }

    [Fact]
    public void Path_GivenAnticlockwise_IsTheSameCurveWalkedClockwise()
    {
        (double East, double North) Bean(double t) => ((2.5 + 0.5 * Math.Cos(2 * t)) * Math.Sin(t), (2.2 + 0.3 * Math.Sin(3 * t)) * Math.Cos(t));
        var clockwise = Curve(PathThrough(11, Bean));
        var other = Curve(PathThrough(11, t => Bean(-t)));
        Assert.Equal(clockwise.Length, other.Length, 1e-11);
        Assert.Equal(clockwise.Area, other.Area, 1e-11);
        Assert.Equal(0, (clockwise.At(3.21) - other.At(3.21)).Norm, 1e-10);
    }

    [Fact]
    public void AnyCurve_StationsTangentsAndTurning_FitEachOther() =>
        // Property: central differences of the point give the tangent, of the tangent the curvature; turning is its integral; one lap turns 2 pi.
        Gen.Select(Houses.Plausible, Gen.Double.Unit).ForAll((house, share) =>
        {
            var curve = Curve(house);
            var station = share * curve.Length;
            const double h = 1e-5;
            var slope = 1 / (2 * h) * (curve.At(station + h) - curve.At(station - h));
            Assert.Equal(0, (slope - curve.Tangent(station)).Norm, 1e-4);
            Assert.Equal(1, slope.Norm, 1e-8);
            Assert.Equal(2 * Math.PI, curve.Turning(station, station + curve.Length), 1e-12);
            Assert.Equal(curve.Length, curve.OffsetArc(station, station + curve.Length, 0), 1e-12);
            Assert.Equal(0, (curve.At(station) - curve.At(station + curve.Length)).Norm, 1e-12);
            Assert.Equal(curve.Wrap(station), curve.Wrap(curve.FootOf(curve.At(station, 0.3), station + 0.1)), 1e-9);
        }, iter: Counts.Of(60, 2000));

    [Fact]
    public void AnyCurve_OffsetAreaAndLength_EqualAPolygonOfManyCorners() =>
        // Independent: shoelace area and perimeter of 20,000 corners; the error of an inscribed polygon is of the order of the square of its sides, 2e-6.
        Houses.Plausible.ForAll(house =>
        {
            var curve = Curve(house);
            const int N = 20_000;
            double area = 0, length = 0;
            for (var i = 0; i < N; i++)
            {
                var (a, b) = (curve.At(i * curve.Length / N, 0.4), curve.At((i + 1) * curve.Length / N, 0.4));
                area -= a.Cross(b) / 2;
                length += (b - a).Norm;
            }

            Assert.Equal(1, area / curve.OffsetArea(0.4), 1e-6);
            Assert.Equal(1, length / curve.OffsetLength(0.4), 1e-6);
        }, iter: Counts.Of(6, 100));

    [Fact]
    public void ZeroMark_OfAnyCurve_LiesOnTheZeroBearing() =>
        Houses.Plausible.ForAll(house =>
        {
            var curve = Curve(house);
            var miss = curve.BearingOf(curve.At(0)) - house.Plan.ZeroBearing.Radians;
            Assert.Equal(0, Math.IEEERemainder(miss, 2 * Math.PI), 1e-12);
        }, iter: Counts.Of(100, 2000));

    [Fact]
    public void Station_OfABearing_IsFoundAgainFromItsPoint() =>
        Gen.Select(Houses.Plausible, Gen.Double[0, 2 * Math.PI]).ForAll((house, bearing) =>
        {
            var curve = Curve(house);
            var station = Assert.Single(curve.StationsAt(bearing));
            Assert.Equal(0, Math.IEEERemainder(curve.BearingOf(curve.At(station)) - bearing, 2 * Math.PI), 1e-12);
        }, iter: Counts.Of(100, 2000));

    [Fact]
    public void DoglegPath_BearingThroughTheHollow_MeetsTheCurveThreeTimes()
    {
        // A C-shaped room whose peg stands in one arm: a ray across the mouth leaves, enters and leaves again.
        var house = Houses.Path([.. new (int East, int North)[] { (-3000, 3000), (3000, 3000), (3000, 1400), (-600, 1000), (-600, -1000), (3000, -1400), (3000, -3000), (-3000, -3000) }
            .Select(p => new PlanPosition(Length.FromMillimetres(p.East), Length.FromMillimetres(p.North)))]);
        var curve = Curve(house with { Plan = house.Plan with { Centre = new PlanPosition(Length.FromMillimetres(2000), Length.FromMillimetres(2200)) } });
        Assert.Equal(3, curve.StationsAt(Math.PI).Count);
    }
}
