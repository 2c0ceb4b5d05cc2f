using System;
using System.Collections.Generic;
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
            Require(double.IsFinite(item.Turns.Within) && item.Turns.Within >= 0, task, $"The grain of item {i} must run crooked by 0 degrees or more, not {item.Turns.Within}.");
            Require(item.Grade < FlawedArea.NoItem, task, $"The grade of item {i} is too high.");
            RequireRing(task, FormattableString.Invariant($"item {i}"), item.Outline);
            RequireHoles(task, i, item);
        }

        for (var k = 0; k < task.Flaws.Length; k++)
        {
            Require(task.Flaws[k].LeastGrade <= FlawedArea.NoItem, task, $"The grade of flawed area {k} is too high.");
            RequireRing(task, FormattableString.Invariant($"flawed area {k}"), task.Flaws[k].Outline);
        }

        RequireFixed(task);
        var wrong = task.Start is { } start ? LayoutCheck.Check(task, start).FirstOrDefault() : null;
        Require(wrong is null, task, $"The layout to start from is not right: {wrong?.Text}");
    }

    private static void RequireHoles(NestingTask task, int item, NestingItem outer)
    {
        var outline = Rings.ToSteps(outer.Outline);
        var seen = new List<GridRegion>();
        foreach (var hole in outer.Holes)
        {
            ImmutableArray<Point2> area = [.. hole.Reverse()];
            RequireRing(task, FormattableString.Invariant($"a hole, turned about, of item {item}"), area);
            var region = GridRegion.Of(area, []);
            Require(region.Rings[0].All(corner => ExactPredicates.Locate(outline, corner) > 0) && !Cross(outline, region.Rings[0]), task, $"A hole of item {item} reaches to or over its outline.");
            Require(!seen.Exists(other => RegionPairs.InteriorsMeet(other, region)), task, $"Two holes of item {item} overlap.");
            seen.Add(region);
        }
    }

    private static bool Cross(ImmutableArray<GridPoint> left, ImmutableArray<GridPoint> right) => left.Where((a, i) =>
    {
        var b = left[(i + 1) % left.Length];
        return right.Where((c, k) => ExactPredicates.SegmentsMeet(a, b, c, right[(k + 1) % right.Length])).Any();
    }).Any();

    /// <summary>The copies that stay must be a right layout of their own.</summary>
    private static void RequireFixed(NestingTask task)
    {
        if (task.Fixed.IsEmpty)
        {
            return;
        }

        Require(task.Fixed.All(placement => placement.Item >= 0 && placement.Item < task.Items.Length), task, $"A copy that is to stay is of no item of the task.");
        var counts = task.Items.Select((_, item) => task.Fixed.Count(placement => placement.Item == item)).ToArray();
        for (var i = 0; i < counts.Length; i++)
        {
            Require(counts[i] <= task.Items[i].Quantity, task, $"{counts[i]} copies of item {i} are to stay; only {task.Items[i].Quantity} are asked for.");
        }

        var alone = task with { Items = [.. task.Items.Select((item, i) => item with { Quantity = counts[i] })], Start = null };
        var fault = LayoutCheck.Check(alone, new NestingLayout(0, task.Fixed, "fixed")).FirstOrDefault(finding => finding.Fault != NestingFault.WrongLength);
        Require(fault is null, task, $"The copies that are to stay contradict each other or the strip: {fault?.Text}");
    }

    private static void RequireRing(NestingTask task, string what, ImmutableArray<Point2> ring)
    {
        Require(ring.All(p => double.IsFinite(p.X) && double.IsFinite(p.Y)), task, $"A corner of {what} is not a finite number.");
        Require(ring.All(p => Grid.Snap(p) == p), task, $"A corner of {what} is not on the grid of 2^-10 mm.");
        var steps = Rings.ToSteps(ring);
        Require(ExactPredicates.IsSimple(steps), task, $"The outline of {what} crosses or touches itself, or has fewer than three corners.");
        Require(Rings.SignedArea(ring) > 0, task, $"The outline of {what} must run counter-clockwise round an area.");
    }

    private static void Require(bool isRight, NestingTask task, FormattableString otherwise)
    {
        if (!isRight)
        {
            throw new ArgumentException(FormattableString.Invariant(otherwise), nameof(task));
        }
    }
}
