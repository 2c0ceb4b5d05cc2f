using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Edges of felled seams that stop short of hubs: there the allowance is that of a plain seam.</summary>
internal static class StoppedEdge
{
    /// <summary>Purpose of the stroke that shows where a felled seam stops.</summary>
    internal const string Purpose = "stop";

    /// <summary>Parts an edge where its seam stops; the cut line steps in there.</summary>
    /// <param name="run">Tells the stops.</param>
    /// <param name="edge">Its edge.</param>
    internal static IEnumerable<SewEdge> Parts(DraftRun run, SewEdge edge)
    {
        var (from, to) = (edge.From, edge.To);
        if (run.Stops.AtStart > 0)
        {
            from += run.Stops.AtStart * edge.Along;
            yield return edge with { To = from, Allowance = run.PlainAllowance };
        }

        if (run.Stops.AtEnd > 0)
        {
            to -= run.Stops.AtEnd * edge.Along;
        }

        yield return edge with { From = from, To = to };
        if (run.Stops.AtEnd > 0)
        {
            yield return edge with { From = to, Allowance = run.PlainAllowance };
        }
    }

    /// <summary>Strokes across the allowance where the seam stops, from the sew line outward.</summary>
    /// <param name="run">Tells the stops.</param>
    /// <param name="edge">Its edge.</param>
    internal static IEnumerable<MarkLine> Strokes(DraftRun run, SewEdge edge)
    {
        ImmutableArray<Point2> places =
        [
            .. run.Stops.AtStart > 0 ? [edge.From + (run.Stops.AtStart * edge.Along)] : ImmutableArray<Point2>.Empty,
            .. run.Stops.AtEnd > 0 ? [edge.To - (run.Stops.AtEnd * edge.Along)] : ImmutableArray<Point2>.Empty,
        ];
        return places.Select(at => new MarkLine([Grid.Snap(at), Grid.Snap(at + (run.PlainAllowance * edge.Outward))], Purpose));
    }
}
