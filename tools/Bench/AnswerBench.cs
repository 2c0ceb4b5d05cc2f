using System;
using System.Diagnostics;
using System.Globalization;
using System.Linq;
using System.Text;
using CoverPattern.Files.Jobs;
using CoverPattern.Files.Surveys;
using CoverPattern.Patterns.Frames;

namespace Bench;

/// <summary>How long somebody waits for the answer to a job that cannot be made, and for a survey of many facets to be mended; two seconds are the aim.</summary>
internal static class AnswerBench
{
    public static int Run(ReadOnlySpan<string> words)
    {
        var rounds = words.Length > 0 ? int.Parse(words[0], CultureInfo.InvariantCulture) : 3;
        var faces = Encoding.UTF8.GetBytes("v 0 0 0\nv 1 0 0\nv 0 1 0\n" + string.Concat(Enumerable.Repeat("f 1 2 3\n", 1_000_000)));
        var roof = Encoding.UTF8.GetBytes(Roof(50, 52));
        const string struts = """ "frequency": 3, "cut": "5/8", "struts": { "lengths": ["A 1275 mm", "B 1476 mm", "C 1508.4 mm"], "floorDiameter": "5 m" } """;
        Console.WriteLine("what\tround\tms\tanswer");
        for (var round = 1; round <= rounds; round++)
        {
            Time("struts that miss the floor diameter", round, () => JobReader.Read(Job(struts)).Faults[0].Allowed);
            Time("a mesh of a million faces", round, () => JobReader.Read(Job(""" "survey": { "file": "big.obj", "unit": "mm" } """), _ => faces).Faults[0].Allowed);
            Time("a roof of 4,998 facets", round, () => $"{SurveyMender.Mend(SurveyFile.Read("roof.obj", roof, 1).Survey! with { WeldMm = 0.1 }).Mesh!.Facets.Length} facets");
        }

        return 0;
    }

    private static void Time(string what, int round, Func<string> answer)
    {
        var clock = Stopwatch.StartNew();
        var said = answer();
        Console.WriteLine(FormattableString.Invariant($"{what}\t{round}\t{clock.Elapsed.TotalMilliseconds:0}\t{said}"));
    }

    private static string Job(string frame) =>
        $$"""{ "schemaVersion": 1, "date": "2026-03-01", "frame": { {{frame}} }, "cloths": [{ "name": "canvas", "rollWidth": "2 m" }] }""";

    /// <summary>A shallow roof of quadrangles, halved.</summary>
    private static string Roof(int wide, int deep)
    {
        var points = Enumerable.Range(0, wide * deep).Select(i => (X: i / deep, Y: i % deep))
            .Select(at => FormattableString.Invariant($"v {100 * at.X} {100 * at.Y} {(20 * at.X) - (0.4 * at.X * at.X) + (20 * at.Y) - (0.4 * at.Y * at.Y)}\n"));
        var faces = Enumerable.Range(0, (wide - 1) * (deep - 1)).Select(i => (deep * (i / (deep - 1))) + (i % (deep - 1)) + 1)
            .Select(corner => FormattableString.Invariant($"f {corner} {corner + deep} {corner + deep + 1}\nf {corner} {corner + deep + 1} {corner + 1}\n"));
        return string.Concat(points.Concat(faces));
    }
}
