using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Seams;

/// <summary>Gives every hub its patch, smaller where the room is small; none where a zip ends.</summary>
public static class HubPatchPlanner
{
    // A patch leaves this much free to the finished edge and to lines that do not end at the hub, millimetres; the program's own choice.
    private const double ClearOfHem = 10;

    // And this much to what is sewn round an opening: a row of stitches on either side, millimetres; the program's own choice.
    private const double ClearOfRing = 10;

    // It takes at most this share of the shortest line that ends at the hub, so that two patches never meet.
    private const double LargestShare = 0.4;

    /// <summary>Smallest radius that still covers the ends of seams that stop short, and is worth sewing, millimetres.</summary>
    public const double LeastRadius = HubStops.StopMm + 5;

    /// <summary>Plans the patches of one cover.</summary>
    /// <param name="job">Whether there are patches, and their diameters.</param>
    /// <param name="shell">The finished surface.</param>
    /// <param name="cut">The same cut up, openings taken out.</param>
    /// <returns>In order of the hubs' labels; hubs where less than the least radius fits have none, nor have those where a zip ends.</returns>
    public static ImmutableArray<HubPatch> Plan(Job job, Shell shell, Subdivision cut) =>
        [.. Rooms(job, shell, cut).Where(room => !room.HasZip && room.RadiusMm >= LeastRadius).Select(room => new HubPatch(room.Hub, room.RadiusMm))];

    /// <summary>For every hub of one cover the room that its patch finds; none when no patches are wished.</summary>
    /// <param name="job">Whether there are patches, and their diameters.</param>
    /// <param name="shell">The finished surface.</param>
    /// <param name="cut">The same cut up, openings taken out.</param>
    internal static ImmutableArray<HubRoom> Rooms(Job job, Shell shell, Subdivision cut)
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
                .Select(group => RoomAt(cut, nodes, [.. group], (Wanted(job.Marks, group.First(), rings[group.Key] == top), heights[group.Key]))),
        ];
    }

    private static HubRoom RoomAt(Subdivision cut, CornerNodes nodes, Crossing[] hub, (double Wanted, double AboveHem) size)
    {
        var usual = Whole(Math.Min(size.Wanted, Room(cut, nodes, hub, size.AboveHem)));
        var beside = hub.SelectMany(crossing => crossing.Corners).SelectMany(corner => Openings(cut, corner)).DefaultIfEmpty((string.Empty, double.PositiveInfinity)).MinBy(room => room.Item2);
        var hasZip = hub.SelectMany(crossing => crossing.Arcs).Any(arc => cut.Arcs[arc].MakeUp?.Form == MakeUpForm.Zip);
        return new HubRoom(hub[0].Label, Math.Min(usual, Whole(beside.Item2)), usual, beside.Item1, hasZip);
    }

    /// <summary>Whole millimetres, so that hubs which are alike but for the last digit have one patch.</summary>
    private static double Whole(double radius) => Math.Floor(radius + 1e-6);

    private static double Wanted(MarkWish marks, Crossing hub, bool isTop) =>
        (isTop && hub.Place == CrossingPlace.Hub ? marks.ApexDiameter : marks.PatchDiameter).Millimetres / 2;

    private static double Room(Subdivision cut, CornerNodes nodes, Crossing[] hub, double aboveHem) => Math.Min(
        Math.Min(aboveHem, hub.SelectMany(crossing => crossing.Corners).Min(corner => ToFarEdges(cut, corner))) - ClearOfHem,
        LargestShare * hub.SelectMany(crossing => crossing.Arcs).Select(arc => cut.Arcs[arc]).Where(arc => IsBetweenHubs(cut, nodes, arc))
            .Select(arc => arc.LengthMm).DefaultIfEmpty(double.PositiveInfinity).Min());

    /// <summary>From a corner of a patch to the nearest of its edges that do not end there: beyond it another face begins.</summary>
    private static double ToFarEdges(Subdivision cut, PatchSide corner)
    {
        var corners = cut.Patches[corner.Patch].Corners;
        return Enumerable.Range(1, corners.Length - 2).Select(step => (corner.Edge + step) % corners.Length)
            .Min(edge => Segments.Distance(corners[edge], corners[(edge + 1) % corners.Length], corners[corner.Edge]));
    }

    /// <summary>Radii that the openings beside a corner leave, each with the label of its rim.</summary>
    private static IEnumerable<(string Rim, double Radius)> Openings(Subdivision cut, PatchSide corner)
    {
        var (patch, at) = (cut.Patches[corner.Patch], cut.Patches[corner.Patch].Corners[corner.Edge]);
        var bites = Enumerable.Range(0, patch.Corners.Length).Select(edge => (cut.Arcs[patch.Arcs[edge]].Region, Gap: Segments.Distance(patch.Corners[edge], patch.Corners[(edge + 1) % patch.Corners.Length], at)))
            .Where(bite => bite.Region is not null).Select(bite => (Region: bite.Region!, bite.Gap));
        return patch.Holes.Select(hole => (hole.Region, Gap: ToHole(hole, at))).Concat(bites)
            .Select(rim => (rim.Region.Label, rim.Gap - rim.Region.RingMm - ClearOfRing));
    }

    private static double ToHole(PatchHole hole, Point2 at) => hole.Region.Radius is { } radius
        ? Point2.Distance(at, hole.Region.Centre.At) - radius
        : hole.Ring.Select((point, i) => Segments.Distance(point, hole.Ring[(i + 1) % hole.Ring.Length], at)).Min();

    /// <summary>Lines down to the skirt's foot are bounded by the hem already.</summary>
    private static bool IsBetweenHubs(Subdivision cut, CornerNodes nodes, Arc arc) =>
        nodes.IsHub(arc.First) && nodes.IsHub(arc.First with { Edge = (arc.First.Edge + 1) % cut.Patches[arc.First.Patch].Corners.Length });
}
