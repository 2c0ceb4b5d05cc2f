using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Draws the cut line: every edge of the sew line moved out by its allowance, corners by rule.</summary>
/// <remarks>
/// Corners between seams are mitred; a mitre longer than 2.5 times the wider allowance is cut square across at that length
/// (common practice, no source). Where a hem ends, the turned-up cloth is the mirror of the cloth it will lie on, and the
/// turn-under mirrors once more; so it is where the rim of an opening ends at a seam, and a hem ends at a rim. A hem for fitting runs on straight instead; one broken at hubs ends square, short of its ends.
/// </remarks>
internal static class CutLine
{
    /// <summary>Longest mitre, in widths of the wider allowance.</summary>
    internal const double MitreLimit = 2.5;

    // Unequal allowances at an inside corner flatter than this meet in a step: their lines would cross far away.
    internal const double StepTurnDegrees = 20;

    // Below this turn two edges count as one straight edge.
    internal const double StraightDegrees = 0.5;

    // Turned-up cloth shorter than this between two gaps holds nothing, millimetres.
    internal const double LeastTab = 20;

    // A corner that lies less than this inside the line without it is none: three steps of the grid of more cloth, millimetres.
    private const double LeastInside = 0.003;

    // Outside it cloth would be lost: there only what rounding to the grid has made goes, a step and a half of 2^-10 mm.
    private const double LeastOutside = 0.0015;

    /// <summary>The ring of the cut line, on the grid, counter-clockwise.</summary>
    /// <param name="edges">Edges of the sew line in order, each with its allowance.</param>
    /// <param name="hem">How the hem folds.</param>
    internal static ImmutableArray<Point2> Draw(ImmutableArray<SewEdge> edges, HemFold hem)
    {
        if (hem.IsForFitting)
        {
            return WithoutStraightCorners(Grid.Snap(edges.SelectMany((edge, i) => Join(edge, edges[(i + 1) % edges.Length]))));
        }

        var rim = edges.Where(edge => edge.Role == EdgeRole.Rim).Select(edge => Math.Abs(edge.Allowance)).DefaultIfEmpty(0).Max();
        edges = [.. SwallowedEdges.LeftOutOfRing(edges)];
        var line = Folded(hem.Gap > 0 ? [.. edges.Select(edge => edge.Role == EdgeRole.Hem ? edge with { Allowance = 0 } : edge)] : edges, edges, hem);
        return WithoutStraightCorners(Grid.Snap(rim > 0 ? CutLoops.Remove(line, rim) : line));
    }

    /// <param name="edges">Edges of the sew line; those of a hem that is broken at its ends have no allowance.</param>
    /// <param name="whole">The same with all allowances.</param>
    /// <param name="hem">How the hem folds.</param>
    private static List<Point2> Folded(ImmutableArray<SewEdge> edges, ImmutableArray<SewEdge> whole, HemFold hem)
    {
        var corners = CornersOf(edges);
        var ring = new List<Point2>();
        for (var i = 0; i < edges.Length; i++)
        {
            var (before, after) = (edges[i], edges[(i + 1) % edges.Length]);
            if (hem.Gap > 0)
            {
                ring.AddRange(Tab(whole[i], hem.Gap));
            }

            if (EndsHem(before, after) && FoldOf(before, hem) is { } end)
            {
                ring.AddRange(HemEnd.Draw(before, Onward(corners, i, 1), end));
            }

            ring.AddRange(corners[i]);
            if (EndsHem(after, before) && FoldOf(after, hem) is { } start)
            {
                ring.AddRange(HemEnd.Draw(after, Onward(corners, i, -1), start).Reverse());
            }
        }

        return ring;
    }

    private static ImmutableArray<Point2[]> CornersOf(ImmutableArray<SewEdge> edges) =>
        [.. edges.Select((edge, i) => Corner(edge, edges[(i + 1) % edges.Length]))];

    /// <summary>How an edge that ends at one of lower rank folds; null for a hem that is broken there.</summary>
    private static HemFold? FoldOf(SewEdge edge, HemFold hem) => edge.Role == EdgeRole.Rim ? new HemFold(edge.Allowance, 0) : hem.Gap > 0 ? null : hem;

    /// <summary>What is turned last folds the cloth of what was sewn before: a hem over rims and seams, a rim over seams.</summary>
    private static int RankOf(SewEdge edge) => edge.Role == EdgeRole.Hem ? 2 : edge is { Role: EdgeRole.Rim, Allowance: > 0, IsFlat: false } ? 1 : 0;

    /// <summary>The turned-up cloth between the gaps; none where the edge is hardly longer than both.</summary>
    private static IEnumerable<Point2> Tab(SewEdge edge, double gap)
    {
        var length = Point2.Distance(edge.From, edge.To);
        if (edge.Role != EdgeRole.Hem || length < (2 * gap) + LeastTab)
        {
            return [];
        }

        var (start, end) = (edge.From + (gap * edge.Along), edge.To - (gap * edge.Along));
        return [start, start + (edge.Allowance * edge.Outward), end + (edge.Allowance * edge.Outward), end];
    }

    private static bool EndsHem(SewEdge hem, SewEdge neighbour) =>
        RankOf(hem) > RankOf(neighbour) && HemEnd.Leads(hem, neighbour);

    /// <summary>The corners' points from one corner on, forward or back, once round.</summary>
    private static IEnumerable<Point2> Onward(ImmutableArray<Point2[]> corners, int start, int step) => Enumerable.Range(0, corners.Length)
        .SelectMany(i => step > 0
            ? corners[(start + i) % corners.Length]
            : corners[(start + corners.Length - i) % corners.Length].Reverse());

    private static Point2[] Corner(SewEdge before, SewEdge after) =>
        EndsHem(before, after) ? [HemEnd.OnFinishedEdge(before, before.To, after)]
        : EndsHem(after, before) ? [HemEnd.OnFinishedEdge(after, after.From, before)]
        : Join(before, after);

    private static Point2[] Join(SewEdge before, SewEdge after)
    {
        var corner = before.To;
        var (end, start) = (corner + (before.Allowance * before.Outward), corner + (after.Allowance * after.Outward));
        var turn = Math.Atan2(Point2.Cross(before.Along, after.Along), Point2.Dot(before.Along, after.Along)) * 180 / Math.PI;
        if (Math.Abs(turn) < StraightDegrees && before.Allowance == after.Allowance)
        {
            return [Point2.Between(end, start, 0.5)];
        }

        // Where cloth ends short of a line, as beside a zip, its edges meet wherever they cross: there is no corner to trim.
        if (Math.Min(before.Allowance, after.Allowance) < 0 && (before.Allowance == after.Allowance || Math.Abs(turn) > StepTurnDegrees))
        {
            return [Lines.Meet(end, before.Along, start, after.Along)];
        }

        var style = StyleOf(before, after);
        if (style == CornerStyle.Trimmed && CornerCut.IsTrimmed(turn))
        {
            return CornerCut.Trim(before, after, turn * Math.PI / 180);
        }

        if (IsStep(before.Allowance, after.Allowance, turn))
        {
            return [end, start];
        }

        var tip = Lines.Meet(end, before.Along, start, after.Along);
        var limit = (style == CornerStyle.Squared && CornerCut.IsSquared(turn) ? 1 : MitreLimit) * Math.Max(before.Allowance, after.Allowance);
        // Between two edges without allowance there is nothing to cut off, and no direction in which.
        if (turn < 0 || Point2.Distance(corner, tip) <= Math.Max(limit, LeastOutside))
        {
            return [tip];
        }

        return CornerCut.Across(before, after, (tip - corner).Unit(), limit);
    }

    /// <summary>
    /// Corners are squared or trimmed between seams, for what is pressed open at hubs: an edge turned under meets them away from
    /// hubs, a hem that is cut longer for fitting keeps its whole length from end to end, and what lies behind a rim has its lap round
    /// corners too: trimmed, a screen would be open there.
    /// </summary>
    private static CornerStyle StyleOf(SewEdge before, SewEdge after) =>
        before.Role is EdgeRole.Hem or EdgeRole.Turned or EdgeRole.Rim || after.Role is EdgeRole.Hem or EdgeRole.Turned or EdgeRole.Rim ? CornerStyle.Mitred : before.Corner;

    /// <summary>
    /// Whether unequal allowances end square to their edges: at a flat corner the mitre would take from the wider one, or run
    /// far along the narrower.
    /// </summary>
    private static bool IsStep(double before, double after, double turnDegrees) => turnDegrees > StraightDegrees
        ? Math.Min(before, after) < Math.Max(before, after) * Math.Cos(turnDegrees * Math.PI / 180)
        : before != after && turnDegrees > -StepTurnDegrees;

    /// <summary>Drops corners on a straight line; of several in a row each is held to the line that is left, so that none drifts away.</summary>
    private static ImmutableArray<Point2> WithoutStraightCorners(ImmutableArray<Point2> ring)
    {
        var (kept, dropped) = (new List<Point2>(), new List<Point2>());
        for (var i = 0; i < ring.Length; i++)
        {
            var before = kept.Count > 0 ? kept[^1] : ring[^1];
            var after = ring[(i + 1) % ring.Length];
            if (ring[i] == before)
            {
                continue;
            }

            if (before == after || dropped.Append(ring[i]).Any(corner => IsCorner(before, corner, after)) || !IsBetween(before, ring[i], after))
            {
                kept.Add(ring[i]);
                dropped.Clear();
            }
            else
            {
                dropped.Add(ring[i]);
            }
        }

        return [.. kept];
    }

    /// <summary>Whether a point stands off a line of the ring by too much to be left out; the cloth is on the line's left.</summary>
    private static bool IsCorner(Point2 before, Point2 corner, Point2 after) =>
        Lines.Distance(before, after, corner) > (Point2.Cross(after - before, corner - before) < 0 ? LeastOutside : LeastInside);

    private static bool IsBetween(Point2 before, Point2 middle, Point2 after) => Point2.Dot(middle - before, after - middle) > 0;
}

/// <summary>An edge of the sew line.</summary>
/// <param name="From">First corner.</param>
/// <param name="To">Last corner.</param>
/// <param name="Role">What it is for.</param>
/// <param name="Allowance">Cloth beyond it, millimetres.</param>
internal sealed record SewEdge(Point2 From, Point2 To, EdgeRole Role, double Allowance)
{
    /// <summary>How the cut line goes round the corner at which it ends.</summary>
    internal CornerStyle Corner { get; init; }

    /// <summary>Whether the cloth beyond it stays flat, though it is a rim.</summary>
    internal bool IsFlat { get; init; }

    internal Point2 Along => (To - From).Unit();

    /// <summary>Away from the piece, square to the edge, length 1.</summary>
    internal Point2 Outward => -1 * Along.QuarterTurned();
}
