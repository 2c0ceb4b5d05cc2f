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
        var beside = RimSeams.Beside(shell, plan, opening.Region) - opening.Region.RingMm;
        if (beside < least.Millimetres)
        {
            yield return new Fault(place, FormattableString.Invariant($"{opening.Label} leaves {beside:0.0} mm from its {(opening.Region.RingMm > 0 ? "ring" : "rim")} to a seam that it does not cross"), $"at least {least.Typed}, or a rim that crosses the seam: another size or place");
        }

        var over = RimSeams.Over(shell, plan, opening.Region);
        if (over < least.Millimetres)
        {
            yield return new Fault(place, FormattableString.Invariant($"{opening.Label} reaches {over:0.0} mm over a seam"), $"at least {least.Typed} over it, or as far away from it: another size or place");
        }

        var flattest = RimSeams.Flattest(shell, plan, opening.Region);
        if (flattest < RimSeams.FlattestCrossing)
        {
            yield return new Fault(place, FormattableString.Invariant($"{opening.Label} crosses a seam under {flattest:0} degrees"), FormattableString.Invariant($"at least {RimSeams.FlattestCrossing:0} degrees: the cloth between rim and seam runs out in a point; turn or move it"));
        }

        if (opening.Wish.Held == JoinKind.Ring && RimSeams.Crossed(plan, opening.Region).Any())
        {
            yield return new Fault(place, $"{opening.Label} has a ring and crosses a seam", "a ring on one panel, for it makes a pocket with flat cloth: another size or place, a panel that goes on over that strut, or \"held\" by zip");
        }

        if (RimSeams.CutsClosing(plan, opening.Region))
        {
            yield return new Fault(place, $"{opening.Label} cuts through the closing seam", "a closing seam in one piece: let it rise elsewhere (seam.closing.at), or move the opening");
        }
    }

    private static double Gap(Shell shell, SeamPlan plan, LaidWindow window)
    {
        var (face, at) = (shell.Faces[window.Region.Centre.Face], window.Region.Centre.At);
        return RimSeams.Of(face, plan).Select(side => Lines.Distance(side.From, side.To, at)).DefaultIfEmpty(double.PositiveInfinity).Min() - window.Wish.OuterRadius;
    }
}
