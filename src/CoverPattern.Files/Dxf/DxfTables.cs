using System;
using System.Linq;
using CoverPattern.Files.Drawings;

namespace CoverPattern.Files.Dxf;

/// <summary>The TABLES section: everything that entities refer to by name.</summary>
internal static class DxfTables
{
    public const string TextStyle = "Standard";
    public const string PlainLayer = "0";
    private const string Continuous = "Continuous";
    private const string Dashed = "DASHED";
    private const int Black = 7;

    public static DxfTags Write(DxfPlan plan)
    {
        var tables = new DxfTags();
        Table(plan, tables, "VPORT", ["*Active"], (entry, _) => View(entry, plan));
        Table(plan, tables, "LTYPE", ["ByBlock", "ByLayer", Continuous, Dashed], LineType);
        Table(plan, tables, "LAYER", [PlainLayer, .. DrawingLayers.All.Select(layer => layer.Name)], (entry, name) => Layer(entry, name, plan));
        Table(plan, tables, "STYLE", [TextStyle], (entry, _) => Style(entry));
        Table(plan, tables, "VIEW", [], (_, _) => { });
        Table(plan, tables, "UCS", [], (_, _) => { });
        Table(plan, tables, "APPID", ["ACAD"], (_, _) => { });
        Table(plan, tables, "DIMSTYLE", [TextStyle], (_, _) => { });
        BlockRecords(plan, tables);
        return tables;
    }

    private static void Table(DxfPlan plan, DxfTags tables, string kind, string[] names, Action<DxfTags, string> fill)
    {
        var table = Begin(plan, tables, kind, names.Length);
        foreach (var name in names)
        {
            Entry(tables, kind, plan.Handles.Next(), table).Add(2, name).Add(70, 0);
            fill(tables, name);
        }

        tables.Add(0, "ENDTAB");
    }

    private static string Begin(DxfPlan plan, DxfTags tables, string kind, int count)
    {
        var table = plan.Handles.Next();
        tables.Add(0, "TABLE").Add(2, kind).Add(5, table).Add(330, "0").Add(100, "AcDbSymbolTable").Add(70, count);
        if (kind == "DIMSTYLE")
        {
            tables.Add(100, "AcDbDimStyleTable").Add(71, count);
        }

        return table;
    }

    /// <summary>Begins an entry; those of DIMSTYLE alone have their handle under another code.</summary>
    private static DxfTags Entry(DxfTags tables, string kind, string handle, string table) => tables
        .Add(0, kind).Add(kind == "DIMSTYLE" ? 105 : 5, handle).Add(330, table)
        .Add(100, "AcDbSymbolTableRecord").Add(100, Subclass(kind));

    private static string Subclass(string kind) => kind switch
    {
        "VPORT" => "AcDbViewportTableRecord",
        "LTYPE" => "AcDbLinetypeTableRecord",
        "LAYER" => "AcDbLayerTableRecord",
        "STYLE" => "AcDbTextStyleTableRecord",
        "APPID" => "AcDbRegAppTableRecord",
        "DIMSTYLE" => "AcDbDimStyleTableRecord",
        "BLOCK_RECORD" => "AcDbBlockTableRecord",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Our files have no entries in such a table."),
    };

    /// <summary>A window that shows the whole drawing.</summary>
    private static void View(DxfTags entry, DxfPlan plan)
    {
        var (width, height) = (Math.Max(plan.Extent.Width, 1), Math.Max(plan.Extent.Height, 1));
        entry.Add(10, 0.0).Add(20, 0.0).Add(11, 1.0).Add(21, 1.0).Add(12, plan.Extent.Centre)
            .Add(13, 0.0).Add(23, 0.0).Add(14, 10.0).Add(24, 10.0).Add(15, 10.0).Add(25, 10.0)
            .Add(16, 0.0).Add(26, 0.0).Add(36, 1.0).Add(17, 0.0).Add(27, 0.0).Add(37, 0.0)
            .Add(40, height).Add(41, width / height).Add(42, 50.0).Add(43, 0.0).Add(44, 0.0).Add(50, 0.0).Add(51, 0.0)
            .Add(71, 0).Add(72, 1000).Add(73, 1).Add(74, 3).Add(75, 0).Add(76, 0).Add(77, 0).Add(78, 0);
    }

    private static void LineType(DxfTags entry, string name)
    {
        const int Alignment = 'A';
        var isDashed = name == Dashed;
        entry.Add(3, isDashed ? "10 mm drawn, 5 mm free" : "").Add(72, Alignment).Add(73, isDashed ? 2 : 0).Add(40, isDashed ? 15.0 : 0.0);
        if (isDashed)
        {
            entry.Add(49, 10.0).Add(74, 0).Add(49, -5.0).Add(74, 0);
        }
    }

    private static void Layer(DxfTags entry, string name, DxfPlan plan)
    {
        const int ByDefault = -3;
        var layer = DrawingLayers.All.FirstOrDefault(layer => layer.Name == name);
        entry.Add(62, layer?.Pen ?? Black).Add(6, layer is { IsDashed: true } ? Dashed : Continuous)
            .Add(370, layer?.LineWidth ?? ByDefault).Add(390, plan.PlotStyle);
    }

    private static void Style(DxfTags entry) =>
        entry.Add(40, 0.0).Add(41, 1.0).Add(50, 0.0).Add(71, 0).Add(42, 2.5).Add(3, "arial.ttf").Add(4, "");

    private static void BlockRecords(DxfPlan plan, DxfTags tables)
    {
        const string Kind = "BLOCK_RECORD";
        var table = Begin(plan, tables, Kind, plan.Drawing.Blocks.Length + 2);
        Entry(tables, Kind, plan.ModelRecord, table).Add(2, DxfBlocks.ModelSpace).Add(340, plan.ModelLayout);
        Entry(tables, Kind, plan.PaperRecord, table).Add(2, DxfBlocks.PaperSpace).Add(340, plan.PaperLayout);
        foreach (var block in plan.Drawing.Blocks)
        {
            Entry(tables, Kind, plan.BlockRecords[block.Name], table).Add(2, plan.BlockNames[block.Name]).Add(340, "0");
        }

        tables.Add(0, "ENDTAB");
    }
}
