using System;
using System.Collections.Generic;
using System.Linq;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>What is wrong with the marks drawn for stops, inside corners, ties and patches.</summary>
internal static class DrawnFaults
{
    // Promises of the patterns' page: felled seams stop 30 mm short of hubs, what is left of them is 60 mm and a hem's depth at
    // least, inside corners of more than 5 degrees are clipped to 2 mm short of the sew line.
    private const double Stop = 30;
    private const double ShortestFelled = 60;
    private const double LeastBend = 5;
    private const double ClipShort = 2;

    private static readonly double FlatCosine = Math.Cos(Math.PI / 9);

    /// <summary>How near marks of two partners come, millimetres.</summary>
    private const double Meeting = 0.01;

    /// <summary>Everything drawn lies on the piece; inside corners are marked.</summary>
    internal static IEnumerable<string> OfPattern(SewnPattern pattern)
    {
        var points = pattern.Lines.SelectMany(line => line.Path.Select(point => (point, line.Purpose))).Concat(pattern.Drills);
        return points.Where(mark => !IsInside(pattern.CutLine, mark.Item1) && DistanceTo(pattern.CutLine, mark.Item1) > Tolerances.SamePlace)
            .Select(mark => FormattableString.Invariant($"a {mark.Item2} is drawn {DistanceTo(pattern.CutLine, mark.Item1):0.###} mm outside the cut line."))
            .Concat(Enumerable.Range(0, pattern.Runs.Count).SelectMany(run => CornerFaults(pattern, run)))
            .Select(fault => $"Pattern {pattern.Id}: {fault}");
    }

    /// <summary>Stops and ties are where hubs are.</summary>
    internal static IEnumerable<string> OfPlaced(PlacedPiece placed, SewingOrder order) => Enumerable.Range(0, placed.Pattern.Runs.Count)
        .SelectMany(run => StopFaults(placed, run, order).Concat(TieFaults(placed, run, order)))
        .Select(fault => $"Piece {placed.Piece.Label}: {fault}");

    /// <summary>Ties and stops of two partners meet.</summary>
    internal static IEnumerable<string> OfSeam(PlacedPiece here, int run, PlacedPiece there)
    {
        var other = here.Piece.Runs[run].PartnerRun;
        var mine = MarksOf(here, run).ToArray();
        var theirs = MarksOf(there, other).Concat(StopsLeftOut(there, other)).ToArray();
        return mine.Where(mark => !theirs.Any(partner => partner.Purpose == mark.Purpose && partner.At.DistanceTo(mark.At) <= Meeting))
            .Select(mark => $"Seam {here.Piece.Runs[run].Arc}: the {mark.Purpose} of {here.Piece.Label} has none to meet on {there.Piece.Label}.");
    }

    private static IEnumerable<(SpacePoint At, string Purpose)> MarksOf(PlacedPiece placed, int run) => placed.Pattern.Drills
        .Where(drill => drill.Purpose == "tie" && IsOn(placed.Pattern, run, drill.At))
        .Concat(placed.Pattern.Lines.Where(line => line.Purpose == "stop" && IsOn(placed.Pattern, run, line.Path[0])).Select(line => (line.Path[0], line.Purpose)))
        .Select(mark => (placed.Lift(run, mark.Item1), mark.Item2));

    /// <summary>Where a stop of the partner has none to meet: at an inside corner of this piece alone, in which cloth ends before it.</summary>
    private static IEnumerable<(SpacePoint At, string Purpose)> StopsLeftOut(PlacedPiece placed, int run)
    {
        var (from, to) = PatternEdges.Ends(placed.Pattern, placed.Pattern.Runs[run]);
        var along = (Stop / from.DistanceTo(to)) * (to - from);
        (FlatPoint At, int Corner)[] ends = [(from + along, (run + placed.Pattern.Runs.Count - 1) % placed.Pattern.Runs.Count), (to - along, run)];
        return ends.Where(end => !IsCutAsFarAsTheStop(placed.Pattern, end.Corner)).Select(end => (placed.Lift(run, end.At), "stop"));
    }

    private static IEnumerable<string> StopFaults(PlacedPiece placed, int i, SewingOrder order)
    {
        var (pattern, run) = (placed.Pattern, placed.Pattern.Runs[i]);
        if (run.Role != "seam")
        {
            yield break;
        }

        var ends = order.Stops(run.MakeUp) ? placed.HubEndsOf(i) : (AtStart: false, AtEnd: false);
        var stops = (ends.AtStart ? Stop : 0) + (ends.AtEnd ? Stop : 0);
        var isPlain = stops > 0 && run.LengthMm - stops < Math.Max(ShortestFelled, order.HemDepth);
        var allowance = isPlain ? order.WidthOf(run.MakeUp) : order.AllowanceOf(run.MakeUp, run.Side);
        if (isPlain != run.MakeUp.EndsWith(SewingOrder.SewnPlain, StringComparison.Ordinal))
        {
            yield return FormattableString.Invariant($"run {i} of {run.LengthMm} mm is made \"{run.MakeUp}\" though {(isPlain ? "too little" : "enough")} of it is left between its stops.");
        }

        if (!(Math.Abs(run.AllowanceMm - allowance) <= Tolerances.SamePlace))
        {
            yield return FormattableString.Invariant($"run {i} ({run.Side}) of {run.LengthMm} mm has an allowance of {run.AllowanceMm} mm, not {allowance}.");
        }

        var (from, to) = PatternEdges.Ends(pattern, run);
        ends = isPlain ? (false, false) : (ends.AtStart && IsCutAsFarAsTheStop(pattern, (i + pattern.Runs.Count - 1) % pattern.Runs.Count), ends.AtEnd && IsCutAsFarAsTheStop(pattern, i));
        double[] wanted = [.. ends.AtStart ? [Stop] : Array.Empty<double>(), .. ends.AtEnd ? [run.LengthMm - Stop] : Array.Empty<double>()];
        var drawn = pattern.Lines.Where(line => line.Purpose == "stop" && IsOn(pattern, i, line.Path[0])).Select(line => from.DistanceTo(line.Path[0])).ToArray();
        if (drawn.Length != wanted.Length || !wanted.All(at => drawn.Any(stroke => Math.Abs(stroke - at) <= Tolerances.SamePlace)))
        {
            yield return FormattableString.Invariant($"run {i} should stop at {string.Join(" and ", wanted)} mm, but is marked at {string.Join(" and ", drawn)}.");
        }

        // Trimmed corners may reach as far as the stop where allowances are wide.
        if (wanted.Length > 0 && !(order.IsTrimmed && order.WidthOf(run.MakeUp) > Stop))
        {
            var along = (1 / from.DistanceTo(to)) * (to - from);
            var outward = new FlatPoint(along.Y, -along.X);
            foreach (var (at, sign) in wanted.Select(at => (at, at < run.LengthMm / 2 ? 1 : -1)))
            {
                var near = DistanceTo(pattern.CutLine, from + ((at - sign) * along) + (order.WidthOf(run.MakeUp) * outward));
                var far = DistanceTo(pattern.CutLine, from + ((at + sign) * along) + (run.AllowanceMm * outward));
                if (near > 2 * Tolerances.SamePlace || far > 2 * Tolerances.SamePlace)
                {
                    yield return FormattableString.Invariant($"run {i}: at its stop the cut line does not step from {order.WidthOf(run.MakeUp)} to {run.AllowanceMm} mm.");
                }
            }
        }
    }

    /// <summary>
    /// Whether cloth is cut as near to the corner behind a run as a seam stops: at an inside corner, at the end of a slit above all,
    /// the cut ends where the whole allowances of both edges meet, and there is nothing to stop beyond.
    /// </summary>
    private static bool IsCutAsFarAsTheStop(SewnPattern pattern, int i)
    {
        var (run, next) = (pattern.Runs[i], pattern.Runs[(i + 1) % pattern.Runs.Count]);
        var ((from, corner), (_, to)) = (PatternEdges.Ends(pattern, run), PatternEdges.Ends(pattern, next));
        var (back, on) = ((1 / corner.DistanceTo(from)) * (from - corner), (1 / corner.DistanceTo(to)) * (to - corner));
        if (on.Cross(back) >= 0)
        {
            // The piece is on the left of its edges: less than half a turn is inside.
            return true;
        }

        // Unequal allowances step at a corner flatter than 20 degrees: docs/pieces.md. Their lines would meet far away, or nowhere.
        if (on.Dot(back) < -FlatCosine && Math.Abs(run.AllowanceMm - next.AllowanceMm) > Tolerances.SamePlace)
        {
            return true;
        }

        // The gap between the edges has the angle whose sine is -cross: lines at distances a and b from them meet at (b + a cos) / sin along the first.
        var (sin, cos) = (-on.Cross(back), on.Dot(back));
        return Math.Max(next.AllowanceMm + (run.AllowanceMm * cos), run.AllowanceMm + (next.AllowanceMm * cos)) / sin <= Stop;
    }

    private static IEnumerable<string> TieFaults(PlacedPiece placed, int i, SewingOrder order)
    {
        var (pattern, run) = (placed.Pattern, placed.Pattern.Runs[i]);
        var (from, to) = PatternEdges.Ends(pattern, run);
        foreach (var tie in pattern.Drills.Where(drill => drill.Purpose == "tie" && IsOn(pattern, i, drill.At)))
        {
            var (start, end) = placed.HubEndsOf(i);
            var isRight = run.Role == "seam" && ((start && IsAt(from, tie.At, order.TieDistance)) || (end && IsAt(to, tie.At, order.TieDistance)));
            if (!isRight && order.TieDistance > 0)
            {
                yield return FormattableString.Invariant($"a tie {from.DistanceTo(tie.At):0.###} mm along run {i} ({run.Role}) is not {order.TieDistance} mm from a hub.");
            }
        }
    }

    private static bool IsAt(FlatPoint hub, FlatPoint tie, double? distance) => Math.Abs(hub.DistanceTo(tie) - (distance ?? double.NaN)) <= Tolerances.SamePlace;

    private static IEnumerable<string> CornerFaults(SewnPattern pattern, int run)
    {
        var before = pattern.Runs[(run + pattern.Runs.Count - 1) % pattern.Runs.Count];
        var (arriving, corner) = (pattern.SewLine[(pattern.Runs[run].From + pattern.SewLine.Count - 1) % pattern.SewLine.Count], pattern.SewLine[pattern.Runs[run].From]);
        var leaving = pattern.SewLine[(pattern.Runs[run].From + 1) % pattern.SewLine.Count];
        var (step, next) = (corner - arriving, leaving - corner);
        var bend = -Math.Atan2(step.Cross(next), step.Dot(next)) * 180 / Math.PI;
        var pivots = pattern.Drills.Count(drill => drill.Purpose == "pivot" && drill.At.DistanceTo(corner) <= Tolerances.SamePlace);
        var isInside = bend > LeastBend && (before.Role == "seam" || pattern.Runs[run].Role == "seam");
        if (pivots != (isInside ? 1 : 0))
        {
            yield return FormattableString.Invariant($"the corner before run {run} bends inward by {bend:0.#} degrees and has {pivots} pivot marks.");
        }

        foreach (var clip in pattern.Lines.Where(line => line.Purpose == "clip" && pattern.SewLine.MinBy(line.Path[^1].DistanceTo) == corner))
        {
            if (!isInside || Math.Abs(clip.Path[^1].DistanceTo(corner) - ClipShort) > Tolerances.SamePlace || clip.Path.Any(point => IsInside(pattern.SewLine, point)))
            {
                yield return FormattableString.Invariant($"the clip line before run {run} ends {clip.Path[^1].DistanceTo(corner):0.###} mm from the corner, or runs through the sew line.");
            }

            if (DistanceTo(pattern.CutLine, clip.Path[0]) > Tolerances.SamePlace)
            {
                yield return $"the clip line before run {run} does not begin at the cut line.";
            }
        }
    }

    /// <summary>Whether a point lies on a run between its ends; at an end it is the corner, of both runs there.</summary>
    private static bool IsOn(SewnPattern pattern, int run, FlatPoint point)
    {
        var (from, to) = PatternEdges.Ends(pattern, pattern.Runs[run]);
        return Math.Abs((to - from).Cross(point - from)) <= Tolerances.SamePlace * from.DistanceTo(to)
            && (point - from).Dot(to - from) > Tolerances.SamePlace * from.DistanceTo(to)
            && (point - to).Dot(from - to) > Tolerances.SamePlace * from.DistanceTo(to);
    }

    internal static bool IsInside(IReadOnlyList<FlatPoint> ring, FlatPoint point)
    {
        var inside = false;
        for (var i = 0; i < ring.Count; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Count]);
            if ((a.Y > point.Y) != (b.Y > point.Y) && point.X < a.X + ((point.Y - a.Y) / (b.Y - a.Y) * (b.X - a.X)))
            {
                inside = !inside;
            }
        }

        return inside;
    }

    internal static double DistanceTo(IReadOnlyList<FlatPoint> ring, FlatPoint point) => PatternFaults.DistanceTo(ring, point);
}
