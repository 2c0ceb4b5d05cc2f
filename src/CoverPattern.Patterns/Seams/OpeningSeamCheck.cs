using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Seams;

/// <summary>Holds openings against the seams that were planned; folds are no matter, for the strut below them keeps its own distance.</summary>
public static class OpeningSeamCheck
{
    /// <summary>What lies too near to a seam, one fault for windows that are alike.</summary>
    /// <param name="job">Clearances are read.</param>
    /// <param name="shell">The surface.</param>
    /// <param name="plan">What becomes of its edges.</param>
    /// <param name="windows">The windows.</param>
    public static ImmutableArray<Fault> Faults(Job job, Shell shell, SeamPlan plan, ImmutableArray<LaidWindow> windows)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(shell);
        ArgumentNullException.ThrowIfNull(plan);
        var least = job.Clearances.Seam;
        return
        [
            .. windows.Select(window => (Window: window, Gap: Gap(shell, plan, window)))
                .Where(entry => entry.Gap < least.Millimetres)
                .GroupBy(entry => (entry.Window.Entry, Gap: Math.Round(entry.Gap, 1)))
                .Select(alike => new Fault(
                    FormattableString.Invariant($"windows[{alike.Key.Entry}].aperture"),
                    FormattableString.Invariant($"{alike.First().Window.Wish.Aperture.Typed} at {WindowLabels.List(alike.Select(entry => entry.Window))}, which leaves {alike.Key.Gap:0.0} mm from the ring's outer edge to a seam"),
                    FormattableString.Invariant($"at least {least.Typed}: an aperture smaller by {2 * (least.Millimetres - alike.Key.Gap):0.0} mm, a narrower ring, another place, or a panel that goes on over that strut"))),
        ];
    }

    private static double Gap(Shell shell, SeamPlan plan, LaidWindow window)
    {
        var (face, at) = (shell.Faces[window.Region.Centre.Face], window.Region.Centre.At);
        return Seams(face, plan).Select(side => Lines.Distance(side.From, side.To, at)).DefaultIfEmpty(double.PositiveInfinity).Min() - window.Wish.OuterRadius;
    }

    private static IEnumerable<(Point2 From, Point2 To)> Seams(ShellFace face, SeamPlan plan) => Enumerable.Range(0, face.Edges.Length)
        .Where(i => plan.Edges[face.Edges[i]].Role == EdgeRole.Seam)
        .Select(i => (face.Chart[i], face.Chart[(i + 1) % face.Chart.Length]));
}
