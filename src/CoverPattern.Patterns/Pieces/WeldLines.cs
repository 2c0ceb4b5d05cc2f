using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Draws where the other panel's edge is laid along a weld, and where the weld begins and ends.</summary>
/// <remarks>
/// The other panel's cut edge lies inside the own sew line by the other's allowance: on the sew line itself where the
/// reference is one-sided. The weld runs on 30 mm beyond both ends of the joint, or to where the cloth ends (common practice, no source).
/// </remarks>
internal static class WeldLines
{
    /// <summary>The words of the line and of the strokes at its ends.</summary>
    internal const string Line = "weld line";
    internal const string End = "weld end";

    private const double Beyond = 30;

    // Where the cloth ends the line stops a pen's width short of it, millimetres.
    private const double ShortOfEdge = 1;

    private const double HalfStroke = 6;

    // A line through a corner of the cut line may miss both edges there by a rounding; two grid steps, millimetres.
    private const double OnGrid = 0.002;

    /// <summary>The lines of one run; none on edges that are not welded, nor on the over side of a one-sided weld.</summary>
    /// <param name="edge">The run's sew edge.</param>
    /// <param name="side">Which side of the seam it is.</param>
    /// <param name="makeUp">How the seam is made; null where there is none.</param>
    /// <param name="cutLine">Ring of the piece's cut line.</param>
    internal static IEnumerable<MarkLine> Draw(SewEdge edge, EdgeSide side, MakeUp? makeUp, ImmutableArray<Point2> cutLine)
    {
        if (makeUp is not { IsWelded: true } || (side == EdgeSide.Over && Math.Min(makeUp.OverMm, makeUp.UnderMm) <= 0))
        {
            yield break;
        }

        var inside = side == EdgeSide.Over ? makeUp.UnderMm : makeUp.OverMm;
        var middle = Point2.Between(edge.From, edge.To, 0.5) - (inside * edge.Outward);
        if (ExactPredicates.Locate(Rings.ToSteps(cutLine), Grid.ToSteps(Grid.Snap(middle))) <= 0)
        {
            yield break;
        }

        var reach = (Point2.Distance(edge.From, edge.To) / 2) + Beyond;
        var (back, on) = (Reach(cutLine, middle, -1 * edge.Along, reach), Reach(cutLine, middle, edge.Along, reach));
        yield return new MarkLine(Grid.Snap([middle - (back * edge.Along), middle + (on * edge.Along)]), Line);
        if (back == reach)
        {
            yield return Stroke(cutLine, middle - (back * edge.Along), edge.Outward);
        }

        if (on == reach)
        {
            yield return Stroke(cutLine, middle + (on * edge.Along), edge.Outward);
        }
    }

    private static MarkLine Stroke(ImmutableArray<Point2> cutLine, Point2 at, Point2 across)
    {
        var (back, on) = (Reach(cutLine, at, -1 * across, HalfStroke), Reach(cutLine, at, across, HalfStroke));
        return new MarkLine(Grid.Snap([at - (back * across), at + (on * across)]), End);
    }

    /// <summary>How far a line may be drawn from a point inside the cloth, millimetres.</summary>
    private static double Reach(ImmutableArray<Point2> cutLine, Point2 from, Point2 along, double wished)
    {
        var reach = wished;
        for (var i = 0; i < cutLine.Length; i++)
        {
            var (start, step) = (cutLine[i], cutLine[(i + 1) % cutLine.Length] - cutLine[i]);
            var slope = Point2.Cross(along, step);
            if (slope == 0)
            {
                continue;
            }

            var (on, share) = (Point2.Cross(start - from, step) / slope, Point2.Cross(start - from, along) / slope);
            var corner = OnGrid / step.Length;
            if (on >= 0 && share >= -corner && share <= 1 + corner && on < reach + ShortOfEdge)
            {
                reach = Math.Max(0, on - ShortOfEdge);
            }
        }

        return reach;
    }
}
