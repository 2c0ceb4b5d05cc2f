using System;
using System.Collections.Generic;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Takes the small loops out of a cut line that arise where an allowance is wider than the steps of the rim it belongs to.</summary>
/// <remarks>
/// An edge shorter than what its corners take from it comes out reversed, and the lines beside it cross: their crossing is the corner.
/// Only loops no longer than a few allowances are taken out; what crosses farther on is a fault of the piece and stays one.
/// </remarks>
internal static class CutLoops
{
    // Way round a loop, in widths of the allowance, up to which it is one of those (own choice).
    private const double LongestLoop = 6;

    /// <summary>The ring without its small loops.</summary>
    /// <param name="ring">The cut line before it is put on the grid.</param>
    /// <param name="allowance">The widest allowance of a rim, millimetres.</param>
    internal static List<Point2> Remove(List<Point2> ring, double allowance)
    {
        // A loop at the ring's first point is found when the ring begins elsewhere.
        var half = Once(ring, LongestLoop * allowance);
        var turned = half.Skip(half.Count / 2).Concat(half.Take(half.Count / 2)).ToList();
        return Once(turned, LongestLoop * allowance);
    }

    private static List<Point2> Once(List<Point2> ring, double longest)
    {
        var (kept, at) = (new List<Point2>(), 0);
        while (at < ring.Count)
        {
            kept.Add(ring[at]);
            if (Loop(ring, at, longest) is { } loop)
            {
                ring[loop.Last] = loop.Crossing;
                at = loop.Last;
            }
            else
            {
                at++;
            }
        }

        return kept;
    }

    /// <summary>The farthest edge ahead that crosses the edge that begins at a corner, and where.</summary>
    private static (int Last, Point2 Crossing)? Loop(List<Point2> ring, int at, double longest)
    {
        (int Last, Point2 Crossing)? found = null;
        var way = 0.0;
        for (var next = at + 2; next + 1 < ring.Count && way <= longest; next++)
        {
            way += Point2.Distance(ring[next - 1], ring[next]);
            if (Crossing(ring[at], ring[at + 1], ring[next], ring[next + 1]) is { } crossing)
            {
                found = (next, crossing);
            }
        }

        return found;
    }

    private static Point2? Crossing(Point2 from, Point2 to, Point2 otherFrom, Point2 otherTo)
    {
        var (step, other) = (to - from, otherTo - otherFrom);
        var slope = Point2.Cross(step, other);
        if (slope == 0)
        {
            return null;
        }

        var (on, share) = (Point2.Cross(otherFrom - from, other) / slope, Point2.Cross(otherFrom - from, step) / slope);
        return Math.Min(on, share) > 0 && Math.Max(on, share) < 1 ? Point2.Between(from, to, on) : null;
    }
}
