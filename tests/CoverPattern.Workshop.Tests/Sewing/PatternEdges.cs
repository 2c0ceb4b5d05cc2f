using System.Collections.Generic;
using System.Linq;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>Which edge of which facet ring every run and every fold of a pattern is.</summary>
/// <param name="RunAt">For each facet and each edge of its ring the run that lies there; -1 for none.</param>
/// <param name="FoldAt">The same for folds.</param>
internal sealed record PatternEdges(IReadOnlyList<int[]> RunAt, IReadOnlyList<int[]> FoldAt)
{
    internal static PatternEdges Of(SewnPattern pattern) => new(
        [.. pattern.Facets.Select(ring => EdgesOf(ring).Select(edge => IndexOf(pattern.Runs.Select(run => Ends(pattern, run)), edge)).ToArray())],
        [.. pattern.Facets.Select(ring => EdgesOf(ring)
            .Select(edge => System.Math.Max(IndexOf(pattern.Folds, edge), IndexOf(pattern.Folds, (edge.To, edge.From)))).ToArray())]);

    internal static (FlatPoint From, FlatPoint To) Ends(SewnPattern pattern, SewnRun run) => (pattern.SewLine[run.From], pattern.SewLine[run.To]);

    /// <summary>Facet and edge of a run; -1, -1 when it is on none.</summary>
    internal (int Facet, int Edge) PlaceOf(int run)
    {
        for (var facet = 0; facet < RunAt.Count; facet++)
        {
            var edge = System.Array.IndexOf(RunAt[facet], run);
            if (edge >= 0)
            {
                return (facet, edge);
            }
        }

        return (-1, -1);
    }

    private static IEnumerable<(FlatPoint From, FlatPoint To)> EdgesOf(IReadOnlyList<FlatPoint> ring) =>
        ring.Select((corner, i) => (corner, ring[(i + 1) % ring.Count]));

    private static int IndexOf(IEnumerable<(FlatPoint From, FlatPoint To)> lines, (FlatPoint From, FlatPoint To) edge) =>
        lines.ToList().FindIndex(line => line.From.DistanceTo(edge.From) <= Tolerances.SamePlace && line.To.DistanceTo(edge.To) <= Tolerances.SamePlace);
}
