using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Makes the patches that lie over hubs: round pieces of the cover's cloth, cut to their size.</summary>
public static class HubPatchPieces
{
    /// <summary>The patches of one cover.</summary>
    /// <param name="job">On which sides they lie, and their diameters.</param>
    /// <param name="shell">The finished surface.</param>
    /// <param name="cut">The same cut up.</param>
    /// <returns>One or two a hub, named for it, such as "H1.03-in" and "H1.03-out".</returns>
    public static ImmutableArray<AddedPiece> Make(Job job, Shell shell, Subdivision cut)
    {
        ArgumentNullException.ThrowIfNull(job);
        string[] sides = job.Marks.HubPatches switch
        {
            HubPatchPlace.Both => ["-in", "-out"],
            HubPatchPlace.Inside => ["-in"],
            HubPatchPlace.Outside => ["-out"],
            _ => [],
        };
        return
        [
            .. from patch in HubPatchPlanner.Plan(job, shell, cut)
               from side in sides
               select AddedPiece.Disc(
                   patch.Hub + side,
                   job.Cloths[0].Name,
                   PieceKind.Patch,
                   new AddedEdge(patch.Hub + side, IsSecond: false, EdgeRole.Raw, 0) { Radius = patch.RadiusMm }),
        ];
    }
}
