using System.Collections.Immutable;
using CoverPattern.Geometry;

namespace CoverPattern.Lays.Nesting;

/// <summary>Where one copy lies: turned about the outline's origin, snapped to the grid, then shifted by grid steps.</summary>
/// <param name="Item">Index into the task's items.</param>
/// <param name="TurnDegrees">Turn, degrees counter-clockwise.</param>
/// <param name="Shift">Millimetres, on the grid.</param>
public readonly record struct NestingPlacement(int Item, double TurnDegrees, Point2 Shift)
{
    /// <summary>An outline as it lies: turned, snapped, then shifted.</summary>
    public ImmutableArray<Point2> Apply(ImmutableArray<Point2> ring)
    {
        var shift = Shift;
        var turn = RigidMap.FromDegrees(TurnDegrees, default, mirrored: false);
        return [.. System.Linq.ImmutableArrayExtensions.Select(ring, point => Grid.Snap(turn.Apply(point)) + shift)];
    }
}
