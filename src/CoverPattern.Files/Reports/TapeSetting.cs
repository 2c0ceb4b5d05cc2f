using System.Collections.Generic;
using System.Linq;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Files.Reports;

/// <summary>How to set a sew line out with two tapes: a base, and for every other corner two arcs from the ends of the base.</summary>
internal static class TapeSetting
{
    /// <summary>The longest edge; of equal ones the first.</summary>
    public static EdgeRun Base(Pattern pattern) => pattern.Runs.MaxBy(run => run.LengthMm)!;

    /// <summary>The steps in words, one a line.</summary>
    /// <param name="pattern">The pattern.</param>
    /// <param name="lengths">Printed lengths of edges.</param>
    public static IEnumerable<string> Steps(Pattern pattern, SideLengths lengths)
    {
        foreach (var cutout in pattern.Cutouts)
        {
            yield return $"Hole for {cutout.Purpose}: circle of diameter {RoundShapes.Diameter(cutout.Rim)}";
        }

        var bottom = Base(pattern);
        if (bottom.IsClosed)
        {
            yield return $"Circle of diameter {RoundShapes.Diameter(pattern.SewLine)}";
            yield break;
        }

        yield return $"Base {Words.Edge(bottom)}: {lengths.Of(bottom)}";
        foreach (var corner in pattern.Runs.Select(run => run.From).Where(corner => corner != bottom.From && corner != bottom.To))
        {
            yield return $"Corner {Printed.Count(corner + 1)}: {Arc(bottom.From)} and {Arc(bottom.To)}";

            string Arc(int end)
            {
                var isEdge = pattern.Runs.Any(run => (run.From == end && run.To == corner) || (run.From == corner && run.To == end));
                return $"{lengths.Between(pattern, end, corner)} from {Printed.Count(end + 1)}{(isEdge ? string.Empty : " (diagonal)")}";
            }
        }
    }
}
