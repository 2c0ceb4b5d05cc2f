using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using System.Threading;
using CoverPattern.Geometry;
using CoverPattern.Lays.Nesting.Search;

namespace CoverPattern.Lays.Nesting;

/// <summary>Places as much as goes on a strip of limited length.</summary>
/// <remarks>
/// First all outlines on an endless strip: when they end within the limit, that is the lay. Else what ends within the limit stays, and
/// copies of the rest are put where there is room; the same from an empty strip; the fuller one is kept. Then one copy more, the largest
/// first, is hung behind the end and the search shortens the strip until it fits, or it does not.
/// </remarks>
internal static class SectionNester
{
    // Copies that would not fit after which no more are tried, and the part of the effort for each; own choice.
    private const int MostTries = 4;

    /// <summary>Fills a strip of limited length.</summary>
    /// <param name="task">What there is to place, at most.</param>
    /// <param name="limit">Longest the layout may be, millimetres.</param>
    /// <param name="nest">Places all of a task on an endless strip.</param>
    /// <param name="cancel">Stops the search; the best so far is returned.</param>
    /// <returns>A layout of all copies, or of some; without any when none fits.</returns>
    public static NestingLayout Nest(NestingTask task, double limit, Func<NestingTask, NestingLayout> nest, CancellationToken cancel)
    {
        var all = nest(task);
        if (all.Length <= limit)
        {
            return all;
        }

        var kept = all.Placements.Where(place => Right(task, place) <= limit).ToImmutableArray();
        var best = new[] { Filled(task, kept, limit), Filled(task, [], limit) }.MaxBy(layout => AreaOf(task, layout.Placements))!;
        return best.Placements.IsEmpty || !Nester.MaySearch(task, best.Placements.Length) ? best : WithMore(task, best, limit, cancel);
    }

    private static double Right(NestingTask task, NestingPlacement place) => place.Apply(task.Items[place.Item].Outline).Max(point => point.X);

    private static double AreaOf(NestingTask task, IEnumerable<NestingPlacement> places) => places.Sum(place => Rings.SignedArea(task.Items[place.Item].Outline));

    /// <summary>Puts copies, the largest first, where they end within the limit.</summary>
    private static NestingLayout Filled(NestingTask task, ImmutableArray<NestingPlacement> kept, double limit)
    {
        var table = new OutlineTable(task with { Fixed = kept, Start = null });
        var fill = new StripFill(table, PlaceRule.LeastRight);
        var most = (long)Math.Floor(limit * Grid.StepsPerMillimetre);
        foreach (var item in Enumerable.Range(0, task.Items.Length).OrderByDescending(item => Rings.SignedArea(task.Items[item].Outline)))
        {
            for (var copy = table.CopiesToLay(item); copy > 0 && fill.TryAdd(item, most); copy--)
            {
            }
        }

        return Placed.ToLayout(fill.Placed, "sections");
    }

    private static NestingLayout WithMore(NestingTask task, NestingLayout layout, double limit, CancellationToken cancel)
    {
        var effort = Math.Max(1, task.Effort / MostTries);
        var misses = 0;
        foreach (var item in Enumerable.Range(0, task.Items.Length).OrderByDescending(item => Rings.SignedArea(task.Items[item].Outline)))
        {
            while (misses < MostTries && layout.Placements.Count(place => place.Item == item) < task.Items[item].Quantity && !cancel.IsCancellationRequested)
            {
                var more = OneMore(task with { Effort = effort }, layout, item, limit, cancel);
                if (more.Length > limit)
                {
                    misses++;
                    break;
                }

                layout = more;
            }
        }

        return layout;
    }

    /// <summary>Searches for a layout of the same copies and one more; its length tells whether it fits.</summary>
    private static NestingLayout OneMore(NestingTask task, NestingLayout layout, int item, double limit, CancellationToken cancel)
    {
        // The search knows items that are asked for at least once.
        var numbers = Enumerable.Range(0, task.Items.Length).Where(i => i == item || layout.Placements.Any(place => place.Item == i)).ToList();
        var turned = new OutlineTable(task with { Start = null }).ByItem[item].MinBy(outline => outline.Width)!;
        var behind = turned.At(Grid.ToSteps(new Point2(EndOf(task, layout) + task.Spacing + 1, 0)).X, 0);
        var places = layout.Placements.Add(behind).OrderBy(place => place.Item).Select(place => place with { Item = numbers.IndexOf(place.Item) }).ToImmutableArray();
        var some = task with
        {
            Items = [.. numbers.Select(number => task.Items[number] with { Quantity = places.Count(place => place.Item == numbers.IndexOf(number)) })],
            Start = null,
        };
        var start = new NestingLayout(places.Max(place => Right(some, place)), places, "start");
        var found = StripSearch.Find(some, new SearchOptions { Start = start, EnoughLength = limit }, cancel);
        return found with { Placements = [.. found.Placements.Select(place => place with { Item = numbers[place.Item] })] };
    }

    /// <summary>Behind all that lies and all flawed areas.</summary>
    private static double EndOf(NestingTask task, NestingLayout layout) =>
        Math.Max(layout.Length, task.Flaws.Select(flaw => flaw.Outline.Max(point => point.X)).DefaultIfEmpty(0).Max());
}
