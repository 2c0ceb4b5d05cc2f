using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Files.Drawings;

/// <summary>A place for the label of a piece in the allowance, where it does not show on the finished cover.</summary>
/// <param name="Text">What is written.</param>
/// <param name="At">Middle of the text in the pattern's coordinates, millimetres.</param>
/// <param name="Up">Direction from the foot of the letters to their top, length 1: from the cut line to the sew line.</param>
/// <param name="Height">Height of the capitals, millimetres.</param>
internal sealed record AllowanceLabel(string Text, Point2 At, Point2 Up, double Height)
{
    // Own choices, millimetres: legible at the table, never at a line. Smaller letters run together under a broad pen.
    private const double LargestHeight = 8;
    private const double LeastHeight = 5;
    private const double FromLines = 1.5;
    private const double FromNotches = 3;
    // A text is moved along its edge in search of a free place, in steps of its own height, of long edges in fewer and wider ones.
    private const double Step = 8;
    private const int MostSteps = 40;

    /// <summary>Finds a place along the longest straight edge whose allowance is wide enough, nearest to its middle.</summary>
    /// <param name="pattern">The pattern.</param>
    /// <param name="words">What is to be written, most important first; what has no room is left out from the end.</param>
    /// <returns>Null when no allowance has room for the first word. Weld edges have none: ink spoils the weld.</returns>
    public static AllowanceLabel? Find(Pattern pattern, ImmutableArray<string> words)
    {
        var edges = Edges(pattern).ToArray();
        var lines = Lines(pattern).ToArray();
        var cutLine = Rings.ToSteps(pattern.CutLine);
        for (var count = words.Length; count > 0; count--)
        {
            var text = string.Join(", ", words.Take(count));
            var label = edges.SelectMany(run => Along(pattern, run, text)).FirstOrDefault(place =>
                ExactPredicates.Locate(cutLine, Grid.ToSteps(place.At)) > 0 && IsFree(place, pattern, lines));
            if (label is not null)
            {
                return label;
            }
        }

        return null;
    }

    /// <summary>The text on the sheet, never mirrored: its foot stays toward the cut line however the piece lies.</summary>
    /// <param name="map">How the pattern lies on the sheet.</param>
    public DrawnText OnSheet(RigidMap map)
    {
        var up = map.Apply(At + Up) - map.Apply(At);
        var turn = Math.Atan2(-up.X, up.Y) * 180 / Math.PI;
        return new DrawnText(DrawingLayers.Label, Text, map.Apply(At), Height, turn, TextAnchor.Middle);
    }

    /// <summary>Straight edges that may be written on and are wide enough, longest first.</summary>
    private static IEnumerable<EdgeRun> Edges(Pattern pattern)
    {
        var welds = pattern.Notches.Where(notch => notch.Form == NotchForm.Tick && notch.Run < pattern.Runs.Length)
            .Select(notch => pattern.Runs[notch.Run]).Where(run => run.Role == EdgeRole.Seam)
            .Select(run => run.MakeUp).ToHashSet(StringComparer.Ordinal);
        return pattern.Runs
            .Where(run => (run.From + 1) % pattern.SewLine.Length == run.To && run.AllowanceMm >= LeastHeight + (2 * FromLines))
            .Where(run => run.Role != EdgeRole.Seam || !welds.Contains(run.MakeUp))
            .OrderByDescending(run => run.LengthMm)
            .ThenBy(run => run.From);
    }

    /// <summary>Places along an edge, from its middle outward to both sides.</summary>
    private static IEnumerable<AllowanceLabel> Along(Pattern pattern, EdgeRun run, string text)
    {
        var (from, to) = (pattern.SewLine[run.From], pattern.SewLine[run.To]);
        var height = Math.Min(LargestHeight, run.AllowanceMm - (2 * FromLines));
        var room = Point2.Distance(from, to) - LetterWidth.Estimate(text, height);
        var (along, inward) = ((to - from).Unit(), (to - from).Unit().QuarterTurned());
        var middle = Point2.Between(from, to, 0.5) - (run.AllowanceMm / 2 * inward);
        for (var move = 0.0; move <= room / 2; move += Math.Max(Step, room / 2 / MostSteps))
        {
            yield return new AllowanceLabel(text, middle + (move * along), inward, height);
            yield return new AllowanceLabel(text, middle - (move * along), inward, height);
        }
    }

    /// <summary>All lines that a text keeps off, with the distance it keeps.</summary>
    private static IEnumerable<(Point2 From, Point2 To, double Distance)> Lines(Pattern pattern) =>
    [
        .. Ring(pattern.CutLine),
        .. Ring(pattern.SewLine),
        .. pattern.Cutouts.SelectMany(cutout => Ring(cutout.CutLine)),
        .. pattern.Folds.Select(fold => (fold.From, fold.To, FromLines)),
        .. pattern.Lines.SelectMany(line => line.Path.Skip(1).Select((corner, i) => (line.Path[i], corner, FromLines))),
        .. pattern.Notches.Select(notch => (notch.OnSewLine, notch.Outer, FromNotches)),
    ];

    private static IEnumerable<(Point2 From, Point2 To, double Distance)> Ring(ImmutableArray<Point2> ring) =>
        ring.Select((corner, i) => (corner, ring[(i + 1) % ring.Length], FromLines));

    private static bool IsFree(AllowanceLabel label, Pattern pattern, (Point2 From, Point2 To, double Distance)[] lines)
    {
        Point2[] box = [.. DrawingExtent.Corners(label.OnSheet(RigidMap.Identity))];
        // A hair less than the distance kept, for the edge along which it stands at just that distance.
        return Enumerable.Range(0, box.Length).All(i => Array.TrueForAll(
                lines, line => Segments.Distance(box[i], box[(i + 1) % box.Length], line.From, line.To) >= line.Distance - 0.01))
            && !pattern.Drills.Any(drill => Point2.Distance(drill.At, label.At) < LetterWidth.Estimate(label.Text, label.Height));
    }
}
