using System;
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
        : [.. item.Turns.Degrees.Select(Normal).Distinct()];

    /// <summary>A turn from 0 to below 360 degrees.</summary>
    public static double Normal(double degrees) => ((degrees % 360) + 360) % 360;

    private static double[] Along(ImmutableArray<GridPoint> hull)
    {
        var edges = hull.Select((corner, i) => Step(corner, hull[(i + 1) % hull.Length])).ToArray();
        var narrowest = edges.OrderBy(edge => Across(hull, edge)).First();
        return edges.OrderByDescending(edge => edge.Length)
            .Take(MostEdges)
            .Append(narrowest)
            .Select(edge => Normal(-Math.Atan2(edge.Y, edge.X) * 180 / Math.PI))
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
