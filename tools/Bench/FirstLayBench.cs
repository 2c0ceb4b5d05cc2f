using System;
using System.Diagnostics;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Threading;
using CoverPattern.Files.Jobs;
using CoverPattern.Lays.Nesting;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Workshop;

namespace Bench;

/// <summary>How long the first lay takes, in processor time of all threads: until then nobody can be given cloth to cut.</summary>
internal static class FirstLayBench
{
    internal static int Run(ReadOnlySpan<string> words)
    {
        if (words.Length != 2 || (words[0] != "--sets" && words[0] != "--jobs"))
        {
            Console.Error.WriteLine("usage: bench first --sets <folder>|--jobs <folder>");
            return 1;
        }

        Console.WriteLine(words[0] == "--sets" ? "set\tpieces\trows m\tfirst m\tprocessor s" : "job\tprocessor s\tfirst lay");
        var holds = true;
        foreach (var path in Directory.GetFiles(words[1], "*.json").Order(StringComparer.Ordinal))
        {
            if (words[0] == "--jobs")
            {
                OfJob(path);
                continue;
            }

            foreach (var set in NestingSet.ReadAll(path))
            {
                holds &= OfSet(set);
            }
        }

        return holds ? 0 : 3;
    }

    private static bool OfSet(NestingSet set)
    {
        var task = new NestingTask(set.Width, set.Spacing, set.Items, 1, 1);
        using var first = new First();
        try
        {
            var layout = Nester.Nest(task, first, first.Token);
            var rows = RowFill.Fill(task).Length;
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{set.Name}\t{task.Items.Sum(item => item.Quantity)}\t{rows / 1000:F2}\t{layout.Length / 1000:F2}\t{first.Seconds:F2}"));
            return layout.Length <= rows && LayoutCheck.Check(task, layout).IsEmpty;
        }
        catch (WorkException fault)
        {
            Console.WriteLine($"{set.Name}\t{fault.Message}");
            return true;
        }
    }

    private static void OfJob(string path)
    {
        using var first = new First();
        var text = File.ReadAllBytes(path);
        try
        {
            _ = Corridor.Run(JobReader.Read(text).Job!, text, first, first.Token);
        }
        catch (OperationCanceledException)
        {
            // Stopped as soon as there was a lay.
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{Path.GetFileNameWithoutExtension(path)}\t{first.Seconds:F2}\t{first.Detail}"));
    }

    /// <summary>Stops the work at the first lay and tells what it has taken.</summary>
    private sealed class First : IProgress<NestingProgress>, IProgress<WorkshopStep>, IDisposable
    {
        private readonly CancellationTokenSource source = new();
        private TimeSpan began = Spent();

        internal CancellationToken Token => source.Token;

        internal double Seconds { get; private set; }

        /// <summary>What the work says of its first lay.</summary>
        internal string Detail { get; private set; } = string.Empty;

        public void Report(NestingProgress value)
        {
            Stop(string.Empty);
        }

        public void Report(WorkshopStep value)
        {
            if (value.Stage == "lays" && value.Detail.Length > 0)
            {
                Stop(value.Detail);
            }
            else if (value.Stage == "lays")
            {
                began = Spent();
            }
        }

        private void Stop(string detail)
        {
            if (!source.IsCancellationRequested)
            {
                (Seconds, Detail) = ((Spent() - began).TotalSeconds, detail);
                source.Cancel();
            }
        }

        public void Dispose() => source.Dispose();

        private static TimeSpan Spent() => Process.GetCurrentProcess().TotalProcessorTime;
    }
}
