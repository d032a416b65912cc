using Clomwright.Building;
using Clomwright.Evidence;
using CsCheck;

namespace Clomwright.Testing;

/// <summary>Random openings, niches and embeds that fit the wall without overlapping: each opening in the middle of its own share of the ring, niches and embeds between them.</summary>
internal sealed class WallDraws(Tape tape, PlanDraw plan, Stem stem, Wall wall, Func<string, string> name)
{
    private static readonly OpeningKind[] Kinds = [OpeningKind.Fixed, OpeningKind.Opening, OpeningKind.Fixed, OpeningKind.Glass, OpeningKind.Door];

    private readonly record struct Sector(int Index, int Of, bool ByStation);

    /// <summary>How much wall each of the ring's shares has at least, inches: width, splays, 2 ft of cob.</summary>
    private const double SectorLeast = 52;

    private double RingLeast(bool byStation) => byStation ? plan.Length : 2 * Math.PI * plan.LeastRadius;

    public Gen<(Sequence<Opening> Openings, Sequence<Niche> Niches, Sequence<Embed> Embeds)> All =>
        from byStation in Gen.Bool
        from count in Gen.Int[1, Math.Clamp((int)(RingLeast(byStation) / SectorLeast), 1, 7)]
        from openings in Gen.Select(Gen.Double[-0.05, 0.05], Gen.Double.Unit, Gen.Double.Unit, Gen.Double.Unit, Gen.Int[0, 4], Gen.Int[0, 7], Gen.Bool, Gen.Bool, Draw).Array[count]
        from niches in Gen.Select(Gen.Double.Unit, Gen.Double.Unit, Gen.Double.Unit, Gen.Double.Unit, Gen.Enum<NicheHead>(), Gen.Int[0, 3], Draw).Array[0, Math.Min(count, 3)]
        from embeds in Gen.Select(Gen.Double.Unit, Gen.Double.Unit, Gen.Int[0, 9], Gen.Int[1, 4], Gen.Int[0, count - 1], Gen.Bool, Draw).Array[0, 10]
        select (openings.Select((make, i) => make(new Sector(i, count, byStation))).ToSequence(),
                niches.Select((make, i) => make(new Sector(i, count, byStation))).ToSequence(),
                embeds.Select((make, i) => make(new Sector(i, count, byStation))).ToSequence());

    private Along Middle(Sector sector, double jitter)
    {
        var share = (sector.Index + 0.5 + jitter) / sector.Of;
        return sector.ByStation
            ? Along.At(tape.AtLeast(plan.Length * share))
            : Along.At(new Angle(Math.Round(share * 720) / 2 % 360));
    }

    private Func<Sector, Opening> Draw(double jitter, double across, double up, double splay, int kind, int form, bool framed, bool header) => sector =>
    {
        var width = tape.At(across, 14, Math.Min(48, 0.88 * RingLeast(sector.ByStation) / sector.Of - 30));
        var isDoor = sector.Index == 0 || (Kinds[kind] == OpeningKind.Door && width.Inches > 28);
        var shape = isDoor || form < 5 ? OpeningShape.Rectangular : form < 7 ? OpeningShape.Arched : OpeningShape.Round;
        var most = wall.Top.Inches - 14;
        var sill = isDoor ? Length.Zero : tape.At(up, Math.Max(stem.Top.Inches + 6, 20), 44);
        var height = isDoor ? tape.At(up, 72, most) : shape == OpeningShape.Round ? width : tape.At(1 - up, 14, Math.Min(44, most - sill.Inches));
        return new Opening
        {
            Name = name(isDoor ? $"door-{sector.Index + 1}" : $"window-{sector.Index + 1}"),
            Kind = isDoor ? OpeningKind.Door : Kinds[kind] == OpeningKind.Door ? OpeningKind.Fixed : Kinds[kind],
            Along = Middle(sector, jitter),
            Width = width,
            Height = height,
            Sill = sill,
            Shape = shape,
            Rise = shape == OpeningShape.Arched ? tape.AtLeast(Math.Min(width.Inches / 2 - 1, height.Inches / 2)) : null,
            Splay = splay < 0.4 ? default : new Splay(new Angle(Math.Round(splay * 40) / 2), new Angle(Math.Round(splay * 20) / 2)),
            Frame = framed ? new Frame(width - tape.AtLeast(1), height - tape.AtLeast(1), tape.AtLeast(6), tape.AtLeast(1.5), header ? tape.AtLeast(1) : null) { First = kind % 2 == 0, Setback = kind == 1 ? tape.AtLeast(3) : null } : null,
            Header = shape == OpeningShape.Rectangular ? new Header(wall.ThicknessAtTop.Inches > 13 ? 2 + kind % 2 : 2, tape.AtLeast(4), tape.AtLeast(6), tape.AtLeast(header ? 12 : 8)) { CrossPad = !header } : null,
            Escape = isDoor && framed,
        };
    };

    private Func<Sector, Niche> Draw(double along, double across, double up, double deep, NicheHead head, int face) => sector => new Niche
    {
        Name = name($"niche-{sector.Index + 1}"),
        Face = face == 0 ? Face.Outside : Face.Inside,
        Along = Middle(sector, 0.5 + 0.02 * (along - 0.5)),
        Width = tape.At(across, 6, 14),
        Height = tape.At(across, 8, 16),
        Depth = tape.At(deep, 2, Math.Max(3, wall.ThicknessAtTop.Inches - 9)),
        Sill = tape.At(up, stem.Top.Inches + 12, wall.Top.Inches - 30),
        Head = head,
    };

    private Func<Sector, Embed> Draw(double along, double up, int kind, int row, int pier, bool noted) => sector => new Embed
    {
        Name = name($"embed-{sector.Index + 1}"),
        Kind = (EmbedKind)kind,
        Face = along > 0.7 ? Face.Outside : Face.Inside,
        Along = Middle(sector with { Index = pier }, 0.5 + 0.02 * (along - 0.5)),
        Height = tape.At(up, stem.Top.Inches + 4, wall.Top.Inches - 8),
        Count = row,
        Spacing = row > 1 ? tape.AtLeast(2) : null,
        Width = (EmbedKind)kind is EmbedKind.Bottle or EmbedKind.Sleeve or EmbedKind.Box ? tape.AtLeast(3) : null,
        Size = (EmbedKind)kind is EmbedKind.Box ? tape.AtLeast(4) : null,
        Depth = (EmbedKind)kind is EmbedKind.Peg or EmbedKind.Shelf or EmbedKind.Deadman ? tape.At(up, 4, 9) : null,
        Through = (EmbedKind)kind is EmbedKind.Bottle or EmbedKind.Sleeve,
        Note = noted ? "set level, check before the lift above" : null,
    };
}
