using System;
using System.Collections.Generic;
using System.Linq;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>A point or step on the flat cloth, millimetres.</summary>
internal readonly record struct FlatPoint(double X, double Y)
{
    internal double Length => Math.Sqrt((X * X) + (Y * Y));

    public static FlatPoint operator +(FlatPoint left, FlatPoint right) => new(left.X + right.X, left.Y + right.Y);

    public static FlatPoint operator -(FlatPoint left, FlatPoint right) => new(left.X - right.X, left.Y - right.Y);

    public static FlatPoint operator *(double factor, FlatPoint point) => new(factor * point.X, factor * point.Y);

    internal double Dot(FlatPoint other) => (X * other.X) + (Y * other.Y);

    internal double Cross(FlatPoint other) => (X * other.Y) - (Y * other.X);

    internal double DistanceTo(FlatPoint other) => (this - other).Length;

    /// <summary>Area of a ring, positive when it runs counter-clockwise, square millimetres.</summary>
    internal static double AreaOf(IReadOnlyList<FlatPoint> ring) =>
        Enumerable.Range(0, ring.Count).Sum(i => (ring[i] - ring[0]).Cross(ring[(i + 1) % ring.Count] - ring[0])) / 2;

    /// <summary>The corners' mean.</summary>
    internal static FlatPoint MiddleOf(IReadOnlyCollection<FlatPoint> ring) =>
        (1.0 / ring.Count) * ring.Aggregate(default(FlatPoint), (sum, corner) => sum + corner);
}
