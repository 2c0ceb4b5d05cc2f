using System;
using System.Linq;
using System.Text;
using CoverPattern.Files.Drawings;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Dxf;

/// <summary>Writes a drawing as DXF of release 12 (AC1009), in millimetres, text form.</summary>
/// <remarks>
/// This release has no field for units and knows no LWPOLYLINE: a line of several steps is POLYLINE, VERTEX, SEQEND.
/// Names of blocks are made of capital letters, digits, dollar sign, hyphen and underscore, at most 31 (from memory).
/// </remarks>
internal static class DxfRelease12
{
    private const int Longest = 31;
    private const int MiddleInHeight = 2;
    private const int VerticesFollow = 1;

    /// <returns>The file in ASCII with "\n" line ends; the same bytes for the same drawing.</returns>
    internal static byte[] Write(Drawing drawing)
    {
        var names = DxfNames.Of(drawing.Blocks.Select(block => block.Name), Plain);
        var file = new DxfTags();
        Section(file, "HEADER", Header(DrawingExtent.Measure(drawing)));
        Section(file, "TABLES", Tables());
        var blocks = new DxfTags();
        foreach (var block in drawing.Blocks)
        {
            blocks.Add(0, "BLOCK").Add(8, DxfTables.PlainLayer).Add(2, names[block.Name]).Add(70, 0).AddInSpace(10, default).Add(3, names[block.Name]);
            foreach (var line in block.Lines)
            {
                Line(blocks, line);
            }

            blocks.Add(0, "ENDBLK").Add(8, DxfTables.PlainLayer);
        }

        Section(file, "BLOCKS", blocks);
        var entities = new DxfTags();
        foreach (var insertion in drawing.Insertions)
        {
            entities.Add(0, "INSERT").Add(8, DxfTables.PlainLayer).Add(2, names[insertion.Block]).AddInSpace(10, insertion.Shift)
                .Add(41, 1.0).Add(42, insertion.IsMirrored ? -1.0 : 1.0).Add(43, 1.0).Add(50, insertion.TurnDegrees);
        }

        foreach (var line in drawing.Lines)
        {
            Line(entities, line);
        }

        foreach (var text in drawing.Texts)
        {
            entities.Add(0, "TEXT").Add(8, text.Layer.Name).AddInSpace(10, DxfEntities.Start(text)).Add(40, text.Height).Add(1, DxfText.Write(text.Text))
                .Add(50, text.TurnDegrees).Add(7, DxfTables.TextStyle).Add(72, DxfEntities.Anchor(text.Anchor)).AddInSpace(11, text.At).Add(73, MiddleInHeight);
        }

        Section(file, "ENTITIES", entities);
        return Encoding.ASCII.GetBytes(file.Add(0, "EOF").ToString());
    }

    /// <summary>A name as this release allows it.</summary>
    internal static string Plain(string name)
    {
        var plain = string.Concat(name.ToUpperInvariant().Select(letter => char.IsAsciiLetterUpper(letter) || char.IsAsciiDigit(letter) || letter is '$' or '-' or '_' ? letter : '_'));
        return plain.Length <= Longest ? plain : plain[..Longest];
    }

    /// <summary>Adds a line: LINE for a single step, POLYLINE for more.</summary>
    internal static void Line(DxfTags tags, DrawnLine line) => Line(tags, line.Layer.Name, line.Points, line.IsClosed);

    /// <inheritdoc cref="Line(DxfTags, DrawnLine)"/>
    internal static void Line(DxfTags tags, string layer, System.Collections.Immutable.ImmutableArray<Point2> points, bool isClosed)
    {
        if (points.Length == 2 && !isClosed)
        {
            tags.Add(0, "LINE").Add(8, layer).AddInSpace(10, points[0]).AddInSpace(11, points[1]);
            return;
        }

        tags.Add(0, "POLYLINE").Add(8, layer).Add(66, VerticesFollow).AddInSpace(10, default).Add(70, isClosed ? 1 : 0);
        foreach (var point in points)
        {
            tags.Add(0, "VERTEX").Add(8, layer).AddInSpace(10, point);
        }

        tags.Add(0, "SEQEND").Add(8, layer);
    }

    private static DxfTags Header(Box2 extent) => new DxfTags()
        .Add(9, "$ACADVER").Add(1, "AC1009")
        .Add(9, "$INSBASE").AddInSpace(10, default)
        .Add(9, "$EXTMIN").AddInSpace(10, extent.Low)
        .Add(9, "$EXTMAX").AddInSpace(10, extent.High)
        .Add(9, "$LTSCALE").Add(40, 1.0)
        .Add(9, "$TEXTSTYLE").Add(7, DxfTables.TextStyle)
        .Add(9, "$CLAYER").Add(8, DxfTables.PlainLayer)
        .Add(9, "$LUNITS").Add(70, 2);

    private static DxfTags Tables()
    {
        var tables = new DxfTags();
        Table(tables, "LTYPE", ["CONTINUOUS", "DASHED"], name => LineType(tables, name));
        Table(tables, "LAYER", [DxfTables.PlainLayer, .. DrawingLayers.All.Select(layer => layer.Name)], name => Layer(tables, name));
        Table(tables, "STYLE", [DxfTables.TextStyle], _ => tables.Add(40, 0.0).Add(41, 1.0).Add(50, 0.0).Add(71, 0).Add(42, 2.5).Add(3, "txt").Add(4, string.Empty));
        return tables;
    }

    private static void Table(DxfTags tables, string kind, string[] names, Action<string> fill)
    {
        tables.Add(0, "TABLE").Add(2, kind).Add(70, names.Length);
        foreach (var name in names)
        {
            tables.Add(0, kind).Add(2, name).Add(70, 0);
            fill(name);
        }

        tables.Add(0, "ENDTAB");
    }

    private static void LineType(DxfTags entry, string name)
    {
        var isDashed = name == "DASHED";
        entry.Add(3, isDashed ? "10 mm drawn, 5 mm free" : string.Empty).Add(72, (int)'A').Add(73, isDashed ? 2 : 0).Add(40, isDashed ? 15.0 : 0.0);
        if (isDashed)
        {
            entry.Add(49, 10.0).Add(49, -5.0);
        }
    }

    private static void Layer(DxfTags entry, string name)
    {
        var layer = DrawingLayers.All.FirstOrDefault(layer => layer.Name == name);
        entry.Add(62, layer is null or { Pen: > 7 } ? 7 : layer.Pen).Add(6, layer is { IsDashed: true } ? "DASHED" : "CONTINUOUS");
    }

    private static void Section(DxfTags file, string name, DxfTags content) => file.Add(0, "SECTION").Add(2, name).Add(content).Add(0, "ENDSEC");
}
