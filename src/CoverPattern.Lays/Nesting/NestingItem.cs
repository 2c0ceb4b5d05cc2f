using System.Collections.Immutable;
using CoverPattern.Geometry;

namespace CoverPattern.Lays.Nesting;

/// <summary>An outline and how often and how it may be placed.</summary>
/// <param name="Outline">Ring on the grid, counter-clockwise, first point not repeated, simple.</param>
/// <param name="Holes">Rings inside, clockwise.</param>
/// <param name="Quantity">How many are to be placed, 1 or more.</param>
/// <param name="Turns">Which turns are allowed.</param>
/// <param name="MayMirror">Whether the outline may also lie turned over (cloth without a face side).</param>
public sealed record NestingItem(
    ImmutableArray<Point2> Outline,
    ImmutableArray<ImmutableArray<Point2>> Holes,
    int Quantity,
    AllowedTurns Turns,
    bool MayMirror = false)
{
    /// <summary>Which flaws the item bears: it may lie on a <see cref="FlawedArea"/> that asks for this grade or less. 0: on none that asks for 1 or more.</summary>
    public int Grade { get; init; }

    /// <summary>For what stands for a flawed area: the least grade that may lie on it.</summary>
    internal int LeastGrade { get; init; } = int.MaxValue;

    /// <summary>Whether this stands for a flawed area.</summary>
    internal bool IsFlaw => LeastGrade < int.MaxValue;
}
