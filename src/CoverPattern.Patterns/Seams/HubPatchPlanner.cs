using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Seams;

/// <summary>Gives every hub its patch, smaller where the room is small.</summary>
public static class HubPatchPlanner
{
    // A patch leaves this much free to the finished edge, millimetres; the program's own choice.
    private const double ClearOfHem = 10;

    // It takes at most this share of the shortest line that ends at the hub, so that two patches never meet.
    private const double LargestShare = 0.4;

    /// <summary>Smallest radius that still covers the ends of seams that stop short, and is worth sewing, millimetres.</summary>
    public const double LeastRadius = HubStops.StopMm + 5;

    /// <summary>Plans the patches of one cover.</summary>
    /// <param name="job">Whether there are patches, and their diameters.</param>
    /// <param name="shell">The finished surface.</param>
    /// <param name="cut">The same cut up.</param>
    /// <returns>In order of the hubs' labels; hubs where less than the least radius fits have none.</returns>
    public static ImmutableArray<HubPatch> Plan(Job job, Shell shell, Subdivision cut)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(shell);
        ArgumentNullException.ThrowIfNull(cut);
        if (job.Marks.HubPatches == HubPatchPlace.None)
        {
            return [];
        }

        var nodes = new CornerNodes(shell, cut);
        var heights = shell.Nodes.Where(node => node.Ring is not null).ToDictionary(node => node.Label, node => node.AboveHem, StringComparer.Ordinal);
        var hubs = CrossingFinder.Find(shell, cut).Where(crossing => crossing.Place is CrossingPlace.Hub or CrossingPlace.BaseHub).ToArray();
        var rings = HubLabels.Rings(shell);
        var top = hubs.Length > 0 ? hubs.Max(hub => rings[hub.Label]) : 0;
        return
        [
            .. hubs.GroupBy(hub => hub.Label, StringComparer.Ordinal).OrderBy(group => group.Key, StringComparer.Ordinal)
                .Select(group => new HubPatch(group.Key, Whole(Math.Min(Wanted(job.Marks, group.First(), rings[group.Key] == top), Room(cut, nodes, group, heights[group.Key])))))
                .Where(patch => patch.RadiusMm >= LeastRadius),
        ];
    }

    /// <summary>Whole millimetres, so that hubs which are alike but for the last digit have one patch.</summary>
    private static double Whole(double radius) => Math.Floor(radius + 1e-6);

    private static double Wanted(MarkWish marks, Crossing hub, bool isTop) =>
        (isTop && hub.Place == CrossingPlace.Hub ? marks.ApexDiameter : marks.PatchDiameter).Millimetres / 2;

    private static double Room(Subdivision cut, CornerNodes nodes, IEnumerable<Crossing> hub, double aboveHem) => Math.Min(
        aboveHem - ClearOfHem,
        LargestShare * hub.SelectMany(crossing => crossing.Arcs).Select(arc => cut.Arcs[arc]).Where(arc => IsBetweenHubs(cut, nodes, arc))
            .Select(arc => arc.LengthMm).DefaultIfEmpty(double.PositiveInfinity).Min());

    /// <summary>Lines down to the skirt's foot are bounded by the hem already.</summary>
    private static bool IsBetweenHubs(Subdivision cut, CornerNodes nodes, Arc arc) =>
        nodes.IsHub(arc.First) && nodes.IsHub(arc.First with { Edge = (arc.First.Edge + 1) % cut.Patches[arc.First.Patch].Corners.Length });
}
