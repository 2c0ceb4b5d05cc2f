using System.Collections.Generic;
using System.Collections.Immutable;
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

    /// <summary>The part of a convex ring on the left of a line; empty when nothing with an area is.</summary>
    /// <param name="ring">Counter-clockwise, first point not repeated.</param>
    /// <param name="on">A point of the line.</param>
    /// <param name="along">Its direction.</param>
    public static ImmutableArray<Point2> LeftOf(ImmutableArray<Point2> ring, Point2 on, Point2 along)
    {
        var kept = ImmutableArray.CreateBuilder<Point2>();
        for (var i = 0; i < ring.Length; i++)
        {
            var (here, there) = (ring[i], ring[(i + 1) % ring.Length]);
            var (left, next) = (Point2.Cross(along, here - on), Point2.Cross(along, there - on));
            if (left >= 0)
            {
                kept.Add(here);
            }

            if (left * next < 0)
            {
                kept.Add(Point2.Between(here, there, left / (left - next)));
            }
        }

        return kept.Count < 3 ? [] : kept.ToImmutable();
    }
}
