using Clomwright.Analysis.Roof;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Web.Scenes;

/// <summary>One pole from the side over the wall, along its own line, so that every length on it is true.</summary>
internal sealed class RoofSectionOf
{
    /// <summary>How much of the wall is shown under the bond beam, m.</summary>
    private const double WallShown = 0.55;

    private readonly HouseGeometry geometry;
    private readonly Roof roof;
    private readonly PoleGeometry pole;
    private readonly Pen pen;
    private readonly double skewCosine;

    private RoofSectionOf(HouseGeometry geometry, Roof roof, PoleGeometry pole, Pen pen)
    {
        (this.geometry, this.roof, this.pole, this.pen) = (geometry, roof, pole, pen);
        var landing = geometry.Landings.MinBy(l => (l.Point - pole.Foot).Norm)!;
        skewCosine = Math.Max(0.2, Math.Abs(geometry.Curve.Normal(landing.Station).Dot(pole.Along)));
    }

    /// <summary>The section of a pole.</summary>
    /// <param name="geometry">The house.</param>
    /// <param name="poles">All poles, in the order of carrying.</param>
    /// <param name="ring">The reciprocal frame that they make; null for other roofs.</param>
    /// <param name="pen">Whose words and units.</param>
    public static RoofSectionView? View(HouseGeometry geometry, Sequence<PoleGeometry> poles, ReciprocalGeometry? ring, Pen pen) =>
        geometry.House.Roof is { } roof && poles.Count > 0 && geometry.Landings.Count > 0 ? new RoofSectionOf(geometry, roof, poles[0], pen).View(poles, ring) : null;

    private RoofSectionView View(Sequence<PoleGeometry> poles, ReciprocalGeometry? ring)
    {
        var seat = pole.HeightAt(0) - Half(0);
        var beamTop = seat + 0.0254;
        var beam = geometry.House.BondBeam;
        var wallTop = beamTop - (beam?.Depth.Metres ?? 0);
        var layers = Layers(ring is null ? pole.TangentDistance : pole.Near - poles[^1].DiameterAt(poles[^1].Far));
        double[][] crossings = ring is null ? [] : [Cut(pole.Near, poles[^1].Rise, poles[^1].DiameterAt(poles[^1].Far)), Cut(pole.Far, -pole.Rise, poles[1 % poles.Count].DiameterAt(poles[1 % poles.Count].Near))];
        var outline = Band(-pole.EaveReach, pole.Far + pole.Tail, x => pole.HeightAt(x) - Half(x), x => pole.HeightAt(x) + Half(x));
        var wall = Wall(wallTop);
        var support = ring is null ? new[] { Pen.Point(pole.Far, pole.HeightAt(pole.Far) - Half(pole.Far)), Pen.Point(pole.Far, wallTop - WallShown) } : [];
        double[][] all = [.. outline, .. wall, .. layers.SelectMany(l => l.Outline), .. crossings.SelectMany(c => (double[][])[[c[0] + c[2] / 2, c[1] + c[2] / 2], [c[0], c[1] - c[2] / 2]])];
        return new RoofSectionView
        {
            Label = pen.Say("web.roof.section-of", ("pole", pole.Number)),
            Pole = outline,
            Wall = wall,
            BondBeam = beam is null ? null : Box(Across(beam.Offset.Metres + beam.Width.Metres / 2), Across(beam.Offset.Metres - beam.Width.Metres / 2), wallTop, beamTop),
            Layers = layers,
            EdgeBoard = EdgeBoard(),
            Crossings = crossings,
            Support = support,
            Notes = [.. Notes(crossings, seat)],
            Extent = [all.Min(p => p[0]), all.Max(p => p[0]), all.Min(p => p[1]), all.Max(p => p[1])],
        };
    }

    private IEnumerable<SectionNote> Notes(double[][] crossings, double seat)
    {
        var end = pole.TangentDistance;
        yield return new SectionNote(
            "pitch", pen.Say("web.roof.note-pitch", ("angle", new Amount(pole.Pitch, Dimension.Angle)), ("slope", new Amount(pole.Slope, Dimension.Slope))),
            Pen.Point(end * 0.25, pole.HeightAt(end * 0.25)), Pen.Point(end * 0.6, pole.HeightAt(end * 0.6)));
        if (pole.EaveReach > 0)
        {
            yield return new SectionNote(
                "drop", pen.Say("web.roof.note-drop", ("drop", Amount.Metres(pole.EaveDrop))),
                Pen.Point(-pole.EaveReach, pole.HeightAt(-pole.EaveReach)), Pen.Point(-pole.EaveReach, pole.HeightAt(0)));
        }

        if (crossings.Length > 0)
        {
            yield return new SectionNote(
                "rise", pen.Say("web.roof.note-rise", ("rise", Amount.Metres(pole.Rise))), [crossings[1][0], crossings[1][1]], Pen.Point(pole.Far, pole.HeightAt(pole.Far)));
        }
    }

    private double[] Cut(double along, double above, double diameter) => [.. Pen.Point(along, pole.HeightAt(along) + above), Pen.Round(diameter)];

    private List<LayerShape> Layers(double innerEnd)
    {
        List<(string Name, string Kind, double Depth)> bands = [];
        if (roof.Deck is { } deck)
        {
            bands.Add((pen.Say("web.roof.deck", ("depth", deck)), "deck", deck.Metres));
        }

        bands.AddRange(roof.Layers.Select((layer, i) => (pen.Say("web.roof.layer", ("name", layer.Name), ("depth", layer.Depth)), i == roof.Layers.Count - 1 ? "top" : layer.Depth.Metres < 0.012 ? "thin" : "layer", layer.Depth.Metres)));
        var (from, to) = (-pole.EaveReach, Math.Max(innerEnd, 0));
        var shapes = new List<LayerShape>();
        double under = 0;
        foreach (var (name, kind, depth) in bands)
        {
            var (low, high) = (under / pole.PitchCosine, (under + depth) / pole.PitchCosine);
            var at = from + (to - from) * 0.5;
            shapes.Add(new LayerShape(name, kind, Band(from, to, x => Top(x) + low, x => Top(x) + high), Pen.Point(at, Top(at) + (low + high) / 2)));
            under += depth;
        }

        return shapes;
    }

    private double[][]? EdgeBoard() => roof.EdgeBoard is not { } board ? null
        : Box(-pole.EaveReach - 0.04, -pole.EaveReach, Top(-pole.EaveReach), Top(-pole.EaveReach) + ((roof.Deck?.Metres ?? 0) + board.Metres) / pole.PitchCosine);

    /// <summary>Upper side of the pole, straight on over the ring.</summary>
    private double Top(double x) => pole.HeightAt(x) + Half(x);

    private double Half(double x) => pole.DiameterAt(x) / 2 / pole.PitchCosine;

    /// <summary>Where something across the wall, m outward from the middle of its top, stands along the pole.</summary>
    private double Across(double outward) => ((geometry.House.BondBeam?.Offset.Metres ?? 0) - outward) / skewCosine;

    private double[][] Wall(double top)
    {
        var wall = geometry.Wall;
        var height = wall.Top.Metres;
        var middle = (wall.InsideOffset(height) + wall.OutsideOffset(height)) / 2;
        var low = height - WallShown;
        return
        [
            Pen.Point(Across(wall.OutsideOffset(height) - middle), top), Pen.Point(Across(wall.InsideOffset(height) - middle), top),
            Pen.Point(Across(wall.InsideOffset(low) - middle), top - WallShown), Pen.Point(Across(wall.OutsideOffset(low) - middle), top - WallShown),
        ];
    }

    private static double[][] Box(double left, double right, double bottom, double top) =>
        [Pen.Point(left, bottom), Pen.Point(right, bottom), Pen.Point(right, top), Pen.Point(left, top)];

    private static double[][] Band(double from, double to, Func<double, double> low, Func<double, double> high) =>
        [Pen.Point(from, low(from)), Pen.Point(to, low(to)), Pen.Point(to, high(to)), Pen.Point(from, high(from))];
}
