using System;
using System.Collections.Generic;
using System.Diagnostics;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Threading;
using CoverPattern.Lays.Nesting;
using CoverPattern.Lays.Nesting.Search;

namespace Bench;

/// <summary>Runs the strip search on published sets and tells densities.</summary>
internal static class NestingBench
{
    private sealed record Outcome(string Set, int Seed, double Seconds, double Density, double Length, bool Verified, long Evaluations, double ProcessorSeconds);

    public static int Run(ReadOnlySpan<string> words)
    {
        var wishes = BenchWishes.Parse(words);
        if (wishes.Sets.Length == 0 || (wishes.Seconds <= 0 && wishes.Effort == int.MaxValue))
        {
            Console.Error.WriteLine("usage: bench nesting --sets <folder> --seconds S|--effort N --seeds N [--only a,b] [--out folder] [--threads 1|2]");
            return 1;
        }

        var outcomes = new List<Outcome>();
        foreach (var path in Directory.GetFiles(wishes.Sets, "*.json").Order(StringComparer.Ordinal))
        {
            var name = Path.GetFileNameWithoutExtension(path);
            if (wishes.Only.IsEmpty || wishes.Only.Contains(name))
            {
                outcomes.AddRange(NestingSet.ReadAll(path).SelectMany(set => Enumerable.Range(1, wishes.Seeds).Select(seed => RunOne(set, seed, wishes))));
            }
        }

        PrintTable(outcomes);
        return outcomes.TrueForAll(outcome => outcome.Verified) ? 0 : 3;
    }

    private static Outcome RunOne(NestingSet set, int seed, BenchWishes wishes)
    {
        // The first run counts from the start of the process, so that compiling on the fly is paid for too.
        var watch = Stopwatch.StartNew();
        var spent = ProcessorSeconds();
        var evaluations = 0L;
        var task = new NestingTask(set.Width * set.Scale, set.Spacing * set.Scale, set.Items, wishes.Effort, seed);
        var options = new SearchOptions
        {
            TimeLimit = wishes.Seconds > 0 ? TimeSpan.FromSeconds(wishes.Seconds) : null,
            Threads = wishes.Threads,
            Progress = progress => evaluations = progress.Evaluations,
        };
        var layout = StripSearch.Find(task, options, SettingsOf(wishes), CancellationToken.None);
        var seconds = watch.Elapsed.TotalSeconds;
        spent = ProcessorSeconds() - spent;
        var length = layout.Length / set.Scale;
        var outcome = new Outcome(set.Name, seed, seconds, 100 * set.Area / (set.Width * length), length, LayoutCheck.Check(task, layout).IsEmpty, evaluations, spent);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{{\"set\":\"{set.Name}\",\"seed\":{seed},\"seconds\":{seconds:F2},\"densityPercent\":{outcome.Density:F3},\"lengthUsed\":{length:R},\"verified\":{(outcome.Verified ? "true" : "false")},\"millionEvaluations\":{evaluations / 1e6:F1},\"processorSeconds\":{spent:F1}}}"));
        if (wishes.Out.Length > 0)
        {
            Directory.CreateDirectory(wishes.Out);
            File.WriteAllText(Path.Combine(wishes.Out, FormattableString.Invariant($"{set.Name}-{seed}.svg")), LayoutDrawing.Svg(task, layout));
        }

        return outcome;
    }

    private static SearchSettings SettingsOf(BenchWishes wishes)
    {
        var settings = SearchSettings.Default with { };
        foreach (var change in wishes.Settings)
        {
            var parts = change.Split('=');
            var property = typeof(SearchSettings).GetProperty(parts[0]) ?? throw new ArgumentException($"There is no setting {parts[0]}.", nameof(wishes));
            property.SetValue(settings, Convert.ChangeType(parts[1], property.PropertyType, CultureInfo.InvariantCulture));
        }

        return settings;
    }

    /// <summary>Of all threads; seconds on the clock mean little on a busy machine.</summary>
    private static double ProcessorSeconds() => Process.GetCurrentProcess().TotalProcessorTime.TotalSeconds;

    private static void PrintTable(List<Outcome> outcomes)
    {
        Console.WriteLine();
        Console.WriteLine("set          runs   mean %    min %    max %  seconds  million evaluations/processor s  verified");
        foreach (var group in outcomes.GroupBy(outcome => outcome.Set, StringComparer.Ordinal))
        {
            var seconds = group.Sum(outcome => outcome.Seconds);
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{group.Key,-12} {group.Count(),4} {group.Average(o => o.Density),8:F2} {group.Min(o => o.Density),8:F2} {group.Max(o => o.Density),8:F2} {seconds / group.Count(),8:F2} {group.Sum(o => o.Evaluations) / 1e6 / group.Sum(o => o.ProcessorSeconds),32:F2} {(group.All(o => o.Verified) ? "all" : "NOT ALL"),9}"));
        }
    }
}
