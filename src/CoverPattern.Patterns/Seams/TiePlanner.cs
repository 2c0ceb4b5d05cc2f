using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Seams;

/// <summary>Chooses for every tied hub the seam into which its tie is sewn.</summary>
/// <remarks>
/// The seam that rises most from the hub: a tie round the strut above slides down to the hub and stays there, one round a
/// strut below would slide away from it. Of equal ones the most clockwise.
/// </remarks>
public static class TiePlanner
{
    // Ends nearer in height than this count as level, millimetres: rounding of double arithmetic at 100 m.
    private const double Level = 1e-6;

    // A seam's end higher than this above the finished edge was cut off by an opening, not by the hem; millimetres.
    private const double OnHem = 1;

    /// <summary>Plans the ties of one cover.</summary>
    /// <param name="job">Which hubs are tied, and how far from the hub.</param>
    /// <param name="shell">The finished surface.</param>
    /// <param name="cut">The same cut up.</param>
    /// <returns>In order of the hubs' labels; a hub without a seam as long as twice the distance has none.</returns>
    public static ImmutableArray<Tie> Plan(Job job, Shell shell, Subdivision cut)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(shell);
        ArgumentNullException.ThrowIfNull(cut);
        if (job.Marks.Ties == TieRule.None)
        {
            return [];
        }

        var hubs = CrossingFinder.Find(shell, cut)
            .Where(crossing => crossing.Place is CrossingPlace.Hub or CrossingPlace.BaseHub)
            .DistinctBy(crossing => crossing.Label, StringComparer.Ordinal)
            .OrderBy(crossing => crossing.Label, StringComparer.Ordinal)
            .ToArray();
        var rings = HubLabels.Rings(shell);
        int RingOf(Crossing hub) => rings[hub.Label];
        var top = hubs.Max(RingOf);
        bool IsTied(Crossing hub, int at) => job.Marks.Ties == TieRule.Every
            || hub.Place == CrossingPlace.BaseHub
            || RingOf(hub) > top - 2
            || hubs[..at].Count(other => RingOf(other) == RingOf(hub)) % 2 == 0;
        return [.. hubs.Where(IsTied).SelectMany(hub => TieAt(job, shell, cut, hub))];
    }

    private static IEnumerable<Tie> TieAt(Job job, Shell shell, Subdivision cut, Crossing hub)
    {
        var distance = job.Marks.TieDistance.Millimetres;
        var seams = hub.Arcs.Select(arc => cut.Arcs[arc].Role == EdgeRole.Seam && cut.Arcs[arc].LengthMm >= 2 * distance).ToArray();
        if (!seams.Contains(true))
        {
            return [];
        }

        var heights = hub.Arcs.Select((arc, i) => seams[i] ? FarHeight(shell, cut, hub, arc) : double.NegativeInfinity).ToArray();
        var highest = heights.Select(height => height >= heights.Max() - Level).ToArray();
        var at = Enumerable.Range(0, highest.Length).Where(i => highest[i])
            .OrderBy(i => highest[(i + highest.Length - 1) % highest.Length]).ThenBy(i => i).First();
        return [new Tie(hub.Label, cut.Arcs[hub.Arcs[at]].Label, StartsAt(cut, hub, hub.Arcs[at]), distance)];
    }

    private static bool StartsAt(Subdivision cut, Crossing hub, int arc) => hub.Corners.Contains(cut.Arcs[arc].First);

    /// <summary>Height of the seam's other end, which may lie at an opening; a seam cut off at the hem hangs down.</summary>
    private static double FarHeight(Shell shell, Subdivision cut, Crossing hub, int arc)
    {
        var side = cut.Arcs[arc].First;
        var patch = cut.Patches[side.Patch];
        var face = shell.Faces[patch.Face];
        var far = StartsAt(cut, hub, arc) ? patch.Corners[(side.Edge + 1) % patch.Corners.Length] : patch.Corners[side.Edge];
        var node = face.Chart.IndexOf(far);
        return node >= 0 ? shell.Nodes[face.Nodes[node]].Position.Z
            : FaceHeight.Of(shell, face).At(far) > OnHem ? FacePlane.Of(shell, patch.Face).ToSpace(far).Z
            : double.MinValue;
    }
}
