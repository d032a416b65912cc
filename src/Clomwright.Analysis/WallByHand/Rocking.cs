namespace Clomwright.Analysis.WallByHand;

/// <summary>Walls without tension that turn as rigid bodies, SI. Lines are measured in the direction in which the wall is pushed.</summary>
public static class Rocking
{
    /// <summary>alpha_0 of a wall free at its top: (W t/2 + N d)/(W h/2 + N h). Without a load on it t/h.</summary>
    /// <param name="weight">W, N.</param>
    /// <param name="thickness">t, m.</param>
    /// <param name="height">h, m.</param>
    /// <param name="load">N: on its top, shaken with it, N.</param>
    /// <param name="arm">d: of that load from the edge it turns about, m.</param>
    public static double Free(double weight, double thickness, double height, double load = 0, double arm = 0) =>
        (weight * thickness / 2 + load * arm) / (weight * height / 2 + load * height);

    /// <summary>How far the edge that a wall turns about lies inside its face: N/(2 k f b), the depth whose middle holds N, m.</summary>
    /// <param name="load">N: all that stands on it, N.</param>
    /// <param name="strength">f, Pa.</param>
    /// <param name="width">b, m.</param>
    public static double Crushed(double load, double strength, double width) => Math.Max(0, load) / (2 * Block * strength * width);

    /// <summary>Share of the strength that an even block of pressure has: 0.85.</summary>
    public const double Block = 0.85;

    /// <summary>Even push on each metre of height, N/m, at which a wall held at its top bows out with its hinge a depth under the top.</summary>
    /// <remarks>
    /// Moments of all of it about the edge at its foot give what holds its top; moments of the part above the hinge about the hinge then give
    /// q = 2 (N (y_N - y_h) + W_u (y_u - y_h) + x/h (N (y_b - y_N) + W (y_b - y_W)))/(x (h - x)). Without a load and with even thickness that is 2 W t/(h (h - x)): 4 t/h of the weight with the hinge
    /// half-way up, and 2 t/h with the hinge just under the top.
    /// </remarks>
    /// <param name="wall">The wall.</param>
    /// <param name="depth">x, m.</param>
    public static double Held(BowedWall wall, double depth)
    {
        var (x, h) = (depth, wall.Height);
        var (upper, line) = wall.Above(x);
        var hinge = wall.Hinge(x);
        return 2 * (wall.Load * (wall.LoadLine - hinge) + upper * (line - hinge) + x / h * (wall.Load * (wall.Edge - wall.LoadLine) + wall.Weight * (wall.Edge - wall.WeightLine))) / (x * (h - x));
    }

    /// <summary>The same with the hinge where the wall is weakest.</summary>
    public static (double Push, double Depth) Weakest(BowedWall wall)
    {
        const int Steps = 60;
        var best = Enumerable.Range(1, Steps - 1).Select(i => wall.Height * i / Steps).Append(1e-6 * wall.Height).MinBy(x => Held(wall, x));
        var (low, high) = (Math.Max(1e-6 * wall.Height, best - wall.Height / Steps), Math.Min(wall.Height * (1 - 1e-6), best + wall.Height / Steps));
        double a = Left(), b = Right(), atA = Held(wall, a), atB = Held(wall, b);
        for (var i = 0; i < 40; i++)
        {
            if (atA <= atB)
            {
                (high, b, atB) = (b, a, atA);
                (a, atA) = (Left(), Held(wall, Left()));
            }
            else
            {
                (low, a, atA) = (a, b, atB);
                (b, atB) = (Right(), Held(wall, Right()));
            }
        }

        var depth = (low + high) / 2;
        return (Held(wall, depth), depth);

        // Golden section: of the two places looked at one is looked at again in what is left.
        double Left() => high - (high - low) * Golden;
        double Right() => low + (high - low) * Golden;
    }

    private const double Golden = 0.6180339887498949;
}

/// <summary>A wall held at its foot and at its top. Lines in m in the direction of the push.</summary>
/// <param name="Height">h, m.</param>
/// <param name="Load">N: on its top, N.</param>
/// <param name="LoadLine">y_N.</param>
/// <param name="Weight">W: its own, N.</param>
/// <param name="WeightLine">y_W.</param>
/// <param name="Edge">y_b: the edge at its foot that it turns about, on the side it is pushed to.</param>
/// <param name="Above">Weight of the part above a depth under the top, N, and its line.</param>
/// <param name="Hinge">y_h: the line of a hinge at a depth under the top, on the side that it is pushed from.</param>
public sealed record BowedWall(double Height, double Load, double LoadLine, double Weight, double WeightLine, double Edge, Func<double, (double Weight, double Line)> Above, Func<double, double> Hinge);
