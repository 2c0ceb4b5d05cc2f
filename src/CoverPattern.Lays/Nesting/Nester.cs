using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using System.Threading;
using CoverPattern.Geometry;
using CoverPattern.Lays.Nesting.Search;

namespace CoverPattern.Lays.Nesting;

/// <summary>Places outlines on a strip of fixed width so that it is short.</summary>
public static class Nester
{
    // Beyond this many copies the search would spend its effort before it has looked at each of them; the fills serve alone.
    private const int MostSearched = 1500;

    // For so few copies a lay that leaves this much of the strip is a poor place to begin at, where there is effort enough to begin anew: this share of it goes there.
    // Measured, docs/nesting-engine.md.
    private const int MostAnew = 60;
    private const double LooseLay = 0.85;
    private const int LeastForAnew = 100;
    private const double ShareAnew = 0.9;

    // The search's own limit for the reach of an item, millimetres.
    private const double LargestSearched = 32_000;

    /// <summary>Runs the placing methods, searches on from the best of them, and keeps the shortest layout that is proved.</summary>
    /// <param name="task">Outlines, strip, spacing, effort and seed.</param>
    /// <param name="progress">Told of every full layout; may be null.</param>
    /// <param name="cancel">Stops the search; the best layout so far is returned.</param>
    /// <returns>A layout of every copy; the same for the same task. Never longer than <see cref="ShelfFill"/> or <see cref="RowFill"/>.</returns>
    /// <exception cref="ArgumentException">Width, spacing, effort or a quantity out of range, no turn allowed, or an outline that is not a simple counter-clockwise ring on the grid.</exception>
    /// <exception cref="ItemTooWideException">An item is wider than the strip in every allowed turn.</exception>
    /// <exception cref="StripTooLongException">Every layout found is longer than the grid reaches.</exception>
    /// <exception cref="OperationCanceledException">Cancelled before there was any layout.</exception>
    public static NestingLayout Nest(NestingTask task, IProgress<NestingProgress>? progress, CancellationToken cancel)
    {
        RequireLength(task);
        var table = new OutlineTable(task);
        var found = new List<NestingLayout>();
        if (task.Start is { } given)
        {
            found.Add(given);
        }

        if (task.Fixed.IsEmpty)
        {
            found.Add(Placed.ToLayout(ShelfFill.Fill(table, cancel), "shelves"));
        }

        if (table.Copies > 0 && !cancel.IsCancellationRequested)
        {
            AddFilled(table, found, progress, cancel);
            // Shelves and rows know no flawed areas: what lies on one is no start.
            found.RemoveAll(layout => !task.Flaws.IsEmpty && !LayoutCheck.Check(task, layout).IsEmpty);
            AddSearched(task, table.Copies, found, progress, cancel);
        }

        found.RemoveAll(layout => layout.Length > Grid.LargestMillimetres);
        if (found.Count == 0)
        {
            cancel.ThrowIfCancellationRequested();
            throw new StripTooLongException(table.Copies);
        }

        return found.OrderBy(layout => layout.Length).FirstOrDefault(layout => LayoutCheck.Check(task, layout).IsEmpty)
            ?? throw new InvalidOperationException("No placing method found a layout that its check accepts.");
    }

    /// <summary>Takes an earlier or hand-made layout as it is: it is checked and used, never searched again.</summary>
    /// <exception cref="ArgumentException">The task is not well formed, or the layout is not right for it; the message says where.</exception>
    public static NestingLayout Keep(NestingTask task, NestingLayout layout)
    {
        NestingTasks.Require(task with { Start = layout });
        return layout;
    }

    /// <summary>No lay is shorter than its area needs: what that puts beyond the grid is refused before any work.</summary>
    private static void RequireLength(NestingTask task)
    {
        NestingTasks.Require(task);
        var area = task.Items.Sum(item => item.Quantity * (Rings.SignedArea(item.Outline) + item.Holes.Sum(hole => Rings.SignedArea(hole))));
        if (area > task.Width * Grid.LargestMillimetres)
        {
            throw new StripTooLongException(task.Items.Sum(item => item.Quantity));
        }
    }

    private static void AddFilled(OutlineTable table, List<NestingLayout> found, IProgress<NestingProgress>? progress, CancellationToken cancel)
    {
        try
        {
            // The first lays come first: rows in closed form and one fill. Whoever waits no longer gets the shorter of them.
            var rows = table.Task.Fixed.IsEmpty ? RowFill.Fill(table, cancel) : [];
            if (rows.Count > 0)
            {
                found.Add(Placed.ToLayout(rows, "rows"));
            }

            var told = progress is null ? null : new Falling(progress, found.Select(layout => layout.Length).DefaultIfEmpty(double.PositiveInfinity).Min());
            var search = new FillSearch(table, told, cancel);
            search.RunFirst();
            AddFill(found, search, "bottom-left");
            AddRepeated(table, rows, found, told, cancel);
            search.Run();
            AddFill(found, search, "bottom-left");
        }
        catch (OperationCanceledException) when (found.Count > 0)
        {
            // Cancelled: what was found before is the answer.
        }
    }

    private static void AddFill(List<NestingLayout> found, FillSearch search, string method)
    {
        if (search.Best.Count > 0)
        {
            found.Add(Placed.ToLayout(search.Best, method));
        }
    }

    private static void AddRepeated(OutlineTable table, List<Placed> rows, List<NestingLayout> found, IProgress<NestingProgress>? progress, CancellationToken cancel)
    {
        if (rows.Count == 0 || cancel.IsCancellationRequested)
        {
            return;
        }

        var tails = new FillSearch(table, progress, cancel);
        tails.FillTails(rows, (long)(found.Min(layout => layout.Length) * Grid.StepsPerMillimetre));
        AddFill(found, tails, "rows with filled tail");
        if (table.Task.Flaws.IsEmpty && !cancel.IsCancellationRequested && MaySearch(table.Task, copies: 0) && CellFill.Fill(table.Task, cancel) is { } cells)
        {
            found.Add(cells);
        }
    }

    /// <summary>Indexes of the copies that stay, in a layout that holds them.</summary>
    private static ImmutableArray<int> LockedIn(NestingTask task, NestingLayout layout)
    {
        var open = task.Fixed.ToList();
        return [.. Enumerable.Range(0, layout.Placements.Length).Where(i => open.Remove(layout.Placements[i]))];
    }

    private static void AddSearched(
        NestingTask task, int copies, List<NestingLayout> found, IProgress<NestingProgress>? progress, CancellationToken cancel)
    {
        var start = found.OrderBy(layout => layout.Length).FirstOrDefault();
        if (start is null || cancel.IsCancellationRequested || start.Length > Grid.LargestMillimetres || !MaySearch(task, copies))
        {
            return;
        }

        var anew = BeginsAnew(task, copies, start) ? (int)(ShareAnew * task.Effort) : 0;
        if (anew > 0)
        {
            found.Add(StripSearch.Find(task with { Effort = anew }, new SearchOptions { Progress = step => Relay(0, anew, step) }, cancel));
            start = found.MinBy(layout => layout.Length)!;
        }

        if (!cancel.IsCancellationRequested)
        {
            found.Add(StripSearch.Find(task with { Effort = task.Effort - anew }, new SearchOptions { Start = start, Locked = LockedIn(task, start), Progress = step => Relay(anew, task.Effort - anew, step) }, cancel));
        }

        void Relay(int before, int units, SearchProgress step) =>
            progress?.Report(new NestingProgress(before + (int)(step.Share * units), task.Effort, Math.Min(step.Length, start.Length)));
    }

    private static bool BeginsAnew(NestingTask task, int copies, NestingLayout start) =>
        copies <= MostAnew && task.Effort >= LeastForAnew && task.Fixed.IsEmpty && task.Start is null
        && task.Items.Sum(item => item.Quantity * Rings.SignedArea(item.Outline)) < LooseLay * task.Width * start.Length;

    /// <summary>Whether the search takes a task of so many copies.</summary>
    internal static bool MaySearch(NestingTask task, int copies) =>
        copies <= MostSearched && !task.Items.Concat(task.Flaws.Select(flaw => flaw.ToItem())).Any(IsTooLarge);

    private static bool IsTooLarge(NestingItem item)
    {
        var box = Rings.Bounds(item.Outline);
        return Math.Max(box.Width, box.Height) > LargestSearched;
    }

    /// <summary>Passes progress on with the least length told so far.</summary>
    private sealed class Falling(IProgress<NestingProgress> listener, double least) : IProgress<NestingProgress>
    {
        private double least = least;

        public void Report(NestingProgress value)
        {
            least = Math.Min(least, value.Length);
            listener.Report(value with { Length = least });
        }
    }
}
