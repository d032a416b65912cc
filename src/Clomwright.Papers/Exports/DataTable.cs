using Clomwright.Evidence;

namespace Clomwright.Papers.Exports;

/// <summary>What stands in a cell of a table for other programs.</summary>
public abstract record DataCell
{
    private protected DataCell()
    {
    }

    /// <summary>Nothing: what is not known stays empty.</summary>
    public sealed record Empty : DataCell;

    /// <summary>Words.</summary>
    public sealed record Words(string Text) : DataCell;

    /// <summary>A number, in the unit that its column or row names.</summary>
    public sealed record Number(double Value) : DataCell;

    /// <summary>A number that the reader works out.</summary>
    /// <param name="Of">A formula of cells; <c>{r}</c> stands for its own row, counted from 1 with the heads.</param>
    /// <param name="Value">What it comes to here.</param>
    public sealed record Formula(string Of, double Value) : DataCell;
}

/// <summary>A table for other programs.</summary>
/// <param name="Key">Permanent: <c>orders</c>, <c>findings</c>.</param>
/// <param name="Name">What it is called.</param>
/// <param name="Heads">Of its columns, with their units.</param>
/// <param name="Rows">As many cells as heads.</param>
public sealed record DataTable(string Key, string Name, Sequence<string> Heads, Sequence<Sequence<DataCell>> Rows)
{
    /// <summary>Columns that are added up under the last row.</summary>
    public Sequence<int> Added { get; init; }

    /// <summary>What stands before the sums.</summary>
    public string Sum { get; init; } = "";
}
