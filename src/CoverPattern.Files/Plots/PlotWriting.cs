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

/// <summary>The writing on the pieces of a lay as pen strokes: the texts of the lay's drawing, where they stand there.</summary>
internal static class PlotWriting
{
    // A box wider than its text by less than this is none of the pen's affair: letters are as high as in the drawing, never wider.
    private const double Whole = 1;

    internal static ImmutableArray<Stroke> Of(Lay lay, PieceSet pieces)
    {
        var outlines = CutPlanner.AsPlaced(lay, pieces).Strokes
            .Where(stroke => stroke.Use == StrokeUse.Outline)
            .Select(stroke => (stroke.Piece, Ring: Rings.ToSteps(stroke.Points.SkipLast(1))))
            .ToArray();
        return
        [
            .. LayDrawing.Draw(lay, pieces).Texts.Where(text => text.Layer.Use == LayerUse.Draw).SelectMany(text =>
                Lines(text).Select(line => new Stroke(PieceUnder(outlines, text.At), StrokeUse.Draw, "letter", line))),
        ];
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
