using Clomwright.Analysis.Steps;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Finishes;

/// <summary>Timber near a plastered face: plaster does not hold on it, so it wants lath or mesh that laps onto the cob.</summary>
internal sealed class LathPlaces(HouseGeometry geometry, RevealAreas reveals, List<Calculation> calculations)
{
    private readonly House house = geometry.House;

    /// <summary>Every place on a plastered face. Timber with more cob before it than the limit of practice is left out.</summary>
    public Sequence<LathPlace> All() =>
    [
        .. geometry.Openings.SelectMany(o => Enum.GetValues<Face>().Where(Plastered).SelectMany(face => Around(o, face))),
        .. Enum.GetValues<Face>().Where(Plastered).SelectMany(Beam),
        .. geometry.Embeds.Where(e => Plastered(e.Embed.Face)).SelectMany(Set),
    ];

    /// <summary>Lap of the lath of a face, m, with its tag.</summary>
    public (double Metres, Tag Tag, Source? Source) Lap(Face face)
    {
        var practice = PlasterMaterial.Number("lath-lap");
        return house.Finishes.FirstOrDefault(f => f.Face == face && f.Lath is not null)?.Lath is { } lath ? (lath.Lap.Metres, Tag.Given, null) : (practice.Value, Tag.Assumed, practice.Source);
    }

    private bool Plastered(Face face) => house.Finishes.Any(f => f.Face == face);

    private IEnumerable<LathPlace> Around(OpeningPlace place, Face face)
    {
        var name = place.Opening.Name;
        if (place.Header is { } header)
        {
            var middle = (header.WallThickness - header.TotalWidth) / 2;
            var cover = Math.Max(0, Math.Min(middle, face == Face.Inside ? -header.ProudInside : -header.ProudOutside));
            var depth = header.Top - header.Bottom;
            if (cover < PlasterMaterial.Number("lath-cover").Value)
            {
                yield return Patch($"{name}/header", LathKind.Header, face, header.Length, depth, cover, 2);
            }

            if (reveals.Openings.FirstOrDefault(r => r.Opening == name && r.Face == face) is { Head: > 0 } reveal)
            {
                yield return new LathPlace($"{name}/header", LathKind.Soffit, face, place.Opening.Width.Metres, reveal.Head / place.Opening.Width.Metres, null, reveal.Head);
            }
        }

        if (place.Opening.Frame is { } frame)
        {
            var edge = 2 * frame.Height.Metres + (place.Opening.Kind == OpeningKind.Door ? 1 : 2) * frame.Width.Metres;
            yield return Patch($"{name}/frame", LathKind.Frame, face, edge, frame.Stock.Metres, null, 1);
        }
    }

    private IEnumerable<LathPlace> Beam(Face face)
    {
        if (house.BondBeam is not { } beam)
        {
            yield break;
        }

        var top = geometry.Wall.Top.Metres;
        var middle = (geometry.Wall.InsideOffset(top) + geometry.Wall.OutsideOffset(top)) / 2 + beam.Offset.Metres;
        var side = middle + (face == Face.Inside ? -1 : 1) * beam.Width.Metres / 2;
        yield return Patch("bond beam", LathKind.BondBeam, face, geometry.Curve.OffsetLength(side), beam.Depth.Metres, null, 1);
    }

    private IEnumerable<LathPlace> Set(EmbedPlace place)
    {
        var embed = place.Embed;
        LathKind? kind = embed.Kind switch { EmbedKind.Nailer => LathKind.Nailer, EmbedKind.Deadman => LathKind.Deadman, _ => null };
        if (kind is { } known)
        {
            var assumed = PlasterMaterial.Number("lath-embed").Value;
            yield return embed is { Width: { } width } ? Patch(place.Address, known, embed.Face, width.Metres, (embed.Size ?? width).Metres, null, 4)
                : Patch(place.Address, known, embed.Face, assumed, assumed, null, 4, sized: false) with { Length = null, Width = null };
        }
    }

    /// <summary>A strip of timber with its laps: 1 long edge onto cob, 2 long edges, or 4 for a patch with cob all round.</summary>
    private LathPlace Patch(string address, LathKind kind, Face face, double length, double width, double? cover, int edges, bool sized = true)
    {
        var lap = Lap(face);
        var l = new Symbol("l", new Message("analysis.symbol.lath-lap"), Amount.Metres(lap.Metres), lap.Tag, lap.Source);
        var (equation, area) = edges switch
        {
            1 => ("L*(b+l)", length * (width + lap.Metres)),
            2 => ("L*(b+2*l)", length * (width + 2 * lap.Metres)),
            _ => ("(L+2*l)*(b+2*l)", (length + 2 * lap.Metres) * (width + 2 * lap.Metres)),
        };
        var sheet = new Worksheet("lath-area");
        sheet.Step("lath-area", "A", equation, area, Dimension.Area, Sources.Get("common-practice"),
            Side("L", "lath-length", length), Side("b", "lath-width", width), l);
        calculations.Add(sheet.Done with { Place = $"{address}, {(face == Face.Inside ? "inside" : "outside")} face" });
        return new LathPlace(address, kind, face, length, width, cover, area);

        Symbol Side(string symbol, string word, double metres) =>
            sized ? Worksheet.Computed(symbol, word, metres, Dimension.Length) : Worksheet.Assumed(symbol, word, metres, Dimension.Length, PlasterMaterial.Number("lath-embed").Source);
    }
}
