using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Refuses allowances that their piece cannot hold.</summary>
internal static class PatternCheck
{
    internal static IEnumerable<Fault> Faults(Job job, PieceDraft model, Pattern pattern)
    {
        var label = model.Label;
        var widestSeam = pattern.Runs.Where(run => run.Role == EdgeRole.Seam).MaxBy(run => run.AllowanceMm);
        var widest = widestSeam?.AllowanceMm ?? 0;
        var (place, said) = WidthOf(job, widestSeam?.MakeUp);
        var room = pattern.Cutouts.IsEmpty ? pattern.LabelRadius : InscribedCircle.Largest(pattern.SewLine, 1).Radius;
        if (widest > room)
        {
            yield return new Fault(
                place,
                said,
                FormattableString.Invariant($"Piece {label}: an allowance of {widest:0.#} mm is larger than the piece, whose largest inscribed circle has the radius {room:0.#} mm. {WayOut(pattern, "Take a narrower seam or a larger frame.")}"));
        }

        var height = pattern.Runs.Where(run => run.Role == EdgeRole.Hem).Select(run => HeightAbove(pattern, run)).DefaultIfEmpty(double.PositiveInfinity).Min();
        if (job.Hem.Folded > height)
        {
            yield return new Fault(
                "hem.depth",
                job.Hem.Depth.Typed,
                FormattableString.Invariant($"Piece {label}: a hem of {job.Hem.Folded:0.#} mm is larger than the piece, which is {height:0.#} mm high above its finished edge. {WayOut(pattern, "Take a narrower hem.")}"));
        }
        else if (!IsRoundSewLine(pattern) && widest <= room)
        {
            yield return RimAtClash(model, pattern) is { } rim
                ? new Fault(
                    HoleCheck.PlaceOf(rim),
                    rim,
                    FormattableString.Invariant($"Piece {label}: beside the rim {rim} allowances cross each other: it meets a seam, or another rim, at too sharp an angle or too near to the next. Move the opening, make it larger or smaller, or take narrower allowances."))
                : job.Skirt.Splash is { } splash && pattern.Runs.Any(run => run.Role == EdgeRole.Turned)
                ? new Fault(
                    "skirt.splash.width",
                    splash.Width.Typed,
                    FormattableString.Invariant($"Piece {label} of the splash band: its allowances, of {pattern.Runs.Max(run => run.AllowanceMm):0.#} mm at most, cross each other. Let the band reach higher, or take narrower allowances."))
                : new Fault(
                    place,
                    said,
                    FormattableString.Invariant($"Piece {label}: allowances of {widest:0.#} mm{(double.IsFinite(height) ? FormattableString.Invariant($" and a hem of {job.Hem.Allowance:0.#} mm") : string.Empty)} cross each other. Take narrower ones{(pattern.Kind == PieceKind.Facet ? string.Empty : ", or cut and slit the panel along other struts")}.{DoorHint(job, pattern)}"));
        }

        var shortest = pattern.Runs.Where(run => run.Role == EdgeRole.Hem && run.LengthMm >= HemMarks.ShortestBay).Select(run => run.LengthMm).DefaultIfEmpty(double.PositiveInfinity).Min();
        if (job.Hem.Gap is { } gap && (2 * gap.Millimetres) + CutLine.LeastTab > shortest)
        {
            yield return new Fault(
                "hem.gap",
                gap.Typed,
                FormattableString.Invariant($"less than {(shortest - CutLine.LeastTab) / 2:0} mm: the lower edge of piece {label} is {shortest:0} mm long, and between the gaps nothing is left for a sleeve."));
        }

        foreach (var fault in HoleCheck.Faults(model, pattern))
        {
            yield return fault;
        }
    }

    /// <summary>A survey's base that climbs past a facet gives its piece two lower edges or more.</summary>
    private static string DoorHint(Job job, Pattern pattern) =>
        job.Frame.Survey is not null && pattern.Runs.Count(run => run.Role == EdgeRole.Hem) > 1 ? " " + ShellCheck.DoorLeftOut : string.Empty;

    /// <summary>Where the job states the width of a make-up, and what it says there.</summary>
    private static (string Place, string Said) WidthOf(Job job, string? name)
    {
        if (job.Roof is not null && RoofWish.MakeUps.FirstOrDefault(own => own.Name == name) is { } ofRoof)
        {
            return ("roof", $"seams of {ofRoof.Width.Typed}, \"{ofRoof.Name}\"");
        }

        var makeUp = job.Seam.Known().FirstOrDefault(known => known.Name == name) ?? job.Seam.MakeUp;
        if (makeUp.IsClosing)
        {
            return ("seam.closing.allowance", job.Seam.Closing!.Allowance.Typed);
        }

        var entry = job.MakeUps.Select(known => known.Name).ToList().IndexOf(makeUp.Name);
        return (entry < 0 ? "seam.width" : FormattableString.Invariant($"makeUps[{entry}].width"), makeUp.Width.Typed);
    }

    /// <summary>Of a low skirt strip there is one more way out: single facets have their skirt in one piece with them.</summary>
    private static string WayOut(Pattern pattern, string usual) => pattern.Kind == PieceKind.Strip
        ? usual[..^1] + ", let the skirt drop further, or make single facets of the lowest row: a skirt strip must hold its own allowances."
        : usual;

    private static double HeightAbove(Pattern pattern, EdgeRun hem) =>
        pattern.SewLine.Max(corner => Lines.Distance(pattern.SewLine[hem.From], pattern.SewLine[hem.To], corner));

    private static bool IsRoundSewLine(Pattern pattern)
    {
        var cut = Rings.ToSteps(pattern.CutLine);
        return ExactPredicates.IsSimple(cut) && Rings.SignedArea(pattern.CutLine) > 0 && !Outside(pattern).Any();
    }

    /// <summary>Corners of the sew line that lie outside the cut line though cloth goes beyond their edges.</summary>
    private static IEnumerable<Point2> Outside(Pattern pattern)
    {
        var cut = Rings.ToSteps(pattern.CutLine);
        var atShort = CornersAtShortRuns(pattern);
        return pattern.SewLine.Where((corner, i) => !atShort.Contains(i) && ExactPredicates.Locate(cut, Grid.ToSteps(corner)) < 0 && !IsOnCutLine(pattern, corner));
    }

    /// <summary>
    /// The rim beside which the cut line meets itself: the nearest within the longest mitre, or, where a line runs far past its corner,
    /// the nearest to an end of the lines that meet; where none meet, the nearest to a corner that is left outside. Null where there is none.
    /// </summary>
    private static string? RimAtClash(PieceDraft model, Pattern pattern)
    {
        if (ExactPredicates.FirstClash(Rings.ToSteps(pattern.CutLine)) is not { } clash)
        {
            return RimAt(model, pattern, [.. Outside(pattern)]);
        }

        var ((from, to), (otherFrom, otherTo)) = (EdgeOf(pattern.CutLine, clash.Edge), EdgeOf(pattern.CutLine, clash.Other));
        var met = Lines.Meet(from, to - from, otherFrom, otherTo - otherFrom);
        var at = double.IsFinite(met.X + met.Y) ? met : otherFrom;
        return RimAt(model, pattern, [at]) ?? RimAt(model, pattern, [from, to, otherFrom, otherTo]);
    }

    private static string? RimAt(PieceDraft model, Pattern pattern, ImmutableArray<Point2> points)
    {
        var (away, rim) = Enumerable.Range(0, pattern.Runs.Length).Where(i => pattern.Runs[i].Role == EdgeRole.Rim)
            .Select(i => (Away: points.Select(point => DistanceFrom(pattern, pattern.Runs[i], point)).DefaultIfEmpty(double.PositiveInfinity).Min(), Arc: (string?)model.Runs[i].At.Arc)).DefaultIfEmpty((double.PositiveInfinity, null)).MinBy(entry => entry.Item1);
        return away <= CutLine.MitreLimit * pattern.Runs.Max(run => run.AllowanceMm) ? rim : null;
    }

    private static (Point2 From, Point2 To) EdgeOf(ImmutableArray<Point2> ring, int edge) => (ring[edge], ring[(edge + 1) % ring.Length]);

    private static double DistanceFrom(Pattern pattern, EdgeRun run, Point2 point)
    {
        var count = pattern.SewLine.Length;
        return Enumerable.Range(run.From, (run.To - run.From + count) % count).Select(i => EdgeOf(pattern.SewLine, i % count)).Select(edge => Segments.Distance(edge.From, edge.To, point)).DefaultIfEmpty(double.PositiveInfinity).Min();
    }

    /// <summary>Corners of edges at which the cloth ends short of the sew line, in a binding beside the teeth of a zip.</summary>
    private static HashSet<int> CornersAtShortRuns(Pattern pattern)
    {
        var count = pattern.SewLine.Length;
        return [.. pattern.Runs.Where(run => run.AllowanceMm < 0).SelectMany(run => Enumerable.Range(run.From, 1 + (run.IsClosed ? count : (run.To - run.From + count) % count)).Select(corner => corner % count))];
    }

    /// <summary>Where an edge has no allowance the two lines are one, but for the rounding of a far mitre to the grid.</summary>
    private static bool IsOnCutLine(Pattern pattern, Point2 corner) => Enumerable.Range(0, pattern.CutLine.Length)
        .Any(i => Segments.Distance(pattern.CutLine[i], pattern.CutLine[(i + 1) % pattern.CutLine.Length], corner) <= ArcSorter.SameLength);
}
