using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Structure;

/// <summary>Where on the unrolled wall a number of a picture is at or above a level: pieces that lie side by side and cover the area once, for whoever draws it.</summary>
/// <remarks>
/// Between the middles of four neighbouring stacks the number is taken to change evenly, so that bands have smooth edges; into openings and timber it is carried on from what is nearest, and whoever draws puts
/// these over it.
/// </remarks>
public static class StressBands
{
    /// <summary>Pieces, each in order round it; stations may pass the ring's length.</summary>
    /// <param name="picture">The wall.</param>
    /// <param name="numbers">One for each stack of it.</param>
    /// <param name="level">From which on.</param>
    public static Sequence<Sequence<WallPoint>> Above(WallPicture picture, Sequence<double> numbers, double level)
    {
        var (around, up) = (picture.Stations.Count - 1, picture.Up);
        var filled = Filled(picture, numbers);
        var ring = picture.Stations[around] - picture.Stations[0];
        var pieces = new List<Sequence<WallPoint>>();
        for (var row = -1; row < up; row++)
        {
            var (low, high) = (Height(row), Height(row + 1));
            for (var i = 0; i < around; i++)
            {
                (double S, double Z, double V)[] corners = [At(i, row, low), At(i + 1, row, low), At(i + 1, row + 1, high), At(i, row + 1, high)];
                if (corners.All(c => c.V >= level))
                {
                    // A run of whole pieces is one.
                    var to = i + 1;
                    while (to < around && At(to + 1, row, low).V >= level && At(to + 1, row + 1, high).V >= level)
                    {
                        to++;
                    }

                    pieces.Add([new(Station(i), low), new(Station(to), low), new(Station(to), high), new(Station(i), high)]);
                    i = to - 1;
                }
                else if (corners.Any(c => c.V >= level))
                {
                    pieces.Add(Cut(corners, level).ToSequence());
                }
            }
        }

        return pieces.ToSequence();

        double Station(int column) => (picture.Stations[column % around] + picture.Stations[column % around + 1]) / 2 + column / around * ring;

        double Height(int row) => row < 0 ? picture.Heights[0] : row >= up ? picture.Heights[up] : (picture.Heights[row] + picture.Heights[row + 1]) / 2;

        (double S, double Z, double V) At(int column, int row, double height) => (Station(column), height, filled[column % around * up + Math.Clamp(row, 0, up - 1)]);
    }

    /// <summary>The numbers with those of stacks without cob taken from their neighbours, ring by ring outward.</summary>
    /// <param name="picture">The wall.</param>
    /// <param name="numbers">One for each stack of it.</param>
    public static double[] Filled(WallPicture picture, Sequence<double> numbers)
    {
        ArgumentNullException.ThrowIfNull(picture);
        var (around, up) = (picture.Stations.Count - 1, picture.Up);
        var (values, known) = (numbers.ToArray(), picture.Share.Select(s => s > 0).ToArray());
        while (known.Any(k => !k) && known.Any(k => k))
        {
            var before = (bool[])known.Clone();
            for (var stack = 0; stack < values.Length; stack++)
            {
                if (before[stack])
                {
                    continue;
                }

                var (i, k) = (stack / up, stack % up);
                int[] beside = [.. ((int, int)[])[(i + 1, k), (i + around - 1, k), (i, k + 1), (i, k - 1)] is var four
                    ? four.Where(n => n.Item2 >= 0 && n.Item2 < up).Select(n => n.Item1 % around * up + n.Item2).Where(n => before[n]) : []];
                if (beside.Length > 0)
                {
                    (values[stack], known[stack]) = (beside.Average(n => values[n]), true);
                }
            }
        }

        return values;
    }

    private static IEnumerable<WallPoint> Cut((double S, double Z, double V)[] corners, double level)
    {
        for (var n = 0; n < corners.Length; n++)
        {
            var (a, b) = (corners[n], corners[(n + 1) % corners.Length]);
            if (a.V >= level)
            {
                yield return new WallPoint(a.S, a.Z);
            }

            if (a.V >= level != b.V >= level)
            {
                var share = (level - a.V) / (b.V - a.V);
                yield return new WallPoint(a.S + share * (b.S - a.S), a.Z + share * (b.Z - a.Z));
            }
        }
    }
}
