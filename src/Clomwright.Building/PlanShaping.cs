using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>One plan drawn as another shape of about the same size, and the points of a free path. What is drawn by hand is rounded to what a tape reads.</summary>
public static class PlanShaping
{
    /// <summary>The fewest points that make a closed curve with a shape of its own.</summary>
    public const int PointsLeast = 4;

    private const int PointsOfPath = 8;

    /// <summary>The words of the shapes, as the house file has them.</summary>
    public static Sequence<string> Shapes => ["round", "oval", "rounded-rectangle", "path"];

    /// <summary>The word of a plan's shape.</summary>
    public static string ShapeOf(Plan plan) => plan switch { Plan.Round => "round", Plan.Oval => "oval", Plan.RoundedRectangle => "rounded-rectangle", _ => "path" };

    /// <summary>The plan as another shape: as long and as wide, with the same axis, zero mark and peg. The same plan for a shape that it has, or a word that is none.</summary>
    public static Plan As(Plan plan, string shape, UnitSystem units)
    {
        if (shape == ShapeOf(plan))
        {
            return plan;
        }

        var (length, width) = Across(plan, units);
        Plan? made = shape switch
        {
            "round" => new Plan.Round(Taped(Length.Nearest((length + width).Metres / 2), units)),
            "oval" => new Plan.Oval(length, width),
            "rounded-rectangle" => new Plan.RoundedRectangle(length, width, Taped(Length.Nearest(width.Metres / 4), units)),
            "path" => new Plan.Path(PointsOn(plan, units)),
            _ => null,
        };
        // A drawn path may lie anywhere about its origin, the other shapes lie round it: a peg of the path is none of theirs.
        return made is null ? plan : made with { Bearing = plan.Bearing, ZeroBearing = plan.ZeroBearing, Centre = plan is Plan.Path ? null : plan.Centre };
    }

    /// <summary>The path with a point moved; the same where there is no such point.</summary>
    public static Plan.Path Moved(Plan.Path path, int point, PlanPosition to) => point < 0 || point >= path.Points.Count ? path : path with { Points = path.Points.With(point, to) };

    /// <summary>The path with a point put halfway between a point and the next; it is then dragged to where it shall be.</summary>
    public static Plan.Path Added(Plan.Path path, int after, UnitSystem units)
    {
        if (after < 0 || after >= path.Points.Count)
        {
            return path;
        }

        var (one, next) = (path.Points[after], path.Points[(after + 1) % path.Points.Count]);
        // A little outward of the straight line, so that the curve keeps its belly there: an eighth of the distance.
        var (east, north) = ((next.East - one.East).Metres, (next.North - one.North).Metres);
        var put = Taped((one.East + next.East).Metres / 2 - north / 8, (one.North + next.North).Metres / 2 + east / 8, units);
        return path with { Points = [.. path.Points.Take(after + 1), put, .. path.Points.Skip(after + 1)] };
    }

    /// <summary>The path without a point; the same where it would have too few.</summary>
    public static Plan.Path Without(Plan.Path path, int point) =>
        path.Points.Count <= PointsLeast || point < 0 || point >= path.Points.Count ? path : path with { Points = path.Points.Without(point) };

    /// <summary>A place on the ground on the tape's marks.</summary>
    public static PlanPosition Taped(double east, double north, UnitSystem units) => new(Taped(Length.Nearest(east), units), Taped(Length.Nearest(north), units));

    private static Length Taped(Length length, UnitSystem units) => length.RoundedTo(units == UnitSystem.Imperial ? Length.FromInches(1) : Length.FromMillimetres(10));

    private static (Length Length, Length Width) Across(Plan plan, UnitSystem units)
    {
        switch (plan)
        {
            case Plan.Round round:
                return (round.InsideDiameter, round.InsideDiameter);
            case Plan.Oval oval:
                return (oval.InsideLength, oval.InsideWidth);
            case Plan.RoundedRectangle rectangle:
                return (rectangle.InsideLength, rectangle.InsideWidth);
            default:
                var path = (Plan.Path)plan;
                var (sin, cos) = Math.SinCos(path.Bearing.Radians);
                var along = path.Points.Select(p => p.East.Metres * sin + p.North.Metres * cos).ToList();
                var over = path.Points.Select(p => p.East.Metres * cos - p.North.Metres * sin).ToList();
                return (Taped(Length.Nearest(along.Max() - along.Min()), units), Taped(Length.Nearest(over.Max() - over.Min()), units));
        }
    }

    /// <summary>Eight points on the curve, clockwise from the end of its long axis.</summary>
    private static Sequence<PlanPosition> PointsOn(Plan plan, UnitSystem units)
    {
        var (length, width) = Across(plan, units);
        var (sin, cos) = Math.SinCos(plan.Bearing.Radians);
        return [.. Enumerable.Range(0, PointsOfPath).Select(i =>
        {
            var (along, over) = OnCurve(plan, Math.Tau * i / PointsOfPath, length.Metres / 2, width.Metres / 2);
            return Taped(along * sin + over * cos, along * cos - over * sin, units);
        })];
    }

    /// <summary>A point along and across the long axis, m; a rounded corner is met at the middle of its arc.</summary>
    private static (double Along, double Over) OnCurve(Plan plan, double turn, double a, double b)
    {
        var (over, along) = Math.SinCos(turn);
        if (plan is not Plan.RoundedRectangle rectangle)
        {
            return (a * along, b * over);
        }

        var corner = rectangle.CornerRadius.Metres * (1 - Math.Sqrt(0.5));
        return (Math.Abs(along) > 1e-9 && Math.Abs(over) > 1e-9) ? (Math.Sign(along) * (a - corner), Math.Sign(over) * (b - corner))
            : (Math.Abs(along) < 1e-9 ? 0 : Math.Sign(along) * a, Math.Abs(over) < 1e-9 ? 0 : Math.Sign(over) * b);
    }
}
