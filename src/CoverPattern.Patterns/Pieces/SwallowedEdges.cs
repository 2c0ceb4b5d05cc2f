using System;
using System.Collections.Generic;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Leaves out edges of a curve that have no length left on the line beside it: the edges next to them meet there.</summary>
/// <remarks>
/// Where a curve of short steps bends the other way, as a projected rim does where it crosses a line of the cover, the corner of the line
/// beside it lies farther back than a step or more: those would be drawn backward, and need not even cross what lies about them.
/// The step that is drawn backward the most goes first, until none is.
/// </remarks>
internal static class SwallowedEdges
{
    // What is left of an edge vanishes on the grid below this, millimetres.
    private const double LeastStep = 0.01;

    // A corner this near to the line past it is none, and no curve is drawn so finely; millimetres.
    private const double LeastBend = 1e-6;

    // Flatter bends are drawn as one line, as corners of the cut line are.
    private static readonly double Straight = Math.Sin(CutLine.StraightDegrees * Math.PI / 180);

    /// <summary>A run of edges of one allowance, without those; the first and the last stay.</summary>
    internal static List<SewEdge> LeftOut(IEnumerable<SewEdge> run)
    {
        var edges = run.ToList();
        while (edges.Count > 2)
        {
            var (least, at) = Enumerable.Range(1, edges.Count - 2).Select(i => (Length: LengthLeft(edges[i - 1], edges[i], edges[i + 1]), i)).Min();
            if (least > LeastStep)
            {
                break;
            }

            var meeting = Meet(edges[at - 1], edges[at + 1], 0);
            edges[at - 1] = edges[at - 1] with { To = meeting };
            edges[at + 1] = edges[at + 1] with { From = meeting };
            edges.RemoveAt(at);
        }

        return edges;
    }

    /// <summary>The same round a ring, steps that only go straight on joined first: rims and what is turned under, each run of one allowance by itself.</summary>
    internal static IEnumerable<SewEdge> LeftOutOfRing(IReadOnlyList<SewEdge> edges)
    {
        var ring = WithoutShortSteps(edges);
        for (var (from, to) = (0, 0); from < ring.Count; from = to)
        {
            while (to < ring.Count && (ring[to].Role, ring[to].Allowance) == (ring[from].Role, ring[from].Allowance))
            {
                to++;
            }

            var run = ring.Skip(from).Take(to - from);
            foreach (var edge in IsOfOpening(ring[from]) ? LeftOut(run) : run)
            {
                yield return edge;
            }
        }
    }

    /// <summary>Joins a step shorter than its allowance to the edge it goes straight on from: a rim has a corner where it crosses a line of the cover, however near to another.</summary>
    private static List<SewEdge> WithoutShortSteps(IReadOnlyList<SewEdge> edges)
    {
        var ring = new List<SewEdge>();
        foreach (var edge in edges)
        {
            if (ring.Count > 0 && IsOneEdge(ring[^1], edge))
            {
                ring[^1] = ring[^1] with { To = edge.To };
            }
            else
            {
                ring.Add(edge);
            }
        }

        if (ring.Count > 3 && IsOneEdge(ring[^1], ring[0]))
        {
            ring[0] = ring[0] with { From = ring[^1].From };
            ring.RemoveAt(ring.Count - 1);
        }

        return ring;
    }

    private static bool IsOneEdge(SewEdge before, SewEdge after) => IsOfOpening(after)
        && before with { From = after.From, To = after.To } == after
        && Math.Min(LengthOf(before), LengthOf(after)) < Math.Abs(after.Allowance)
        && Segments.Distance(before.From, after.To, after.From) < LeastBend;

    private static double LengthOf(SewEdge edge) => Point2.Distance(edge.From, edge.To);

    private static bool IsOfOpening(SewEdge edge) => edge.Role is EdgeRole.Rim or EdgeRole.Turned or EdgeRole.Hemmed;

    /// <summary>Where two edges meet, both moved out.</summary>
    internal static Point2 Meet(SewEdge before, SewEdge after, double outward)
    {
        var (end, start) = (before.To + (outward * before.Outward), after.From + (outward * after.Outward));
        return Math.Abs(Point2.Cross(before.Along, after.Along)) < Straight
            ? Point2.Between(end, start, 0.5)
            : Lines.Meet(end, before.Along, start, after.Along);
    }

    /// <summary>How far an edge runs beside the curve, along itself; negative when it would be drawn backward. Between edges square to each other it is no step of a curve.</summary>
    private static double LengthLeft(SewEdge before, SewEdge edge, SewEdge after) => Point2.Dot(before.Along, after.Along) <= 0
        ? double.PositiveInfinity
        : Point2.Dot(Meet(edge, after, edge.Allowance) - Meet(before, edge, edge.Allowance), edge.Along);
}
