using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Seams;

/// <summary>Makes one panel of facets that the job names.</summary>
internal static class GroupPlanner
{
    /// <summary>Plans one wish.</summary>
    /// <param name="job">The wish, seams, cloth and turns are read.</param>
    /// <param name="struts">The frame.</param>
    /// <param name="index">Index of the wish.</param>
    /// <param name="facets">Its facets as listed.</param>
    internal static PanelDrafts Plan(Job job, StrutTable struts, int index, ImmutableArray<int> facets)
    {
        var (wish, place) = (job.Panels[index], FormattableString.Invariant($"panels[{index}]"));
        var faults = new List<Fault>();
        var slits = StrutWishes.Find(struts, place + ".slits", wish.Slits, faults);
        var own = facets.ToHashSet();
        var outside = slits.Where(edge => !own.Contains(struts.Shell.Edges[edge].Left) || !own.Contains(struts.Shell.Edges[edge].Right)).ToArray();
        if (outside.Length > 0)
        {
            faults.Add(new Fault(place + ".slits", struts.NamesOf(outside), "struts between two facets of this group"));
        }

        if (faults.Count == 0)
        {
            var said = PanelFaults.Listed(facets.Select(facet => struts.Frame.Facets[facet].Label));
            faults.AddRange(PanelFaults.Of(struts, place + ".facets", said, facets, slits.ToHashSet()));
            RefuseTooWide(job, struts, place, facets, slits, faults);
        }

        return faults.Count > 0 ? PanelDrafts.Wrong(faults) : new PanelDrafts([new PanelDraft(PanelShape.Group, 0, wish.Name, facets)], slits, [], []);
    }

    private static void RefuseTooWide(Job job, StrutTable struts, string place, ImmutableArray<int> facets, ImmutableArray<int> slits, List<Fault> faults)
    {
        var roll = new RollWidth(job, struts);
        if (faults.Count == 0 && roll.Needed([facets], slits.ToHashSet()) is var needed && needed > roll.Usable)
        {
            faults.Add(new Fault(
                place + ".facets",
                FormattableString.Invariant($"a group that needs {needed:0} mm across the roll"),
                FormattableString.Invariant($"not more than the usable width of {roll.Usable:0} mm. Make two groups of it, or take a wider roll.")));
        }
    }
}
