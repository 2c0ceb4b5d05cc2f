using System;
using System.Collections.Generic;
using System.Linq;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>What is wrong with one pattern as it lies flat on the table.</summary>
internal static class PatternFaults
{
    // Own rule of the job file's page: a slit takes a quarter of the allowance and 4 mm at most.
    private const double LongestSlit = 4;

    /// <summary>Outline, facets and folds do not make up one shape: it cannot even be folded.</summary>
    internal static IEnumerable<string> OfForm(SewnPattern pattern) =>
        OutlineFaults(pattern).Concat(FacetFaults(pattern)).Select(fault => $"Pattern {pattern.Id}: {fault}");

    /// <summary>Lengths, allowances, marks or grain are not what they say or should be.</summary>
    internal static IEnumerable<string> OfMarks(SewnPattern pattern, SewingOrder order) =>
        pattern.Runs.SelectMany((run, i) => RunFaults(pattern, run, i, order))
            .Concat(pattern.Notches.SelectMany(notch => NotchFaults(pattern, notch, order)))
            .Concat(GrainFaults(pattern))
            .Select(fault => $"Pattern {pattern.Id}: {fault}");

    private static IEnumerable<string> OutlineFaults(SewnPattern pattern)
    {
        if (FlatPoint.AreaOf(pattern.SewLine) <= 0 || FlatPoint.AreaOf(pattern.CutLine) < FlatPoint.AreaOf(pattern.SewLine))
        {
            yield return "sew line or cut line does not run counter-clockwise, or the cut line is the smaller one.";
        }

        for (var i = 0; i < pattern.Runs.Count; i++)
        {
            var next = pattern.Runs[(i + 1) % pattern.Runs.Count];
            if (pattern.Runs[i].To != next.From || pattern.Runs[i].To != (pattern.Runs[i].From + 1) % pattern.SewLine.Count)
            {
                yield return $"run {i} goes from corner {pattern.Runs[i].From} to {pattern.Runs[i].To}, the next begins at {next.From}: a gap.";
            }
        }

        if (pattern.Runs.Count != pattern.SewLine.Count)
        {
            yield return $"{pattern.Runs.Count} runs on a sew line of {pattern.SewLine.Count} edges.";
        }
    }

    private static IEnumerable<string> RunFaults(SewnPattern pattern, SewnRun run, int i, SewingOrder order)
    {
        var (from, to) = PatternEdges.Ends(pattern, run);
        if (!(Math.Abs(from.DistanceTo(to) - run.LengthMm) <= Tolerances.SamePlace))
        {
            yield return FormattableString.Invariant($"run {i} says it is {run.LengthMm} mm long; its corners lie {from.DistanceTo(to)} mm apart.");
        }

        var allowance = run.Role == "hem" ? order.HemAllowance : order.AllowanceOf(run.MakeUp, run.Side);

        // Where seams stop short of hubs, short ones are plain: that is seen when the piece lies on the cover.
        if (!(order.StopsAtHubs && run.Role == "seam") && !(Math.Abs(run.AllowanceMm - allowance) <= Tolerances.SamePlace))
        {
            yield return FormattableString.Invariant($"run {i} ({run.Role}, {run.Side}) has an allowance of {run.AllowanceMm} mm, not {allowance}.");
        }

        if (run.Side != (run.Role == "seam" ? "over" : "none") && run.Side != (run.Role == "seam" ? "under" : "none"))
        {
            yield return $"run {i} is a {run.Role} and lies {run.Side}.";
        }

        // Corners take cloth away from short edges; in the middle of a long one the cut line runs at the allowance.
        var widest = pattern.Runs.Max(any => any.AllowanceMm);
        var middle = (0.5 * (from + to)) + (run.AllowanceMm * Outward(from, to));
        var gap = DistanceTo(pattern.CutLine, middle);
        if (run.LengthMm > 12 * widest && gap > 2 * Tolerances.SamePlace && !IsInSlit(pattern, i, middle))
        {
            yield return FormattableString.Invariant($"run {i}: in its middle the cut line misses the allowance of {run.AllowanceMm} mm by {gap} mm.");
        }
    }

    /// <summary>Every edge of every facet is one run or one fold; every run and both sides of every fold are there.</summary>
    private static IEnumerable<string> FacetFaults(SewnPattern pattern)
    {
        var edges = PatternEdges.Of(pattern);
        for (var facet = 0; facet < pattern.Facets.Count; facet++)
        {
            for (var edge = 0; edge < pattern.Facets[facet].Count; edge++)
            {
                if ((edges.RunAt[facet][edge] >= 0) == (edges.FoldAt[facet][edge] >= 0))
                {
                    yield return $"edge {edge} of facet {facet} is {(edges.RunAt[facet][edge] < 0 ? "neither run nor fold" : "both a run and a fold")}.";
                }
            }
        }

        foreach (var run in Enumerable.Range(0, pattern.Runs.Count).Where(run => edges.RunAt.Sum(ring => ring.Count(at => at == run)) != 1))
        {
            yield return $"run {run} is not an edge of exactly one facet.";
        }

        foreach (var fold in Enumerable.Range(0, pattern.Folds.Count).Where(fold => edges.FoldAt.Count(ring => ring.Contains(fold)) != 2))
        {
            yield return $"fold {fold} does not lie between two facets.";
        }

        var (sewn, facets) = (FlatPoint.AreaOf(pattern.SewLine), pattern.Facets.Sum(FlatPoint.AreaOf));
        if (!(Math.Abs(sewn - facets) <= Tolerances.SamePlace * pattern.Runs.Sum(run => run.LengthMm)))
        {
            yield return FormattableString.Invariant($"the facets cover {facets} mm2 of a sew line round {sewn} mm2.");
        }
    }

    private static IEnumerable<string> NotchFaults(SewnPattern pattern, SewnNotch notch, SewingOrder order)
    {
        var run = pattern.Runs[notch.Run];
        var (from, to) = PatternEdges.Ends(pattern, run);
        var along = (1 / from.DistanceTo(to)) * (to - from);
        var onRun = from + (notch.AtMm * along);
        if (!(notch.AtMm > 0 && notch.AtMm < run.LengthMm))
        {
            yield return FormattableString.Invariant($"the notch at {notch.AtMm} mm is outside run {notch.Run}, {run.LengthMm} mm long.");
        }

        // A stop or a trimmed corner leaves less than the allowance; there the stroke begins at the cut line all the same.
        var reach = notch.OnSewLine.DistanceTo(notch.Outer);
        var outer = onRun + (reach * Outward(from, to));
        var isWhole = Math.Abs(reach - run.AllowanceMm) <= Tolerances.SamePlace;
        if (onRun.DistanceTo(notch.OnSewLine) > Tolerances.SamePlace
            || outer.DistanceTo(notch.Outer) > Tolerances.SamePlace
            || !(isWhole || IsShortTick(pattern, notch, onRun, onRun + (run.AllowanceMm * Outward(from, to))) || (reach < run.AllowanceMm && DistanceTo(pattern.CutLine, notch.Outer) <= Tolerances.SamePlace))
            || Math.Abs((notch.Inner - notch.Outer).Dot(along)) > Tolerances.SamePlace)
        {
            yield return FormattableString.Invariant($"the notch at {notch.AtMm} mm of run {notch.Run} is drawn elsewhere than it says, {onRun.DistanceTo(notch.OnSewLine)} mm on the sew line and {outer.DistanceTo(notch.Outer)} mm on the cut line.");
        }

        var depth = notch.Outer.DistanceTo(notch.Inner);
        if (notch.Form == "slit" && (order.IsNeverSlit(run.MakeUp) || depth > Math.Min(LongestSlit, reach / 4) + Tolerances.SamePlace))
        {
            yield return FormattableString.Invariant($"the notch at {notch.AtMm} mm of run {notch.Run} is slit {depth} mm into an allowance of {run.AllowanceMm} mm.");
        }
    }

    /// <summary>Where the other side of a slit leaves no room for the whole allowance, a notch is a stroke of the pen and ends before it.</summary>
    private static bool IsShortTick(SewnPattern pattern, SewnNotch notch, FlatPoint onRun, FlatPoint outer)
    {
        var (reach, step) = ((notch.Outer - onRun).Dot(outer - onRun) / (outer - onRun).Length, outer - onRun);
        return notch.Form == "tick"
            && reach >= 0 && reach <= step.Length + Tolerances.SamePlace
            && Math.Abs((notch.Outer - onRun).Cross(step) / step.Length) <= Tolerances.SamePlace
            && IsInside(pattern.CutLine, outer);
    }

    /// <summary>Whether a point of a run's allowance lies in uncut cloth beside or beyond another run's sew line: near the end of a slit.</summary>
    private static bool IsInSlit(SewnPattern pattern, int run, FlatPoint point) => IsInside(pattern.CutLine, point)
        && (IsInside(pattern.SewLine, point)
            || pattern.Runs.Where((_, i) => i != run).Any(other => PatternEdges.Ends(pattern, other) is var (from, to) && DistanceTo([from, to], point) <= other.AllowanceMm + Tolerances.SamePlace));

    private static bool IsInside(IReadOnlyList<FlatPoint> ring, FlatPoint point) => Enumerable.Range(0, ring.Count).Count(i =>
    {
        var (from, to) = (ring[i], ring[(i + 1) % ring.Count]);
        return from.Y > point.Y != to.Y > point.Y && point.X < from.X + ((point.Y - from.Y) / (to.Y - from.Y) * (to.X - from.X));
    }) % 2 == 1;

    private static IEnumerable<string> GrainFaults(SewnPattern pattern)
    {
        var step = pattern.Grain.To - pattern.Grain.From;
        if (!(step.X > 0 && Math.Abs(step.Y) <= Tolerances.SamePlace))
        {
            yield return FormattableString.Invariant($"the grain line runs ({step.X}, {step.Y}), not along +x.");
        }
    }

    private static FlatPoint Outward(FlatPoint from, FlatPoint to) =>
        (1 / from.DistanceTo(to)) * new FlatPoint(to.Y - from.Y, from.X - to.X);

    internal static double DistanceTo(IReadOnlyList<FlatPoint> ring, FlatPoint point) => ring.Select((corner, i) =>
    {
        var edge = ring[(i + 1) % ring.Count] - corner;
        var share = Math.Clamp((point - corner).Dot(edge) / edge.Dot(edge), 0, 1);
        return point.DistanceTo(corner + (share * edge));
    }).Min();
}
