using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry.Curves;
using Clomwright.Geometry.Cuts;

namespace Clomwright.Geometry;

/// <summary>Projects the wall square onto an upright sheet and leaves out what lies behind it.</summary>
/// <remarks>
/// The viewer looks level, so a line of sight stays at one height, where the wall is a ring between two offsets of the plan curve. A point of the outside face is seen
/// when the face looks toward the viewer there and no other part of the face stands before it; a point in an opening when the line of sight leaves through its mouth.
/// Every change between seen and hidden is found by halving, to a part in 10^12 of the line.
/// </remarks>
public static class Elevations
{
    private const int AllRound = 720;
    private const int AlongRim = 48;
    private const int Halvings = 42;

    /// <summary>How near a line of sight begins to look for cob before it, m: past the face that it begins at.</summary>
    private const double Clear = 0.05;

    /// <summary>The elevation that a viewer at a bearing from the house sees: at 180 degrees the south elevation.</summary>
    /// <param name="geometry">The placed house.</param>
    /// <param name="bearing">Of the viewer from the centre peg, radians clockwise from north.</param>
    public static Elevation Of(HouseGeometry geometry, double bearing)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        var (sin, cos) = Math.SinCos(bearing);
        var sight = new Sight(geometry, new PlanPoint(sin, cos));
        List<SeenLine> lines = [.. sight.Rings(), .. sight.Sides(), .. geometry.Openings.SelectMany(sight.Opening)];
        return sight.Blank with { Lines = lines.ToSequence(), Silhouette = sight.Silhouette().ToSequence() };
    }

    private sealed class Sight
    {
        private readonly HouseGeometry geometry;
        private readonly PlanPoint toward;
        private readonly WallFrame frame;
        private readonly double stem;
        private readonly double foot;
        private readonly (Shaft Shaft, Shaft Straight, Outline Outline)[] holes;

        public Sight(HouseGeometry geometry, PlanPoint toward)
        {
            (this.geometry, this.toward) = (geometry, toward);
            frame = new WallFrame(geometry.House, geometry.Curve, geometry.Wall, [geometry.Wall.Base, geometry.Wall.Top]);
            stem = geometry.Stem.Outside;
            foot = Math.Min(geometry.House.Site.Grade?.Metres ?? 0, geometry.Wall.Base.Metres);
            holes = [.. geometry.Openings.Select(o => Hole(o))];
            Blank = new Elevation { Toward = toward, Origin = geometry.Curve.Centre, Lines = [], Silhouette = [] };
        }

        public Elevation Blank { get; }

        private double Base => frame.Base;

        private double Top => frame.Top;

        /// <summary>Offset of the outermost face at a height: the stem's below the cob.</summary>
        private double Face(double height) => height < Base ? stem : geometry.Wall.OutsideOffset(height);

        /// <summary>Level lines all round: foot and top of stem and cob.</summary>
        public IEnumerable<SeenLine> Rings()
        {
            foreach (var (part, height, offset) in ((SeenPart, double, double)[])
                     [(SeenPart.Stem, foot, stem), (SeenPart.Stem, Base, stem), (SeenPart.Wall, Base, geometry.Wall.OutsideOffset(Base)), (SeenPart.Wall, Top, geometry.Wall.OutsideOffset(Top))])
            {
                List<SeenPoint>[] runs = [.. Runs(t =>
                {
                    var at = geometry.Curve.FrameAt(t * geometry.Curve.Length);
                    return (at.Offset(offset), height, Looks(at) && !InHole(at.Offset(offset), offset, height) && Free(at.Offset(offset), height));
                }, AllRound)];
                if (runs.Length > 1 && Same(runs[0][0], runs[^1][^1]))
                {
                    runs[0] = [.. runs[^1], .. runs[0].Skip(1)];
                    runs = runs[..^1];
                }

                foreach (var run in runs)
                {
                    yield return new SeenLine(part, "", run.ToSequence());
                }
            }
        }

        /// <summary>Upright outlines where the faces turn away from the viewer: straight, because a face leans evenly.</summary>
        public IEnumerable<SeenLine> Sides()
        {
            foreach (var at in Turns())
            {
                foreach (var (part, low, high, lowOffset, highOffset) in ((SeenPart, double, double, double, double)[])
                         [(SeenPart.Stem, foot, Base, stem, stem), (SeenPart.Wall, Base, Top, geometry.Wall.OutsideOffset(Base), geometry.Wall.OutsideOffset(Top))])
                {
                    foreach (var run in Runs(t =>
                    {
                        var (height, offset) = (low + t * (high - low), lowOffset + t * (highOffset - lowOffset));
                        return (at.Offset(offset), height, Free(at.Offset(offset), height) && !InHole(at.Offset(offset), offset, height));
                    }, AlongRim))
                    {
                        yield return new SeenLine(part, "", new SeenPoint[] { run[0], run[^1] }.ToSequence());
                    }
                }
            }
        }

        public IEnumerable<SeenPoint> Silhouette()
        {
            var turns = Turns().ToList();
            var right = turns.Where(t => t.Normal.Dot(Blank.Right) > 0).MaxBy(t => Blank.Project(t.Point, 0).Across);
            var left = turns.Where(t => t.Normal.Dot(Blank.Right) < 0).MinBy(t => Blank.Project(t.Point, 0).Across);
            var (b, t) = (geometry.Wall.OutsideOffset(Base), geometry.Wall.OutsideOffset(Top));
            return
            [
                At(left, stem, foot), At(left, stem, Base), At(left, b, Base), At(left, t, Top),
                At(right, t, Top), At(right, b, Base), At(right, stem, Base), At(right, stem, foot),
            ];

            SeenPoint At(CurveFrame turn, double offset, double height) => Blank.Project(turn.Offset(offset), height);
        }

        /// <summary>The rim on the outside face, and what stands in the opening as far as it is seen.</summary>
        public IEnumerable<SeenLine> Opening(OpeningPlace place)
        {
            if (place.Normal.Dot(toward) < -0.5)
            {
                yield break;
            }

            var (shaft, straight, outline) = holes[Array.FindIndex([.. geometry.Openings], o => o.Index == place.Index)];
            var (low, high) = (Math.Max(outline.Sill, foot), outline.Head);
            double[] cuts = low < Base && high > Base ? [low, Base, high] : [low, high];
            foreach (var side in (double[])[-1, 1])
            {
                for (var i = 0; i + 1 < cuts.Length; i++)
                {
                    var (from, to) = (cuts[i], cuts[i + 1]);
                    foreach (var run in Runs(t =>
                    {
                        var height = from + (to - from) * (1 - Math.Cos(Math.PI * t)) / 2;
                        var offset = to <= Base ? stem : geometry.Wall.OutsideOffset(height);
                        return OnFace(shaft, side * outline.ShareAt(height), offset, height);
                    }, AlongRim))
                    {
                        yield return new SeenLine(SeenPart.Rim, place.Opening.Name, run.ToSequence());
                    }
                }
            }

            foreach (var height in Level(outline))
            {
                var offset = height < Base ? stem : geometry.Wall.OutsideOffset(height);
                foreach (var run in Runs(t => OnFace(shaft, 2 * t - 1, offset, height), AlongRim))
                {
                    yield return new SeenLine(SeenPart.Rim, place.Opening.Name, run.ToSequence());
                }
            }

            foreach (var line in Standing(place, shaft, straight, outline))
            {
                yield return line;
            }
        }

        private (PlanPoint, double, bool) OnFace(Shaft shaft, double share, double offset, double height) =>
            shaft.Meet(share, offset) is { } at ? (at.Offset(offset), height, Looks(at) && Free(at.Offset(offset), height)) : (shaft.Middle.Point, height, false);

        /// <summary>Heights of the level edges of an outline.</summary>
        private IEnumerable<double> Level(Outline outline)
        {
            if (!outline.IsRound && outline.Sill >= foot)
            {
                yield return outline.Sill;
            }

            if (outline.IsStraight)
            {
                yield return outline.Head;
            }
        }

        /// <summary>Frame and its light, or the rough outline where the frame would stand.</summary>
        private IEnumerable<SeenLine> Standing(OpeningPlace place, Shaft shaft, Shaft straight, Outline outline)
        {
            var w = shaft.FrameOutside;
            var rough = place.Opening.Width.Metres / 2;
            List<(PlanPoint From, double Low, PlanPoint To, double High)> edges = [];
            if (place.Opening is { Frame: { } made, Shape: OpeningShape.Rectangular })
            {
                foreach (var inset in (double[])[0, made.Stock.Metres])
                {
                    var (half, sill, head) = (made.Width.Metres / 2 - inset, outline.Sill + inset, Math.Min(outline.Sill + made.Height.Metres, outline.Head) - inset);
                    if (half > 0 && head > sill)
                    {
                        edges.AddRange([(P(-half), sill, P(-half), head), (P(half), sill, P(half), head), (P(-half), head, P(half), head), (P(-half), sill, P(half), sill)]);
                    }
                }
            }

            IEnumerable<Func<double, (PlanPoint, double)>> drawn = edges.Count > 0
                ? edges.Select(e => (Func<double, (PlanPoint, double)>)(t => (e.From + t * (e.To - e.From), e.Low + t * (e.High - e.Low))))
                : ((double[])[-1, 1]).Select(side => (Func<double, (PlanPoint, double)>)(t =>
                {
                    var height = outline.Sill + (outline.Head - outline.Sill) * (1 - Math.Cos(Math.PI * t)) / 2;
                    return (P(side * rough * outline.ShareAt(height)), height);
                })).Concat(Level(outline).Select(height => (Func<double, (PlanPoint, double)>)(t => (P((2 * t - 1) * rough), height))));
            foreach (var edge in drawn)
            {
                foreach (var run in Runs(t =>
                {
                    var (point, height) = edge(t);
                    return (point, height, Through(shaft, straight, outline, point, height));
                }, AlongRim))
                {
                    yield return new SeenLine(SeenPart.Frame, place.Opening.Name, run.ToSequence());
                }
            }

            PlanPoint P(double u) => shaft.Plan(u, w);
        }

        /// <summary>Whether the line of sight from a point in an opening leaves through its mouth, with nothing before it.</summary>
        private bool Through(Shaft shaft, Shaft straight, Outline outline, PlanPoint point, double height)
        {
            if (height < foot)
            {
                return false;
            }

            var (u, w) = shaft.Local(point);
            var (du, dw) = (toward.Dot(shaft.Middle.Tangent), toward.Dot(shaft.Middle.Normal));
            if (dw < 1e-6)
            {
                return false;
            }

            var offset = Face(height);
            var half = straight.HalfWidthAt(0);
            var (along, away) = (u, w);
            for (var i = 0; i < 12; i++)
            {
                if (straight.Meet(along / half, offset) is not { } met)
                {
                    return false;
                }

                away = straight.Local(met.Offset(offset)).W;
                along = u + du * (away - w) / dw;
            }

            return Math.Abs(along) <= outline.ShareAt(height) * shaft.HalfWidthAt(away) + 1e-9 && Free(shaft.Plan(along, away), height);
        }

        /// <summary>Whether the face at a frame looks toward the viewer.</summary>
        private bool Looks(in CurveFrame at) => at.Normal.Dot(toward) > 0;

        /// <summary>Whether nothing of the outside face stands before a point on it or outside it.</summary>
        private bool Free(PlanPoint point, double height)
        {
            if (geometry.Curve.ConcavityMax <= 0)
            {
                return true;
            }

            var offset = Face(height);
            var samples = geometry.Curve.Samples;
            var across = new PlanPoint(-toward.North, toward.East);
            for (var i = 0; i < samples.Length; i++)
            {
                var (a, b) = (samples[i].Offset(offset) - point, samples[(i + 1) % samples.Length].Offset(offset) - point);
                var (ya, yb) = (a.Dot(across), b.Dot(across));
                if (ya <= 0 != yb <= 0 && a.Dot(toward) + ya / (ya - yb) * (b - a).Dot(toward) > Clear)
                {
                    return false;
                }
            }

            return true;
        }

        /// <summary>Whether a point of the face lies in an opening.</summary>
        private bool InHole(PlanPoint point, double offset, double height) => holes.Any(h =>
        {
            var (u, w) = h.Shaft.Local(point);
            return height >= h.Outline.Sill - 1e-9 && height <= h.Outline.Head + 1e-9 && w > 0 && w < 2 * offset + 0.5 && Math.Abs(u) < h.Outline.ShareAt(Math.Clamp(height, h.Outline.Sill, h.Outline.Head)) * h.Shaft.HalfWidthAt(w);
        });

        /// <summary>Frames at which the face turns away from the viewer or toward it.</summary>
        private IEnumerable<CurveFrame> Turns()
        {
            var step = geometry.Curve.Length / AllRound;
            for (var i = 0; i < AllRound; i++)
            {
                double low = i * step, high = (i + 1) * step;
                if (Value(low) > 0 == Value(high) > 0)
                {
                    continue;
                }

                var rising = Value(high) > 0;
                for (var k = 0; k < Halvings; k++)
                {
                    var middle = (low + high) / 2;
                    (low, high) = Value(middle) > 0 == rising ? (low, middle) : (middle, high);
                }

                yield return geometry.Curve.FrameAt((low + high) / 2);
            }

            double Value(double station) => geometry.Curve.FrameAt(station).Normal.Dot(toward);
        }

        /// <summary>The runs of a line that are seen, their ends found by halving.</summary>
        private IEnumerable<List<SeenPoint>> Runs(Func<double, (PlanPoint Point, double Height, bool Seen)> line, int steps)
        {
            List<SeenPoint>? run = null;
            var before = line(0);
            if (before.Seen)
            {
                run = [Blank.Project(before.Point, before.Height)];
            }

            for (var i = 1; i <= steps; i++)
            {
                var now = line((double)i / steps);
                if (now.Seen != before.Seen)
                {
                    var end = End((double)(i - 1) / steps, (double)i / steps, before.Seen);
                    if (before.Seen)
                    {
                        run!.Add(end);
                        yield return run;
                        run = null;
                    }
                    else
                    {
                        run = [end];
                    }
                }

                if (now.Seen)
                {
                    run!.Add(Blank.Project(now.Point, now.Height));
                }

                before = now;
            }

            if (run is { Count: > 1 })
            {
                yield return run;
            }

            SeenPoint End(double low, double high, bool seenLow)
            {
                for (var k = 0; k < Halvings; k++)
                {
                    var middle = (low + high) / 2;
                    (low, high) = line(middle).Seen == seenLow ? (middle, high) : (low, middle);
                }

                var (point, height, _) = line(seenLow ? low : high);
                return Blank.Project(point, height);
            }
        }

        private static bool Same(SeenPoint a, SeenPoint b) => Math.Abs(a.Across - b.Across) < 1e-9 && Math.Abs(a.Height - b.Height) < 1e-9;

        private (Shaft, Shaft, Outline) Hole(OpeningPlace place)
        {
            var outline = OpeningPlaces.OutlineOf(place.Opening, "", new Remarks());
            return (OpeningPlaces.ShaftOf(frame, place.Opening, outline, place.Station, "", new Remarks()), frame.Straight(place.Station, place.Opening.Width.Metres / 2), outline);
        }
    }
}
