using Clomwright.Geometry;

namespace Clomwright.Analysis.WallByHand;

/// <summary>The wall top as one flat plate on pieces of wall as stiff as they are strong: how a sideways force is shared.</summary>
/// <remarks>Every share balances the force and its twist about the middle, whatever the stiffness: that pieces which give way slowly hold it is the safe theorem of plasticity.</remarks>
internal sealed class Plate
{
    private readonly IReadOnlyList<Piece> pieces;
    private readonly double[,] flexible;

    private Plate(IReadOnlyList<Piece> pieces, double[,] flexible) => (this.pieces, this.flexible) = (pieces, flexible);

    /// <summary>Null where the pieces cannot hold a force from every side with its twist.</summary>
    public static Plate? Of(IReadOnlyList<Piece> pieces)
    {
        var stiff = new double[3, 3];
        foreach (var piece in pieces)
        {
            foreach (var (holds, row) in Rows(piece))
            {
                for (var i = 0; i < 3; i++)
                {
                    for (var j = 0; j < 3; j++)
                    {
                        stiff[i, j] += holds * row[i] * row[j];
                    }
                }
            }
        }

        return Inverse(stiff) is { } inverse ? new Plate(pieces, inverse) : null;
    }

    /// <summary>The share of a force of one that comes to each piece, along and across it.</summary>
    /// <param name="direction">Radians clockwise from north, to where it pushes.</param>
    /// <param name="past">Its turning moment about the middle, m.</param>
    public (double Along, double Across)[] Shares(double direction, double past)
    {
        var (sin, cos) = Math.SinCos(direction);
        double[] push = [sin, cos, past];
        double[] moves = [.. Enumerable.Range(0, 3).Select(i => flexible[i, 0] * push[0] + flexible[i, 1] * push[1] + flexible[i, 2] * push[2])];
        return [.. pieces.Select(p =>
        {
            double[] parts = [.. Rows(p).Select(r => r.Holds * (r.Row[0] * moves[0] + r.Row[1] * moves[1] + r.Row[2] * moves[2]))];
            return (parts[0], parts[1]);
        })];
    }

    /// <summary>Of every direction, and of passing on either side, what uses each stretch's most used piece most: both shares without sign.</summary>
    public IEnumerable<(Piece Piece, double Along, double Across)> Worst(int directions, double past)
    {
        var most = new (double Along, double Across)[pieces.Count];
        for (var k = 0; k < directions; k++)
        {
            foreach (var side in past > 0 ? (double[])[-past, past] : [0])
            {
                var shares = Shares(2 * Math.PI * k / directions, side);
                for (var i = 0; i < most.Length; i++)
                {
                    var (along, across) = (Math.Abs(shares[i].Along), Math.Abs(shares[i].Across));
                    most[i] = Use(pieces[i], along, across) > Use(pieces[i], most[i].Along, most[i].Across) ? (along, across) : most[i];
                }
            }
        }

        return pieces.Select((p, i) => (Piece: p, most[i].Along, most[i].Across)).GroupBy(x => x.Piece.Stretch).Select(g => g.MaxBy(x => Use(x.Piece, x.Along, x.Across)));
    }

    /// <summary>Both shares together: the straight line between what it holds each way lies inside what it holds.</summary>
    private static double Use(Piece piece, double along, double across) => along / Math.Max(piece.Holds, 1e-9) + across / Math.Max(piece.HoldsAcross, 1e-9);

    private static (double Holds, double[] Row)[] Rows(Piece piece) =>
        [(piece.Holds, [piece.Along.East, piece.Along.North, piece.ArmAlong]), (piece.HoldsAcross, [piece.Across.East, piece.Across.North, piece.ArmAcross])];

    private static double[,]? Inverse(double[,] m)
    {
        double Minor(int i, int j)
        {
            int a = (i + 1) % 3, b = (i + 2) % 3, c = (j + 1) % 3, d = (j + 2) % 3;
            return m[a, c] * m[b, d] - m[a, d] * m[b, c];
        }

        var determinant = m[0, 0] * Minor(0, 0) + m[0, 1] * Minor(0, 1) + m[0, 2] * Minor(0, 2);
        var size = m[0, 0] * m[1, 1] * m[2, 2];
        if (!(size > 0) || !(determinant > 1e-6 * size))
        {
            return null;
        }

        var inverse = new double[3, 3];
        for (var i = 0; i < 3; i++)
        {
            for (var j = 0; j < 3; j++)
            {
                inverse[i, j] = Minor(j, i) / determinant;
            }
        }

        return inverse;
    }
}

/// <summary>The middle of the plan and its greatest width.</summary>
internal static class PlanMiddle
{
    private const int Points = 180;

    /// <summary>Centroid of what the inside curve encloses, and the farthest two points of the outside face lie apart, m.</summary>
    public static (PlanPoint Middle, double Width) Of(HouseGeometry geometry)
    {
        var curve = geometry.Curve;
        PlanPoint[] ring = [.. Enumerable.Range(0, Points).Select(i => curve.At(curve.Length * i / Points))];
        double area = 0, east = 0, north = 0;
        for (var i = 0; i < Points; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % Points]);
            var cross = a.Cross(b);
            (area, east, north) = (area + cross, east + (a.East + b.East) * cross, north + (a.North + b.North) * cross);
        }

        var outside = Outside(geometry);
        return (new PlanPoint(east / (3 * area), north / (3 * area)), Enumerable.Range(0, 36).Select(k => Width(outside, Math.PI * k / 36)).Max());
    }

    /// <summary>Points on the outside face at the wall base.</summary>
    public static PlanPoint[] Outside(HouseGeometry geometry) =>
        [.. Enumerable.Range(0, Points).Select(i => geometry.Curve.At(geometry.Curve.Length * i / Points, geometry.Wall.OutsideOffset(geometry.Wall.Base.Metres)))];

    private static double Width(PlanPoint[] points, double direction)
    {
        var (sin, cos) = Math.SinCos(direction);
        return points.Max(p => p.East * sin + p.North * cos) - points.Min(p => p.East * sin + p.North * cos);
    }
}
