using Clomwright.Geometry;
using Clomwright.Numerics.Frames;
using Clomwright.Numerics.Solid;

namespace Clomwright.Analysis.Structure;

/// <summary>How the layout of the openings lets the wall turn when it is pushed: where its stiffness has its middle, where what shakes has it, and by how much more one side of the top moves than the mean of both.</summary>
/// <param name="Stiffness">Centre of stiffness: a push along any line through it moves the top without turning it.</param>
/// <param name="Mass">Centre of what shakes, heights counted.</param>
/// <param name="Bearing">Direction of shaking in which one side moves most over the mean, radians.</param>
/// <param name="Ratio">There: the side that moves most over the mean of both, the accidental 5 % of the width taken to the worse side.</param>
/// <param name="RatioStill">The same without the accidental part.</param>
/// <param name="Weakest">Bearing along which the top moves most for the same push, radians.</param>
/// <param name="Sway">How much more it moves there than across it.</param>
public sealed record WallLayout(PlanPoint Stiffness, PlanPoint Mass, double Bearing, double Ratio, double RatioStill, double Weakest, double Sway)
{
    private const int Directions = 24;

    /// <summary>Share of the width that ASCE 7-16 12.8.4.2 takes the mass off its place.</summary>
    private const double Accidental = 0.05;

    /// <summary>Distance between both centres, m.</summary>
    public double Apart => (Stiffness - Mass).Norm;

    /// <summary>The layout of a solved wall whose own weight shakes, growing with height; of the roof what the landings carry.</summary>
    internal static WallLayout Of(WallBody body, BasisLoads basis, IReadOnlyList<SolidAnswer> answers, double roofWeight)
    {
        var (geometry, centre) = (body.Geometry, body.Geometry.Curve.Centre);
        var onRoof = roofWeight / Steps.UsUnits.Gravity * (geometry.Wall.Top - geometry.Wall.Base).Metres;
        var points = Top(body);
        Moved At(int unit) => Fit(points, answers[unit], centre);
        var (x, y, turn) = (At(basis.WallX) + onRoof * At(basis.RoofX), At(basis.WallY) + onRoof * At(basis.RoofY), At(basis.WallTwist));
        var force = basis.All[basis.WallX].Resultant.X + onRoof;
        var moment = basis.TwistMoment;
        var mass = centre + 1 / force * new PlanPoint(basis.MomentOf(basis.WallY) + onRoof * basis.MomentOf(basis.RoofY), -basis.MomentOf(basis.WallX) - onRoof * basis.MomentOf(basis.RoofX));
        var stiffness = mass + moment / (turn.Turn * force) * new PlanPoint(-y.Turn, x.Turn);
        var (worst, still, where) = (0.0, 0.0, 0.0);
        for (var d = 0; d < Directions; d++)
        {
            var bearing = Math.PI * d / Directions;
            var (sin, cos) = Math.SinCos(bearing);
            var pushed = sin * x + cos * y;
            var lever = points.Select(p => -(p.Point.East - centre.East) * cos + (p.Point.North - centre.North) * sin).ToArray();
            var width = lever.Max() - lever.Min();
            var accident = Accidental * width * force / moment;
            var quiet = Ratio(pushed);
            still = Math.Max(still, quiet);
            var ratio = Math.Max(Ratio(pushed + accident * turn), Ratio(pushed + -accident * turn));
            (worst, where) = ratio > worst ? (ratio, bearing) : (worst, where);

            // A turn of theta moves a point along the bearing by -theta times its lever.
            double Ratio(Moved moved)
            {
                var along = moved.East * sin + moved.North * cos;
                var (one, other) = (along - moved.Turn * lever.Max(), along - moved.Turn * lever.Min());
                return Math.Max(Math.Abs(one), Math.Abs(other)) / Math.Max(Math.Abs(one + other) / 2, 1e-300);
            }
        }

        var sways = Enumerable.Range(0, Directions).Select(d => Sways(Math.PI * d / Directions)).ToArray();
        var weak = Array.IndexOf(sways, sways.Max());
        return new WallLayout(stiffness, mass, where, worst, still, Math.PI * weak / Directions, sways[weak] / sways[(weak + Directions / 2) % Directions]);

        double Sways(double bearing)
        {
            var (sin, cos) = Math.SinCos(bearing);
            var moved = sin * x + cos * y;
            return Math.Abs(moved.East * sin + moved.North * cos);
        }
    }

    private static (int Node, PlanPoint Point)[] Top(WallBody body) =>
    [
        .. Enumerable.Range(0, body.Grid.Around).Select(i => Enumerable.Range(0, body.Grid.Through + 1).Select(j => body.Grid.Node(i, body.CobRows, j)).ToArray()[(body.Grid.Through + 1) / 2])
            .Select(node => (node, new PlanPoint(body.Grid.Point(node).X, body.Grid.Point(node).Y))),
    ];

    /// <summary>The stiff movement nearest to that of the wall's top (least squares), told at the plan's centre.</summary>
    private static Moved Fit((int Node, PlanPoint Point)[] points, SolidAnswer answer, PlanPoint centre)
    {
        var middle = new PlanPoint(points.Average(p => p.Point.East), points.Average(p => p.Point.North));
        double east = 0, north = 0, turned = 0, spread = 0;
        foreach (var (node, point) in points)
        {
            var (u, r) = (answer.Displacement.At(node), point - middle);
            (east, north) = (east + u.X / points.Length, north + u.Y / points.Length);
            (turned, spread) = (turned + r.East * u.Y - r.North * u.X, spread + r.Dot(r));
        }

        var turn = turned / spread;
        var back = centre - middle;
        return new Moved(east - turn * back.North, north + turn * back.East, turn);
    }

    /// <summary>A movement in plan: m, m, and radians from east to north.</summary>
    private readonly record struct Moved(double East, double North, double Turn)
    {
        public static Moved operator +(Moved a, Moved b) => new(a.East + b.East, a.North + b.North, a.Turn + b.Turn);

        public static Moved operator *(double k, Moved a) => new(k * a.East, k * a.North, k * a.Turn);
    }
}
