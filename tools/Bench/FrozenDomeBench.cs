using System;
using System.Diagnostics;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Threading;
using CoverPattern.Lays.Nesting;

namespace Bench;

/// <summary>Lays the frozen dome sets: boxes, rows, repeated cells, fill, and the whole nester at one and more effort.</summary>
internal static class FrozenDomeBench
{
    internal static int Run(ReadOnlySpan<string> words)
    {
        var wishes = BenchWishes.Parse(words);
        if (wishes.Sets.Length == 0)
        {
            Console.Error.WriteLine("usage: bench domes --sets <folder> [--effort N] [--only a,b] [--out folder]");
            return 1;
        }

        Console.WriteLine("set\tpieces\tboxes\trows\tcells\tcells s\tfill\tnester\tnester s\tnester %\tby hand\tproved");
        var sets = Directory.GetFiles(wishes.Sets, "*.json").Order(StringComparer.Ordinal).SelectMany(path => NestingSet.ReadAll(path)).Where(set => wishes.Only.IsEmpty || wishes.Only.Contains(set.Name)).ToArray();
        var holds = true;
        foreach (var set in sets)
        {
            holds &= RunOne(set, wishes);
        }

        return holds ? 0 : 3;
    }

    private static bool RunOne(NestingSet set, BenchWishes wishes)
    {
        var task = new NestingTask(set.Width, set.Spacing, set.Items, wishes.Effort == int.MaxValue ? 5 : wishes.Effort, 1);
        try
        {
            var (boxes, rows) = (ShelfFill.Fill(task), RowFill.Fill(task));
            var (cells, cellSeconds) = Timed(() => CellFill.Fill(task, CancellationToken.None));
            var fill = BottomLeftFill.Fill(task, CancellationToken.None);
            var (layout, seconds) = Timed(() => Nester.Nest(task, null, CancellationToken.None));
            var hand = HandNester.Nest(task with { Effort = 1 }, null, CancellationToken.None);
            var proved = new[] { layout, hand, cells ?? layout }.All(one => LayoutCheck.Check(task, one).IsEmpty) && layout.Length <= rows.Length;
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{set.Name}\t{task.Items.Sum(item => item.Quantity)}\t{boxes.Length / 1000:F2}\t{rows.Length / 1000:F2}\t{cells?.Length / 1000:F2}\t{cellSeconds:F2}\t{fill.Length / 1000:F2}\t{layout.Length / 1000:F2}\t{seconds:F2}\t{100 * set.Area / (set.Width * layout.Length):F1}\t{hand.Length / 1000:F2}\t{(proved ? "all" : "NOT ALL")}"));
            if (wishes.Out.Length > 0)
            {
                Directory.CreateDirectory(wishes.Out);
                File.WriteAllText(Path.Combine(wishes.Out, set.Name + ".svg"), LayoutDrawing.Svg(task, layout));
                File.WriteAllText(Path.Combine(wishes.Out, set.Name + "-rows.svg"), LayoutDrawing.Svg(task, rows));
                File.WriteAllText(Path.Combine(wishes.Out, set.Name + "-both.svg"), LayoutDrawing.Both(task, rows, layout));
            }

            return proved;
        }
        catch (Exception fault) when (fault is ItemTooWideException or StripTooLongException)
        {
            Console.WriteLine($"{set.Name}\tdoes not fit: {fault.Message}");
            return true;
        }
    }

    private static (T Made, double Seconds) Timed<T>(Func<T> work)
    {
        var watch = Stopwatch.StartNew();
        return (work(), watch.Elapsed.TotalSeconds);
    }
}
