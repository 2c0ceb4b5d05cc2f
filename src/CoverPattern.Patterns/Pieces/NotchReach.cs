using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Keeps strokes across an allowance inside the cloth where corners or stops take some of it away.</summary>
internal static class NotchReach
{
    // A cut line that lies nearer than the allowance by less than this is the allowance's own line, rounded to the grid; millimetres.
    private const double Rounding = 0.01;

    /// <summary>The notch as the cloth has room for it: unchanged where its allowance is whole.</summary>
    /// <param name="notch">As drawn for the whole allowance.</param>
    /// <param name="edge">Its edge.</param>
    /// <param name="cutLine">Ring round the piece.</param>
    internal static Notch Shorten(Notch notch, SewEdge edge, ImmutableArray<Point2> cutLine)
    {
        var reach = Of(edge, notch.AtMm, cutLine);
        if (reach >= edge.Allowance)
        {
            return notch;
        }

        var outer = edge.From + (notch.AtMm * edge.Along) + (reach * edge.Outward);
        var depth = Math.Min(Point2.Distance(notch.Outer, notch.Inner), notch.Form == NotchForm.Slit ? reach * NotchMaker.LargestShare : reach);
        return notch with { Outer = Grid.Snap(outer), Inner = Grid.Snap(outer - (depth * edge.Outward)) };
    }

    /// <summary>Distance from a point of an edge straight outward to the cut line, millimetres; the edge's allowance at most.</summary>
    /// <param name="edge">The edge.</param>
    /// <param name="at">Distance from its first corner, millimetres.</param>
    /// <param name="cutLine">Ring round the piece.</param>
    internal static double Of(SewEdge edge, double at, ImmutableArray<Point2> cutLine)
    {
        var reach = To(edge.From + (at * edge.Along), edge.Outward, cutLine);
        return reach > edge.Allowance - Rounding ? edge.Allowance : reach;
    }

    /// <summary>Distance from a point inside a ring to the ring, in a direction of length 1; infinite when there is nothing that way.</summary>
    internal static double To(Point2 from, Point2 direction, ImmutableArray<Point2> ring) => ring
        .Select((corner, i) => Hit(from, direction, corner, ring[(i + 1) % ring.Length]))
        .Min();

    private static double Hit(Point2 from, Point2 direction, Point2 start, Point2 end)
    {
        var (left, right) = (Point2.Cross(direction, start - from), Point2.Cross(direction, end - from));
        if ((left < 0) == (right < 0))
        {
            return double.PositiveInfinity;
        }

        var distance = Point2.Dot(direction, Point2.Between(start, end, left / (left - right)) - from);
        return distance >= -Rounding ? Math.Max(0, distance) : double.PositiveInfinity;
    }
}
