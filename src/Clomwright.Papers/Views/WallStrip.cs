using Clomwright.Building;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Outline = Clomwright.Papers.Drawing.Outline;

namespace Clomwright.Papers.Views;

/// <summary>A stretch of the unrolled wall laid on paper: arcs of one face at the wall base run along, heights above the finished floor run up.</summary>
/// <remarks>
/// Seen from inside, walking clockwise goes to the right; seen from outside it goes to the left. Both are drawn as they are seen.
/// Arcs are measured on the face itself at the wall base, so a tape held to that face reads them.
/// </remarks>
public sealed record WallStrip
{
    /// <summary>A stretch of one face.</summary>
    /// <param name="geometry">Of the house.</param>
    /// <param name="face">Which face is seen.</param>
    /// <param name="paperPerMetre">Scale, mm on paper for each metre.</param>
    /// <param name="from">Where the stretch begins, arc of the face, m.</param>
    /// <param name="to">Where it ends, clockwise, m.</param>
    /// <param name="corner">Where the finished floor meets the left end on paper.</param>
    public WallStrip(HouseGeometry geometry, Face face, double paperPerMetre, double from, double to, PaperPoint corner)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        (Geometry, Face, PaperPerMetre, From, To, Corner) = (geometry, face, paperPerMetre, from, to, corner);
        Offset = face == Face.Inside ? 0 : geometry.Wall.OutsideOffset(geometry.Wall.Base.Metres);
        FaceLength = geometry.Curve.OffsetLength(Offset);
    }

    /// <summary>The geometry drawn.</summary>
    public HouseGeometry Geometry { get; }

    /// <summary>Which face is seen.</summary>
    public Face Face { get; }

    /// <summary>Scale, mm on paper for each metre.</summary>
    public double PaperPerMetre { get; }

    /// <summary>Where the stretch begins, arc of the face from the zero mark, m.</summary>
    public double From { get; }

    /// <summary>Where it ends, m.</summary>
    public double To { get; }

    /// <summary>Where the finished floor meets the left end on paper.</summary>
    public PaperPoint Corner { get; }

    /// <summary>Length of the whole ring on this face at the wall base, m.</summary>
    public double FaceLength { get; }

    /// <summary>The stretch is the whole ring.</summary>
    public bool IsWhole => To - From > FaceLength - 1e-9;

    private double Offset { get; }

    /// <summary>Right end on paper.</summary>
    public double Right => Corner.X + (To - From) * PaperPerMetre;

    /// <summary>Arc of the face at a station of the inside face; goes on counting past the ring's length.</summary>
    public double Arc(double station)
    {
        var curve = Geometry.Curve;
        var turns = Math.Floor(station / curve.Length);
        return turns * FaceLength + curve.OffsetArc(0, station - turns * curve.Length, Offset);
    }

    /// <summary>Place on paper along, of an arc of the face.</summary>
    public double X(double arc) => Face == Face.Inside ? Corner.X + (arc - From) * PaperPerMetre : Right - (arc - From) * PaperPerMetre;

    /// <summary>Place on paper up, of a height above the finished floor, m.</summary>
    public double Y(double height) => Corner.Y - height * PaperPerMetre;

    /// <summary>A place on the wall.</summary>
    public PaperPoint At(double arc, double height) => new(X(arc), Y(height));

    /// <summary>The parts of a stretch of stations that lie in this strip, as arcs; more than one where the ring closes in it.</summary>
    public IEnumerable<Span> Parts(Span stations)
    {
        var (from, to) = (Arc(stations.From), Arc(stations.To));
        for (var turn = Math.Ceiling((From - to) / FaceLength - 1e-9); from + turn * FaceLength < To - 1e-9; turn++)
        {
            var (a, b) = (Math.Max(From, from + turn * FaceLength), Math.Min(To, to + turn * FaceLength));
            if (b - a > 1e-9)
            {
                yield return new Span(a, b);
            }
        }
    }

    /// <summary>An outline in stations laid in this strip, once for each turn of the ring that lies in it.</summary>
    public IEnumerable<Outline> Laid(IReadOnlyList<WallPoint> outline)
    {
        ArgumentNullException.ThrowIfNull(outline);
        if (outline.Count < 3)
        {
            yield break;
        }

        var arcs = outline.Select(p => new WallPoint(Arc(p.Along), p.Up)).ToArray();
        var (least, most) = (arcs.Min(p => p.Along), arcs.Max(p => p.Along));
        for (var turn = Math.Ceiling((From - most) / FaceLength + 1e-9); least + turn * FaceLength < To - 1e-9; turn++)
        {
            var shift = turn * FaceLength;
            yield return Outline.Polygon(arcs.Select(p => At(p.Along + shift, p.Up)));
        }
    }

    /// <summary>The arcs in this strip at which a station lies; two at the ends of a whole ring.</summary>
    public IEnumerable<double> Arcs(double station)
    {
        var arc = Arc(station);
        for (var turn = Math.Ceiling((From - arc) / FaceLength - 1e-9); arc + turn * FaceLength <= To + 1e-9; turn++)
        {
            yield return arc + turn * FaceLength;
        }
    }

    /// <summary>The box on paper of a stretch of arcs and heights.</summary>
    public PaperBox Box(Span arcs, double bottom, double top)
    {
        var (a, b) = (X(arcs.From), X(arcs.To));
        return new PaperBox(Math.Min(a, b), Y(top), Math.Max(a, b), Y(bottom));
    }

    /// <summary>Stations of an opening on this face, splays included.</summary>
    public Span OnFace(OpeningPlace opening)
    {
        ArgumentNullException.ThrowIfNull(opening);
        return Face == Face.Inside ? opening.Inside : opening.Outside;
    }
}
