using System;
using CoverPattern.Files.Drawings;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Dxf;

/// <summary>Lines, texts and insertions as DXF entities.</summary>
internal static class DxfEntities
{
    private const int MiddleInHeight = 2;

    /// <summary>The ENTITIES section: what stands on the sheet.</summary>
    public static DxfTags WriteSheet(DxfPlan plan)
    {
        var entities = new DxfTags();
        foreach (var insertion in plan.Drawing.Insertions)
        {
            Insert(entities, plan, insertion);
        }

        foreach (var line in plan.Drawing.Lines)
        {
            Line(entities, plan, plan.ModelRecord, line);
        }

        foreach (var text in plan.Drawing.Texts)
        {
            Text(entities, plan, text);
        }

        return entities;
    }

    /// <summary>Adds a line: LINE for a single step, LWPOLYLINE for more.</summary>
    /// <param name="entities">What it is added to.</param>
    /// <param name="plan">The file's plan.</param>
    /// <param name="owner">Handle of the block record it belongs to.</param>
    /// <param name="line">The line.</param>
    public static void Line(DxfTags entities, DxfPlan plan, string owner, DrawnLine line)
    {
        if (line.Points.Length == 2 && !line.IsClosed)
        {
            Begin(entities, plan, "LINE", owner, line.Layer.Name).Add(100, "AcDbLine")
                .AddInSpace(10, line.Points[0]).AddInSpace(11, line.Points[1]);
            return;
        }

        Begin(entities, plan, "LWPOLYLINE", owner, line.Layer.Name).Add(100, "AcDbPolyline")
            .Add(90, line.Points.Length).Add(70, line.IsClosed ? 1 : 0).Add(43, 0.0);
        foreach (var point in line.Points)
        {
            entities.Add(10, point);
        }
    }

    private static DxfTags Begin(DxfTags entities, DxfPlan plan, string kind, string owner, string layer) => entities
        .Add(0, kind).Add(5, plan.Handles.Next()).Add(330, owner).Add(100, "AcDbEntity").Add(8, layer);

    /// <summary>A reader scales, turns and moves in this order; a mirrored block is one scaled by -1 in y.</summary>
    private static void Insert(DxfTags entities, DxfPlan plan, BlockInsertion insertion) =>
        Begin(entities, plan, "INSERT", plan.ModelRecord, DxfTables.PlainLayer).Add(100, "AcDbBlockReference")
            .Add(2, plan.BlockNames[insertion.Block]).AddInSpace(10, insertion.Shift)
            .Add(41, 1.0).Add(42, insertion.IsMirrored ? -1.0 : 1.0).Add(43, 1.0).Add(50, insertion.TurnDegrees);

    private static void Text(DxfTags entities, DxfPlan plan, DrawnText text) =>
        Begin(entities, plan, "TEXT", plan.ModelRecord, text.Layer.Name).Add(100, "AcDbText")
            .AddInSpace(10, Start(text)).Add(40, text.Height).Add(1, DxfText.Write(text.Text)).Add(50, text.TurnDegrees)
            .Add(7, DxfTables.TextStyle).Add(72, Anchor(text.Anchor)).AddInSpace(11, text.At)
            .Add(100, "AcDbText").Add(73, MiddleInHeight);

    /// <summary>Lower left end of the letters, which readers work out again from the font they have.</summary>
    internal static Point2 Start(DrawnText text)
    {
        var width = LetterWidth.Estimate(text.Text, text.Height);
        var left = text.Anchor switch { TextAnchor.Start => 0, TextAnchor.Middle => width / 2, _ => width };
        return RigidMap.FromDegrees(text.TurnDegrees, text.At, mirrored: false).Apply(new Point2(-left, -text.Height / 2));
    }

    internal static int Anchor(TextAnchor anchor) => anchor switch
    {
        TextAnchor.Start => 0,
        TextAnchor.Middle => 1,
        TextAnchor.End => 2,
        _ => throw new ArgumentOutOfRangeException(nameof(anchor), anchor, "An anchor is start, middle or end."),
    };
}
