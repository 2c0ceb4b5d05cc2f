using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;

namespace CoverPattern.Geometry;

/// <summary>Convex room inside an outline that bends inward or has many corners.</summary>
public static class ConvexRooms
{
    // The circle from which the room grows may be smaller than the largest by this share of the outline's size.
    private const double CircleError = 0.01;

    // A limit lies this much nearer than what it keeps off, so that one serves for all of a curve within 11 degrees: at most some sixteen go round.
    private const double Nearer = 0.98;

    /// <summary>A convex ring inside an outline, round the largest circle in it; with few corners, whatever the outline has.</summary>
    /// <param name="ring">Counter-clockwise, first point not repeated; it may bend inward.</param>
    /// <returns>Counter-clockwise; empty when there is no room.</returns>
    /// <remarks>
    /// Beginning with a little more than the upright box, each edge of the outline that still reaches into the room, the nearest to the middle first, takes
    /// away all that lies beyond a line square to the way to its nearest point (own construction).
    /// </remarks>
    public static ImmutableArray<Point2> Within(IReadOnlyList<Point2> ring)
    {
        var box = Rings.Bounds(ring);
        var size = System.Math.Max(box.Width, box.Height);
        if (!(size > 0) || InscribedCircle.Largest(ring, CircleError * size) is not { Radius: > 0 } circle)
        {
            return [];
        }

        // A little more than the box: an edge that lies along it reaches in as any other does, and no rounding decides whether.
        ImmutableArray<Point2> corners = [box.Low, new Point2(box.High.X, box.Low.Y), box.High, new Point2(box.Low.X, box.High.Y)];
        ImmutableArray<Point2> room = [.. corners.Select(corner => circle.Centre + ((1 / Nearer) * (corner - circle.Centre)))];
        var edges = ring.Select((from, i) => (From: from, To: ring[(i + 1) % ring.Count]));
        foreach (var (from, to) in edges.OrderBy(edge => Segments.Distance(edge.From, edge.To, circle.Centre)))
        {
            if (!ConvexOutlines.AreApart(room, [from, to]))
            {
                var limit = circle.Centre + (Nearer * (Segments.Nearest(from, to, circle.Centre) - circle.Centre));
                room = ConvexOutlines.LeftOf(room, limit, (limit - circle.Centre).QuarterTurned());
            }
        }

        return room;
    }
}
