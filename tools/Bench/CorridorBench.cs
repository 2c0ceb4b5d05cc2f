using System;
using System.Collections.Generic;
using System.Diagnostics;
using System.Globalization;
using System.IO;
using System.Text;
using CoverPattern.Files.Jobs;
using CoverPattern.Files.Results;
using CoverPattern.Workshop;

namespace Bench;

/// <summary>Times the whole corridor from the text of a job to the bytes of its files, for domes of growing frequency or for job files named.</summary>
internal static class CorridorBench
{
    // The cut next above the equator: the largest common dome of each frequency.
    private static readonly (int Frequency, int Rows)[] Domes = [(2, 3), (3, 5), (4, 7), (5, 8), (6, 10), (7, 11), (8, 13)];

    internal static int Run(ReadOnlySpan<string> words)
    {
        Console.WriteLine("job\tfacets\tpatterns\tpieces ms\tlays ms\tfiles ms\ttotal ms\tlay m\tpeak MB");
        if (words.Length > 0 && words[0].EndsWith(".json", StringComparison.Ordinal))
        {
            foreach (var job in words)
            {
                Measure(Path.GetFileNameWithoutExtension(job), File.ReadAllBytes(job), print: true);
            }

            return 0;
        }

        var radius = words.Length > 0 ? int.Parse(words[0], CultureInfo.InvariantCulture) : 2500;
        foreach (var (frequency, rows) in Domes)
        {
            Measure($"{frequency}V", Dome(frequency, rows, radius), print: false);
            Measure($"{frequency}V", Dome(frequency, rows, radius), print: true);
        }

        return 0;
    }

    private static byte[] Dome(int frequency, int rows, int radius) => Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture, $$"""
        { "schemaVersion": 1, "date": "2026-03-01", "frame": { "frequency": {{frequency}}, "cut": {{rows}}, "size": { "radius": {{radius}} } },
          "cloths": [ { "name": "canvas", "rollWidth": "2.05 m" } ] }
        """));

    private static void Measure(string name, byte[] text, bool print)
    {
        var watch = Stopwatch.StartNew();
        var marks = new Marks(watch);
        var result = Corridor.Run(JobReader.Read(text).Job!, text, marks, default).Result!;
        var laid = watch.ElapsedMilliseconds;
        var files = ResultFiles.Write(result);
        var done = watch.ElapsedMilliseconds;
        if (print)
        {
            var peak = Process.GetCurrentProcess().PeakWorkingSet64 >> 20;
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{name}\t{result.Frame.Facets.Length}\t{result.Pieces.Patterns.Length}\t{marks.At["lays"]}\t{laid - marks.At["lays"]}\t{done - laid}\t{done}\t{result.Lays[0].LengthMm / 1000:0.00}\t{peak}"));
        }

        GC.KeepAlive(files);
    }

    /// <summary>When each stage began, in milliseconds.</summary>
    private sealed class Marks(Stopwatch watch) : IProgress<WorkshopStep>
    {
        internal Dictionary<string, long> At { get; } = new(StringComparer.Ordinal);

        public void Report(WorkshopStep value) => At.TryAdd(value.Stage, watch.ElapsedMilliseconds);
    }
}
