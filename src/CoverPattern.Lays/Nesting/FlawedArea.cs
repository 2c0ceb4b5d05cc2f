using System.Collections.Immutable;
using CoverPattern.Geometry;

namespace CoverPattern.Lays.Nesting;

/// <summary>A flawed area of the strip, which only items that bear the flaw may lie on; all may touch its rim.</summary>
/// <param name="Outline">Ring on the grid, counter-clockwise, simple, in the strip's millimetres; it may reach over the strip's edges.</param>
/// <param name="LeastGrade">Least <see cref="NestingItem.Grade"/> of the items that may lie on it; <see cref="NoItem"/> when none may.</param>
public sealed record FlawedArea(ImmutableArray<Point2> Outline, int LeastGrade = FlawedArea.NoItem)
{
    /// <summary>A grade no item has.</summary>
    public const int NoItem = int.MaxValue - 1;

    /// <summary>The area as something that lies on the strip.</summary>
    internal NestingItem ToItem() => new(Outline, [], 1, AllowedTurns.None) { Grade = NoItem, LeastGrade = LeastGrade };
}
