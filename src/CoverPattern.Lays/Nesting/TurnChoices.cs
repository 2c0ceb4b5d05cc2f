using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Lays.Nesting;

/// <summary>Which turns the placing methods try.</summary>
internal static class TurnChoices
{
    // Each edge counts twice, with its half turn, and the tables grow with the square of the turns; own choice.
    private const int MostEdges = 4;

    /// <summary>The item's own turns; for free turns each of the longest edges of its hull laid along the strip, either way round.</summary>
    /// <remarks>The least width of an outline is found with an edge of its hull along the strip, so an item that can fit does.</remarks>
    public static ImmutableArray<double> Of(NestingItem item) => item.Turns.IsFree
        ? [.. Along(ConvexRings.Hull(Rings.ToSteps(item.Outline)))]
        : item.Turns.Within > 0
        ? [.. item.Turns.Degrees.SelectMany(turn => Near(item, turn)).Select(Normal).Distinct()]
        : [.. item.Turns.Degrees.Select(Normal).Distinct()];

    /// <summary>Whether a turn stands off an allowed one by no more than it may.</summary>
    public static bool IsWithin(AllowedTurns turns, double degrees) =>
        turns.Degrees.Any(turn => Math.Abs(Math.IEEERemainder(turn - degrees, 360)) <= turns.Within);

    /// <summary>A turn from 0 to below 360 degrees.</summary>
    public static double Normal(double degrees) => ((degrees % 360) + 360) % 360;

    /// <summary>A turn, its bounds, and what between them lays a long edge of the hull, or the least width, along the strip.</summary>
    private static IEnumerable<double> Near(NestingItem item, double turn)
    {
        var hull = ConvexRings.Hull(Rings.ToSteps(item.Outline));
        var only = item.Turns with { Degrees = [turn] };
        var edges = hull.Select((corner, i) => Step(corner, hull[(i + 1) % hull.Length]))
            .SelectMany(edge => new[] { edge, -1 * edge })
            .Where(edge => IsWithin(only, Along(edge)))
            .ToArray();
        var narrowest = edges.OrderBy(edge => Across(hull, edge)).Take(1);
        return [turn, turn - item.Turns.Within, turn + item.Turns.Within, .. edges.OrderByDescending(edge => edge.Length).Take(MostEdges).Concat(narrowest).Select(Along)];
    }

    private static double Along(Point2 edge) => Normal(-Math.Atan2(edge.Y, edge.X) * 180 / Math.PI);

    private static double[] Along(ImmutableArray<GridPoint> hull)
    {
        var edges = hull.Select((corner, i) => Step(corner, hull[(i + 1) % hull.Length])).ToArray();
        var narrowest = edges.OrderBy(edge => Across(hull, edge)).First();
        return edges.OrderByDescending(edge => edge.Length)
            .Take(MostEdges)
            .Append(narrowest)
            .Select(Along)
            .SelectMany(turn => new[] { turn, Normal(turn + 180) })
            .Prepend(180)
            .Prepend(0)
            .Distinct()
            .ToArray();
    }

    private static Point2 Step(GridPoint from, GridPoint to) => to.ToPoint() - from.ToPoint();

    private static double Across(ImmutableArray<GridPoint> hull, Point2 edge)
    {
        var heights = hull.Select(corner => Point2.Cross(edge.Unit(), corner.ToPoint())).ToArray();
        return heights.Max() - heights.Min();
    }
}
