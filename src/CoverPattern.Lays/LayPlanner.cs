using System;
using System.Collections.Immutable;
using System.Linq;
using System.Threading;
using CoverPattern.Lays.Nesting;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Lays;

/// <summary>Lays all pieces of a job on rolls of cloth.</summary>
public static class LayPlanner
{
    // A lay of this density and length stays well below the 131 m that can be proved; longer tables are rare anyway.
    private const double GuessedDensity = 0.6;
    private const double LongestGuessMm = 100_000;

    /// <summary>Makes the lays, cloth by cloth in the job's order; a cloth without pieces gets none.</summary>
    /// <param name="job">Cloths and how to lay.</param>
    /// <param name="pieces">What to lay.</param>
    /// <param name="progress">Told of every full layout of each strip; may be null.</param>
    /// <param name="cancel">Stops the search; the best lays so far are returned.</param>
    /// <returns>
    /// One lay a cloth, or several where one would be too long: of whole covers, or of parts of a cover that is too much for one lay;
    /// for the table; on several rolls; or because not all pieces can be cut in plies. Cloths whose lays the job keeps have those.
    /// </returns>
    /// <exception cref="RollTooNarrowException">Pieces fit the usable width in no allowed turn; nothing was laid.</exception>
    /// <exception cref="NotEnoughClothException">The rolls that the job names do not hold the pieces.</exception>
    /// <exception cref="PieceTooLongException">A piece is longer than the table.</exception>
    /// <exception cref="FlawsOnPliesException">No lay of several plies keeps clear of the flaws of each.</exception>
    /// <exception cref="HandsUnequalException">Plies are to lie face to face, and the pieces are not needed equally in both hands.</exception>
    /// <exception cref="EarlierLaysRefusedException">Lays that the job keeps, or locks pieces of, are not right.</exception>
    /// <exception cref="StripTooLongException">A single piece needs more than 131 m.</exception>
    /// <exception cref="OperationCanceledException">Cancelled before there was any layout.</exception>
    public static ImmutableArray<Lay> Plan(Job job, PieceSet pieces, IProgress<NestingProgress>? progress, CancellationToken cancel)
    {
        var patterns = LaidShapes.ById(pieces);
        var cloths = job.Cloths.Select(cloth => (
            Kept: KeptLays.Of(job, cloth, pieces),
            Plan: new ClothPlan(job, cloth, patterns, new OutlineNest(job.Lay.Style, progress, cancel)),
            Own: pieces.Pieces.Where(piece => string.Equals(patterns[piece.Pattern].Cloth, cloth.Name, StringComparison.Ordinal)).ToArray())).ToArray();

        // Before anything is laid, so that nobody waits for a lay that is of no use, and all are told at once.
        ImmutableArray<TooWidePiece> tooWide = [.. cloths.Where(cloth => cloth.Kept.IsEmpty).SelectMany(cloth => cloth.Plan.TooWide(cloth.Own))];
        return tooWide.IsEmpty
            ? [.. cloths.SelectMany(cloth => cloth.Kept.IsEmpty ? cloth.Plan.Lay(cloth.Own) : cloth.Kept)]
            : throw new RollTooNarrowException(tooWide);
    }

    /// <summary>The turns pieces of a cloth may take.</summary>
    /// <remarks>A one-way nap allows none, which costs up to a third of the cloth on triangles; see docs/lays.md.</remarks>
    public static AllowedTurns TurnsOn(Cloth cloth, TurnRule rule) => (cloth.Nap, rule) switch
    {
        (Nap.OneWay, _) => AllowedTurns.None,
        (_, TurnRule.Free) => AllowedTurns.Free,
        _ => AllowedTurns.HalfTurn,
    };

    /// <summary>How many covers go on one lay so that it stays well below the longest that can be proved; at least one.</summary>
    internal static int CoversInALay(double areaOfACover, double usableWidth) =>
        (int)Math.Clamp(LongestGuessMm * usableWidth * GuessedDensity / areaOfACover, 1, int.MaxValue);
}
