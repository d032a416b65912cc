namespace Clomwright.Numerics.Factorisation;

/// <summary>How a sheet is cut into sectors, and which sector is eliminated last, so that changes inside it are cheap.</summary>
/// <param name="Cuts">Positions i, ascending, of the lines of columns that separate sectors; a closed sheet has at least two.</param>
/// <param name="Focus">
/// The sector at the root of the tree. In a closed sheet sector j lies between cuts j and j+1 (the last wraps); in an open one sector 0 lies
/// before the first cut.
/// </param>
public sealed record SheetDissection(IReadOnlyList<int> Cuts, int Focus)
{
    /// <summary>Cuts spaced evenly so that sectors are about as long as the sheet is high.</summary>
    public static SheetDissection Even(SheetShape shape)
    {
        var sectors = Math.Max(shape.IsClosed ? 2 : 1, (int)Math.Round((double)shape.Around / shape.Up));
        var cuts = shape.IsClosed
            ? Enumerable.Range(0, sectors).Select(j => (int)((long)j * shape.Around / sectors))
            : Enumerable.Range(1, sectors - 1).Select(j => (int)((long)j * shape.Around / sectors));
        return new SheetDissection([.. cuts], 0);
    }

    /// <summary>Number of sectors.</summary>
    public int Sectors(SheetShape shape) => shape.IsClosed ? Cuts.Count : Cuts.Count + 1;

    /// <summary>
    /// The dissection focused on the columns from..to (from may be negative or to beyond the sheet in a closed one). Cuts within
    /// <paramref name="margin"/> of them are moved or dropped, all others kept; nothing changes while the columns keep clear of their sector's
    /// ends by half the margin.
    /// </summary>
    public SheetDissection FocusedOn(SheetShape shape, int from, int to, int margin)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(to, from);
        if (Inside(shape, from - margin / 2, to + margin / 2) is { } sector)
        {
            return this with { Focus = sector };
        }

        var (low, high) = (from - margin, to + margin);
        if (!shape.IsClosed)
        {
            var kept = Cuts.Where(c => c < low || c > high).ToList();
            kept.AddRange(new[] { low, high }.Where(c => c > 0 && c < shape.Around - 1));
            kept.Sort();
            return new SheetDissection(kept, kept.Count(c => c < from));
        }

        if (high - low >= shape.Around - 1)
        {
            // No room for the whole margin: the two cuts share what is left of the ring.
            var rest = shape.Around - 2 - (to - from + 1);
            if (rest < 0)
            {
                return this;
            }

            low = from - 1 - rest / 2;
            high = low + shape.Around - 1;
        }

        int Wrap(int i) => ((i % shape.Around) + shape.Around) % shape.Around;
        bool IsOutside(int cut) => Wrap(cut - low) > high - low;
        var cuts = Cuts.Where(IsOutside).Append(Wrap(low)).Append(Wrap(high)).Distinct().Order().ToList();
        return new SheetDissection(cuts, cuts.IndexOf(Wrap(low)));
    }

    /// <summary>The sector whose inner columns include all of from..to, or null.</summary>
    private int? Inside(SheetShape shape, int from, int to)
    {
        for (var j = 0; j < Sectors(shape); j++)
        {
            var (first, last) = Interior(shape, j);
            for (var turn = -1; turn <= (shape.IsClosed ? 1 : -1); turn++)
            {
                var shift = shape.IsClosed ? turn * shape.Around : 0;
                var (lo, hi) = shape.IsClosed ? (from, to) : (Math.Max(from, 0), Math.Min(to, shape.Around - 1));
                if (lo + shift >= first && hi + shift <= last)
                {
                    return j;
                }
            }
        }

        return null;
    }

    /// <summary>First and last inner position of a sector; the last may lie beyond the sheet where a closed one wraps.</summary>
    internal (int First, int Last) Interior(SheetShape shape, int sector)
    {
        if (shape.IsClosed)
        {
            var next = sector + 1 < Cuts.Count ? Cuts[sector + 1] : Cuts[0] + shape.Around;
            return (Cuts[sector] + 1, next - 1);
        }

        return (sector == 0 ? 0 : Cuts[sector - 1] + 1, sector == Cuts.Count ? shape.Around - 1 : Cuts[sector] - 1);
    }

    /// <summary>Throws when the cuts do not fit the sheet.</summary>
    internal void Validate(SheetShape shape)
    {
        for (var j = 0; j < Cuts.Count; j++)
        {
            if (Cuts[j] < 0 || Cuts[j] >= shape.Around || (j > 0 && Cuts[j] <= Cuts[j - 1]))
            {
                throw new ArgumentException($"Cut {j} at {Cuts[j]} is not on the sheet or not after the one before it.");
            }
        }

        if (shape.IsClosed && Cuts.Count < 2)
        {
            throw new ArgumentException("A closed sheet needs at least two cuts.");
        }

        ArgumentOutOfRangeException.ThrowIfNegative(Focus);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(Focus, Sectors(shape));
    }
}
