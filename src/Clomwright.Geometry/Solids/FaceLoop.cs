using Clomwright.Geometry.Cuts;

namespace Clomwright.Geometry.Solids;

/// <summary>The outline of a hole where it meets one face: up its first jamb, over the head, down the other, back along the sill. Stations are not wrapped.</summary>
/// <param name="Along">Station of each corner, m.</param>
/// <param name="Up">Height of each corner, m.</param>
/// <param name="Lines">Place of each corner among the upright lines of its face, a lap of the ring further for each turn; filled by <see cref="FaceGrid"/>.</param>
internal sealed record FaceLoop(double[] Along, double[] Up, int[] Lines);

/// <summary>A point between two faces; where there is none the one of the face that is named.</summary>
internal readonly record struct Between(SpacePoint? Point, bool AtInside = false);

/// <summary>A hole through a ring or a recess in it, ready to be cut: its outline on each face that it meets and what lies between.</summary>
internal sealed record RingHole
{
    private const int ArcSteps = 16;

    /// <summary>On the inside face; null where it does not come through there.</summary>
    public FaceLoop? Inside { get; private init; }

    /// <summary>On the outside face.</summary>
    public FaceLoop? Outside { get; private init; }

    /// <summary>For each corner the points between the faces, from inside outward: the frame's planes of a splayed hole, or the back of a recess.</summary>
    public required Between[][] Between { get; init; }

    /// <summary>Which side of each outline is cut off at the bottom or the top of the ring: side n runs from corner n to the next.</summary>
    public required bool[] IsCut { get; init; }

    /// <summary>Where it stands, m.</summary>
    public required double Middle { get; init; }

    /// <summary>Corners of the side that is cut off at the bottom, first jamb and second; null where none is.</summary>
    public (int First, int Second)? Bottom { get; private init; }

    /// <summary>The same at the top.</summary>
    public (int First, int Second)? Top { get; private init; }

    /// <summary>An opening; null where it does not meet this ring.</summary>
    public static RingHole? Through(PlanCurve curve, Shaft shaft, Outline outline, Band ring)
    {
        if (Corners(outline, ring) is not { } all)
        {
            return null;
        }

        var (inside, outside) = (On(shaft, all, ring.InsideAt), On(shaft, all, ring.OutsideAt));
        if (inside is null || outside is null)
        {
            return null;
        }

        var half = shaft.HalfWidthAt((shaft.FrameInside + shaft.FrameOutside) / 2);
        double[] planes =
        [
            .. shaft.HalfWidthAt(shaft.FrameInside - 1) > half ? [shaft.FrameInside] : (double[])[],
            .. shaft.HalfWidthAt(shaft.FrameOutside + 1) > half ? [shaft.FrameOutside] : (double[])[],
        ];
        double Deep(double offset, double station) => shaft.Local(curve.At(station, offset)).W;
        Between Held(int n, double w)
        {
            // Where a plane of the frame lies before or behind a face, the reveal begins at that face.
            var (share, height) = all.Corners[n];
            return w < Deep(ring.InsideAt(height), inside.Along[n]) + 1e-6 ? new(null, true)
                : w > Deep(ring.OutsideAt(height), outside.Along[n]) - 1e-6 ? new(null)
                : new(SpacePoint.Of(shaft.Plan(share * half, w), height));
        }

        Between[][] between = [.. all.Corners.Select((_, n) => planes.Select(w => Held(n, w)).ToArray())];
        return new RingHole { Inside = inside, Outside = outside, Between = between, IsCut = all.IsCut, Middle = shaft.Middle.Station, Bottom = all.Bottom, Top = all.Top };
    }

    /// <summary>A niche from one face to a plane; null where it does not lie in this ring.</summary>
    public static RingHole? Recess(Shaft shaft, Outline outline, Band ring, double halfWidth, bool fromInside, double back)
    {
        // A niche that stands just on the bottom of the cob keeps a film under it, so that the body stays closed.
        const double film = 1e-4;
        if (Corners(outline, ring with { Bottom = ring.Bottom + film, Top = ring.Top - film }, cut: false) is not { } all || On(shaft, all, fromInside ? ring.InsideAt : ring.OutsideAt) is not { } loop)
        {
            return null;
        }

        return new RingHole
        {
            Inside = fromInside ? loop : null, Outside = fromInside ? null : loop, IsCut = all.IsCut, Middle = shaft.Middle.Station,
            Between = [.. all.Corners.Select(c => (Between[])[new(SpacePoint.Of(shaft.Plan(c.Share * halfWidth, back), c.Height))])],
        };
    }

    private sealed record Round((double Share, double Height)[] Corners, bool[] IsCut, (int First, int Second)? Bottom, (int First, int Second)? Top);

    private static Round? Corners(Outline outline, Band ring, bool cut = true)
    {
        const double touching = 1e-9;
        var (low, high) = (Math.Max(outline.Sill, ring.Bottom), Math.Min(outline.Head, ring.Top));
        if (!(high - low > 1e-6))
        {
            return null;
        }

        var heights = outline.Steps(ArcSteps).Where(z => z > low + touching && z < high - touching).Prepend(low).Append(high).Distinct().Order().ToArray();
        List<(double Share, double Height)> first = [], second = [];
        foreach (var z in heights)
        {
            var share = outline.ShareAt(Math.Clamp(z, outline.Sill, outline.Head));
            var pointed = !(share > 1e-4);
            first.Add((pointed ? 0 : -share, z));
            if (!pointed)
            {
                second.Add((share, z));
            }
        }

        second.Reverse();
        (double Share, double Height)[] corners = [.. first, .. second];
        var isCut = new bool[corners.Length];
        (int, int)? bottom = null, top = null;
        if (cut && outline.Sill <= ring.Bottom + touching && corners[^1].Height == low)
        {
            (isCut[^1], bottom) = (true, (0, corners.Length - 1));
        }

        if (cut && outline.Head >= ring.Top - touching && second.Count > 0 && second[0].Height == high)
        {
            (isCut[first.Count - 1], top) = (true, (first.Count - 1, first.Count));
        }

        return corners.Length < 3 ? null : new Round(corners, isCut, bottom, top);
    }

    private static FaceLoop? On(Shaft shaft, Round round, Func<double, double> offset)
    {
        var along = new double[round.Corners.Length];
        for (var n = 0; n < along.Length; n++)
        {
            if (shaft.Meet(round.Corners[n].Share, offset(round.Corners[n].Height)) is not { } frame)
            {
                return null;
            }

            along[n] = frame.Station;
        }

        return new FaceLoop(along, [.. round.Corners.Select(c => c.Height)], new int[along.Length]);
    }
}
