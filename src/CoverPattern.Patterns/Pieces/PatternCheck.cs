using System;
using System.Collections.Generic;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Refuses allowances that their piece cannot hold.</summary>
internal static class PatternCheck
{
    internal static IEnumerable<Fault> Faults(Job job, string label, Pattern pattern)
    {
        var widest = pattern.Runs.Where(run => run.Role == EdgeRole.Seam).Select(run => run.AllowanceMm).DefaultIfEmpty(0).Max();
        if (widest > pattern.LabelRadius)
        {
            yield return new Fault(
                "seam.width",
                job.Seam.MakeUp.Width.Typed,
                FormattableString.Invariant($"Piece {label}: an allowance of {widest:0.#} mm is larger than the piece, whose largest inscribed circle has the radius {pattern.LabelRadius:0.#} mm. Take a narrower seam or a larger frame."));
        }

        var height = pattern.Runs.Where(run => run.Role == EdgeRole.Hem).Select(run => HeightAbove(pattern, run)).DefaultIfEmpty(double.PositiveInfinity).Min();
        if (job.Hem.Allowance > height)
        {
            yield return new Fault(
                "hem.depth",
                job.Hem.Depth.Typed,
                FormattableString.Invariant($"Piece {label}: a hem of {job.Hem.Allowance:0.#} mm is larger than the piece, which is {height:0.#} mm high above its finished edge. Take a narrower hem."));
        }
        else if (!IsRoundSewLine(pattern) && widest <= pattern.LabelRadius)
        {
            yield return new Fault(
                "seam.width",
                job.Seam.MakeUp.Width.Typed,
                FormattableString.Invariant($"Piece {label}: allowances of {widest:0.#} mm and a hem of {job.Hem.Allowance:0.#} mm cross each other. Take narrower ones."));
        }
    }

    private static double HeightAbove(Pattern pattern, EdgeRun hem) =>
        pattern.SewLine.Max(corner => Lines.Distance(pattern.SewLine[hem.From], pattern.SewLine[hem.To], corner));

    private static bool IsRoundSewLine(Pattern pattern)
    {
        var cut = Rings.ToSteps(pattern.CutLine);
        return ExactPredicates.IsSimple(cut)
            && Rings.SignedArea(pattern.CutLine) > 0
            && pattern.SewLine.All(corner => ExactPredicates.Locate(cut, Grid.ToSteps(corner)) >= 0 || IsOnCutLine(pattern, corner));
    }

    /// <summary>Where an edge has no allowance the two lines are one, but for the rounding of a far mitre to the grid.</summary>
    private static bool IsOnCutLine(Pattern pattern, Point2 corner) => Enumerable.Range(0, pattern.CutLine.Length)
        .Any(i => Segments.Distance(pattern.CutLine[i], pattern.CutLine[(i + 1) % pattern.CutLine.Length], corner) <= ArcSorter.SameLength);
}
