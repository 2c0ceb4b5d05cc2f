using System.Collections.Generic;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Lays.Nesting;

namespace CoverPattern.Lays.Tests.Nesting;

/// <summary>Shelves of bounding boxes, highest first, written once more for the tests.</summary>
internal static class BoxShelves
{
    /// <summary>Length of the strip, millimetres, by first fit; each item in the first of its turns that fits.</summary>
    public static double Length(NestingTask task)
    {
        var boxes = task.Items.SelectMany(item => Enumerable.Repeat(BoxOf(item, task.Width), item.Quantity)).OrderByDescending(box => box.Width);
        var shelves = new List<(double Used, double Length)>();
        foreach (var box in boxes)
        {
            var at = shelves.FindIndex(shelf => shelf.Used + box.Height <= task.Width);
            if (at < 0)
            {
                shelves.Add((box.Height + task.Spacing, box.Width));
            }
            else
            {
                shelves[at] = shelves[at] with { Used = shelves[at].Used + box.Height + task.Spacing };
            }
        }

        return shelves.Sum(shelf => shelf.Length) + ((shelves.Count - 1) * task.Spacing);
    }

    private static Box2 BoxOf(NestingItem item, double width) =>
        (item.Turns.IsFree ? [0.0] : item.Turns.Degrees)
            .Select(turn => Rings.Bounds(new NestingPlacement(0, turn, default).Apply(item.Outline)))
            .First(box => box.Height <= width);
}
