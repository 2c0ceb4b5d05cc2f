using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Seams;

/// <summary>Divides the line between roof and wall into zips: each from hub to hub, none longer than the longest, none round a corner that is too sharp.</summary>
public static class RoofZips
{
    // On a corner the tape is eased along an arc of the zip's radius; farther than this from the sew line it will not be eased (own choice), millimetres.
    private const double Eased = 2.5;

    /// <summary>The zips, numbered along each line in turn.</summary>
    /// <param name="job">Radius and longest length of zips are read.</param>
    /// <param name="shell">The finished surface.</param>
    /// <param name="line">Where roof and wall part.</param>
    /// <returns>As few as may be, of equal number the ones whose longest is shortest; a single strut longer than the longest zip is a run all the same.</returns>
    public static ImmutableArray<RoofZip> Plan(Job job, Shell shell, RoofLine line)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(shell);
        ArgumentNullException.ThrowIfNull(line);
        RoofStep[][] runs = [.. line.Loops.SelectMany(loop => Sections(job, shell, line, loop)).SelectMany(section => Parted(section, job.Notions.ZipLongest.Millimetres))];
        var digits = Math.Max(2, runs.Length.ToString(CultureInfo.InvariantCulture).Length);
        return [.. runs.Select((run, i) => new RoofZip("Z" + (i + 1).ToString(CultureInfo.InvariantCulture).PadLeft(digits, '0'), [.. run], run.Sum(step => step.LengthMm)))];
    }

    /// <summary>By how much the line turns at a node on the side where it turns more, radians.</summary>
    /// <param name="shell">The finished surface.</param>
    /// <param name="line">Where roof and wall part.</param>
    /// <param name="node">A node of it.</param>
    public static double TurnAt(Shell shell, RoofLine line, int node)
    {
        ArgumentNullException.ThrowIfNull(line);
        return Math.Max(Math.Abs(Math.PI - line.AngleAt(shell, node, onRoof: true)), Math.Abs(Math.PI - line.AngleAt(shell, node, onRoof: false)));
    }

    /// <summary>Whether a zip must stop where the line turns by an angle: an arc of its radius leaves the corner by r (1 / cos(turn / 2) - 1) [own derivation].</summary>
    /// <param name="radius">Smallest radius of a curve on which the zip runs, millimetres.</param>
    /// <param name="turn">The angle, radians, 0 to pi.</param>
    public static bool MustStop(double radius, double turn) => radius * ((1 / Math.Cos(turn / 2)) - 1) > Eased;

    /// <summary>The line between corners; without any, all of it from its first hub round.</summary>
    private static IEnumerable<RoofStep[]> Sections(Job job, Shell shell, RoofLine line, ImmutableArray<RoofStep> loop)
    {
        var corners = Enumerable.Range(0, loop.Length).Where(i => MustStop(job.Notions.ZipRadius.Millimetres, TurnAt(shell, line, loop[i].From))).ToArray();
        if (corners.Length == 0)
        {
            return [[.. loop]];
        }

        return corners.Select((from, i) => Enumerable.Range(from, (i + 1 < corners.Length ? corners[i + 1] : corners[0] + loop.Length) - from).Select(at => loop[at % loop.Length]).ToArray());
    }

    private static Stack<RoofStep[]> Parted(RoofStep[] section, double longest)
    {
        // Best way to end a run before each strut: fewest runs, then the shortest longest one.
        var best = new (int Count, double Longest, int From)[section.Length + 1];
        for (var to = 1; to <= section.Length; to++)
        {
            best[to] = Enumerable.Range(0, to).Where(from => from == to - 1 || Length(section, from, to) <= longest + 1e-6)
                .Select(from => (Count: best[from].Count + 1, Longest: Math.Round(Math.Max(best[from].Longest, Length(section, from, to)), 3), From: from))
                .OrderBy(way => way.Count).ThenBy(way => way.Longest).ThenBy(way => way.From).First();
        }

        var runs = new Stack<RoofStep[]>();
        for (var to = section.Length; to > 0; to = best[to].From)
        {
            runs.Push(section[best[to].From..to]);
        }

        return runs;
    }

    private static double Length(RoofStep[] section, int from, int to) => section[from..to].Sum(step => step.LengthMm);
}
