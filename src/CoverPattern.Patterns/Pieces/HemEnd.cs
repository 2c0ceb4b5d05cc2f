using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Pieces;

/// <summary>The end of a turned-up hem: the mirror, about the finished edge, of the cloth it will lie on.</summary>
internal static class HemEnd
{
    // A neighbour that rises less steeply than this from the finished edge (sine) is joined by a mitre instead.
    private const double LeastRise = 0.17;

    /// <summary>Whether the neighbour rises steeply enough from the finished edge to be mirrored.</summary>
    internal static bool Leads(SewEdge hem, SewEdge neighbour) =>
        Math.Abs(Point2.Dot(neighbour.Along, hem.Outward)) > LeastRise;

    /// <summary>Where the neighbour's cut line meets the finished edge.</summary>
    internal static Point2 OnFinishedEdge(SewEdge hem, Point2 corner, SewEdge neighbour) =>
        Lines.Meet(corner + (neighbour.Allowance * neighbour.Outward), neighbour.Along, corner, hem.Along);

    /// <summary>Corners of the hem's end, from its raw edge to the finished edge, without the point on the latter.</summary>
    /// <param name="hem">The finished edge.</param>
    /// <param name="side">The cut line that rises from the end of the finished edge, from there on.</param>
    /// <param name="fold">How the hem folds.</param>
    /// <remarks>
    /// Cloth at a distance y below the finished edge comes to lie at the height y above it up to the depth h, and the
    /// turn-under beyond at 2h - y: so the outline there is that of the cloth at these heights.
    /// </remarks>
    internal static IEnumerable<Point2> Draw(SewEdge hem, IEnumerable<Point2> side, HemFold fold)
    {
        var upward = side.Select(point => point - hem.From)
            .Select(step => new Point2(Point2.Dot(step, hem.Along), -Point2.Dot(step, hem.Outward)))
            .ToArray();
        var rising = Rising(upward);
        Point2 Place(double along, double below) => hem.From + (along * hem.Along) + (below * hem.Outward);

        var turned = Between(rising, Math.Max(0, fold.Depth - fold.TurnUnder), fold.Depth).Select(point => Place(point.X, (2 * fold.Depth) - point.Y));
        var doubled = Between(rising, 0, fold.Depth).Reverse().Skip(1).Select(point => Place(point.X, point.Y));
        return turned.Concat(doubled).SkipLast(1);
    }

    /// <summary>
    /// The side up to its top, or to where it steps outward: allowance that flares out there is a neighbour's, not cloth for the hem to lie on.
    /// </summary>
    /// <param name="side">Along the finished edge and height above it; the finished edge begins at 0.</param>
    private static Point2[] Rising(Point2[] side)
    {
        var inward = side[0].X > side.Average(point => point.X) ? 1 : -1;
        var top = Array.IndexOf(side, side.MaxBy(point => point.Y));
        var count = 2;
        while (count <= top && inward * Point2.Cross(side[count - 1] - side[count - 2], side[count] - side[count - 1]) >= 0)
        {
            count++;
        }

        return side[..count];
    }

    /// <summary>The part of a rising line between two heights; its last stretch is prolonged when it ends too low.</summary>
    private static ImmutableArray<Point2> Between(Point2[] rising, double low, double high) =>
    [
        At(rising, low),
        .. rising.TakeWhile(point => point.Y < high).Where(point => point.Y > low),
        At(rising, high),
    ];

    private static Point2 At(Point2[] rising, double height)
    {
        var above = Math.Max(1, Array.FindIndex(rising, point => point.Y >= height) is var found && found < 0 ? rising.Length - 1 : found);
        var (from, to) = (rising[above - 1], rising[above]);
        var rise = to.Y - from.Y;
        // A side that hardly rises belongs to a piece lower than its hem, which is refused: here it only must not run away.
        return rise > LeastRise * Point2.Distance(from, to) ? Point2.Between(from, to, (height - from.Y) / rise) : new Point2(from.X, height);
    }
}
