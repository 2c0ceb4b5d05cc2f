using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Refuses holes that their piece cannot hold.</summary>
internal static class HoleCheck
{
    /// <param name="model">The piece, which tells whose rims its holes are.</param>
    /// <param name="pattern">Its pattern, with the holes in the same order.</param>
    internal static IEnumerable<Fault> Faults(PieceDraft model, Pattern pattern)
    {
        var outline = Rings.ToSteps(pattern.SewLine);
        var holes = pattern.Cutouts.Zip(model.Cutouts, (cutout, drafted) => (Arc: drafted.Run.At.Arc, Rim: Rings.ToSteps(cutout.Rim), Cut: Rings.ToSteps(cutout.CutLine), Allowance: cutout.Run.AllowanceMm)).ToArray();
        foreach (var (hole, i) in holes.Select((hole, i) => (hole, i)))
        {
            var over = holes.Skip(i + 1).Where(other => Overlap(hole.Rim, other.Rim)).Select(other => other.Arc).FirstOrDefault();
            var wrong = hole.Rim.Any(corner => ExactPredicates.Locate(outline, corner) <= 0) ? "reaches over the piece's edge"
                : hole.Allowance != 0 && !HoldsItsAllowance(hole.Rim, hole.Cut) ? FormattableString.Invariant($"is smaller than its own allowance of {hole.Allowance:0.#} mm, or bends more sharply")
                : over is not null ? $"lies over {over}"
                : null;
            if (wrong is not null)
            {
                yield return new Fault(PlaceOf(hole.Arc), hole.Arc, $"Piece {model.Label}: the hole {hole.Arc} {wrong}. Move it or make it larger or smaller.");
            }
        }
    }

    private static bool HoldsItsAllowance(ImmutableArray<GridPoint> rim, ImmutableArray<GridPoint> cut) =>
        ExactPredicates.IsSimple(cut) && cut.All(corner => ExactPredicates.Locate(rim, corner) > 0);

    private static bool Overlap(ImmutableArray<GridPoint> left, ImmutableArray<GridPoint> right) =>
        left.Any(corner => ExactPredicates.Locate(right, corner) >= 0) || right.Any(corner => ExactPredicates.Locate(left, corner) >= 0);

    /// <summary>Where the job asks for a hole: rims of openings and pipes bear their label, the place in the job's list; those of windows numbers of their own.</summary>
    internal static string PlaceOf(string arc)
    {
        var section = arc[0] switch { 'O' => "openings", 'J' => "pipes", _ => "windows" };
        var number = arc[1..].Split('-')[0];
        return section != "windows" && int.TryParse(number, CultureInfo.InvariantCulture, out var entry) ? FormattableString.Invariant($"{section}[{entry - 1}]") : section;
    }
}
