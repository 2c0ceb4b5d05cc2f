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

/// <summary>Lays the triangles and the parts of rows of domes on rolls of several widths and compares with rows.</summary>
internal static class DomeBench
{
    // Somewhat less than two quiet cores do, cells and search together; free turns take longer.
    private const double UnitsASecond = 42;
    private const double FreeUnitsASecond = 16;

    private static readonly string[] Pieces = ["triangles", "panels"];

    private static readonly string[] Turns = ["half", "free"];

    private static readonly double[] Radii = [2500, 3660];

    private static readonly double[] Widths = [1350, 1480, 1800, 2000];

    public static int Run(ReadOnlySpan<string> words)
    {
        var wishes = BenchWishes.Parse(words);
        if (wishes.Seconds <= 0 && wishes.Effort == int.MaxValue)
        {
            Console.Error.WriteLine("usage: bench dome --seconds S|--effort N [--out folder] [--seeds N] [--threads 1|2] [--only name,name]");
            return 1;
        }

        var runs =
            from pieces in Pieces
            from radius in Radii
            from width in Widths
            from turns in Turns
            let name = DomeSet.Name(pieces, radius, width, turns)
            where wishes.Only.IsEmpty || wishes.Only.Contains(name)
            from seed in Enumerable.Range(1, wishes.Seeds)
            select (name, new NestingTask(width, DomeSet.Spacing, DomeSet.Items(pieces, radius, DomeSet.Turns(turns)), wishes.Effort, seed));
        return runs.Aggregate(true, (holds, run) => RunOne(run.name, run.Item2, wishes) && holds) ? 0 : 3;
    }

    private static bool RunOne(string name, NestingTask task, BenchWishes wishes)
    {
        var watch = Stopwatch.StartNew();
        var evaluations = 0L;
        try
        {
            var rows = RowFill.Fill(task);
            // As an order is laid: fills, cells and search by effort, then all the time that is left.
            var start = Nester.Nest(wishes.Seconds > 0 ? task with { Effort = (int)(wishes.Seconds * (name.EndsWith("free", StringComparison.Ordinal) ? FreeUnitsASecond : UnitsASecond)) } : task, null, CancellationToken.None);
            var options = new SearchOptions
            {
                Start = start,
                TimeLimit = wishes.Seconds > 0 ? TimeSpan.FromSeconds(Math.Max(0.1, wishes.Seconds - watch.Elapsed.TotalSeconds)) : null,
                Threads = wishes.Threads,
                Progress = progress => evaluations = progress.Evaluations,
            };
            var layout = StripSearch.Find(task, options, CancellationToken.None);
            var verified = LayoutCheck.Check(task, layout).IsEmpty;
            var area = task.Items.Sum(item => item.Quantity * Rings.SignedArea(item.Outline));
            var density = 100 * area / (task.Width * layout.Length);
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{{\"set\":\"{name}\",\"seed\":{task.Seed},\"seconds\":{watch.Elapsed.TotalSeconds:F2},\"densityPercent\":{density:F2},\"lengthUsed\":{layout.Length:F1},\"verified\":{(verified ? "true" : "false")},\"rowsLength\":{rows.Length:F1},\"startLength\":{start.Length:F1},\"millionEvaluations\":{evaluations / 1e6:F1}}}"));
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
