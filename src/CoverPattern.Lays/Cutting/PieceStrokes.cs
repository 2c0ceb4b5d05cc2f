using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Lays.Cutting;

/// <summary>The strokes of one piece where it lies, not yet in order.</summary>
internal static class PieceStrokes
{
    // A cross this large is seen across a table and stays well inside the smallest piece; own choice, millimetres.
    private const double CrossHalf = 4;

    /// <summary>Every line of a pattern, as the piece lies on the lay.</summary>
    internal static ImmutableArray<Stroke> Of(Pattern pattern, Placement place)
    {
        var turn = RigidMap.FromDegrees(place.TurnDegrees, default, place.Mirrored);
        var shift = new Point2(place.X, place.Y);
        // Turned, snapped, shifted: the ring that the proof of the lay has seen.
        Point2 Lay(Point2 point) => Grid.Snap(turn.Apply(point)) + shift;
        return [.. Lines(pattern).Select(line => new Stroke(place.Piece, line.Use, line.Purpose, [.. line.Points.Select(Lay)]))];
    }

    private static IEnumerable<(StrokeUse Use, string Purpose, IEnumerable<Point2> Points)> Lines(Pattern pattern)
    {
        yield return (StrokeUse.Draw, "sew line", Closed(pattern.SewLine));
        foreach (var cutout in pattern.Cutouts)
        {
            yield return (StrokeUse.Draw, "rim", Closed(cutout.Rim));
            yield return (StrokeUse.InnerCut, cutout.Purpose, Closed(cutout.CutLine));
        }

        foreach (var line in pattern.Folds.Select(fold => ("fold", fold.From, fold.To)).Append(("grain", pattern.Grain.From, pattern.Grain.To)).Where(line => line.Item2 != line.Item3))
        {
            yield return (StrokeUse.Draw, line.Item1, [line.Item2, line.Item3]);
        }

        foreach (var notch in pattern.Notches)
        {
            yield return (notch.Form == NotchForm.Slit ? StrokeUse.Notch : StrokeUse.Draw, "notch", [notch.Outer, notch.Inner]);
        }

        foreach (var line in pattern.Lines)
        {
            yield return (StrokeUse.Draw, line.Purpose, line.Path);
        }

        foreach (var drill in pattern.Drills)
        {
            yield return (StrokeUse.Draw, drill.Purpose, [drill.At - new Point2(CrossHalf, 0), drill.At + new Point2(CrossHalf, 0)]);
            yield return (StrokeUse.Draw, drill.Purpose, [drill.At - new Point2(0, CrossHalf), drill.At + new Point2(0, CrossHalf)]);
        }

        yield return (StrokeUse.Outline, "cut line", Closed(pattern.CutLine));
    }

    private static IEnumerable<Point2> Closed(ImmutableArray<Point2> ring) => ring.Append(ring[0]);
}
