using Clomwright.Analysis.Roof;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Study.Mends;

internal static partial class Candidates
{
    /// <summary>One and two more in each board, then longer ones.</summary>
    private static IEnumerable<Edit> MoreNails(Need need) => need.House.Roof is { DeckNails: { } nails } roof
        ? new[] { nails with { Count = nails.Count + 1 }, nails with { Count = nails.Count + 2 }, nails with { Length = nails.Length + Inches(1) }, nails with { Length = nails.Length + Inches(2), Count = nails.Count + 1 } }
            .Select(n => new Edit.ChangeRoof(roof with { DeckNails = n }))
        : [];

    /// <summary>Crossed straps in every bay, in sizes that can be bought, with 16d common nails.</summary>
    private static IEnumerable<Edit> Braced(Need need)
    {
        (double Width, double Thick, int Nails)[] straps = [(1.5, 0.125, 6), (2, 0.125, 10), (2, 0.25, 14), (3, 0.25, 24)];
        return need.House.Roof is { } roof
            ? straps.Select(s => new Edit.ChangeRoof(roof with { Braces = new RoofBraces(Inches(s.Width), Inches(s.Thick), s.Nails, new Length(Length.PerInch / 1000 * 162), Inches(3.5)) }))
            : [];
    }

    /// <summary>Seats cut deeper where they are too short to reach all of the bond beam; what is left of the pole is asked of every mend.</summary>
    private static IEnumerable<Edit> DeeperSeats(Need need)
    {
        if (need.House.Roof is not { } roof || need.Study.WallTop.Seats.All(s => s.OffMiddle == 0))
        {
            return [];
        }

        var (seat, depth) = (roof.Seat ?? new SeatMade(), LevelSeat.DepthOf(roof.Seat));
        return ((double[])[1.5, 2]).Select(more => new Edit.ChangeRoof(roof with { Seat = seat with { Flat = need.Stock(depth * more) } }));
    }

    /// <summary>A thicker bolt with its washer; then the same through the beam instead of a screw.</summary>
    private static IEnumerable<Edit> SeatBolts(Need need)
    {
        if (need.House.Roof is not { Seat: { Bolt: { } bolt } seat } roof)
        {
            return [];
        }

        Length[] sizes = [.. ((double[])[0.5, 0.625, 0.75, 0.875, 1]).Select(Inches).Where(size => size > bolt)];
        return
        [
            .. seat.Lag is null ? [] : new[] { new Edit.ChangeRoof(roof with { Seat = seat with { Lag = null } }) },
            .. sizes.Select(size => new Edit.ChangeRoof(roof with { Seat = seat with { Bolt = size, Lag = null, Washer = seat.Washer is null ? null : new Length(3 * size.Nanometres) } })),
        ];
    }

    /// <summary>Thicker bolts where bolts lack; else a wider beam, thicker secondaries.</summary>
    private static IEnumerable<Edit> SecondaryEnds(Need need)
    {
        if (need.House.Roof is not { Secondaries: { } made } roof)
        {
            return [];
        }

        return need.Subject.EndsWith("bolt", StringComparison.Ordinal) && made.Bolt is { } bolt
            ? ((double[])[0.375, 0.5, 0.625, 0.75, 1]).Select(Inches).Where(size => size > bolt).Select(size => new Edit.ChangeRoof(roof with { Secondaries = made with { Bolt = size } }))
            : [.. WiderBeam(need), new Edit.ChangeRoof(roof with { Secondaries = made with { Diameter = need.Stock(made.Diameter.Metres * need.Ratio * need.Ratio) } })];
    }

    /// <summary>A thicker post on a larger footing; a wider and deeper ring.</summary>
    private static IEnumerable<Edit> InnerSupports(Need need) => need.House.Roof is not Roof.Radial roof || !(need.Ratio is > 1 and < LargestRatio) ? []
        : roof.Post is { } post && roof.CentrePost
            ? need.Subject.EndsWith("footing", StringComparison.Ordinal)
                ? [new Edit.ChangeRoof(roof with { Post = post with { Footing = need.Stock(post.Footing.Metres * Math.Sqrt(need.Ratio)) } })]
                : [.. ((int[])[0, 1, 3]).Select(sizes => new Edit.ChangeRoof(roof with { Post = post with { Diameter = need.Stock(post.Diameter.Metres * Math.Sqrt(need.Ratio)) + need.StockStep * sizes } }))]
        : roof.Ring is { } ring
            ?
            [
                new Edit.ChangeRoof(roof with { Ring = ring with { Depth = need.Stock(ring.Depth.Metres * need.Ratio) } }), new Edit.ChangeRoof(roof with { Ring = ring with { Width = need.Stock(ring.Width.Metres * need.Ratio) } }),
                .. Stronger(need, ratio => ratio),
            ]
        : [];

    /// <summary>The flue in the middle of each bay, nearest first, and farther out.</summary>
    private static IEnumerable<Edit> FlueElsewhere(Need need)
    {
        if (need.House.Roof is not { Flue: { } flue } roof)
        {
            return [];
        }

        return
        [
            .. ((int[])[5, -5, 10, -10, 15, -15, 20, -20, 30, -30]).Select(turn => new Edit.ChangeRoof(roof with { Flue = flue with { Bearing = new Angle(flue.Bearing.Degrees + turn) } })),
            .. ((int[])[6, 12, 18]).Select(inches => new Edit.ChangeRoof(roof with { Flue = flue with { Distance = flue.Distance + Inches(inches) } })),
        ];
    }

    /// <summary>Battens half as high as the soil, closer and closer; then as high as it is.</summary>
    private static IEnumerable<Edit> Battened(Need need)
    {
        if (need.House.Roof is not { } roof)
        {
            return [];
        }

        return new[] { (24, 2), (16, 2), (12, 2), (16, 3), (12, 3), (8, 3) }
            .Select(b => new Edit.ChangeRoof(roof with { Battens = new SoilBattens(Inches(b.Item1), Inches(b.Item2)) }));
    }

    /// <summary>A thinner bolt; then a wider beam.</summary>
    private static IEnumerable<Edit> SeatEdges(Need need) => need.House.Roof is { Seat: { Bolt: { } bolt } seat } roof
        ?
        [
            .. ((double[])[1, 0.875, 0.75, 0.625, 0.5, 0.375]).Select(Inches).Where(size => size < bolt).Select(size => new Edit.ChangeRoof(roof with { Seat = seat with { Bolt = size } })),
            .. WiderBeam(need),
        ]
        : [];
}
