using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Where patches add a ply.</summary>
public static class PatchedHubs
{
    /// <summary>Labels of hubs with patches, one entry a patch: over the hub, and under the clips of inside corners there.</summary>
    /// <param name="job">On which sides patches lie.</param>
    /// <param name="shell">The finished surface.</param>
    /// <param name="cut">The same cut up.</param>
    /// <param name="pieces">Tell the patches under clips.</param>
    public static ImmutableArray<string> Of(Job job, Shell shell, Subdivision cut, PieceSet pieces)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(pieces);
        return
        [
            .. HubPatchPlanner.Plan(job, shell, cut).SelectMany(patch => Enumerable.Repeat(patch.Hub, job.Marks.PatchesAtHub)),
            .. pieces.ClipPatches.Select(patch => patch.Hub),
        ];
    }
}
