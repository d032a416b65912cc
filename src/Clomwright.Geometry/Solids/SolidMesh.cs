using Clomwright.Evidence;

namespace Clomwright.Geometry.Solids;

/// <summary>A point or direction in space: m east, m north, m up from the finished floor.</summary>
public readonly record struct SpacePoint(double East, double North, double Up)
{
    /// <summary>A point over a place on the ground.</summary>
    public static SpacePoint Of(PlanPoint plan, double up) => new(plan.East, plan.North, up);

    /// <summary>The place on the ground under it.</summary>
    public PlanPoint Plan => new(East, North);

    /// <summary>Sum.</summary>
    public static SpacePoint operator +(SpacePoint a, SpacePoint b) => new(a.East + b.East, a.North + b.North, a.Up + b.Up);

    /// <summary>Difference.</summary>
    public static SpacePoint operator -(SpacePoint a, SpacePoint b) => new(a.East - b.East, a.North - b.North, a.Up - b.Up);

    /// <summary>A multiple.</summary>
    public static SpacePoint operator *(double k, SpacePoint a) => new(k * a.East, k * a.North, k * a.Up);

    /// <summary>Scalar product.</summary>
    public double Dot(SpacePoint o) => East * o.East + North * o.North + Up * o.Up;

    /// <summary>Vector product.</summary>
    public SpacePoint Cross(SpacePoint o) => new(North * o.Up - Up * o.North, Up * o.East - East * o.Up, East * o.North - North * o.East);

    /// <summary>Length, m.</summary>
    public double Norm => Math.Sqrt(Dot(this));

    /// <summary>The direction alone; itself where it has none.</summary>
    public SpacePoint Unit => Norm is var n && n > 0 ? 1 / n * this : this;

    /// <summary>Whether all of it is a number.</summary>
    public bool IsFinite => double.IsFinite(East) && double.IsFinite(North) && double.IsFinite(Up);
}

/// <summary>What a solid stands for.</summary>
public enum SolidPart
{
    /// <summary>Cob between its faces, openings and niches cut out.</summary>
    Wall,

    /// <summary>The stem wall.</summary>
    Stem,

    /// <summary>The timber ring.</summary>
    BondBeam,

    /// <summary>A header.</summary>
    Header,

    /// <summary>The leaf of a door.</summary>
    Leaf,

    /// <summary>The glass of a window.</summary>
    Glass,

    /// <summary>A tee.</summary>
    Tee,

    /// <summary>Something built in.</summary>
    Embed,

    /// <summary>A pole or rafter.</summary>
    Pole,

    /// <summary>A secondary pole.</summary>
    Secondary,
}

/// <summary>A closed body of triangles, for whoever draws or exports the house. Each triangle turns anticlockwise seen from outside.</summary>
/// <remarks>
/// A point on a sharp edge is told once for each surface that meets there, with that surface's normal and to the last bit at the same place: joined by place the
/// triangles close the body. Curved faces are flat between neighbouring points.
/// </remarks>
public sealed record SolidMesh
{
    /// <summary>From the author's names: <c>wall</c>, <c>header south-window</c>, <c>tee 3</c>, <c>pole 1</c>; no two solids of a house are called the same.</summary>
    public required string Name { get; init; }

    /// <summary>What it stands for.</summary>
    public required SolidPart Part { get; init; }

    /// <summary>Corners.</summary>
    public required Sequence<SpacePoint> Points { get; init; }

    /// <summary>The unit normal outward at each corner.</summary>
    public required Sequence<SpacePoint> Normals { get; init; }

    /// <summary>Three places of <see cref="Points"/> for each triangle.</summary>
    public required Sequence<int> Triangles { get; init; }

    /// <summary>Of the wall: where each corner lies on the unrolled wall; a corner on the cut of the ring is told once for each end of it. Empty for all else.</summary>
    public Sequence<WallPoint> Places { get; init; }

    /// <summary>Lines along the sharp edges, to be drawn in ink.</summary>
    public Sequence<Sequence<SpacePoint>> Edges { get; init; }

    /// <summary>Of the wall: lines between lifts on both faces.</summary>
    public Sequence<Sequence<SpacePoint>> Joints { get; init; }

    /// <summary>Enclosed, m3: by the divergence theorem the sum over all triangles of a.(b x c)/6, taken from the first corner so that far houses lose nothing.</summary>
    public double Volume
    {
        get
        {
            var sum = 0.0;
            for (var i = 0; i + 2 < Triangles.Count; i += 3)
            {
                var (a, b, c) = (Points[Triangles[i]] - Points[0], Points[Triangles[i + 1]] - Points[0], Points[Triangles[i + 2]] - Points[0]);
                sum += a.Dot(b.Cross(c));
            }

            return sum / 6;
        }
    }
}
