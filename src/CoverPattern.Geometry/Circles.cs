using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;

namespace CoverPattern.Geometry;

/// <summary>Circles as rings on the grid.</summary>
/// <remarks>
/// The corners lie a little outside the circle, so that the polygon has the circle's exact area: with a step of t radians
/// between corners they lie at r sqrt(t / sin t), which is r (1 + t^2 / 12) nearly, and the middles of the edges half as far
/// inside (own derivation).
/// </remarks>
public static class Circles
{
    // A thousandth is left for the grid, millimetres; the whole deviation is then 0.02, a tenth of a chalk line's edge.
    private const double LargestDeviation = 0.019;
    private const int FewestCorners = 24;

    /// <summary>The circle as a polygon of its area, nowhere more than 0.02 mm away from it.</summary>
    /// <param name="centre">Its centre, millimetres; moved to the nearest point of the grid, so that equal circles are equal rings.</param>
    /// <param name="radius">Positive, millimetres.</param>
    /// <returns>
    /// Ring on the grid, counter-clockwise, a multiple of eight corners at even steps, the first in the direction of +x;
    /// its own mirror image in x, in y and in both diagonals.
    /// </returns>
    public static ImmutableArray<Point2> Polygon(Point2 centre, double radius)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(radius, 0);
        var middle = Grid.Snap(centre);
        return [.. AboutOrigin(radius).Select(corner => middle + corner)];
    }

    /// <summary>The same ring the other way round, as holes run: clockwise from the same first corner.</summary>
    /// <inheritdoc cref="Polygon"/>
    public static ImmutableArray<Point2> Hole(Point2 centre, double radius)
    {
        var ring = Polygon(centre, radius);
        return [ring[0], .. ring.Skip(1).Reverse()];
    }

    /// <summary>The same polygon before it is put on the grid: its area is the circle's to the last digits.</summary>
    /// <inheritdoc cref="Polygon"/>
    public static ImmutableArray<Point2> Unsnapped(Point2 centre, double radius)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(radius, 0);
        var (count, step, reach) = Steps(radius);
        return [.. Enumerable.Range(0, count).Select(i => centre + (reach * new Point2(Math.Cos(i * step), Math.Sin(i * step))))];
    }

    /// <summary>A circle about the origin for what is drawn on slanting planes: finer, and with corners at every twelfth of it.</summary>
    /// <param name="radius">Positive, millimetres.</param>
    /// <param name="squeeze">By how much a length on the steepest of these planes may be longer than seen along the axis: 1 / this ratio, above 0 to 1.</param>
    /// <returns>Ring, counter-clockwise, the first corner in the direction of +x; on such a plane nowhere more than 0.02 mm off.</returns>
    public static ImmutableArray<Point2> Slanting(double radius, double squeeze)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(radius, 0);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(squeeze, 0);
        var count = 24 * (int)Math.Ceiling(Math.Max(FewestCorners, 2 * Math.PI * Math.Sqrt(radius / (12 * LargestDeviation * squeeze))) / 24);
        var step = 2 * Math.PI / count;
        var reach = radius * Math.Sqrt(step / Math.Sin(step));
        return [.. Enumerable.Range(0, count).Select(i => reach * new Point2(Math.Cos(i * step), Math.Sin(i * step)))];
    }

    private static (int Count, double Step, double Reach) Steps(double radius)
    {
        var count = 8 * (int)Math.Ceiling(Math.Max(FewestCorners, 2 * Math.PI * Math.Sqrt(radius / (12 * LargestDeviation))) / 8);
        var step = 2 * Math.PI / count;
        return (count, step, radius * Math.Sqrt(step / Math.Sin(step)));
    }

    private static IEnumerable<Point2> AboutOrigin(double radius)
    {
        var (count, step, reach) = Steps(radius);
        var eighth = Enumerable.Range(0, (count / 8) + 1).Select(i => Grid.Snap(new Point2(reach * Math.Cos(i * step), reach * Math.Sin(i * step)))).ToArray();
        // The corner on the diagonal has equal coordinates, though rounding may say otherwise.
        eighth[^1] = new Point2(eighth[^1].X, eighth[^1].X);
        var quarter = eighth.Concat(eighth.Skip(1).Reverse().Skip(1).Select(corner => new Point2(corner.Y, corner.X))).ToArray();
        var half = quarter.Concat(quarter.Select(corner => corner.QuarterTurned())).ToArray();
        return half.Concat(half.Select(corner => -1 * corner));
    }
}
