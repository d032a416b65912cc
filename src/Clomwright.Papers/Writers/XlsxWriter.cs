using System.Globalization;
using System.IO.Compression;
using System.Security;
using System.Text;
using Clomwright.Evidence;
using Clomwright.Papers.Exports;

namespace Clomwright.Papers.Writers;

/// <summary>Tables as a workbook (ISO/IEC 29500, SpreadsheetML): a sheet for each, heads frozen, sums and what follows from other cells as formulas.</summary>
/// <remarks>Formulas carry what they came to here, for readers that do not calculate; readers that do are told to. The same tables give the same bytes: no author and no date.</remarks>
public static class XlsxWriter
{
    private const string Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private const string Relations = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private const string Package = "http://schemas.openxmlformats.org/package/2006/";
    private const string Declaration = "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n";
    private const int Plain = 0, Strong = 1, Decimal = 2, StrongDecimal = 3;
    private const int WidthMost = 60;

    /// <summary>The earliest day that a ZIP archive can tell.</summary>
    private static readonly DateTimeOffset Stamp = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>The bytes of a file.</summary>
    public static byte[] Write(IReadOnlyList<DataTable> tables)
    {
        ArgumentNullException.ThrowIfNull(tables);
        using var file = new MemoryStream();
        using (var archive = new ZipArchive(file, ZipArchiveMode.Create, leaveOpen: true))
        {
            Put(archive, "[Content_Types].xml", $"<Types xmlns=\"{Package}content-types\"><Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/><Default Extension=\"xml\" ContentType=\"application/xml\"/>"
                + "<Override PartName=\"/xl/workbook.xml\" ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml\"/><Override PartName=\"/xl/styles.xml\" ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml\"/>"
                + string.Concat(tables.Select((_, i) => $"<Override PartName=\"/xl/worksheets/sheet{i + 1}.xml\" ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml\"/>")) + "</Types>");
            Put(archive, "_rels/.rels", $"<Relationships xmlns=\"{Package}relationships\"><Relationship Id=\"rId1\" Type=\"{Relations}/officeDocument\" Target=\"xl/workbook.xml\"/></Relationships>");
            Put(archive, "xl/workbook.xml", $"<workbook xmlns=\"{Main}\" xmlns:r=\"{Relations}\"><sheets>"
                + string.Concat(tables.Select((t, i) => $"<sheet name=\"{Xml(t.Name)}\" sheetId=\"{i + 1}\" r:id=\"rId{i + 1}\"/>")) + "</sheets><calcPr calcId=\"0\" fullCalcOnLoad=\"1\"/></workbook>");
            Put(archive, "xl/_rels/workbook.xml.rels", $"<Relationships xmlns=\"{Package}relationships\">"
                + string.Concat(tables.Select((_, i) => $"<Relationship Id=\"rId{i + 1}\" Type=\"{Relations}/worksheet\" Target=\"worksheets/sheet{i + 1}.xml\"/>"))
                + $"<Relationship Id=\"rId{tables.Count + 1}\" Type=\"{Relations}/styles\" Target=\"styles.xml\"/></Relationships>");
            Put(archive, "xl/styles.xml", $"<styleSheet xmlns=\"{Main}\"><fonts count=\"2\"><font><sz val=\"10\"/><name val=\"Arial\"/></font><font><b/><sz val=\"10\"/><name val=\"Arial\"/></font></fonts>"
                + "<fills count=\"2\"><fill><patternFill patternType=\"none\"/></fill><fill><patternFill patternType=\"gray125\"/></fill></fills><borders count=\"1\"><border><left/><right/><top/><bottom/><diagonal/></border></borders>"
                + "<cellStyleXfs count=\"1\"><xf numFmtId=\"0\" fontId=\"0\" fillId=\"0\" borderId=\"0\"/></cellStyleXfs><cellXfs count=\"4\"><xf numFmtId=\"0\" fontId=\"0\" fillId=\"0\" borderId=\"0\" xfId=\"0\"/>"
                + "<xf numFmtId=\"0\" fontId=\"1\" fillId=\"0\" borderId=\"0\" xfId=\"0\" applyFont=\"1\"/><xf numFmtId=\"2\" fontId=\"0\" fillId=\"0\" borderId=\"0\" xfId=\"0\" applyNumberFormat=\"1\"/>"
                + "<xf numFmtId=\"2\" fontId=\"1\" fillId=\"0\" borderId=\"0\" xfId=\"0\" applyFont=\"1\" applyNumberFormat=\"1\"/></cellXfs></styleSheet>");
            for (var i = 0; i < tables.Count; i++)
            {
                Put(archive, $"xl/worksheets/sheet{i + 1}.xml", Sheet(tables[i]));
            }
        }

        return file.ToArray();
    }

    private static string Sheet(DataTable table)
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"<worksheet xmlns=\"{Main}\"><sheetViews><sheetView workbookViewId=\"0\"><pane ySplit=\"1\" topLeftCell=\"A2\" activePane=\"bottomLeft\" state=\"frozen\"/></sheetView></sheetViews><cols>");
        for (var c = 0; c < table.Heads.Count; c++)
        {
            var widest = table.Rows.Select(r => r[c] is DataCell.Words w ? w.Text.Length : 9).Append(table.Heads[c].Length).Max();
            text.Append(CultureInfo.InvariantCulture, $"<col min=\"{c + 1}\" max=\"{c + 1}\" width=\"{Math.Min(widest, WidthMost) + 2}\" customWidth=\"1\"/>");
        }

        text.Append("</cols><sheetData>");
        Row(text, 1, table.Heads.Select(h => ((DataCell)new DataCell.Words(h), Strong)));
        for (var r = 0; r < table.Rows.Count; r++)
        {
            Row(text, r + 2, table.Rows[r].Select(c => (c, c is DataCell.Words or DataCell.Empty || IsWhole(c) ? Plain : Decimal)));
        }

        if (table.Added.Count > 0 && table.Rows.Count > 0)
        {
            Row(text, table.Rows.Count + 2, table.Heads.Select((_, c) => Under(table, c)));
        }

        return text.Append("</sheetData></worksheet>").ToString();
    }

    /// <summary>What stands under a column: its sum, or the word for it.</summary>
    private static (DataCell Cell, int Style) Under(DataTable table, int column)
    {
        if (!table.Added.Contains(column))
        {
            return (column == 0 ? new DataCell.Words(table.Sum) : new DataCell.Empty(), Strong);
        }

        var cells = table.Rows.Select(r => r[column]).ToList();
        return (new DataCell.Formula($"SUM({Column(column)}2:{Column(column)}{table.Rows.Count + 1})", cells.Sum(Value)), cells.All(IsWhole) ? Strong : StrongDecimal);
    }

    private static double Value(DataCell cell) => cell switch { DataCell.Number n => n.Value, DataCell.Formula f => f.Value, _ => 0 };

    private static bool IsWhole(DataCell cell) => cell is DataCell.Number or DataCell.Formula && Value(cell) == Math.Floor(Value(cell));

    private static void Row(StringBuilder text, int number, IEnumerable<(DataCell Cell, int Style)> cells)
    {
        text.Append(CultureInfo.InvariantCulture, $"<row r=\"{number}\">");
        var column = 0;
        foreach (var (cell, style) in cells)
        {
            var place = string.Create(CultureInfo.InvariantCulture, $"{Column(column)}{number}");
            _ = cell switch
            {
                DataCell.Words w => text.Append(CultureInfo.InvariantCulture, $"<c r=\"{place}\" s=\"{style}\" t=\"inlineStr\"><is><t xml:space=\"preserve\">{Xml(w.Text)}</t></is></c>"),
                DataCell.Number n => text.Append(CultureInfo.InvariantCulture, $"<c r=\"{place}\" s=\"{style}\"><v>{n.Value:R}</v></c>"),
                DataCell.Formula f => text.Append(CultureInfo.InvariantCulture, $"<c r=\"{place}\" s=\"{style}\"><f>{Xml(f.Of.Replace("{r}", number.ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal))}</f><v>{f.Value:R}</v></c>"),
                _ => text,
            };
            column++;
        }

        text.Append("</row>");
    }

    /// <summary>The letters of a column from 0.</summary>
    private static string Column(int column) => (column < 26 ? "" : Column(column / 26 - 1)) + (char)('A' + column % 26);

    /// <summary>Text that XML can carry.</summary>
    private static string Xml(string text) => SecurityElement.Escape(string.Concat(text.Where(c => !char.IsControl(c) || c is '\n' or '\t')));

    private static void Put(ZipArchive archive, string name, string text)
    {
        var entry = archive.CreateEntry(name, CompressionLevel.Optimal);
        entry.LastWriteTime = Stamp;
        using var stream = entry.Open();
        stream.Write(Encoding.UTF8.GetBytes(Declaration + text));
    }
}
