using System.Globalization;
using System.Text;
using Clomwright.Papers.Exports;

namespace Clomwright.Papers.Writers;

/// <summary>A table as comma-separated values (RFC 4180), UTF-8, numbers with a point.</summary>
/// <remarks>Words that a spreadsheet would take for a formula (they begin with =, +, - or @) get an apostrophe before them: names come from files that others wrote.</remarks>
public static class CsvWriter
{
    private const string End = "\r\n";

    /// <summary>Text of a file, its heads first; formulas as what they come to, sums left to the reader.</summary>
    public static string Write(DataTable table)
    {
        ArgumentNullException.ThrowIfNull(table);
        var text = new StringBuilder();
        text.AppendJoin(',', table.Heads.Select(Quoted)).Append(End);
        foreach (var row in table.Rows)
        {
            text.AppendJoin(',', row.Select(Cell)).Append(End);
        }

        return text.ToString();
    }

    private static string Cell(DataCell cell) => cell switch
    {
        DataCell.Number n => n.Value.ToString("R", CultureInfo.InvariantCulture),
        DataCell.Formula f => f.Value.ToString("R", CultureInfo.InvariantCulture),
        DataCell.Words w => Quoted(w.Text.Length > 0 && w.Text[0] is '=' or '+' or '-' or '@' or '\t' ? "'" + w.Text : w.Text),
        _ => "",
    };

    private static string Quoted(string text) => text.AsSpan().IndexOfAny(",\"\r\n") < 0 ? text : $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
