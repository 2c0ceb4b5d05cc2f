using System;
using System.Linq;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Seams;

/// <summary>Lets felled seams stop short of hubs: there they are plain seams, trimmed, under a patch.</summary>
public static class HubStops
{
    /// <summary>How far from the hub a felled seam stops, millimetres; common practice, no source.</summary>
    public const double StopMm = 30;

    // A felled stretch shorter than this is not worth the folding, millimetres; the program's own choice.
    private const double ShortestFelled = 60;

    /// <summary>Makes felled seams of which too little would be left plain from end to end.</summary>
    /// <param name="job">Without the wish nothing changes.</param>
    /// <param name="shell">The finished surface.</param>
    /// <param name="cut">The same cut up.</param>
    public static Subdivision Shorten(Job job, Shell shell, Subdivision cut)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(cut);
        if (!job.Seam.StopAtHubs)
        {
            return cut;
        }

        var nodes = new CornerNodes(shell, cut);
        var least = Math.Max(ShortestFelled, job.Hem.Depth.Millimetres);
        return cut with { Arcs = [.. cut.Arcs.Select(arc => Stops(job, arc.MakeUp) && IsTooShort(cut, nodes, arc, least) ? arc with { MakeUp = arc.MakeUp!.SewnPlain() } : arc)] };
    }

    /// <summary>Lengths at the start and the end of a patch's edge that are sewn plain, millimetres; 0 where the seam does not stop.</summary>
    /// <param name="job">Without the wish nothing stops.</param>
    /// <param name="cut">The surface cut up, after <see cref="Shorten"/>.</param>
    /// <param name="nodes">Its corners.</param>
    /// <param name="side">The patch's edge.</param>
    internal static (double AtStart, double AtEnd) Of(Job job, Subdivision cut, CornerNodes nodes, PatchSide side)
    {
        var makeUp = cut.Arcs[cut.Patches[side.Patch].Arcs[side.Edge]].MakeUp;
        return Stops(job, makeUp) ? AtEnds(cut, nodes, side) : (0, 0);
    }

    /// <summary>Whether a seam stops: felled, and not the closing seam, whose whole allowance is kept for fitting.</summary>
    internal static bool Stops(Job job, MakeUp? makeUp) => job.Seam.StopAtHubs && makeUp is { IsFelled: true, IsClosing: false };

    private static bool IsTooShort(Subdivision cut, CornerNodes nodes, Arc arc, double least)
    {
        var (start, end) = AtEnds(cut, nodes, arc.First);
        return start + end > 0 && arc.LengthMm - start - end < least;
    }

    private static (double AtStart, double AtEnd) AtEnds(Subdivision cut, CornerNodes nodes, PatchSide side)
    {
        var next = side with { Edge = (side.Edge + 1) % cut.Patches[side.Patch].Corners.Length };
        return (nodes.IsHub(side) ? StopMm : 0, nodes.IsHub(next) ? StopMm : 0);
    }
}
