using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace Bench;

/// <summary>A row of triangles between an upper and a lower line of hubs, laid flat one after the other.</summary>
internal static class UnfoldedRow
{
    /// <summary>The next hub and its distances to the last hub of each line.</summary>
    internal sealed record Hub(bool IsLower, double ToUpper, double ToLower);

    /// <summary>The outline grown by an allowance with full corners, the chord of the lower line along +x.</summary>
    internal static ImmutableArray<Point2> Outline(double start, ImmutableArray<Hub> hubs, double allowance)
    {
        var (upper, lower) = (new List<Point2> { new(0, start) }, new List<Point2> { new(0, 0) });
        foreach (var hub in hubs)
        {
            (hub.IsLower ? lower : upper).Add(Third(lower[^1], hub.ToLower, upper[^1], hub.ToUpper));
        }

        var along = (lower[^1] - lower[0]).Unit();
        Point2[] ring = [.. lower, .. Enumerable.Reverse(upper)];
        return Grown([.. ring.Select(hub => new Point2((along.X * hub.X) + (along.Y * hub.Y), (along.X * hub.Y) - (along.Y * hub.X)))], allowance);
    }

    /// <summary>The corner at two distances from two points, to the right of the way from the first to the second.</summary>
    private static Point2 Third(Point2 from, double fromDistance, Point2 to, double toDistance)
    {
        var length = Point2.Distance(from, to);
        var along = ((fromDistance * fromDistance) - (toDistance * toDistance) + (length * length)) / (2 * length);
        var aside = Math.Sqrt((fromDistance * fromDistance) - (along * along));
        var unit = (to - from).Unit();
        return from + (along * unit) - (aside * unit.QuarterTurned());
    }

    /// <summary>A counter-clockwise ring with every edge moved out, on the grid.</summary>
    internal static ImmutableArray<Point2> Grown(Point2[] ring, double allowance) =>
        [.. ring.Select((corner, i) => Grid.Snap(Mitre(ring[(i + ring.Length - 1) % ring.Length], corner, ring[(i + 1) % ring.Length], allowance)))];

    private static Point2 Mitre(Point2 before, Point2 corner, Point2 after, double allowance)
    {
        var (first, second) = ((corner - before).Unit().QuarterTurned(), (after - corner).Unit().QuarterTurned());
        return corner - (allowance / (1 + Point2.Dot(first, second)) * (first + second));
    }
}
