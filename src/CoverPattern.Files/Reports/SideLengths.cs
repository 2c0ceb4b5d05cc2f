using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Files.Reports;

/// <summary>The one number that is printed along all edges of a class, so that partner edges never differ by a rounding.</summary>
internal sealed class SideLengths
{
    // Edges of a class differ by grid steps only; what differs by more than a tenth of a pen line is told as it is.
    private const double Equal = 0.05;

    private readonly ImmutableSortedDictionary<string, double> byClass;

    /// <param name="set">The patterns.</param>
    /// <param name="ruler">How lengths are printed.</param>
    public SideLengths(PieceSet set, Ruler ruler)
    {
        Ruler = ruler;
        byClass = set.Patterns
            .SelectMany(pattern => pattern.AllRuns)
            .GroupBy(run => run.ArcClass, StringComparer.Ordinal)
            .ToImmutableSortedDictionary(runs => runs.Key, runs => runs.Min(run => run.LengthMm), StringComparer.Ordinal);
    }

    /// <summary>How lengths are printed.</summary>
    public Ruler Ruler { get; }

    /// <summary>The printed length of an edge, without its unit.</summary>
    public string Of(EdgeRun run)
    {
        var least = byClass[run.ArcClass];
        return Ruler.Of(run.LengthMm - least < Equal ? least : run.LengthMm);
    }

    /// <summary>The printed distance of two corners of a sew line: the edge's length where a straight edge joins them.</summary>
    /// <param name="pattern">The pattern.</param>
    /// <param name="from">Index of one corner.</param>
    /// <param name="to">Index of the other.</param>
    public string Between(Pattern pattern, int from, int to)
    {
        var run = pattern.Runs.FirstOrDefault(run => TapeSetting.IsStraight(pattern, run)
            && ((run.From == from && run.To == to) || (run.From == to && run.To == from)));
        return run is null ? Ruler.Of(Point2.Distance(pattern.SewLine[from], pattern.SewLine[to])) : Of(run);
    }
}
