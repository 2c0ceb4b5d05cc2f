using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Files.Drawings;

/// <summary>Draws the lines of one pattern, seen from outside, in the pattern's own coordinates.</summary>
internal static class PatternBlock
{
    // Own choice: seen across a table, well inside the smallest piece.
    private const double ArrowLength = 12;
    private const double ArrowHalfWidth = 4;
    private const double CrossHalf = 4;

    public static DrawnBlock Draw(Pattern pattern) => new(
        pattern.Id,
        [
            new DrawnLine(DrawingLayers.Cut, pattern.CutLine, IsClosed: true),
            .. SewStretches.Of(pattern).Select(line => Line(DrawingLayers.Sew, line)),
            .. pattern.Cutouts.Select(cutout => new DrawnLine(DrawingLayers.InnerCut, cutout.CutLine, IsClosed: true)),
            // A rim that is its own cut line, a bare edge, is drawn once.
            .. pattern.Cutouts.Where(cutout => !cutout.Rim.SequenceEqual(cutout.CutLine))
                .Select(cutout => new DrawnLine(DrawingLayers.Sew, cutout.Rim, IsClosed: true)),
            .. pattern.Lines.Select(Path),
            .. pattern.Notches.Select(Stroke),
            .. pattern.Folds.Select(fold => Straight(DrawingLayers.Fold, fold.From, fold.To)),
            .. Arrow(pattern.Grain),
            .. pattern.Drills.SelectMany(Mark),
        ]);

    private static DrawnLine Stroke(Notch notch) => notch.Form switch
    {
        NotchForm.Slit => Straight(DrawingLayers.NotchSlit, notch.Outer, notch.Inner),
        NotchForm.Tick => Straight(DrawingLayers.NotchTick, notch.Outer, notch.Inner),
        _ => throw new ArgumentOutOfRangeException(nameof(notch), notch.Form, "A notch is a slit or a tick."),
    };

    private static DrawnLine Path(MarkLine line) => Line(DrawingLayers.DrawnMark, line.Path);

    /// <summary>A line that ends where it begins is closed.</summary>
    private static DrawnLine Line(DrawingLayer layer, ImmutableArray<Point2> points) => points[0] == points[^1]
        ? new DrawnLine(layer, points[..^1], IsClosed: true)
        : new DrawnLine(layer, points, IsClosed: false);

    private static DrawnLine Straight(DrawingLayer layer, Point2 from, Point2 to) => new(layer, [from, to], IsClosed: false);

    private static IEnumerable<DrawnLine> Arrow(GrainLine grain)
    {
        var length = Point2.Distance(grain.From, grain.To);
        if (length == 0)
        {
            yield break;
        }

        var along = (grain.To - grain.From).Unit();
        var back = grain.To - (Math.Min(ArrowLength, length / 2) * along);
        var aside = Math.Min(ArrowHalfWidth, length / 6) * along.QuarterTurned();
        yield return Straight(DrawingLayers.Grain, grain.From, grain.To);
        yield return new DrawnLine(DrawingLayers.Grain, Grid.Snap([back + aside, grain.To, back - aside]), IsClosed: false);
    }

    /// <summary>A cross where the mark is drawn, the hole itself where it is pierced.</summary>
    private static IEnumerable<DrawnLine> Mark(DrillMark drill) =>
        drill.IsPierced ? [new DrawnLine(DrawingLayers.Pierce, drill.HoleRing(), IsClosed: true)] : Cross(drill.At);

    private static IEnumerable<DrawnLine> Cross(Point2 at)
    {
        var (right, up) = (new Point2(CrossHalf, 0), new Point2(0, CrossHalf));
        yield return Straight(DrawingLayers.DrawnMark, at - right, at + right);
        yield return Straight(DrawingLayers.DrawnMark, at - up, at + up);
    }
}
