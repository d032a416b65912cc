using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.WallTop;

/// <summary>Cuts the bond beam into straight pieces that follow the curve, with its joints clear of openings and of the legs of tees where it can be done.</summary>
internal static class BeamPieces
{
    /// <summary>A lap that nobody described is taken as 12 in when joints are placed, a leg as 4 in.</summary>
    private const double UsualLap = 0.3048, UsualLeg = 0.1016;

    private const double LongestPiece = 2.4;
    private const double Share = 0.2;
    private const int Marks = 360;

    /// <summary>
    /// As few pieces as keep the curve within a fifth of the beam's width of each piece's line (two fifths for a piece over an opening, where nothing sits on it), none over 8 ft. Equal by arc where
    /// nothing is in the way; otherwise joints stand only where their laps are over cob and beside no leg, the pieces as even as that leaves them; then over headers too; equal again where it cannot be done.
    /// </summary>
    public static Sequence<BeamPiece> Of(HouseGeometry geometry)
    {
        if (geometry.House.BondBeam is not { } beam)
        {
            return [];
        }

        var top = geometry.Wall.Top.Metres;
        var offset = (geometry.Wall.InsideOffset(top) + geometry.Wall.OutsideOffset(top)) / 2 + beam.Offset.Metres;
        var curve = geometry.Curve;
        var lap = beam.Lap?.Metres ?? UsualLap;
        var ways = InTheWay(geometry, lap / 2);
        for (var n = Math.Max(3, (int)Math.Ceiling(curve.OffsetLength(offset) / LongestPiece)); n <= 400; n++)
        {
            double[] even = [.. Enumerable.Range(0, n).Select(k => curve.Length * k / n)];
            if (Cut(geometry, offset, even) is var equal && equal.All(p => Math.Abs(p.Rise) <= Share * beam.Width.Metres))
            {
                if (even.All(s => IsClear(curve, ways, s)))
                {
                    return equal.ToSequence();
                }

                // Points at twice as many marks as joints may take, so that the middle between any two joints is one of them.
                PlanPoint[] points = [.. Enumerable.Range(0, 2 * Marks).Select(k => curve.At(k * (curve.Length / Marks) / 2, offset))];
                return (Clear(geometry, points, beam.Width.Metres, lap, ways) ?? Clear(geometry, points, beam.Width.Metres, lap, InTheWay(geometry, lap / 2, headed: false))) is { } joints
                    ? Cut(geometry, offset, joints).ToSequence()
                    : equal.ToSequence();
            }
        }

        return [];
    }

    /// <summary>Joints at clear places once round: the fewest pieces, of those the most even. Null where no such ring closes.</summary>
    private static double[]? Clear(HouseGeometry geometry, PlanPoint[] points, double width, double lap, List<Span> ways)
    {
        var curve = geometry.Curve;
        var step = curve.Length / Marks;
        var clear = Enumerable.Range(0, Marks).Select(k => IsClear(curve, ways, k * step)).ToArray();
        var over = Enumerable.Range(0, 2 * Marks).Select(k => geometry.Openings.Any(o => curve.Wrap(k * step / 2 - o.Widest.From) <= o.Widest.Width)).ToArray();
        var reach = Math.Min(Marks, (int)Math.Ceiling(1.2 * LongestPiece / step));
        var pieces = Enumerable.Range(0, Marks).Select(k => clear[k] ? From(k) : []).ToArray();
        (double Cost, int[] Joints)? best = null;
        for (var start = 0; start < reach; start++)
        {
            if (clear[start] && Round(start) is { } found && (best is null || found.Cost < best.Value.Cost - 1e-9))
            {
                best = found;
            }
        }

        return best?.Joints.Select(k => k * step).ToArray();

        (double Cost, int[] Joints)? Round(int start)
        {
            var cost = new double[Marks + 1];
            var from = new int[Marks + 1];
            Array.Fill(cost, double.PositiveInfinity);
            cost[0] = 0;
            for (var i = 0; i < Marks; i++)
            {
                if (double.IsPositiveInfinity(cost[i]))
                {
                    continue;
                }

                foreach (var (marks, chord) in pieces[(start + i) % Marks])
                {
                    if (i + marks <= Marks && cost[i] + 1000 + chord * chord < cost[i + marks])
                    {
                        (cost[i + marks], from[i + marks]) = (cost[i] + 1000 + chord * chord, i);
                    }
                }
            }

            if (double.IsPositiveInfinity(cost[Marks]))
            {
                return null;
            }

            List<int> joints = [];
            for (var j = from[Marks]; ; j = from[j])
            {
                joints.Add(start + j);
                if (j == 0)
                {
                    break;
                }
            }

            joints.Reverse();
            return joints.Count >= 3 ? (cost[Marks], [.. joints]) : null;
        }

        // The pieces that may begin at a mark are the same for every ring that is tried: how many marks long, and their chords.
        (int Marks, double Chord)[] From(int mark) =>
            [.. Enumerable.Range(1, reach).Where(length => clear[(mark + length) % Marks]).Select(length => (length, Piece(mark, mark + length))).Where(p => p.Item2 is not null).Select(p => (p.length, p.Item2!.Value))];

        double? Piece(int i, int j)
        {
            PlanPoint a = points[2 * i % (2 * Marks)], along = points[2 * j % (2 * Marks)] - a;
            var (chord, middle) = (along.Norm, (i + j) % (2 * Marks));
            return chord >= 1.2 * lap && chord <= LongestPiece && Math.Abs(along.Cross(points[middle] - a)) / chord <= (over[middle] ? 2 : 1) * Share * width ? chord : null;
        }
    }

    private static bool IsClear(PlanCurve curve, List<Span> ways, double station) =>
        ways.TrueForAll(way => curve.Wrap(station - way.From) is var inside && (inside <= 1e-9 || inside >= way.Width - 1e-9));

    /// <summary>Stretches where the middle of a lap may not stand: openings, and legs of tees, widened by half a lap.</summary>
    private static List<Span> InTheWay(HouseGeometry geometry, double half, bool headed = true)
    {
        var leg = (geometry.House.Tees?.Timber?.Metres ?? UsualLeg) / 2;
        return
        [
            .. geometry.Openings.Where(o => headed || o.Header is null).Select(o => new Span(o.Widest.From - half, o.Widest.To + half)),
            .. geometry.Tees.Select(t => new Span(t.Station - leg - half, t.Station + leg + half)),
        ];
    }

    /// <summary>From a joint to the nearest edge of an opening or side of a leg, m; 0 over one.</summary>
    private static double Reach(HouseGeometry geometry, double station)
    {
        var reach = geometry.Curve.Length;
        foreach (var way in InTheWay(geometry, 0))
        {
            var inside = geometry.Curve.Wrap(station - way.From);
            reach = Math.Min(reach, inside <= way.Width ? 0 : Math.Min(inside - way.Width, geometry.Curve.Length - inside));
        }

        return reach;
    }

    private static BeamPiece[] Cut(HouseGeometry geometry, double offset, double[] stations)
    {
        var curve = geometry.Curve;
        var count = stations.Length;
        double Station(int k) => k < count ? stations[k] : stations[k - count] + curve.Length;
        var corners = stations.Select(s => curve.At(s, offset)).ToArray();
        double Mitre(int k)
        {
            PlanPoint along = corners[(k + 1) % count] - corners[k], next = corners[(k + 2) % count] - corners[(k + 1) % count];
            return -Math.Atan2(along.Cross(next), along.Dot(next)) / 2;
        }

        var beam = geometry.House.BondBeam!;
        return [.. Enumerable.Range(0, count).Select(k =>
        {
            PlanPoint a = corners[k], along = corners[(k + 1) % count] - a;
            var middle = curve.At((Station(k) + Station(k + 1)) / 2, offset);
            var rise = along.Cross(middle - a) / along.Norm;
            var longest = along.Norm + beam.Width.Metres / 2 * Math.Abs(Math.Tan(Mitre((k + count - 1) % count)) + Math.Tan(Mitre(k)));
            return new BeamPiece(k + 1, curve.OffsetArc(0, Station(k), offset), curve.OffsetArc(0, Station(k + 1), offset), along.Norm, Mitre(k), rise)
            {
                Reach = Reach(geometry, Station(k + 1)), Corner = a, Longest = longest, CutTo = longest + (beam.Lap?.Metres ?? 0),
            };
        })];
    }
}
