using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Lays.Nesting;

/// <summary>Where one copy lies: mirrored if at all, turned about the outline's origin, snapped to the grid, then shifted by grid steps.</summary>
/// <param name="Item">Index into the task's items.</param>
/// <param name="TurnDegrees">Turn, degrees counter-clockwise.</param>
/// <param name="Shift">Millimetres, on the grid.</param>
/// <param name="Mirrored">Whether y changes sign before the turn.</param>
public readonly record struct NestingPlacement(int Item, double TurnDegrees, Point2 Shift, bool Mirrored = false)
{
    /// <summary>An outline as it lies: mirrored, turned, snapped, then shifted; its direction of travel is kept.</summary>
    public ImmutableArray<Point2> Apply(ImmutableArray<Point2> ring)
    {
        var shift = Shift;
        var turn = RigidMap.FromDegrees(TurnDegrees, default, Mirrored);
        var lying = ImmutableArray.CreateRange(ring, point => Grid.Snap(turn.Apply(point)) + shift);
        return Mirrored ? [.. lying.AsEnumerable().Reverse()] : lying;
    }
}
