using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Files.Drawings;

/// <summary>Writes beside each mark and long drawn line of a placed piece what it is for, where there is room on the cloth.</summary>
internal static class MarkWords
{
    // Own choices, millimetres: smaller than any label, large enough for a pen; off every line by more than a pen's width.
    private const double FromLines = 1.2;
    private static readonly double[] Heights = [5, 4];

    // Shorter lines are strokes that say what they are, such as clips; millimetres. Places along the others at which words are tried.
    private const double LongLine = 40;
    private static readonly double[] Shares = [0.5, 0.3, 0.7, 0.15, 0.85];

    private static readonly double[] Distances = [6, 9, 13, 18, 25];

    private static readonly ImmutableArray<(int X, int Y)> Sides = [(1, 1), (1, -1), (-1, 1), (-1, -1), (1, 0), (-1, 0), (0, 1), (0, -1)];

    /// <param name="pattern">The shape of the piece.</param>
    /// <param name="map">How the shape lies on the sheet.</param>
    /// <param name="written">What is written on the piece already.</param>
    /// <returns>Words that keep off all lines and all writing and stay on the cloth; a mark that has no such place goes without.</returns>
    public static ImmutableArray<DrawnText> Write(Pattern pattern, RigidMap map, IEnumerable<DrawnText> written)
    {
        (string Purpose, ImmutableArray<Point2> Spots)[] marks = [.. pattern.Drills.Select(drill => (drill.Purpose, ImmutableArray.Create(drill.At))), .. Lines(pattern)];
        if (marks.Length == 0)
        {
            return [];
        }

        var cloth = Rings.ToSteps(map.Apply(pattern.CutLine));
        var steps = PatternBlock.Draw(pattern).Lines.SelectMany(line => line.Steps()).Select(step => (From: map.Apply(step.From), To: map.Apply(step.To))).ToArray();
        var boxes = written.Select(text => DrawingExtent.Corners(text).ToArray()).ToList();
        var words = ImmutableArray.CreateBuilder<DrawnText>();
        foreach (var (purpose, spots) in marks)
        {
            var tries = spots.SelectMany(spot => Tries(map.Apply(spot), purpose)).ToArray();
            var near = Near(steps, Rings.Bounds(tries.SelectMany(DrawingExtent.Corners)));
            var place = tries.FirstOrDefault(text => IsFree([.. DrawingExtent.Corners(text)], cloth, near, boxes));
            if (place is not null)
            {
                words.Add(place);
                boxes.Add([.. DrawingExtent.Corners(place)]);
            }
        }

        return words.ToImmutable();
    }

    /// <summary>Long lines, each with places on it; of lines that hang together and are for one thing the first.</summary>
    private static IEnumerable<(string Purpose, ImmutableArray<Point2> Spots)> Lines(Pattern pattern)
    {
        var named = new List<MarkLine>();
        foreach (var line in pattern.Lines.Where(line => Length(line.Path) >= LongLine))
        {
            if (!named.Exists(other => other.Purpose == line.Purpose && other.Path.Any(line.Path.Contains)))
            {
                yield return (line.Purpose, [.. Shares.Select(share => At(line.Path, share * Length(line.Path)))]);
            }

            named.Add(line);
        }
    }

    private static double Length(ImmutableArray<Point2> path) => path.Skip(1).Select((point, i) => Point2.Distance(path[i], point)).Sum();

    /// <summary>The place so far along a path.</summary>
    private static Point2 At(ImmutableArray<Point2> path, double along)
    {
        for (var i = 1; i < path.Length; i++)
        {
            var step = Point2.Distance(path[i - 1], path[i]);
            if (along <= step && step > 0)
            {
                return Point2.Between(path[i - 1], path[i], along / step);
            }

            along -= step;
        }

        return path[^1];
    }

    private static IEnumerable<DrawnText> Tries(Point2 at, string purpose) =>
        from height in Heights
        from distance in Distances
        from side in Sides
        let aside = side.X == 0 ? distance + (height / 2) : distance
        let anchor = side.X switch { 1 => TextAnchor.Start, -1 => TextAnchor.End, _ => TextAnchor.Middle }
        select new DrawnText(DrawingLayers.DrawnMark, purpose, Grid.Snap(at + new Point2(side.X * distance, side.Y * aside)), height, 0, anchor);

    private static (Point2 From, Point2 To)[] Near((Point2 From, Point2 To)[] steps, Box2 box) =>
    [
        .. steps.Where(step => Math.Max(step.From.X, step.To.X) >= box.Low.X - FromLines && Math.Min(step.From.X, step.To.X) <= box.High.X + FromLines
            && Math.Max(step.From.Y, step.To.Y) >= box.Low.Y - FromLines && Math.Min(step.From.Y, step.To.Y) <= box.High.Y + FromLines),
    ];

    private static bool IsFree(Point2[] box, ImmutableArray<GridPoint> cloth, (Point2 From, Point2 To)[] lines, List<Point2[]> boxes) =>
        Array.TrueForAll(box, corner => ExactPredicates.Locate(cloth, Grid.ToSteps(corner)) > 0)
        && Edges(box).All(edge => Array.TrueForAll(lines, line => Segments.Distance(edge.From, edge.To, line.From, line.To) >= FromLines))
        && boxes.TrueForAll(other => ConvexOutlines.KeepApart(box, other, FromLines));

    private static IEnumerable<(Point2 From, Point2 To)> Edges(Point2[] box) => box.Select((corner, i) => (corner, box[(i + 1) % box.Length]));
}
