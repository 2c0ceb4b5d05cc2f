using System;
using System.Linq;
using System.Threading;
using System.Threading.Tasks;
using CoverPattern.Geometry;

namespace CoverPattern.Lays.Nesting.Search;

/// <summary>Searches for a short lay of a task's items on a strip, as long as effort allows. See docs/nesting-engine.md.</summary>
public static class StripSearch
{
    /// <summary>Name of the method in the layouts it makes.</summary>
    public const string Method = "search";

    // A fixed number whatever the machine has, so that a seed gives the same lay everywhere.
    private const int Workers = 2;

    /// <summary>Finds the shortest lay it can.</summary>
    /// <param name="task">What to lay; effort counts work units of 50,000 place evaluations for each of two logical workers.</param>
    /// <param name="options">Start lay, time limit, progress.</param>
    /// <param name="cancel">Ends the search; the best lay so far is returned.</param>
    /// <returns>A lay free of overlaps with all copies. Same task, same start and no time limit: same lay, on one thread or two.</returns>
    /// <exception cref="ArgumentException">The task is not well formed (see <see cref="Nester"/>), an item is larger than 32 m, or the start lay has other copies.</exception>
    /// <exception cref="ItemTooWideException">An item is wider than the strip in every turn it may take.</exception>
    public static NestingLayout Find(NestingTask task, SearchOptions options, CancellationToken cancel) =>
        Find(task, options, SearchSettings.Default, cancel);

    internal static NestingLayout Find(NestingTask task, SearchOptions options, SearchSettings settings, CancellationToken cancel)
    {
        NestingTasks.Require(task);
        var budget = new Budget(task.Effort, options);
        if (task.Items.IsEmpty)
        {
            return new NestingLayout(0, [], Method);
        }

        var scene = new SearchScene(task, settings, options);

        var best = FirstLay(scene, task.Seed);
        var enough = options.EnoughLength * Grid.StepsPerMillimetre;
        var chains = Enumerable.Range(1, Workers).Select(k => new Chain(scene, best, k == 1 ? settings.Shortening : settings.BoldShortening, new Chance(task.Seed, k))).ToArray();
        for (var share = budget.Share(0); share < 1 && !cancel.IsCancellationRequested && !Array.Exists(chains, chain => chain.IsDone) && Shortest(chains).Length > enough;)
        {
            Steer(chains, share, settings);
            RunAll(chains, options.Threads, settings.EvaluationsPerUnit, cancel);
            share = budget.NextShare();
            Report(chains, share, options.Progress);
        }

        var shortest = Shortest(chains);
        var found = ToLayout(scene.IsRound ? shortest : Settling.Slide(scene, shortest), scene.Pieces);
        return options.Start is { } given && given.Length <= found.Length ? given : found;
    }

    /// <summary>The shorter one of a quick fill and the given start; always the start when copies are locked.</summary>
    private static FoundLay FirstLay(SearchScene scene, int seed)
    {
        var given = scene.Start is { } start
            ? new FoundLay(start.Spots.Take(scene.Pieces).Max(spot => spot.X + spot.Shape.TrueBox.Right), start.Spots)
            : null;
        if (given is not null && scene.Locked.Contains(true))
        {
            return given;
        }

        var filled = StartLay.Make(scene, new Chance(seed, 0));
        return given is not null && given.Length <= filled.Length ? given : filled;
    }

    /// <summary>Spreads news between the chains and sets the pressing rate.</summary>
    private static void Steer(Chain[] chains, double share, SearchSettings settings)
    {
        var best = Shortest(chains);
        var pressing = (share - settings.ShorteningShare) / (1 - settings.ShorteningShare);
        foreach (var chain in chains)
        {
            if (pressing >= 0)
            {
                chain.Press(settings.FirstPress + (pressing * (settings.LastPress - settings.FirstPress)), best);
            }

            chain.Hear(best);
        }
    }

    private static void RunAll(Chain[] chains, int threads, int evaluations, CancellationToken cancel)
    {
        if (threads < 2)
        {
            Array.ForEach(chains, chain => chain.Run(evaluations, cancel));
            return;
        }

        Parallel.ForEach(chains, chain => chain.Run(evaluations, cancel));
    }

    private static void Report(Chain[] chains, double share, Action<SearchProgress>? progress) =>
        progress?.Invoke(new SearchProgress(
            Math.Min(share, 1),
            Shortest(chains).Length / (double)Grid.StepsPerMillimetre,
            chains.Sum(chain => chain.Evaluations)));

    private static FoundLay Shortest(Chain[] chains) => chains.Select(chain => chain.Best).MinBy(lay => lay.Length)!;

    private static NestingLayout ToLayout(FoundLay lay, int pieces) => new(
        lay.Length / (double)Grid.StepsPerMillimetre,
        [.. lay.Spots.Take(pieces).Select(spot => new NestingPlacement(
            spot.Shape.Item,
            spot.Shape.TurnDegrees,
            new GridPoint(spot.X, spot.Y).ToPoint(),
            spot.Shape.Mirrored))],
        Method);
}
