using Clomwright.Evidence;
using Clomwright.Papers.Drawing;

namespace Clomwright.Papers.Writers.Dxf;

/// <summary>What a file of release 2007 holds besides its entities: header, tables, blocks and the dictionary of layouts.</summary>
internal sealed class DxfFrame
{
    private readonly DxfText to;
    private readonly UnitSystem units;
    private readonly string model, paper, root, modelLayout, paperLayout;
    private double size = 1;

    public DxfFrame(DxfText to, UnitSystem units)
    {
        (this.to, this.units) = (to, units);
        (model, paper, root, modelLayout, paperLayout) = (to.Handle(), to.Handle(), to.Handle(), to.Handle(), to.Handle());
    }

    /// <summary>Handle of model space.</summary>
    public string Model => model;

    /// <summary>Name of a broken line.</summary>
    public static string LineType(Dash dash) => dash switch { Dash.Dashed => "DASHED", Dash.Dotted => "DOTTED", Dash.Chain => "CHAIN", _ => "Continuous" };

    /// <summary>The header, which goes before all that was written.</summary>
    public string Header(double right, double bottom, double top)
    {
        var head = new DxfText();
        head.Put(0, "SECTION").Put(2, "HEADER");
        head.Put(9, "$ACADVER").Put(1, "AC1021").Put(9, "$DWGCODEPAGE").Put(3, "ANSI_1252");
        head.Put(9, "$INSUNITS").Put(70, units == UnitSystem.Imperial ? 1 : 4).Put(9, "$MEASUREMENT").Put(70, units == UnitSystem.Imperial ? 0 : 1);
        head.Put(9, "$LUNITS").Put(70, units == UnitSystem.Imperial ? 4 : 2);
        head.Put(9, "$EXTMIN").Point(10, 0.0, bottom).Put(9, "$EXTMAX").Point(10, right, top);
        head.Put(9, "$LTSCALE").Put(40, 1.0).Put(9, "$HANDSEED").Put(5, to.Seed);
        head.Put(0, "ENDSEC").Put(0, "SECTION").Put(2, "CLASSES").Put(0, "ENDSEC");
        return head.ToString();
    }

    /// <summary>Tables; broken lines are as long as they are on paper.</summary>
    public void Tables(double unitsPerMillimetre)
    {
        size = unitsPerMillimetre;
        to.Put(0, "SECTION").Put(2, "TABLES");
        Table("VPORT", 1, owner => Record("VPORT", owner, "AcDbViewportTableRecord", "*Active").Point(10, 0.0, 0, null).Point(11, 1.0, 1, null).Point(12, 5000 * size / 50, 0, null).Put(40, 10000 * size / 50).Put(41, 1.5));
        (string Name, string Words, double[] Pattern)[] types =
            [("ByBlock", "", []), ("ByLayer", "", []), ("Continuous", "Solid line", []), .. new[] { Dash.Dashed, Dash.Dotted, Dash.Chain }.Select(d => (LineType(d), "", new Pen(Weight.Thin, d).Pattern.ToArray()))];
        Table("LTYPE", types.Length, owner =>
        {
            foreach (var (name, words, pattern) in types)
            {
                Record("LTYPE", owner, "AcDbLinetypeTableRecord", name).Put(3, words).Put(72, 65).Put(73, pattern.Length).Put(40, pattern.Sum() * size);
                for (var i = 0; i < pattern.Length; i++)
                {
                    to.Put(49, (i % 2 == 0 ? 1 : -1) * pattern[i] * size).Put(74, 0);
                }
            }
        });
        string[] layers = ["0", .. Flat.AllLayers];
        Table("LAYER", layers.Length, owner =>
        {
            foreach (var layer in layers)
            {
                Record("LAYER", owner, "AcDbLayerTableRecord", layer).Put(62, 7).Put(6, "Continuous").Put(370, -3);
            }
        });
        Table("STYLE", 1, owner => Record("STYLE", owner, "AcDbTextStyleTableRecord", "Standard").Put(40, 0.0).Put(41, 1.0).Put(50, 0.0).Put(71, 0).Put(42, 2.5).Put(3, "arial.ttf").Put(4, ""));
        Table("VIEW", 0, _ => { });
        Table("UCS", 0, _ => { });
        Table("APPID", 1, owner => Record("APPID", owner, "AcDbRegAppTableRecord", "ACAD"));
        Table("DIMSTYLE", 1, owner => to.Put(0, "DIMSTYLE").Put(105, to.Handle()).Put(330, owner).Put(100, "AcDbSymbolTableRecord").Put(100, "AcDbDimStyleTableRecord").Put(2, "Standard").Put(70, 0));
        Table("BLOCK_RECORD", 2, owner =>
        {
            foreach (var (handle, name, layout) in Spaces)
            {
                to.Put(0, "BLOCK_RECORD").Put(5, handle).Put(330, owner).Put(100, "AcDbSymbolTableRecord").Put(100, "AcDbBlockTableRecord").Put(2, name).Put(340, layout).Put(70, 0).Put(280, 1).Put(281, 0);
            }
        });
        to.Put(0, "ENDSEC");
    }

    /// <summary>Model and paper space as blocks.</summary>
    public void Blocks()
    {
        to.Put(0, "SECTION").Put(2, "BLOCKS");
        foreach (var (handle, name, _) in Spaces)
        {
            to.Put(0, "BLOCK").Put(5, to.Handle()).Put(330, handle).Put(100, "AcDbEntity").Put(8, "0").Put(100, "AcDbBlockBegin").Put(2, name).Put(70, 0).Point(10, 0.0, 0).Put(3, name).Put(1, "");
            to.Put(0, "ENDBLK").Put(5, to.Handle()).Put(330, handle).Put(100, "AcDbEntity").Put(8, "0").Put(100, "AcDbBlockEnd");
        }

        to.Put(0, "ENDSEC");
    }

    /// <summary>The dictionary with the two layouts.</summary>
    public void Objects()
    {
        var (groups, layouts) = (to.Handle(), to.Handle());
        to.Put(0, "SECTION").Put(2, "OBJECTS");
        Dictionary(root, "0", ("ACAD_GROUP", groups), ("ACAD_LAYOUT", layouts));
        Dictionary(groups, root);
        Dictionary(layouts, root, ("Model", modelLayout), ("Layout1", paperLayout));
        Layout(modelLayout, layouts, "Model", 0, model);
        Layout(paperLayout, layouts, "Layout1", 1, paper);
        to.Put(0, "ENDSEC");
    }

    private (string Handle, string Name, string Layout)[] Spaces => [(model, "*Model_Space", modelLayout), (paper, "*Paper_Space", paperLayout)];

    private void Table(string name, int count, Action<string> rows)
    {
        var handle = to.Handle();
        to.Put(0, "TABLE").Put(2, name).Put(5, handle).Put(330, "0").Put(100, "AcDbSymbolTable").Put(70, count);
        if (name == "DIMSTYLE")
        {
            to.Put(100, "AcDbDimStyleTable").Put(71, 0);
        }

        rows(handle);
        to.Put(0, "ENDTAB");
    }

    private DxfText Record(string kind, string owner, string type, string name) =>
        to.Put(0, kind).Put(5, to.Handle()).Put(330, owner).Put(100, "AcDbSymbolTableRecord").Put(100, type).Put(2, name).Put(70, 0);

    private void Dictionary(string handle, string owner, params (string Name, string Handle)[] entries)
    {
        to.Put(0, "DICTIONARY").Put(5, handle).Put(330, owner).Put(100, "AcDbDictionary").Put(281, 1);
        foreach (var (name, entry) in entries)
        {
            to.Put(3, name).Put(350, entry);
        }
    }

    private void Layout(string handle, string owner, string name, int order, string block)
    {
        to.Put(0, "LAYOUT").Put(5, handle).Put(330, owner).Put(100, "AcDbPlotSettings").Put(1, "").Put(2, "none_device").Put(4, "").Put(6, "").Put(70, order == 0 ? 1024 : 0);
        to.Put(100, "AcDbLayout").Put(1, name).Put(70, 1).Put(71, order).Point(10, 0.0, 0, null).Point(11, 420.0, 297, null).Point(12, 0.0, 0).Point(14, 0.0, 0).Point(15, 0.0, 0);
        to.Put(146, 0.0).Point(13, 0.0, 0).Point(16, 1.0, 0).Point(17, 0.0, 1).Put(76, 0).Put(330, block);
    }
}
