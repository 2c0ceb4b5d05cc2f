using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Files.Reports;

/// <summary>The one number in whole millimetres that is printed along all edges of a class, so that partner edges never differ by a rounding.</summary>
internal sealed class SideLengths
{
    private readonly ImmutableSortedDictionary<string, string> byClass;

    public SideLengths(PieceSet set) => byClass = set.Patterns
        .SelectMany(pattern => pattern.AllRuns)
        .GroupBy(run => run.ArcClass, StringComparer.Ordinal)
        .ToImmutableSortedDictionary(runs => runs.Key, runs => Printed.Mm(runs.Min(run => run.LengthMm)), StringComparer.Ordinal);

    /// <summary>The printed length of an edge, without its unit.</summary>
    public string Of(EdgeRun run) => byClass[run.ArcClass];

    /// <summary>The printed distance of two corners of a sew line: the edge's length where an edge joins them.</summary>
    /// <param name="pattern">The pattern.</param>
    /// <param name="from">Index of one corner.</param>
    /// <param name="to">Index of the other.</param>
    public string Between(Pattern pattern, int from, int to)
    {
        var run = pattern.Runs.FirstOrDefault(run => (run.From == from && run.To == to) || (run.From == to && run.To == from));
        return run is null ? Printed.Mm(Point2.Distance(pattern.SewLine[from], pattern.SewLine[to])) : Of(run);
    }
}
