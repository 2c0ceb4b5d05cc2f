using System.Collections.Generic;
using System.Linq;

namespace CoverPattern.Geometry;

/// <summary>Gaps between convex outlines that are not on the grid: corners in order either way, or the two ends of a line.</summary>
public static class ConvexOutlines
{
    /// <summary>Whether two outlines have no inner point in common; touching ones are apart.</summary>
    /// <remarks>They are when the normal of one of their edges, or a line's own direction, sees a gap between them (separating axes).</remarks>
    public static bool AreApart(IReadOnlyList<Point2> left, IReadOnlyList<Point2> right) =>
        Axes(left).Concat(Axes(right)).Any(axis =>
            left.Max(p => Point2.Dot(p, axis)) <= right.Min(p => Point2.Dot(p, axis))
            || right.Max(p => Point2.Dot(p, axis)) <= left.Min(p => Point2.Dot(p, axis)));

    /// <summary>Whether two outlines keep a distance from each other.</summary>
    /// <param name="left">One outline.</param>
    /// <param name="right">The other.</param>
    /// <param name="distance">Millimetres, positive.</param>
    public static bool KeepApart(IReadOnlyList<Point2> left, IReadOnlyList<Point2> right, double distance) =>
        AreApart(left, right)
        && Edges(left).All(edge => Edges(right).All(across => Segments.Distance(edge.From, edge.To, across.From, across.To) >= distance));

    private static IEnumerable<Point2> Axes(IReadOnlyList<Point2> corners)
    {
        foreach (var (from, to) in Edges(corners))
        {
            yield return (to - from).QuarterTurned();
            if (corners.Count == 2)
            {
                yield return to - from;
            }
        }
    }

    private static IEnumerable<(Point2 From, Point2 To)> Edges(IReadOnlyList<Point2> corners) =>
        corners.Select((corner, i) => (corner, corners[(i + 1) % corners.Count]));
}
