using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Seams;

/// <summary>Counts plies and thickness where seams meet.</summary>
/// <remarks>
/// Own model. The seam sewn last runs through the crossing from end to end; half of its P plies come from either side, and on a
/// side where another seam of p plies ends each of them is p - 1 plies thicker. So the plies are P (1 + sum of (p - 1) / 2 over
/// all seam ends but the two of the last seam), rounded up; two seam lines that cross multiply, felled and felled to 16.
/// A turned-up hem multiplies once more, a rim turned under doubles. The seam with the most plies counts as the last.
/// </remarks>
public static class BulkCounter
{
    // A seam pressed open: one ply of each side over the piece and its allowance.
    private const int PressedOpen = 2;

    /// <summary>Counts for every crossing.</summary>
    /// <param name="job">Stops, corners, patches, hem and the cloth's thickness are read.</param>
    /// <param name="cut">The surface cut up.</param>
    /// <param name="crossings">Its crossings.</param>
    /// <param name="patched">Labels of hubs with patches, one entry a patch.</param>
    public static ImmutableArray<CrossingBulk> Count(Job job, Subdivision cut, ImmutableArray<Crossing> crossings, ImmutableArray<string> patched)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(cut);
        var patches = patched.ToLookup(hub => hub, StringComparer.Ordinal);
        return [.. crossings.Select(crossing => CountOne(job, cut, crossing, patches[crossing.Label].Count()))];
    }

    private static CrossingBulk CountOne(Job job, Subdivision cut, Crossing crossing, int patches)
    {
        var atHub = crossing.Place is CrossingPlace.Hub or CrossingPlace.BaseHub;
        var arcs = crossing.Arcs.Select(arc => cut.Arcs[arc]).ToArray();
        var seams = arcs.Where(arc => arc.Role == EdgeRole.Seam).Select(arc => arc.MakeUp!).ToArray();
        var stops = atHub && seams.Any(seam => HubStops.Stops(job, seam));
        var plies = PliesOf([.. seams.Select(seam => PliesAt(job, seam, atHub))]);
        var isAtHem = arcs.Any(arc => arc.Role == EdgeRole.Hem);
        if (isAtHem)
        {
            plies *= 1 + (job.Hem.Depth.Millimetres > 0 ? 1 : 0) + (job.Hem.TurnUnder.Millimetres > 0 ? 1 : 0);
        }

        if (arcs.Any(arc => arc.Role == EdgeRole.Rim))
        {
            // Turned under once.
            plies *= 2;
        }

        plies += patches;
        return new CrossingBulk(
            crossing,
            seams.Length,
            arcs.Count(arc => arc.Role == EdgeRole.Fold),
            seams.Any(seam => seam.IsFelled && !(atHub && HubStops.Stops(job, seam))),
            stops,
            plies,
            plies * job.Cloths[0].Thickness?.Millimetres)
        {
            IsAtHem = isAtHem,
            IsAtRim = arcs.Any(arc => arc.Role == EdgeRole.Rim),
        };
    }

    private static int PliesAt(Job job, MakeUp seam, bool atHub) => atHub && (HubStops.Stops(job, seam) || IsTrimmed(job, seam)) ? PressedOpen : seam.Plies;

    /// <summary>Plain seams whose corners are trimmed can be pressed open there.</summary>
    private static bool IsTrimmed(Job job, MakeUp seam) => seam.Form == MakeUpForm.Plain && job.Seam.Corners == CornerStyle.Trimmed;

    /// <summary>Plies where seams of these plies end in one point; one ply without a seam.</summary>
    internal static int PliesOf(ImmutableArray<int> seams)
    {
        var falling = seams.OrderDescending().ToArray();
        return falling.Length == 0 ? 1 : (int)Math.Ceiling(falling[0] * (1 + (falling.Skip(2).Sum(plies => plies - 1) / 2.0)));
    }
}
