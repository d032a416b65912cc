using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Study.Mends;

internal static partial class Candidates
{
    /// <summary>A wider stem is of use where the wall overhangs it; otherwise the wall above has to be thicker. The trench goes with the stem.</summary>
    private static IEnumerable<Edit> WiderStem(Need need)
    {
        if (!(need.Ratio is > 1 and < LargestRatio))
        {
            return [];
        }

        var (stem, wall) = (need.House.Stem, need.House.Wall);
        var wider = need.Stock(stem.Width.Metres * need.Ratio);
        var thicker = need.Stock(wall.ThicknessAtTop.Metres * need.Ratio);
        return
        [
            OnTrench(need, stem with { Width = wider }, wider - stem.Width),
            new Edit.Several([OnTrench(need, stem with { Width = wider }, wider - stem.Width), new Edit.ChangeWall(wall with { ThicknessAtTop = thicker })]),
        ];
    }

    private static Edit OnTrench(Need need, Stem stem, Length wider) => need.House.Trench is { } trench && trench.Width < stem.Width
        ? new Edit.Several([new Edit.ChangeStem(stem), new Edit.ChangeTrench(trench with { Width = trench.Width + wider })])
        : new Edit.ChangeStem(stem);

    /// <summary>The stem raised until the cob begins over the ground, the wall with it; or the ground taken down to the stem.</summary>
    private static IEnumerable<Edit> StemOverGrade(Need need)
    {
        if (need.House.Site.Grade is not { } grade || grade <= need.House.Stem.Top)
        {
            return [];
        }

        var (stem, wall, by) = (need.House.Stem, need.House.Wall, grade - need.House.Stem.Top);
        return
        [
            new Edit.Several([new Edit.ChangeStem(stem with { Top = grade }), new Edit.ChangeWall(wall with { Top = wall.Top + by })]),
            new Edit.ChangeSite(need.House.Site with { Grade = stem.Top }),
        ];
    }

    /// <summary>A wider trench, then a deeper one for the load to spread in, then both, then a wider stem too.</summary>
    private static IEnumerable<Edit> WiderTrench(Need need)
    {
        if (need.House.Trench is not { } trench || !(need.Ratio is > 1 and < LargestRatio))
        {
            return [];
        }

        var stem = need.House.Stem;
        var growths = new[] { 1, 1.15, 1.4 };
        return
        [
            .. growths.Select(more => new Edit.ChangeTrench(Wide(more))),
            .. growths.Select(more => new Edit.ChangeTrench(Wide(more) is var wide && wide.Width.Metres > stem.Width.Metres + trench.Depth.Metres ? Deeper(wide, wide.Width - stem.Width - trench.Depth) : wide)),
            .. growths.Select(more => new Edit.Several([new Edit.ChangeTrench(Wide(more)), new Edit.ChangeStem(stem with { Width = need.Stock(stem.Width.Metres * need.Ratio * more) })])),
        ];

        Trench Wide(double more) => trench with { Width = need.Stock(trench.Width.Metres * need.Ratio * more) };
    }

    /// <summary>The stem, and with it the trench, moved under the load.</summary>
    private static IEnumerable<Edit> Centred(Need need)
    {
        var stem = need.House.Stem;
        return
        [
            .. stem.InsideOffset is null ? (IEnumerable<Edit>)[] : [new Edit.ChangeStem(stem with { InsideOffset = null })],
            .. need.House.BondBeam is { } beam && beam.Offset != Length.Zero ? (IEnumerable<Edit>)[new Edit.ChangeBondBeam(beam with { Offset = Length.Zero })] : [],
            .. WiderStem(need),
        ];
    }

    /// <summary>Deeper by what is missing; where the drain would then lie too low, its outlet with it.</summary>
    private static IEnumerable<Edit> DeeperTrench(Need need) => need.House.Trench is { } trench
        ? [new Edit.ChangeTrench(trench with { Depth = trench.Depth + need.Gap }), new Edit.ChangeTrench(Deeper(trench, need.Gap))]
        : [];

    private static Trench Deeper(Trench trench, Length by) => trench with { Depth = trench.Depth + by, Outlet = trench.Outlet is { } outlet ? outlet - by : null };

    /// <summary>The outlet lower; else the trench laid flatter where it may be.</summary>
    private static IEnumerable<Edit> LowerOutlet(Need need) => need.House.Trench is { Outlet: { } outlet } trench
        ? [new Edit.ChangeTrench(trench with { Outlet = outlet - need.Gap }), new Edit.ChangeTrench(trench with { Fall = null })]
        : [];

    /// <summary>The fall that is asked, with the outlet as low as that needs.</summary>
    private static IEnumerable<Edit> SteeperFall(Need need)
    {
        if (need.House.Trench is not { Outlet: { } outlet } trench || need.Study.Foundation.Drain.Value is not { } drain)
        {
            return [];
        }

        var drop = need.Comparison.Limit.Si * (drain.Run + (drain.Beyond ?? 0));
        var lower = need.Up(Math.Max(0, drop - drain.Available));
        return
        [
            .. trench.Fall is null ? (IEnumerable<Edit>)[] : [new Edit.ChangeTrench(trench with { Fall = null }), new Edit.ChangeTrench(trench with { Fall = new Slope(need.Comparison.Limit.Si) })],
            new Edit.ChangeTrench(trench with { Outlet = outlet - lower }),
            new Edit.ChangeTrench(trench with { Fall = trench.Fall is null ? null : new Slope(need.Comparison.Limit.Si), Outlet = outlet - lower }),
        ];
    }
}
