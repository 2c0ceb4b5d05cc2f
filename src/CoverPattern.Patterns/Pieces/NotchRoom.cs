using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Marks near the end of a slit, where the two sides' allowances would lie on each other and the cloth between stays uncut.</summary>
/// <remarks>
/// The cut along a slit goes in only as far as both sides keep their whole allowance; from there to the hub the cloth is folded and
/// stitched like a dart. A slit notch there would cut into the other side: the mark becomes a stroke of the pen, at most to the middle between both sew lines.
/// </remarks>
internal static class NotchRoom
{
    // A mark this far inside the cut line, millimetres, is not on it: the cut line was drawn elsewhere.
    private const double OffCutLine = 0.1;

    private const double TickLength = 8;

    /// <summary>The notch as it is where it has room, else a tick.</summary>
    /// <param name="notch">As the seam's marks have it.</param>
    /// <param name="edges">Edges of the sew line.</param>
    /// <param name="at">Index of the edge on which the notch is.</param>
    /// <param name="cutLine">Ring of the cut line.</param>
    internal static Notch Fit(Notch notch, ImmutableArray<SewEdge> edges, int at, ImmutableArray<Point2> cutLine)
    {
        var inside = ExactPredicates.Locate(Rings.ToSteps(cutLine), Grid.ToSteps(notch.Outer)) > 0
            && Enumerable.Range(0, cutLine.Length).All(i => Segments.Distance(cutLine[i], cutLine[(i + 1) % cutLine.Length], notch.Outer) > OffCutLine);
        if (!inside)
        {
            return notch;
        }

        var edge = edges[at];
        var room = edges.Where((_, i) => i != at).Select(other => Reach(notch.OnSewLine, edge.Outward, other)).Min();
        var outer = notch.OnSewLine + (Math.Min(edge.Allowance, room / 2) * edge.Outward);
        return notch with { Form = NotchForm.Tick, Outer = Grid.Snap(outer), Inner = Grid.Snap(outer - (TickLength * edge.Outward)) };
    }

    /// <summary>How far it is from a point straight to an edge; without limit where the way misses it.</summary>
    private static double Reach(Point2 from, Point2 direction, SewEdge edge)
    {
        var (before, after) = (Point2.Cross(direction, edge.From - from), Point2.Cross(direction, edge.To - from));
        if (before * after > 0 || before == after)
        {
            return double.PositiveInfinity;
        }

        var reach = Point2.Dot(direction, Point2.Between(edge.From, edge.To, before / (before - after)) - from);
        return reach > 0 ? reach : double.PositiveInfinity;
    }
}
