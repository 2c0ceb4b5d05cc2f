using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Seams;

/// <summary>Decides which facets become which panel, as the job wishes: single facets, bands, gores, groups.</summary>
public static class PanelPlanner
{
    /// <summary>Plans all panels.</summary>
    /// <param name="job">Panels, seams, cloth and turns are read.</param>
    /// <param name="frame">The frame.</param>
    /// <param name="shell">The surface fitted over it.</param>
    /// <returns>A plan, or all that the job says wrongly about panels.</returns>
    public static PanelPlan Plan(Job job, Frame frame, Shell shell)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(frame);
        ArgumentNullException.ThrowIfNull(shell);

        var struts = new StrutTable(frame, shell);
        if (job.Panels.IsEmpty)
        {
            return WithTurned(job, struts, PanelPlan.SingleFacets(shell));
        }

        var claims = PanelClaims.Of(struts, job.Panels);
        PanelDrafts[] drafts = [.. Enumerable.Range(0, job.Panels.Length).Select(wish => PlanWish(job, struts, claims, wish))];
        ImmutableArray<Fault> faults = [.. claims.Faults, .. drafts.SelectMany(draft => draft.Faults)];
        if (!faults.IsEmpty)
        {
            return new PanelPlan([], [], [], [], faults, []);
        }

        var slits = drafts.SelectMany(draft => draft.Slits).ToHashSet();
        var (panels, skirtSlits) = PanelLabels.Label(struts, [.. drafts.SelectMany(draft => draft.Panels)], slits);
        return WithTurned(job, struts, new PanelPlan(
            panels,
            [.. slits.Concat(skirtSlits).Distinct().Order().Where(edge => AreOnOnePanel(shell.Edges[edge], panels))],
            [],
            [.. shell.Faces.Select((_, face) => face < frame.Facets.Length ? frame.Facets[face].Row : 0)],
            [.. Doubled(job, panels)],
            [.. drafts.SelectMany(draft => draft.Notices)]));
    }

    private static PanelDrafts PlanWish(Job job, StrutTable struts, PanelClaims claims, int wish)
    {
        var facets = claims.FacetsOf(wish);
        return job.Panels[wish].Form switch
        {
            _ when facets.IsEmpty => PanelDrafts.Wrong([]),
            PanelForm.Bands => BandPlanner.Plan(job, struts, wish, claims.RowsOf(wish)),
            PanelForm.Gores => GorePlanner.Plan(job, struts, wish, claims.RowsOf(wish)),
            PanelForm.Group => GroupPlanner.Plan(job, struts, wish, facets),
            _ => new PanelDrafts([.. facets.Select(facet => new PanelDraft(PanelShape.Facet, 0, string.Empty, [facet]))], [], [], []),
        };
    }

    private static bool AreOnOnePanel(ShellEdge edge, ImmutableArray<PlannedPanel> panels) =>
        panels.Any(panel => panel.Faces.Contains(edge.Left) && panel.Faces.Contains(edge.Right));

    private static IEnumerable<Fault> Doubled(Job job, ImmutableArray<PlannedPanel> panels)
    {
        var doubled = panels.GroupBy(panel => panel.Label, StringComparer.Ordinal).Where(group => group.Count() > 1).Select(group => group.Key).ToHashSet(StringComparer.Ordinal);
        return Enumerable.Range(0, job.Panels.Length)
            .Where(wish => doubled.Contains(job.Panels[wish].Name))
            .Select(wish => new Fault(FormattableString.Invariant($"panels[{wish}].name"), $"\"{job.Panels[wish].Name}\"", "a name that no other piece has"));
    }

    /// <summary>Adds the seams whose sides are turned.</summary>
    private static PanelPlan WithTurned(Job job, StrutTable struts, PanelPlan plan)
    {
        const string place = "seam.turned";
        var faults = new List<Fault>(plan.Faults);
        var turned = StrutWishes.Find(struts, place, job.Seam.Turned, faults);
        var panelOf = SeamPlanner.PanelOfFaces(struts.Shell, plan);
        foreach (var edge in turned.Where(edge => !SeamPlanner.IsSeam(struts.Shell, plan, panelOf, edge)))
        {
            faults.Add(new Fault(place, $"\"{struts.NameOf(edge)}\"", "a strut along which two edges are sewn together; here the cloth goes over the strut uncut, or ends"));
        }

        return plan with { Turned = turned, Faults = [.. faults] };
    }
}
