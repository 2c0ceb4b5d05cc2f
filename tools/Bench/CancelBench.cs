using System;
using System.Diagnostics;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Threading;
using CoverPattern.Lays.Nesting;

namespace Bench;

/// <summary>How soon stopped work gives its lay: the work of each set is stopped at many moments, and waited for.</summary>
internal static class CancelBench
{
    private const int Moments = 12;

    // Long enough that no set is done before its last moment.
    private const int UsualEffort = 1000;

    public static int Run(ReadOnlySpan<string> words)
    {
        var wishes = BenchWishes.Parse(words);
        if (wishes.Sets.Length == 0 || wishes.Seconds <= 0)
        {
            Console.Error.WriteLine("usage: bench cancel --sets <folder> --seconds S [--effort N] [--only a,b]");
            return 1;
        }

        Console.WriteLine("set\tpieces\tmedian ms\tlongest ms\tits moment s\tproved");
        var holds = true;
        foreach (var set in Directory.GetFiles(wishes.Sets, "*.json").Order(StringComparer.Ordinal).SelectMany(path => NestingSet.ReadAll(path)).Where(set => wishes.Only.IsEmpty || wishes.Only.Contains(set.Name)))
        {
            holds &= RunOne(set, wishes);
        }

        return holds ? 0 : 3;
    }

    /// <summary>Stops at moments spread evenly over the time given; before the first lay there is nothing to give.</summary>
    private static bool RunOne(NestingSet set, BenchWishes wishes)
    {
        var task = new NestingTask(set.Width * set.Scale, set.Spacing * set.Scale, set.Items, wishes.Effort == int.MaxValue ? UsualEffort : wishes.Effort, 1);
        var stops = Enumerable.Range(1, Moments).Select(k => Stopped(task, wishes.Seconds * k / Moments)).OrderBy(stop => stop.Milliseconds).ToArray();
        var proved = stops.All(stop => stop.Proved);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{set.Name}\t{task.Items.Sum(item => item.Quantity)}\t{stops[Moments / 2].Milliseconds:F0}\t{stops[^1].Milliseconds:F0}\t{stops[^1].Moment:F1}\t{(proved ? "all" : "NOT ALL")}"));
        return proved;
    }

    private static (double Moment, double Milliseconds, bool Proved) Stopped(NestingTask task, double moment)
    {
        using var source = new CancellationTokenSource();
        var watch = Stopwatch.StartNew();
        source.CancelAfter(TimeSpan.FromSeconds(moment));
        try
        {
            var layout = Nester.Nest(task, null, source.Token);
            var waited = (watch.Elapsed.TotalSeconds - moment) * 1000;
            return (moment, waited, LayoutCheck.Check(task, layout).IsEmpty);
        }
        catch (OperationCanceledException)
        {
            return (moment, (watch.Elapsed.TotalSeconds - moment) * 1000, true);
        }
    }
}
