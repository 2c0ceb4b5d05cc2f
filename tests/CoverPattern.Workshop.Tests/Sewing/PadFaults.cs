using System;
using System.Collections.Generic;
using System.Linq;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>Holds insulation pads to the facets of the true frame, by closed forms of area and girth.</summary>
internal static class PadFaults
{
    private const double HalfStep = 0.0007;

    /// <summary>Everything that does not fit.</summary>
    /// <param name="file">The pieces.</param>
    /// <param name="frame">The frame in the tests' own numbers.</param>
    /// <param name="free">How far pads keep from the struts' axes, and from hub centres.</param>
    /// <param name="without">Labels of facets without a pad.</param>
    internal static IEnumerable<string> Find(SewnFile file, TrueMesh frame, (double Axis, double Hub) free, IReadOnlyCollection<string> without)
    {
        var patterns = file.Patterns.ToDictionary(pattern => pattern.Id);
        var pads = file.Pieces.Where(piece => patterns[piece.Pattern].Kind == "pad").ToDictionary(piece => piece.Label);
        foreach (var facet in frame.Facets)
        {
            var label = "A" + facet.Label[1..];
            if (!pads.Remove(label, out var pad) != without.Contains(facet.Label))
            {
                yield return $"Facet {facet.Label} {(pad is null ? "has no pad" : "has a pad")}.";
                continue;
            }

            if (pad is null)
            {
                continue;
            }

            var (area, girth) = Truth([.. facet.Hubs.Select(hub => frame.Hubs[hub])], free);
            var ring = patterns[pad.Pattern].SewLine;
            var round = ring.Select((corner, i) => corner.DistanceTo(ring[(i + 1) % ring.Count])).Sum();
            if (!(Math.Abs(FlatPoint.AreaOf(ring) - area) <= HalfStep * girth) || !(Math.Abs(round - girth) <= 2 * HalfStep * ring.Count))
            {
                yield return FormattableString.Invariant($"Pad {label} has {FlatPoint.AreaOf(ring)} mm2 and {round} mm round, not {area} and {girth}.");
            }

            if (patterns[pad.Pattern].Runs.Any(run => run.Role != "raw" || run.AllowanceMm != 0))
            {
                yield return $"Pad {label} is not cut as it is.";
            }
        }

        foreach (var label in pads.Keys)
        {
            yield return $"Pad {label} belongs nowhere.";
        }
    }

    /// <summary>A triangle of inradius r moved in by d is smaller by (r - d) / r; at each corner of angle w a cap is cut off, k = hub - d / sin(w / 2) high.</summary>
    private static (double Area, double Girth) Truth(SpacePoint[] corners, (double Axis, double Hub) free)
    {
        double[] sides = [corners[0].DistanceTo(corners[1]), corners[1].DistanceTo(corners[2]), corners[2].DistanceTo(corners[0])];
        var half = sides.Sum() / 2;
        var whole = Math.Sqrt(half * (half - sides[0]) * (half - sides[1]) * (half - sides[2]));
        var smaller = 1 - (free.Axis * half / whole);
        var (area, girth) = (whole * smaller * smaller, 2 * half * smaller);
        foreach (var i in Enumerable.Range(0, 3))
        {
            var (left, right, facing) = (sides[i], sides[(i + 2) % 3], sides[(i + 1) % 3]);
            var angle = Math.Acos(((left * left) + (right * right) - (facing * facing)) / (2 * left * right)) / 2;
            var cap = Math.Max(0, free.Hub - (free.Axis / Math.Sin(angle)));
            area -= cap * cap * Math.Tan(angle);
            girth += (2 * cap * Math.Tan(angle)) - (2 * cap / Math.Cos(angle));
        }

        return (area, girth);
    }
}
