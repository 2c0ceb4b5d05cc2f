using System;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Results;

/// <summary>Numbers of one cover: the area from the surface before anything was snapped, lengths as they are sewn.</summary>
/// <param name="AreaM2">Finished shell with skirt and drop, after ease, without allowances, square metres.</param>
/// <param name="HemMm">Finished lower edge after ease, millimetres.</param>
/// <param name="SeamsMm">All seams, each counted once, millimetres.</param>
/// <param name="WorstPartnerDifferenceMm">Largest difference between the sewn lengths of two partner edges, millimetres.</param>
public sealed record SummaryNumbers(double AreaM2, double HemMm, double SeamsMm, double WorstPartnerDifferenceMm)
{
    private const double SquareMillimetresPerSquareMetre = 1e6;

    /// <summary>Counts a result.</summary>
    public static SummaryNumbers Of(Result result)
    {
        ArgumentNullException.ThrowIfNull(result);

        return new SummaryNumbers(
            result.Cut.Patches.Sum(patch => Rings.SignedArea(patch.Corners)) / SquareMillimetresPerSquareMetre,
            result.Estimate.PerCover.HemMm,
            result.Estimate.PerCover.Seams.Sum(seam => seam.LengthMm),
            WorstPartnerDifference(result));
    }

    private static double WorstPartnerDifference(Result result)
    {
        var patterns = result.Pieces.Patterns.ToDictionary(pattern => pattern.Id, StringComparer.Ordinal);
        var lengths = result.Pieces.Pieces.ToDictionary(piece => piece.Label, piece => patterns[piece.Pattern].AllRuns, StringComparer.Ordinal);
        return result.Pieces.Pieces
            .SelectMany(piece => piece.Runs.Select((run, i) => (run.Partner, Length: lengths[piece.Label][i].LengthMm)))
            .Where(entry => entry.Partner is not null)
            .Select(entry => Math.Abs(entry.Length - lengths[entry.Partner!.Piece][entry.Partner.Run].LengthMm))
            .DefaultIfEmpty(0)
            .Max();
    }
}
