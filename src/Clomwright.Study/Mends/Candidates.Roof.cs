using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Study.Mends;

internal static partial class Candidates
{
    /// <summary>Beyond this a ratio says that something else is wrong than the size.</summary>
    private const double LargestRatio = 64;

    /// <summary>A bigger pole, a wider ring, more poles; then two of them, and a pole one size bigger again for its own weight.</summary>
    /// <param name="need">What is lacking.</param>
    /// <param name="growth">What the thickness has to be multiplied by for a ratio of demand to capacity.</param>
    private static IEnumerable<Edit> Stronger(Need need, Func<double, double> growth)
    {
        if (need.House.Roof is not { } roof || !(need.Ratio is > 1 and < LargestRatio))
        {
            return [];
        }

        var thicker = Enumerable.Range(0, 3).Select(sizes => Thicker(need, roof, growth(need.Ratio), sizes)).ToList();
        return
        [
            thicker[0],
            .. WiderRing(need).Take(1), .. MorePoles(roof),
            .. thicker.Skip(1), .. WiderRing(need).Skip(1),
        ];
    }

    /// <summary>Every pole or rafter thicker, in whole stock sizes.</summary>
    private static Edit.ChangeRoof Thicker(Need need, Roof roof, double factor, int sizesMore)
    {
        return new Edit.ChangeRoof(roof switch
        {
            Roof.Reciprocal r => r with { Pole = Grown(r.Pole) },
            Roof.Radial r => r with { Pole = Grown(r.Pole) },
            Roof.Shed r => r with { Pole = Grown(r.Pole) },
            Roof.Gable r => r with { Pole = Grown(r.Pole) },
            _ => roof,
        });

        PoleSize Grown(PoleSize pole) => new(Grow(pole.Butt), Grow(pole.Tip));

        Length Grow(Length size) => need.Stock(size.Metres * factor) + need.StockStep * sizesMore;
    }

    private static IEnumerable<Edit> WiderRing(Need need) => need.House.Roof is Roof.Reciprocal roof
        ? [.. new[] { 1.25, 1.5, 2 }.Select(wider => new Edit.ChangeRoof(roof with { RingRadius = need.Stock(roof.RingRadius.Metres * wider) }))]
        : [];

    /// <summary>More poles, or rafters closer together; where each landing is placed by hand nobody but the author can add one.</summary>
    private static IEnumerable<Edit> MorePoles(Roof roof) => roof switch
    {
        { Landings.Count: > 0 } => [],
        Roof.Reciprocal r => [new Edit.ChangeRoof(r with { Poles = r.Poles + 2 }), new Edit.ChangeRoof(r with { Poles = r.Poles * 3 / 2 })],
        Roof.Radial r => [new Edit.ChangeRoof(r with { Poles = r.Poles + 2 }), new Edit.ChangeRoof(r with { Poles = r.Poles * 3 / 2 })],
        Roof.Shed r => [new Edit.ChangeRoof(r with { Spacing = Share(r.Spacing, 0.75) }), new Edit.ChangeRoof(r with { Spacing = Share(r.Spacing, 0.5) })],
        Roof.Gable r => [new Edit.ChangeRoof(r with { Spacing = Share(r.Spacing, 0.75) }), new Edit.ChangeRoof(r with { Spacing = Share(r.Spacing, 0.5) })],
        _ => [],
    };

    private static Length Share(Length length, double share) => Length.Nearest(length.Metres * share).RoundedTo(new Length(Length.PerInch / 4));

    private static IEnumerable<Edit> Pinned(Need need) =>
        need.House.Roof is Roof.Reciprocal { Joint: not PoleJoint.Pinned } roof ? [new Edit.ChangeRoof(roof with { Joint = PoleJoint.Pinned })] : [];

    /// <summary>A deeper notch bears on more wood, and leaves less of it to bend.</summary>
    private static IEnumerable<Edit> DeeperNotch(Need need) => need.House.Roof is Roof.Reciprocal roof && need.Ratio is > 1 and < LargestRatio
        ? [new Edit.ChangeRoof(roof with { Notch = need.Up(roof.Notch.Metres * need.Ratio) }), .. Stronger(need, ratio => ratio)]
        : [];

    private static IEnumerable<Edit> WiderBeam(Need need) => need.House.BondBeam is { } beam && need.Ratio is > 1 and < LargestRatio
        ? [new Edit.ChangeBondBeam(beam with { Width = need.Stock(beam.Width.Metres * need.Ratio) })]
        : [];

    /// <summary>Tees as much deeper as can be built, longer bars, tees closer together, a deeper and longer one.</summary>
    private static IEnumerable<Edit> DeeperTees(Need need)
    {
        if (need.House.Tees is not { } tees || !(need.Ratio is > 1 and < LargestRatio))
        {
            return [];
        }

        var (deeper, longer) = (need.Up(tees.Depth.Metres * need.Ratio), need.Up(tees.Bar.Metres * need.Ratio));
        // A bar has to lie in cob with a lift under it: deeper than that nobody can build.
        var built = need.Geometry.Lifts.Count == 0 || need.Geometry.Wall.Top - deeper >= need.Geometry.Lifts[0].Top;
        return
        [
            .. built ? [new Edit.ChangeTees(tees with { Depth = deeper })] : Array.Empty<Edit>(), new Edit.ChangeTees(tees with { Bar = longer }), new Edit.ChangeTees(tees with { Spacing = Share(tees.Spacing, 0.75) }),
            new Edit.ChangeTees(tees with { Spacing = Share(tees.Spacing, 0.5) }), .. built ? [new Edit.ChangeTees(tees with { Depth = deeper, Bar = longer })] : Array.Empty<Edit>(),
        ];
    }

    private static IEnumerable<Edit> DeeperHeader(Need need, Func<double, double> growth) => need.Opening is { Header: { } header } opening && need.Ratio is > 1 and < LargestRatio
        ? [new Edit.ChangeOpening(opening.Name, opening with { Header = header with { Depth = need.Stock(header.Depth.Metres * growth(need.Ratio)) } })]
        : [];

    /// <summary>Ends as long as the load asks of the harder one; a header one piece wider, with ends as they are and as long as that.</summary>
    private static IEnumerable<Edit> LongerBearing(Need need)
    {
        if (need.Opening is not { Header: { } header } opening || !(need.Ratio is > 1 and < LargestRatio))
        {
            return [];
        }

        var asked = need.Study.WallTop.HeaderEnds.Where(e => e.Opening == opening.Name).Select(e => e.Needed).ToList();
        var wider = header with { Pieces = header.Pieces + 1 };
        Header[] tried = asked.Count > 0 && asked.All(a => a is not null)
            ? [header with { Bearing = need.Up(asked.Max()!.Value) }, wider, wider with { Bearing = need.Up(asked.Max()!.Value) }]
            : [wider];
        return tried.Select(made => new Edit.ChangeOpening(opening.Name, opening with { Header = made }));
    }
}
