using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Makes the liner as a cover of its own, and joins its pieces to those of the cover: docs/designs/inner-shells.md tells why.</summary>
public static class Liner
{
    /// <summary>What stands before every label of a liner, behind that of the cover.</summary>
    public const char Letter = 'I';

    // Cloth between the liner and what is before it must not touch (common practice, no source), millimetres.
    private const double LeastGap = 25;

    /// <summary>Whether a label, without or with its cover before it, is one of a liner.</summary>
    /// <param name="label">Label of a piece.</param>
    public static bool IsOf(string label)
    {
        ArgumentNullException.ThrowIfNull(label);
        return label[label.LastIndexOf(' ') + 1] == Letter;
    }

    /// <summary>The liner of a job; null where none is wished.</summary>
    /// <param name="job">The order.</param>
    /// <param name="frame">The frame.</param>
    /// <param name="openings">What was laid on the cover.</param>
    public static LinerMaking? Make(Job job, Frame frame, OpeningLaying openings)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(frame);
        ArgumentNullException.ThrowIfNull(openings);
        if (job.Liner is not { } wish)
        {
            return null;
        }

        var (own, faults) = (LinerJob.Of(job, frame, openings), Wishes(job, frame, openings).ToList());
        if (faults.Count > 0)
        {
            return Refused(faults);
        }

        var shell = ShellFitter.Fit(own, frame);
        var panels = PanelPlanner.Plan(own, frame, shell);
        var laid = OpeningLayer.Lay(own, frame, shell);
        ImmutableArray<Region> regions = [.. laid.Regions, .. PipeHoles.Lay(new ClippedShell(shell), openings.Pipes, job.Ease, faults)];
        var holes = LinerJob.HolesOf(wish, openings);
        faults.AddRange(panels.Faults.Select(fault => fault with { Place = "liner", Said = $"{fault.Place}: {fault.Said}" }).Concat(laid.Faults.Select(fault => OfHole(fault, holes))));
        if (faults.Count > 0)
        {
            return Refused(faults);
        }

        var plan = SeamPlanner.Plan(own, shell, panels);
        if (wish.RoofRow is { } row && HubLabels.EdgesByStrut(shell) is var edges && LinerJob.StrutsBelow(frame, row).Any(strut => plan.Edges[edges[strut]].Role != EdgeRole.Seam))
        {
            return Refused([new Fault("liner.roofRow", FormattableString.Invariant($"{row}, below which cloth goes over struts uncut"), "a row that begins at seams: panels of single facets or bands there")]);
        }

        if (OpeningSeamCheck.Faults(own, shell, plan, laid.Openings) is { IsEmpty: false } beside)
        {
            return Refused(beside.Select(fault => OfHole(fault, holes)));
        }

        var cut = Subdivider.Cut(shell, plan, regions);
        var finishing = PieceFinisher.Finish(own, shell, cut, PanelFlattener.Flatten(cut));
        return finishing.Faults.IsEmpty
            ? new LinerMaking(Labels.Before(Letter, finishing.Set), []) { StandOffMm = shell.StandOffMm, Cut = cut }
            : Refused(finishing.Faults.Select(fault => fault with { Place = "liner", Said = $"{fault.Place}: {fault.Said}" }));
    }

    /// <summary>A fault of the liner's own job told by the labels of the cover's openings, below which its holes are.</summary>
    private static Fault OfHole(Fault fault, ImmutableArray<string> holes)
    {
        // Its places are "openings[0]", its labels "O1", in the order of the holes.
        var hole = int.Parse(fault.Place.AsSpan(fault.Place.IndexOf('[') + 1, fault.Place.IndexOf(']') - fault.Place.IndexOf('[') - 1), CultureInfo.InvariantCulture);
        var said = fault.Said.Split(' ').Select(word => Renamed(word, holes));
        return new Fault("liner", $"the hole below {holes[hole]}: {string.Join(' ', said)}", fault.Allowed + "; or another margin (liner.margin), or no hole there (liner.openings)");
    }

    /// <summary>A word, or the label of the cover's opening where it is one of the liner's own.</summary>
    private static string Renamed(string word, ImmutableArray<string> holes)
    {
        var own = Enumerable.Range(0, holes.Length).FirstOrDefault(i => word.TrimEnd(',', ':') == string.Create(CultureInfo.InvariantCulture, $"O{i + 1}"), -1);
        return own < 0 ? word : holes[own] + word[word.TrimEnd(',', ':').Length..];
    }

    private static IEnumerable<Fault> Wishes(Job job, Frame frame, OpeningLaying openings)
    {
        if (job.StandOff.Millimetres - LinerJob.StandOffOf(job) < LeastGap)
        {
            yield return new Fault("liner.gap", job.Liner!.Gap.Typed, FormattableString.Invariant($"at least {LeastGap:0} mm between cover and liner"));
        }

        if (job.Panels.FirstOrDefault(panel => panel.Name.StartsWith(Letter)) is { } named)
        {
            yield return new Fault("panels", $"\"{named.Name}\"", $"a name that does not begin with {Letter}, the letter of the liner's pieces");
        }

        if (job.Liner!.RoofRow is { } row && (row < 2 || LinerJob.StrutsBelow(frame, row).IsEmpty || frame.Facets.All(facet => facet.Row < row)))
        {
            yield return new Fault("liner.roofRow", FormattableString.Invariant($"{row}"), FormattableString.Invariant($"a row over a ring of struts, 2 to {frame.Facets.Max(facet => facet.Row)}"));
        }

        string[] known = [.. openings.Windows.Select(window => window.Label), .. openings.Openings.Select(opening => opening.Label)];
        foreach (var label in (job.Liner.Openings ?? []).Where(label => !known.Contains(label, StringComparer.Ordinal)))
        {
            yield return new Fault("liner.openings", $"\"{label}\"", "labels of the cover's windows and openings: " + (known.Length == 0 ? "the job has none" : string.Join(", ", known)));
        }
    }

    private static LinerMaking Refused(IEnumerable<Fault> faults) => new(new PieceSet([], []), [.. faults]);
}
