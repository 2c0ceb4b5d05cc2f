using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;

namespace CoverPattern.Geometry;

/// <summary>The grid on which finished outlines lie: steps of 2^-10 mm, so that predicates are exact in 64-bit integers.</summary>
/// <remarks>
/// One step is about a thousandth of a millimetre, a hundredth of a pen line. Coordinates up to 131 m fit: differences
/// then stay below 2^28 steps and the cross product of two differences below 2^57.
/// </remarks>
public static class Grid
{
    /// <summary>Steps in a millimetre.</summary>
    public const int StepsPerMillimetre = 1024;

    /// <summary>The largest coordinate that may be put on the grid, millimetres.</summary>
    public const double LargestMillimetres = 131_000;

    /// <summary>The nearest point of the grid, counted in steps.</summary>
    /// <param name="point">Millimetres.</param>
    /// <exception cref="ArgumentOutOfRangeException">A coordinate is not finite or beyond <see cref="LargestMillimetres"/>.</exception>
    public static GridPoint ToSteps(Point2 point) => new(ToSteps(point.X), ToSteps(point.Y));

    /// <summary>The nearest point of the grid, in millimetres.</summary>
    /// <inheritdoc cref="ToSteps(Point2)"/>
    public static Point2 Snap(Point2 point) => ToSteps(point).ToPoint();

    /// <summary>Each point of a ring moved to the nearest point of the grid.</summary>
    /// <inheritdoc cref="ToSteps(Point2)"/>
    public static ImmutableArray<Point2> Snap(IEnumerable<Point2> ring) => [.. ring.Select(Snap)];

    private static long ToSteps(double millimetres) => Math.Abs(millimetres) <= LargestMillimetres
        ? (long)Math.Round(millimetres * StepsPerMillimetre, MidpointRounding.AwayFromZero)
        : throw new ArgumentOutOfRangeException(nameof(millimetres), millimetres, "A coordinate must be finite and at most 131 m from the origin.");
}
