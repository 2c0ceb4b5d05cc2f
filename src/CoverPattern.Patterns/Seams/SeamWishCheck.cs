using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Seams;

/// <summary>Holds the wishes for seams against the seams there are.</summary>
public static class SeamWishCheck
{
    /// <summary>Everything that cannot be sewn as the job asks; empty when all is well.</summary>
    /// <param name="job">Its seams, make-ups and cloths are read.</param>
    /// <param name="shell">The finished surface.</param>
    /// <param name="plan">The plan made of them.</param>
    public static ImmutableArray<Fault> Faults(Job job, Shell shell, SeamPlan plan)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(shell);
        ArgumentNullException.ThrowIfNull(plan);

        return
        [
            .. job.Seam.Others.SelectMany((choice, i) => ChoiceFaults(shell, plan, choice, FormattableString.Invariant($"seam.others[{i}].between"))),
            .. job.Seam.Closing is { } closing ? ClosingFaults(shell, plan, closing) : [],
            .. JoinFaults(job, plan),
        ];
    }

    /// <summary>Tells of welds between cloths of which the job does not say that they weld.</summary>
    /// <param name="job">Its cloths are read.</param>
    /// <param name="plan">The plan.</param>
    public static ImmutableArray<Notice> Notices(Job job, SeamPlan plan)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(plan);

        return [.. MakeUpsOf(plan).Where(makeUp => Joining.IsUnknown(makeUp, job.Cloths[0], job.Cloths[0])).Take(1).Select(makeUp => new Notice(
            NoticeLevel.Warning,
            "weld-not-stated",
            "cloths[0].weld",
            $"The seams are {makeUp.Name}, and the job does not say what cloth \"{job.Cloths[0].Name}\" welds with: acrylic canvas and silicone-coated cloth do not weld at all. State cloths[0].weld."))];
    }

    private static IEnumerable<Fault> ChoiceFaults(Shell shell, SeamPlan plan, SeamChoice choice, string place)
    {
        var struts = HubLabels.EdgesByStrut(shell);
        foreach (var (strut, i) in choice.Struts.Select((strut, i) => (strut, i)))
        {
            if (!struts.TryGetValue(strut, out var edge))
            {
                yield return new Fault(FormattableString.Invariant($"{place}[{i}]"), $"\"{strut}\"", "a strut of this frame as two labels of hubs, such as " + $"\"{HubLabels.StrutOf(shell, 0)}\"");
            }
            else if (plan.Edges[edge].Role != EdgeRole.Seam)
            {
                yield return new Fault(FormattableString.Invariant($"{place}[{i}]"), $"\"{strut}\"", "a strut with a seam over it: the cloth goes over this one uncut, or ends there");
            }
        }

        if (choice.Set != SeamSet.Struts && !SeamMakeUps.Meant(shell, choice).Any(edge => plan.Edges[edge].Role == EdgeRole.Seam))
        {
            yield return new Fault(place, choice.Set == SeamSet.Rows ? "\"rows\"" : "\"uprights\"", "seams that there are: this plan has none of them; leave the entry out");
        }
    }

    private static IEnumerable<Fault> ClosingFaults(Shell shell, SeamPlan plan, ClosingWish wish)
    {
        var start = ClosingSeam.StartOf(shell, wish, plan);
        if (start < 0)
        {
            yield return new Fault(
                "seam.closing.at", $"\"{wish.At}\"", "\"rear\" or a base hub: " + string.Join(", ", ClosingSeam.BaseHubs(shell).Select(hub => shell.Nodes[hub].Label)));
            yield break;
        }

        if (ClosingSeam.LastRing(shell, wish) > ClosingSeam.TopRing(shell))
        {
            yield return new Fault("seam.closing.to", FormattableString.Invariant($"{wish.To}"), FormattableString.Invariant($"a ring of hubs, 0 to {ClosingSeam.TopRing(shell)}"));
            yield break;
        }

        var chain = ClosingSeam.Chain(shell, wish, plan);
        int[] uncut = [.. chain.Where(edge => plan.Edges[edge].Role != EdgeRole.Seam)];
        if (uncut.Length > 0)
        {
            yield return new Fault(
                "seam.closing",
                $"a closing seam over {string.Join(", ", uncut.Select(edge => HubLabels.StrutOf(shell, edge)))}",
                $"seams all the way up from {shell.Nodes[start].Label}: the cloth goes over {(uncut.Length == 1 ? "this strut" : "these struts")} uncut. Cut the {(uncut.Length == 1 ? "row" : "rows")} there, end the seam at a lower ring, or begin at {OtherStarts(shell, plan, wish)}");
        }

        foreach (var makeUp in chain.Select(edge => plan.Edges[edge].MakeUp).OfType<MakeUp>().Where(makeUp => makeUp.WidestSideMm > wish.Allowance.Millimetres).Take(1))
        {
            yield return new Fault(
                "seam.closing.allowance", wish.Allowance.Typed, FormattableString.Invariant($"not less than the seam \"{makeUp.Name}\" has anyway: {makeUp.WidestSideMm:0.###} mm"));
        }

        if (chain.IsEmpty)
        {
            yield return new Fault("seam.closing.to", FormattableString.Invariant($"{wish.To}"), FormattableString.Invariant($"a ring above the base, 1 to {ClosingSeam.TopRing(shell)}: there is no seam below it"));
        }
    }

    /// <summary>Base hubs from which seams run all the way up.</summary>
    private static string OtherStarts(Shell shell, SeamPlan plan, ClosingWish wish)
    {
        string[] starts = [.. ClosingSeam.BaseHubs(shell).Select(hub => shell.Nodes[hub].Label)
            .Where(label => ClosingSeam.Chain(shell, wish with { At = label }, plan).All(edge => plan.Edges[edge].Role == EdgeRole.Seam))];
        return starts.Length > 0 ? string.Join(", ", starts) : "another base hub, of which none has seams all the way now";
    }

    private static IEnumerable<Fault> JoinFaults(Job job, SeamPlan plan)
    {
        var cloth = job.Cloths[0];
        foreach (var makeUp in MakeUpsOf(plan))
        {
            if (Joining.Trouble(makeUp, cloth, cloth) is { } trouble)
            {
                yield return new Fault(PlaceOf(job, makeUp), $"\"{makeUp.Name}\"", trouble);
            }
        }
    }

    private static IEnumerable<MakeUp> MakeUpsOf(SeamPlan plan) =>
        plan.Edges.Select(edge => edge.MakeUp).OfType<MakeUp>().Where(makeUp => !makeUp.IsClosing).DistinctBy(makeUp => makeUp.Name, StringComparer.Ordinal);

    private static string PlaceOf(Job job, MakeUp makeUp)
    {
        var others = job.Seam.Others.Select((choice, i) => (choice.MakeUp.Name, Place: FormattableString.Invariant($"seam.others[{i}].makeUp")));
        return job.Seam.MakeUp.Name == makeUp.Name
            ? "seam.makeUp"
            : others.Where(other => other.Name == makeUp.Name).Select(other => other.Place).DefaultIfEmpty("seam.makeUp").First();
    }
}
