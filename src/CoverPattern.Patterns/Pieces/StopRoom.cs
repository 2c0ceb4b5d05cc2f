using System;
using System.Collections.Immutable;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Leaves stops out at inside corners so sharp that there is nothing to step in: at ends of slits above all.</summary>
/// <remarks>
/// The cut goes in to where the whole allowances of both edges meet (own geometry). Where that is farther from the hub than the
/// stop, the cloth round the stop is uncut, and a cut line that stepped in there would cross itself.
/// </remarks>
internal static class StopRoom
{
    /// <summary>The runs of a draft, without the stops that have no room.</summary>
    /// <param name="runs">Edges in order, the first from the first corner.</param>
    /// <param name="corners">Corners of the sew line, millimetres.</param>
    internal static ImmutableArray<DraftRun> Fit(ImmutableArray<DraftRun> runs, ImmutableArray<Point2> corners)
    {
        var fitted = runs.ToBuilder();
        for (var (i, start) = (0, 0); i < runs.Length; i++)
        {
            start += runs[i].Steps;
            var (before, after) = (runs[i], runs[(i + 1) % runs.Length]);
            if (before.Stops.AtEnd + after.Stops.AtStart > 0 && Reach(before, after, corners, start % corners.Length) > HubStops.StopMm)
            {
                var next = (i + 1) % runs.Length;
                fitted[i] = fitted[i] with { Stops = (fitted[i].Stops.AtStart, 0) };
                fitted[next] = fitted[next] with { Stops = (0, fitted[next].Stops.AtEnd) };
            }
        }

        return fitted.ToImmutable();
    }

    /// <summary>How far from a corner, along the farther of its edges, the lines of both allowances meet; 0 where it stands out, or is so flat that unequal ones meet in a step.</summary>
    private static double Reach(DraftRun before, DraftRun after, ImmutableArray<Point2> corners, int at)
    {
        var corner = corners[at];
        var (step, next) = (corner - corners[(at + corners.Length - 1) % corners.Length], corners[(at + 1) % corners.Length] - corner);
        var bend = -Math.Atan2(Point2.Cross(step, next), Point2.Dot(step, next));
        var (sin, cos) = Math.SinCos(bend);
        var isStep = before.Allowance != after.Allowance && bend * 180 / Math.PI < CutLine.StepTurnDegrees;
        return bend <= 0 || isStep ? 0 : Math.Max(after.Allowance - (before.Allowance * cos), before.Allowance - (after.Allowance * cos)) / sin;
    }
}
