using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Lays.Nesting;

/// <summary>What a task must be.</summary>
internal static class NestingTasks
{
    /// <exception cref="ArgumentException">Width or spacing out of range, no turn allowed, or an outline that is not a simple counter-clockwise ring on the grid.</exception>
    public static void Require(NestingTask task)
    {
        Require(double.IsFinite(task.Width) && task.Width > 0, task, $"The strip's width must be a positive number of millimetres, not {task.Width}.");
        Require(double.IsFinite(task.Spacing) && task.Spacing >= 0, task, $"The spacing must not be negative; it is {task.Spacing} mm.");
        Require(task.Effort >= 1, task, $"The effort must be 1 or more, not {task.Effort}.");
        for (var i = 0; i < task.Items.Length; i++)
        {
            var item = task.Items[i];
            Require(item.Quantity >= 1, task, $"Item {i} must be placed at least once, not {item.Quantity} times.");
            Require(item.Turns.IsFree || (item.Turns.Degrees.Length > 0 && item.Turns.Degrees.All(double.IsFinite)), task, $"Item {i} must be allowed at least one turn.");
            RequireRing(task, i, item.Outline);
        }
    }

    private static void RequireRing(NestingTask task, int item, ImmutableArray<Point2> ring)
    {
        Require(ring.All(p => double.IsFinite(p.X) && double.IsFinite(p.Y)), task, $"Item {item} has a corner that is not a finite number.");
        Require(ring.All(p => Grid.Snap(p) == p), task, $"Item {item} has a corner that is not on the grid of 2^-10 mm.");
        var steps = Rings.ToSteps(ring);
        Require(ExactPredicates.IsSimple(steps), task, $"The outline of item {item} crosses or touches itself, or has fewer than three corners.");
        Require(Rings.SignedArea(ring) > 0, task, $"The outline of item {item} must run counter-clockwise round an area.");
    }

    private static void Require(bool isRight, NestingTask task, FormattableString otherwise)
    {
        if (!isRight)
        {
            throw new ArgumentException(FormattableString.Invariant(otherwise), nameof(task));
        }
    }
}
