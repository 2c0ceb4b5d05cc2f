using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Files.Drawings;
using CoverPattern.Geometry;
using CoverPattern.Lays;
using CoverPattern.Lays.Cutting;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Files.Plots;

/// <summary>What a pen draws on the pieces of a lay: the lines and texts of the lay's drawing that are drawn on the cloth, where they stand there.</summary>
internal static class PlotMarks
{
    // A box wider than its text by less than this is none of the pen's affair: letters are as high as in the drawing, never wider.
    private const double Whole = 1;

    internal static ImmutableArray<Stroke> Of(Lay lay, PieceSet pieces)
    {
        var drawing = LayDrawing.Draw(lay, pieces);
        var outlines = CutPlanner.AsPlaced(lay, pieces, []).Strokes
            .Where(stroke => stroke.Use == StrokeUse.Outline)
            .Select(stroke => (stroke.Piece, Ring: Rings.ToSteps(stroke.Points.SkipLast(1))))
            .ToArray();
        return
        [
            .. Drawn(drawing, lay),
            .. drawing.Texts.Where(text => text.Layer.Use == LayerUse.Draw).SelectMany(text =>
                Lines(text).Select(line => new Stroke(PieceUnder(outlines, text.At), StrokeUse.Draw, "letter", line))),
        ];
    }

    /// <summary>The drawing inserts one block a placement, in the order of the lay.</summary>
    private static IEnumerable<Stroke> Drawn(Drawing drawing, Lay lay)
    {
        var blocks = drawing.Blocks.ToDictionary(block => block.Name, StringComparer.Ordinal);
        return drawing.Insertions.Zip(lay.Placements).SelectMany(pair => blocks[pair.First.Block].Lines
            .Where(line => line.Layer.Use == LayerUse.Draw)
            .Select(line => new Stroke(pair.Second.Piece, StrokeUse.Draw, line.Layer.Purpose, pair.First.Map.Apply(line.IsClosed ? line.Points.Add(line.Points[0]) : line.Points))));
    }

    private static string PieceUnder((string Piece, ImmutableArray<GridPoint> Ring)[] outlines, Point2 at) =>
        outlines.First(outline => ExactPredicates.Locate(outline.Ring, Grid.ToSteps(at)) >= 0).Piece;

    private static IEnumerable<ImmutableArray<Point2>> Lines(DrawnText text)
    {
        var room = LetterWidth.Estimate(text.Text, text.Height);
        var height = text.Height * Math.Min(Whole, room / Math.Max(PenLetters.Width(text.Text, text.Height), 1e-9));
        var width = PenLetters.Width(text.Text, height);
        var start = text.Anchor switch
        {
            TextAnchor.Start => 0,
            TextAnchor.Middle => -width / 2,
            _ => -width,
        };
        var map = RigidMap.FromDegrees(text.TurnDegrees, text.At, mirrored: false);
        return PenLetters.Write(text.Text, height).Select(line => map.Apply([.. line.Select(point => point + new Point2(start, -height / 2))]));
    }
}
