using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Lays.Estimates;

/// <summary>Counts cloth, seams, hems, pieces and weight.</summary>
public static class Estimator
{
    private const double SquareMillimetresPerSquareMetre = 1e6;
    private const double GramsPerKilogram = 1000;

    /// <summary>Counts what a job takes.</summary>
    /// <param name="job">Cloths and seam construction.</param>
    /// <param name="pieces">All patterns and pieces.</param>
    /// <param name="lays">All lays.</param>
    public static Estimate Count(Job job, PieceSet pieces, ImmutableArray<Lay> lays)
    {
        var patterns = LaidShapes.ById(pieces);
        var counted = Lays(job, pieces, patterns, lays);
        Piece[][] covers = [.. pieces.Pieces.GroupBy(piece => CoverLabels.CoverOf(piece.Label), StringComparer.Ordinal).Select(cover => cover.ToArray())];
        var (total, buying) = (Sewing(job, patterns, covers, pieces), Buying(lays));
        return new Estimate(
            counted,
            covers.Length > 0 ? Sewing(job, patterns, covers[..1], pieces) : total,
            total,
            counted.Sum(lay => lay.ClothAreaM2),
            counted.Sum(lay => lay.PieceAreaM2),
            counted.Sum(lay => lay.FalloutM2),
            counted.All(lay => lay.WeightKg is not null) ? counted.Sum(lay => lay.WeightKg) : null)
        {
            Buying = buying,
            Cost = CostCounter.Count(job, buying, total),
        };
    }

    private static ImmutableArray<ClothNeed> Buying(ImmutableArray<Lay> lays) =>
        [.. lays.GroupBy(lay => lay.Cloth, StringComparer.Ordinal).Select(cloth => ClothNeed.Of(cloth.Key, cloth.First().RollWidthMm, cloth.Sum(lay => lay.ClothMm)))];

    private static ImmutableArray<LayEstimate> Lays(Job job, PieceSet pieces, Dictionary<string, Pattern> patterns, ImmutableArray<Lay> lays)
    {
        var areas = patterns.ToDictionary(pattern => pattern.Key, pattern => LaidShapes.Area(pattern.Value) / SquareMillimetresPerSquareMetre, StringComparer.Ordinal);
        var areaByLabel = pieces.Pieces.ToDictionary(piece => piece.Label, piece => areas[piece.Pattern], StringComparer.Ordinal);
        var massByCloth = job.Cloths.ToDictionary(cloth => cloth.Name, cloth => cloth.MassPerArea, StringComparer.Ordinal);
        return [.. lays.Select(lay => OneLay(lay, lay.Placements.SelectMany(placement => placement.Pieces).Sum(piece => areaByLabel[piece]), massByCloth[lay.Cloth]))];
    }

    private static LayEstimate OneLay(Lay lay, double pieceArea, double? massPerArea)
    {
        var clothArea = lay.RollWidthMm * lay.ClothMm / SquareMillimetresPerSquareMetre;
        var usedArea = lay.Plies * lay.UsableWidthMm * (lay.LengthMm - (2 * lay.EndAllowanceMm)) / SquareMillimetresPerSquareMetre;
        return new LayEstimate(
            lay.Cloth,
            lay.Number,
            lay.LengthMm,
            clothArea,
            pieceArea,
            usedArea > 0 ? 100 * pieceArea / usedArea : 0,
            clothArea > 0 ? 100 * pieceArea / clothArea : 0,
            clothArea - pieceArea,
            lay.PieceCount,
            massPerArea * pieceArea / GramsPerKilogram);
    }

    /// <summary>Sewing of some covers: each seam has two sides that bear the same label and is counted once.</summary>
    private static SewingEstimate Sewing(Job job, Dictionary<string, Pattern> patterns, Piece[][] covers, PieceSet set)
    {
        var sewn = covers.Select(cover => SewnLengths.Of(patterns, cover)).ToArray();
        ImmutableArray<SeamEstimate> seams =
        [
            .. sewn.SelectMany(cover => cover.Seams).GroupBy(seam => seam.MakeUp, StringComparer.Ordinal)
                .OrderBy(group => group.Key, StringComparer.Ordinal)
                .Select(group => new SeamEstimate(group.Key, group.Count(), group.Sum(seam => seam.LengthMm)) { Rows = RowsOf(job, group.Key) }),
            .. sewn.SelectMany(cover => cover.Stitched).GroupBy(line => line.Name, StringComparer.Ordinal)
                .OrderBy(group => group.Key, StringComparer.Ordinal)
                .Select(group => new SeamEstimate(group.Key, group.Count(), group.Sum(line => line.LengthMm)) { Rows = 1 }),
        ];
        return new SewingEstimate(covers.Length, covers.Sum(cover => cover.Length), seams, sewn.Sum(cover => cover.Hems.Sum()))
        {
            Notions = NotionCounter.Count(job, sewn, covers.Length * set.Ties.Length, [.. Enumerable.Repeat(set.Fittings, covers.Length).SelectMany(fittings => fittings)]),
        };
    }

    private static int RowsOf(Job job, string makeUp) =>
        job.SeamMakeUps.Concat(job.Liner is null ? [] : LinerWish.MakeUps).FirstOrDefault(known => string.Equals(known.Name, makeUp, StringComparison.Ordinal))?.Rows ?? 0;
}
