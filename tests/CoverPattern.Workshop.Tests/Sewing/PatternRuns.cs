using System.Linq;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>Runs of a pattern, those of its holes after those of its outline.</summary>
internal static class PatternRuns
{
    internal static SewnRun RunOf(this SewnPattern pattern, int run) => run < pattern.Runs.Count ? pattern.Runs[run] : pattern.Cutouts[run - pattern.Runs.Count].Run;

    /// <summary>The points of a run in order, both ends included.</summary>
    internal static FlatPoint[] PathOf(this SewnPattern pattern, int index)
    {
        var (run, ring) = (pattern.RunOf(index), index < pattern.Runs.Count ? pattern.SewLine : pattern.Cutouts[index - pattern.Runs.Count].Rim);
        var steps = run.From == run.To ? ring.Count : (run.To - run.From + ring.Count) % ring.Count;
        return [.. Enumerable.Range(run.From, steps + 1).Select(corner => ring[corner % ring.Count])];
    }
}
