using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry.Cuts;

namespace Clomwright.Geometry;

/// <summary>Cuts the wall with an upright plane through the centre peg.</summary>
/// <remarks>
/// At one height the plane meets the wall where two opposite rays from the peg meet the offset curves of its faces; between them an opening takes the stretch in which the
/// ray runs within its jambs. Heights at which that changes (sills, heads) part the cut into courses; a curved head is followed in steps.
/// </remarks>
public static class CrossSections
{
    private const int ArcCourses = 24;
    private const int Along = 96;
    private const int RimSteps = 48;
    private const int Halvings = 42;
    private const double Sliver = 1e-7;

    /// <summary>The cut that a viewer at a bearing from the house looks at square on.</summary>
    /// <param name="geometry">The placed house.</param>
    /// <param name="bearing">Of the viewer from the centre peg, radians clockwise from north.</param>
    public static CrossSection Of(HouseGeometry geometry, double bearing)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        var (sin, cos) = Math.SinCos(bearing);
        var blank = new CrossSection { Toward = new PlanPoint(sin, cos), Origin = geometry.Curve.Centre, Cob = [], Edges = [], Beyond = [] };
        var frame = new WallFrame(geometry.House, geometry.Curve, geometry.Wall, [geometry.Wall.Base, geometry.Wall.Top]);
        var holes = geometry.Openings.Select(o => Hole(frame, o)).ToArray();
        var courses = Courses(geometry, blank, holes).ToArray();
        return blank with
        {
            Cob = courses.SelectMany(c => c.Pieces).ToSequence(),
            Edges = Edges(courses).ToSequence(),
            Beyond = [.. Beyond(geometry, blank, frame, holes)],
        };
    }

    /// <summary>Where the plane meets a curve offset outward by a distance, m to the viewer's right of the peg, ascending.</summary>
    public static IReadOnlyList<double> Meets(HouseGeometry geometry, CrossSection section, double offset)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        ArgumentNullException.ThrowIfNull(section);
        List<double> places = [];
        foreach (var side in (double[])[-1, 1])
        {
            var bearing = Math.Atan2(side * section.Right.East, side * section.Right.North);
            places.AddRange(geometry.Curve.StationsAt(bearing, offset).Select(s => side * (geometry.Curve.At(s, offset) - section.Origin).Norm));
        }

        places.Sort();
        return places;
    }

    private sealed record Course(double Low, double High, (double From, double To)[] AtLow, (double From, double To)[] AtHigh)
    {
        public IEnumerable<Sequence<SeenPoint>> Pieces => AtLow.Zip(AtHigh, (a, b) => (Sequence<SeenPoint>)[new(a.From, Low), new(a.To, Low), new(b.To, High), new(b.From, High)]);
    }

    private static IEnumerable<Course> Courses(HouseGeometry geometry, CrossSection section, (Shaft Shaft, Outline Outline)[] holes)
    {
        var (bottom, top) = (geometry.Wall.Base.Metres, geometry.Wall.Top.Metres);
        double[] heights =
        [
            .. holes.SelectMany(h => h.Outline.IsStraight ? [h.Outline.Sill, h.Outline.Head]
                : Enumerable.Range(0, ArcCourses + 1).Select(i => h.Outline.Sill + (h.Outline.Head - h.Outline.Sill) * (1 - Math.Cos(Math.PI * i / ArcCourses)) / 2)).Append(bottom).Append(top)
                .Where(z => z >= bottom && z <= top).Distinct().Order(),
        ];
        for (var i = 0; i + 1 < heights.Length; i++)
        {
            var (low, high) = (heights[i], heights[i + 1]);
            if (high - low < Sliver)
            {
                continue;
            }

            var (a, b) = (Left(geometry, section, holes, low + Sliver / 2), Left(geometry, section, holes, high - Sliver / 2));
            var count = Math.Min(a.Length, b.Length);
            yield return new Course(low, high, a.Length == b.Length ? a : a[..count], a.Length == b.Length ? b : b[..count]);
        }
    }

    /// <summary>The stretches of cob that are left at a height.</summary>
    private static (double From, double To)[] Left(HouseGeometry geometry, CrossSection section, (Shaft Shaft, Outline Outline)[] holes, double height)
    {
        double[] faces = [.. Meets(geometry, section, geometry.Wall.InsideOffset(height)).Concat(Meets(geometry, section, geometry.Wall.OutsideOffset(height))).Order()];
        List<(double, double)> left = [];

        // From the left: out of doors, cob, the room, cob, out of doors.
        for (var i = 0; i + 1 < faces.Length; i += 2)
        {
            left.AddRange(Outside(faces[i], faces[i + 1], x => InHole(section, holes, x, height)));
        }

        return [.. left];
    }

    private static IEnumerable<(double, double)> Outside(double from, double to, Func<double, bool> hole)
    {
        var start = hole(from) ? double.NaN : from;
        var before = double.IsNaN(start);
        for (var i = 1; i <= Along; i++)
        {
            var (low, high) = (from + (to - from) * (i - 1) / Along, from + (to - from) * i / Along);
            var now = hole(high);
            if (now == before)
            {
                continue;
            }

            for (var k = 0; k < Halvings; k++)
            {
                var middle = (low + high) / 2;
                (low, high) = hole(middle) == before ? (middle, high) : (low, middle);
            }

            if (now)
            {
                yield return (start, low);
            }
            else
            {
                start = high;
            }

            before = now;
        }

        if (!before)
        {
            yield return (start, to);
        }
    }

    private static bool InHole(CrossSection section, (Shaft Shaft, Outline Outline)[] holes, double x, double height)
    {
        var point = section.Origin + x * section.Right;
        return holes.Any(h =>
        {
            var (u, w) = h.Shaft.Local(point);
            return height >= h.Outline.Sill && height <= h.Outline.Head && w > -0.5 && Math.Abs(u) < h.Outline.ShareAt(height) * h.Shaft.HalfWidthAt(w)
                && (point - section.Origin).Dot(h.Shaft.Middle.Normal) > 0;
        });
    }

    /// <summary>Sides of every course, and of level joints what only one of two neighbours has.</summary>
    private static IEnumerable<(SeenPoint, SeenPoint)> Edges(Course[] courses)
    {
        foreach (var course in courses)
        {
            foreach (var (a, b) in course.AtLow.Zip(course.AtHigh))
            {
                yield return (new(a.From, course.Low), new(b.From, course.High));
                yield return (new(a.To, course.Low), new(b.To, course.High));
            }
        }

        for (var i = 0; i <= courses.Length; i++)
        {
            var (below, above) = (i == 0 ? [] : courses[i - 1].AtHigh, i == courses.Length ? [] : courses[i].AtLow);
            var height = i == courses.Length ? courses[^1].High : courses[i].Low;
            double[] places = [.. below.Concat(above).SelectMany(p => (double[])[p.From, p.To]).Order()];
            for (var k = 0; k + 1 < places.Length; k++)
            {
                var middle = (places[k] + places[k + 1]) / 2;
                if (places[k + 1] - places[k] > 10 * Sliver && below.Any(p => p.From < middle && middle < p.To) != above.Any(p => p.From < middle && middle < p.To))
                {
                    yield return (new(places[k], height), new(places[k + 1], height));
                }
            }
        }
    }

    private static IEnumerable<SeenLine> Beyond(HouseGeometry geometry, CrossSection section, WallFrame frame, (Shaft Shaft, Outline Outline)[] holes)
    {
        foreach (var height in (double[])[geometry.Wall.Base.Metres, geometry.Wall.Top.Metres])
        {
            var faces = Meets(geometry, section, geometry.Wall.InsideOffset(height));
            if (faces.Count == 2)
            {
                yield return new SeenLine(SeenPart.Wall, "", [new SeenPoint(faces[0], height), new SeenPoint(faces[1], height)]);
            }
        }

        foreach (var (shaft, outline, name) in holes.Zip(geometry.Openings, (h, o) => (h.Shaft, h.Outline, o.Opening.Name))
                     .Concat(geometry.Niches.Where(n => n.Niche.Face == Face.Inside).Select(n => (frame.Straight(n.Station, n.Niche.Width.Metres / 2), NichePlaces.OutlineOf(n.Niche), n.Niche.Name))))
        {
            foreach (var line in Rim(shaft, outline))
            {
                foreach (var run in Seen(geometry, section, shaft, line))
                {
                    yield return new SeenLine(SeenPart.InsideRim, name, run.ToSequence());
                }
            }
        }
    }

    /// <summary>The rim as lines of share and height: jambs, and sill and head where they are level.</summary>
    private static IEnumerable<IEnumerable<(double Share, double Height)>> Rim(Shaft shaft, Outline outline)
    {
        double[] steps = [.. Enumerable.Range(0, RimSteps + 1).Select(i => (double)i / RimSteps)];
        foreach (var side in (double[])[-1, 1])
        {
            yield return steps.Select(t => outline.Sill + (outline.Head - outline.Sill) * (1 - Math.Cos(Math.PI * t)) / 2).Select(z => (side * outline.ShareAt(z), z));
        }

        if (!outline.IsRound)
        {
            yield return steps.Select(t => (2 * t - 1, outline.Sill));
        }

        if (outline.IsStraight)
        {
            yield return steps.Select(t => (2 * t - 1, outline.Head));
        }
    }

    /// <summary>What of a rim on the inside face lies beyond the plane and looks toward the viewer.</summary>
    private static IEnumerable<List<SeenPoint>> Seen(HouseGeometry geometry, CrossSection section, Shaft shaft, IEnumerable<(double Share, double Height)> line)
    {
        List<SeenPoint> run = [];
        foreach (var (share, height) in line)
        {
            var offset = geometry.Wall.InsideOffset(Math.Max(height, geometry.Wall.Base.Metres));
            if (shaft.Meet(share, offset) is { } at && (at.Offset(offset) - section.Origin).Dot(section.Toward) < 0 && at.Normal.Dot(section.Toward) < 0)
            {
                run.Add(section.Project(at.Offset(offset), height));
                continue;
            }

            if (run.Count > 1)
            {
                yield return run;
            }

            run = [];
        }

        if (run.Count > 1)
        {
            yield return run;
        }
    }

    private static (Shaft, Outline) Hole(WallFrame frame, OpeningPlace place)
    {
        var outline = OpeningPlaces.OutlineOf(place.Opening, "", new Remarks());
        return (OpeningPlaces.ShaftOf(frame, place.Opening, outline, place.Station, "", new Remarks()), outline);
    }
}
