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

    /// <summary>A thicker bolt with its washer; then the same through the beam instead of a screw.</summary>
    private static IEnumerable<Edit> SeatBolts(Need need)
    {
        if (need.House.Roof is not { Seat: { Bolt: { } bolt } seat } roof)
        {
            return [];
        }

        Length[] sizes = [.. new[] { 0.5, 0.625, 0.75, 0.875, 1 }.Select(Inches).Where(size => size > bolt)];
        return
        [
            .. seat.Lag is null ? [] : new[] { new Edit.ChangeRoof(roof with { Seat = seat with { Lag = null } }) },
            .. sizes.Select(size => new Edit.ChangeRoof(roof with { Seat = seat with { Bolt = size, Lag = null, Washer = seat.Washer is null ? null : new Length(3 * size.Nanometres) } })),
        ];
    }

    /// <summary>A thinner bolt; then a wider beam.</summary>
    private static IEnumerable<Edit> SeatEdges(Need need) => need.House.Roof is { Seat: { Bolt: { } bolt } seat } roof
        ?
        [
            .. new[] { 1, 0.875, 0.75, 0.625, 0.5, 0.375 }.Select(Inches).Where(size => size < bolt).Select(size => new Edit.ChangeRoof(roof with { Seat = seat with { Bolt = size } })),
            .. WiderBeam(need),
        ]
        : [];
}
