using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Lays.Cutting;

/// <summary>What a knife does to one piece where it lies; what a pen draws is the drawing's affair.</summary>
internal static class PieceStrokes
{
    /// <summary>Every cut of a pattern, as the piece lies on the lay; the outline last.</summary>
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
        foreach (var drill in pattern.Drills.Where(drill => drill.IsPierced))
        {
            yield return (StrokeUse.Pierce, drill.Purpose, Closed(drill.HoleRing()));
        }

        foreach (var notch in pattern.Notches.Where(notch => notch.Form == NotchForm.Slit))
        {
            yield return (StrokeUse.Notch, "notch", [notch.Outer, notch.Inner]);
        }

        foreach (var cutout in pattern.Cutouts)
        {
            yield return (StrokeUse.InnerCut, cutout.Purpose, Closed(cutout.CutLine));
        }

        yield return (StrokeUse.Outline, "cut line", Closed(pattern.CutLine));
    }

    private static IEnumerable<Point2> Closed(ImmutableArray<Point2> ring) => ring.Append(ring[0]);
}
