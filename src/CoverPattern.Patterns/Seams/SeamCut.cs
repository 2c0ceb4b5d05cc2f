using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Seams;

/// <summary>A part of a seam that is made otherwise than the rest of it.</summary>
/// <param name="Entry">Index of its wish in the job.</param>
/// <param name="Line">Index of the shell's edge.</param>
/// <param name="From">Share of the edge at which it begins, from its first node; 0 to 1.</param>
/// <param name="To">Share at which it ends; more than where it begins.</param>
/// <param name="MakeUp">How it is made.</param>
public sealed record SeamCut(int Entry, int Line, double From, double To, MakeUp MakeUp)
{
    /// <summary>The zips of a job on the seams there are; those of unknown struts are left out, with a fault elsewhere.</summary>
    internal static ImmutableArray<SeamCut> Of(Job job, Shell shell)
    {
        var struts = HubLabels.EdgesByStrut(shell);
        return [.. job.Seam.Zips.Select((zip, i) => (zip, i)).Where(entry => struts.ContainsKey(entry.zip.Strut)).Select(entry => Of(shell, entry.zip, entry.i, struts[entry.zip.Strut]))];
    }

    /// <summary>Where the lines of a plan are parted, share by share.</summary>
    internal static ImmutableDictionary<int, ImmutableArray<double>> SharesOf(SeamPlan plan) =>
        plan.Cuts.GroupBy(cut => cut.Line).ToImmutableDictionary(line => line.Key, line => line.SelectMany(cut => new[] { cut.From, cut.To }).Distinct().Order().ToImmutableArray());

    private static SeamCut Of(Shell shell, SeamZip zip, int entry, int line)
    {
        var edge = shell.Edges[line];
        var (from, to) = (zip.From.Millimetres / edge.LengthMm, (zip.From.Millimetres + zip.Length.Millimetres) / edge.LengthMm);
        return zip.Strut.StartsWith(shell.Nodes[edge.From].Label + "-", StringComparison.Ordinal) && !IsOther(shell, zip.Strut, edge)
            ? new SeamCut(entry, line, from, to, SeamZip.MakeUp)
            : new SeamCut(entry, line, 1 - to, 1 - from, SeamZip.MakeUp);
    }

    private static bool IsOther(Shell shell, string strut, ShellEdge edge) =>
        string.Equals(strut, $"{shell.Nodes[edge.To].Label}-{shell.Nodes[edge.From].Label}", StringComparison.Ordinal);
}
