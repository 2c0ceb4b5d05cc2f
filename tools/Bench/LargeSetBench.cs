using System;
using System.Diagnostics;
using System.Globalization;
using System.Linq;
using System.Threading;
using CoverPattern.Geometry;
using CoverPattern.Lays.Nesting;
using CoverPattern.Lays.Nesting.Search;

namespace Bench;

/// <summary>How cost grows with the number of pieces: 250 to 4,000 pieces of 40 kinds.</summary>
internal static class LargeSetBench
{
    private const int Kinds = 40;

    public static int Run()
    {
        foreach (var pieces in new[] { 250, 500, 1000, 2000, 4000 })
        {
            var task = Task(pieces);
            var first = Seconds(() => StripSearch.Find(task, SearchOptions.None, new CancellationToken(canceled: true)), out var start);
            var evaluations = 0L;
            var options = new SearchOptions { Start = start, Progress = progress => evaluations = progress.Evaluations };
            var rest = Seconds(() => StripSearch.Find(task, options, CancellationToken.None), out var layout);
            var megabytes = GC.GetTotalMemory(forceFullCollection: false) / 1e6;
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{{\"pieces\":{pieces},\"firstLaySeconds\":{first:F2},\"firstLength\":{start.Length:F0},\"nanosecondsPerEvaluation\":{1e9 * rest / evaluations:F0},\"length\":{layout.Length:F0},\"megabytes\":{megabytes:F0},\"verified\":{(LayoutCheck.Check(task, layout).IsEmpty ? "true" : "false")}}}"));
        }

        return 0;
    }

    private static double Seconds(Func<NestingLayout> work, out NestingLayout layout)
    {
        var watch = Stopwatch.StartNew();
        layout = work();
        return watch.Elapsed.TotalSeconds;
    }

    private static NestingTask Task(int pieces)
    {
        var chance = new Chance(1, 0);
        var items = Enumerable.Range(0, Kinds).Select(_ =>
        {
            var (corners, size) = (chance.Between(4, 20), chance.Between(60, 200));
            var outline = Enumerable.Range(0, corners).Select(k =>
            {
                var (angle, reach) = (2 * Math.PI * k / corners, size * (0.5 + (0.5 * chance.Unit())));
                return Grid.Snap(new Point2(reach * Math.Cos(angle), reach * Math.Sin(angle)));
            });
            return new NestingItem([.. outline], [], pieces / Kinds, AllowedTurns.HalfTurn);
        });
        return new NestingTask(1500, 0, [.. items], 10, 1);
    }
}
