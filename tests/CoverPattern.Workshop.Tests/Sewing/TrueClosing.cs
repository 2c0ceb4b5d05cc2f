using System;
using System.Collections.Generic;
using System.Linq;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>Where the seam that is sewn last has to run: from the finished edge at the rear up the steepest struts to the ring below the top row.</summary>
internal sealed class TrueClosing
{
    // Rounding of double arithmetic, as shares and millimetres.
    private const double Same = 1e-6;

    private readonly List<(SpacePoint Low, SpacePoint High)> lines = [];

    internal TrueClosing(CoverSizes sizes, TrueCover cover)
    {
        var frame = sizes.Mesh;
        var lowest = frame.Base;
        var rear = lowest.Min(hub => cover.Over(hub).X);

        // Of two at the rear the first one counter-clockwise from the front.
        var at = lowest.Where(hub => cover.Over(hub).X < rear + Same).MaxBy(hub => cover.Over(hub).Y);
        lines.Add((cover.Over(at + frame.Hubs.Count), cover.Over(at)));
        var top = Enumerable.Range(0, frame.Hubs.Count).Max(frame.RingOf);
        for (var ring = 1; ring < Math.Max(2, top); ring++)
        {
            var up = frame.Facets.Where(facet => facet.Hubs.Contains(at)).SelectMany(facet => facet.Hubs).Where(hub => frame.RingOf(hub) == ring).Distinct().ToArray();
            var steepest = up.Max(hub => Rise(cover.Over(at), cover.Over(hub)));
            var next = up.Where(hub => Rise(cover.Over(at), cover.Over(hub)) > steepest - Same)
                .MaxBy(hub => Math.Round((cover.Over(at).X * cover.Over(hub).Y) - (cover.Over(at).Y * cover.Over(hub).X), 3));
            lines.Add((cover.Over(at), cover.Over(next)));
            at = next;
        }
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
