using System;
using System.Diagnostics;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Threading;
using CoverPattern.Geometry;
using CoverPattern.Lays.Nesting;
using CoverPattern.Lays.Nesting.Search;

namespace Bench;

/// <summary>Lays the triangles of domes on rolls of several widths and compares with rows.</summary>
internal static class DomeBench
{
    public static int Run(ReadOnlySpan<string> words)
    {
        var wishes = BenchWishes.Parse(words);
        if (wishes.Seconds <= 0 && wishes.Effort == int.MaxValue)
        {
            Console.Error.WriteLine("usage: bench dome --seconds S|--effort N [--out folder] [--threads 1|2] [--only name,name]");
            return 1;
        }

        var holds = true;
        foreach (var radius in new[] { 2500.0, 3660 })
        {
            foreach (var width in new[] { 1350.0, 1480, 1800, 2000 })
            {
                foreach (var turns in new[] { "half", "free" })
                {
                    var name = DomeSet.Name(radius, width, turns);
                    var task = new NestingTask(width, DomeSet.Spacing, DomeSet.Triangles(radius, DomeSet.Turns(turns)), wishes.Effort, 1);
                    holds &= (!wishes.Only.IsEmpty && !wishes.Only.Contains(name)) || RunOne(name, task, wishes);
                }
            }
        }

        return holds ? 0 : 3;
    }

    private static bool RunOne(string name, NestingTask task, BenchWishes wishes)
    {
        var watch = Stopwatch.StartNew();
        var evaluations = 0L;
        try
        {
            var rows = RowFill.Fill(task);
            var options = new SearchOptions
            {
                Start = rows,
                TimeLimit = wishes.Seconds > 0 ? TimeSpan.FromSeconds(wishes.Seconds) : null,
                Threads = wishes.Threads,
                Progress = progress => evaluations = progress.Evaluations,
            };
            var layout = StripSearch.Find(task, options, CancellationToken.None);
            var verified = LayoutCheck.Check(task, layout).IsEmpty;
            var area = task.Items.Sum(item => item.Quantity * Rings.SignedArea(item.Outline));
            var density = 100 * area / (task.Width * layout.Length);
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{{\"set\":\"{name}\",\"seed\":{task.Seed},\"seconds\":{watch.Elapsed.TotalSeconds:F2},\"densityPercent\":{density:F2},\"lengthUsed\":{layout.Length:F1},\"verified\":{(verified ? "true" : "false")},\"rowsLength\":{rows.Length:F1},\"millionEvaluations\":{evaluations / 1e6:F1}}}"));
            if (wishes.Out.Length > 0)
            {
                Directory.CreateDirectory(wishes.Out);
                File.WriteAllText(Path.Combine(wishes.Out, name + ".svg"), LayoutDrawing.Svg(task, layout));
            }

            return verified;
        }
        catch (ItemTooWideException)
        {
            Console.WriteLine(FormattableString.Invariant($"{{\"set\":\"{name}\",\"fits\":false}}"));
            return true;
        }
    }
}
