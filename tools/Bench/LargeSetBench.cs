using System;
using System.Diagnostics;
using System.Globalization;
using System.Linq;
using System.Threading;
using CoverPattern.Geometry;
using CoverPattern.Lays.Nesting;
using CoverPattern.Lays.Nesting.Search;

namespace Bench;

/// <summary>How cost grows with the number of pieces: up to 4,000 pieces of few kinds, and all unlike.</summary>
internal static class LargeSetBench
{
    /// <param name="words">Kinds, 0 for all unlike, and numbers of pieces; without any 40 kinds and all unlike.</param>
    public static int Run(ReadOnlySpan<string> words)
    {
        int[] kinds = words.IsEmpty ? [40, 0] : [int.Parse(words[0], CultureInfo.InvariantCulture)];
        int[] counts = words.Length < 2 ? [250, 500, 1000, 2000, 4000] : [.. words[1..].ToArray().Select(word => int.Parse(word, CultureInfo.InvariantCulture))];
        foreach (var kind in kinds)
        {
            foreach (var pieces in counts)
            {
                var task = Task(pieces, kind > 0 ? kind : pieces);
                var (first, length) = FirstLay(task);
                var (whole, layout) = Spent(() => Nester.Nest(task, null, CancellationToken.None));
                var perEvaluation = kind == 0 && pieces > 1000 ? double.NaN : PerEvaluation(task, layout);
                var megabytes = Process.GetCurrentProcess().PeakWorkingSet64 >> 20;
                var isProved = LayoutCheck.Check(task, layout).IsEmpty;
                Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{{\"pieces\":{pieces},\"kinds\":{task.Items.Length},\"firstLaySeconds\":{first:F2},\"firstLength\":{length:F0},\"wholeSeconds\":{whole:F2},\"length\":{layout.Length:F0},\"nanosecondsPerEvaluation\":{perEvaluation:F0},\"peakMegabytes\":{megabytes},\"verified\":{(isProved ? "true" : "false")}}}"));
            }
        }

        return 0;
    }

    /// <summary>Processor time until the first lay is told of, and its length.</summary>
    private static (double Seconds, double Length) FirstLay(NestingTask task)
    {
        using var stop = new CancellationTokenSource();
        var told = new Told(stop);
        var (_, layout) = Spent(() => Nester.Nest(task, told, stop.Token));
        return (told.Seconds, layout.Length);
    }

    private static double PerEvaluation(NestingTask task, NestingLayout start)
    {
        var evaluations = 0L;
        var options = new SearchOptions { Start = start, Progress = progress => evaluations = progress.Evaluations };
        var (seconds, _) = Spent(() => StripSearch.Find(task with { Effort = 10 }, options, CancellationToken.None));
        return 1e9 * seconds / evaluations;
    }

    private static (double Seconds, NestingLayout Layout) Spent(Func<NestingLayout> work)
    {
        var began = Now();
        var layout = work();
        return ((Now() - began).TotalSeconds, layout);
    }

    /// <summary>Processor time of all threads; seconds on the clock mean little on a busy machine.</summary>
    private static TimeSpan Now() => Process.GetCurrentProcess().TotalProcessorTime;

    private static NestingTask Task(int pieces, int kinds)
    {
        var chance = new Chance(1, 0);
        var items = Enumerable.Range(0, kinds).Select(_ =>
        {
            var (corners, size) = (chance.Between(4, 20), chance.Between(60, 200));
            var outline = Enumerable.Range(0, corners).Select(k =>
            {
                var (angle, reach) = (2 * Math.PI * k / corners, size * (0.5 + (0.5 * chance.Unit())));
                return Grid.Snap(new Point2(reach * Math.Cos(angle), reach * Math.Sin(angle)));
            });
            return new NestingItem([.. outline], [], pieces / kinds, AllowedTurns.HalfTurn);
        });
        return new NestingTask(1500, 0, [.. items], 1, 1);
    }

    private sealed class Told(CancellationTokenSource stop) : IProgress<NestingProgress>
    {
        private readonly TimeSpan began = Now();

        internal double Seconds { get; private set; }

        public void Report(NestingProgress value)
        {
            if (!stop.IsCancellationRequested)
            {
                Seconds = (Now() - began).TotalSeconds;
                stop.Cancel();
            }
        }
    }
}
