using System;
using System.Collections.Generic;
using System.Linq;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>Where the seam that is sewn last has to run: from the finished edge at the rear up the steepest struts to the ring below the top row.</summary>
internal sealed class TrueClosing
{
    // Rounding of double arithmetic, as shares and millimetres.
    private const double Same = 1e-6;

    private readonly List<(SpacePoint Low, SpacePoint High)> lines;

    /// <param name="sizes">The surface.</param>
    /// <param name="cover">The same in space.</param>
    /// <param name="isSeam">Whether the cover was to be sewn between two points; over a fold the seam cannot run.</param>
    internal TrueClosing(CoverSizes sizes, TrueCover cover, Func<SpacePoint, SpacePoint, bool> isSeam)
    {
        var frame = sizes.Mesh;

        // The rearmost from which seams rise all the way; of two at the rear the first one counter-clockwise from the front.
        lines = frame.Base
            .OrderBy(hub => Math.Round(cover.Over(hub).X, 3)).ThenByDescending(hub => cover.Over(hub).Y)
            .Select(hub => Rising(frame, cover, hub, isSeam)).OfType<List<(SpacePoint, SpacePoint)>>().FirstOrDefault() ?? [];
    }

    /// <summary>The chain from a base hub up, at each hub along the steepest seam; null where it ends too soon.</summary>
    private static List<(SpacePoint, SpacePoint)>? Rising(TrueMesh frame, TrueCover cover, int at, Func<SpacePoint, SpacePoint, bool> isSeam)
    {
        var foot = (Low: cover.Over(at + frame.Hubs.Count), High: cover.Over(at));
        var chain = new List<(SpacePoint, SpacePoint)> { foot };
        if (foot.Low.DistanceTo(foot.High) > Tolerances.OnCover && !isSeam(foot.Low, foot.High))
        {
            return null;
        }

        var top = Enumerable.Range(0, frame.Hubs.Count).Max(frame.RingOf);
        for (var ring = 1; ring < Math.Max(2, top); ring++)
        {
            var up = frame.Facets.Where(facet => facet.Hubs.Contains(at)).SelectMany(facet => facet.Hubs).Where(hub => frame.RingOf(hub) == ring).Distinct()
                .Where(hub => isSeam(cover.Over(at), cover.Over(hub))).ToArray();
            if (up.Length == 0)
            {
                return null;
            }

            var steepest = up.Max(hub => Rise(cover.Over(at), cover.Over(hub)));
            var next = up.Where(hub => Rise(cover.Over(at), cover.Over(hub)) > steepest - Same)
                .MaxBy(hub => Math.Round((cover.Over(at).X * cover.Over(hub).Y) - (cover.Over(at).Y * cover.Over(hub).X), 3));
            chain.Add((cover.Over(at), cover.Over(next)));
            at = next;
        }

        return chain;
    }

    /// <summary>Whether a seam lies on it.</summary>
    internal bool Holds((SpacePoint From, SpacePoint To) seam) => lines.Exists(line => IsOn(line, seam.From) && IsOn(line, seam.To));

    private static double Rise(SpacePoint low, SpacePoint high) => (high.Z - low.Z) / low.DistanceTo(high);

    private static bool IsOn((SpacePoint Low, SpacePoint High) line, SpacePoint point)
    {
        var length = line.Low.DistanceTo(line.High);
        return length > 0 && line.Low.DistanceTo(point) + point.DistanceTo(line.High) <= length + (2 * Tolerances.OnCover);
    }
}
