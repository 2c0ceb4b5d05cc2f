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
    // A rim that crosses a seam more flatly leaves points of cloth that cannot be sewn (own choice), degrees.
    private const double FlattestCrossing = 20;

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

    /// <summary>What openings of any outline do to seams that they cross or pass.</summary>
    /// <param name="job">Clearances are read.</param>
    /// <param name="shell">The surface.</param>
    /// <param name="plan">What becomes of its edges.</param>
    /// <param name="openings">The openings.</param>
    public static ImmutableArray<Fault> Faults(Job job, Shell shell, SeamPlan plan, ImmutableArray<LaidOpening> openings)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(shell);
        ArgumentNullException.ThrowIfNull(plan);
        return [.. openings.SelectMany(opening => FaultsOf(job, shell, plan, opening))];
    }

    /// <summary>Slits that go through a seam.</summary>
    /// <param name="plan">What becomes of the shell's edges.</param>
    /// <param name="slits">The slits.</param>
    public static ImmutableArray<Fault> Faults(SeamPlan plan, ImmutableArray<LaidSlit> slits)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return
        [
            .. slits.Where(slit => slit.Crossed.Any(edge => edge >= 0 && plan.Edges[edge].Role == EdgeRole.Seam)).Select(slit => new Fault(
                FormattableString.Invariant($"openings[{slit.Entry}]"), $"{slit.Label} is a slit through a seam", "a slit inside one piece: elsewhere, shorter, or a panel that goes on over that strut")),
        ];
    }

    private static IEnumerable<Fault> FaultsOf(Job job, Shell shell, SeamPlan plan, LaidOpening opening)
    {
        var least = job.Clearances.Seam;
        var place = FormattableString.Invariant($"openings[{opening.Entry}]");
        var beside = opening.Region.Rim.SelectMany(stretch => Seams(shell.Faces[stretch.Face], plan)
            .Where(side => stretch.Enter?.Edge != side.Edge && stretch.Leave?.Edge != side.Edge)
            .Select(side => stretch.Points.Select((point, i) => Segments.Distance(side.From, side.To, point, stretch.Points[(i + 1) % stretch.Points.Length])).SkipLast(stretch.IsRing ? 0 : 1).DefaultIfEmpty(double.PositiveInfinity).Min()))
            .DefaultIfEmpty(double.PositiveInfinity).Min() - opening.Region.RingMm;
        if (beside < least.Millimetres)
        {
            yield return new Fault(place, FormattableString.Invariant($"{opening.Label} leaves {beside:0.0} mm from its {(opening.Region.RingMm > 0 ? "ring" : "rim")} to a seam that it does not cross"), $"at least {least.Typed}, or a rim that crosses the seam: another size or place");
        }

        var flattest = Crossings(shell, plan, opening.Region).DefaultIfEmpty(90).Min();
        if (flattest < FlattestCrossing)
        {
            yield return new Fault(place, FormattableString.Invariant($"{opening.Label} crosses a seam under {flattest:0} degrees"), FormattableString.Invariant($"at least {FlattestCrossing:0} degrees: the cloth between rim and seam runs out in a point; turn or move it"));
        }

        if (opening.Wish.Held == JoinKind.Ring && opening.Region.Rim.Any(stretch => stretch.Leave is { Edge: >= 0 } crossing && plan.Edges[crossing.Edge].Role != EdgeRole.Fold))
        {
            yield return new Fault(place, $"{opening.Label} has a ring and crosses a seam", "a ring on one panel, for it makes a pocket with flat cloth: another size or place, a panel that goes on over that strut, or \"held\" by zip");
        }

        if (opening.Region.Rim.Any(stretch => stretch.Leave is { Edge: >= 0 } crossing && plan.Edges[crossing.Edge].MakeUp is { IsClosing: true }))
        {
            yield return new Fault(place, $"{opening.Label} cuts through the closing seam", "a closing seam in one piece: let it rise elsewhere (seam.closing.at), or move the opening");
        }
    }

    /// <summary>Angles under which a rim crosses seams and the finished edge, degrees, 0 to 90.</summary>
    private static IEnumerable<double> Crossings(Shell shell, SeamPlan plan, Region region)
    {
        foreach (var stretch in region.Rim.Where(stretch => stretch.Leave is { Edge: >= 0 } leave && plan.Edges[leave.Edge].Role != EdgeRole.Fold))
        {
            var face = shell.Faces[stretch.Face];
            var at = face.Edges.IndexOf(stretch.Leave!.Value.Edge);
            var (line, step) = (face.Chart[(at + 1) % face.Chart.Length] - face.Chart[at], stretch.Points[^1] - stretch.Points[^2]);
            yield return Math.Asin(Math.Min(1, Math.Abs(Point2.Cross(line.Unit(), step.Unit())))) * 180 / Math.PI;
        }
    }

    private static double Gap(Shell shell, SeamPlan plan, LaidWindow window)
    {
        var (face, at) = (shell.Faces[window.Region.Centre.Face], window.Region.Centre.At);
        return Seams(face, plan).Select(side => Lines.Distance(side.From, side.To, at)).DefaultIfEmpty(double.PositiveInfinity).Min() - window.Wish.OuterRadius;
    }

    private static IEnumerable<(int Edge, Point2 From, Point2 To)> Seams(ShellFace face, SeamPlan plan) => Enumerable.Range(0, face.Edges.Length)
        .Where(i => plan.Edges[face.Edges[i]].Role == EdgeRole.Seam)
        .Select(i => (face.Edges[i], face.Chart[i], face.Chart[(i + 1) % face.Chart.Length]));
}
