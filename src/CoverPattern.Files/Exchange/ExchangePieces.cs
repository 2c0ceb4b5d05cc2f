using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using CoverPattern.Files.Results;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Files.Exchange;

/// <summary>Patterns as pieces of an exchange file.</summary>
public static class ExchangePieces
{
    private const double CrossHalf = 4;

    /// <summary>One piece a pattern.</summary>
    /// <param name="set">All patterns and pieces.</param>
    /// <param name="head">Title and date of the job.</param>
    public static ExchangeStyle Of(PieceSet set, SummaryHead head)
    {
        ArgumentNullException.ThrowIfNull(set);
        ArgumentNullException.ThrowIfNull(head);
        return new ExchangeStyle(head.Title, head.Date.ToString("dd-MM-yyyy", CultureInfo.InvariantCulture), [.. set.Patterns.Select(pattern => Of(pattern, set))]);
    }

    private static ExchangePiece Of(Pattern pattern, PieceSet set)
    {
        var left = set.Pieces.Count(piece => piece.Pattern == pattern.Id && piece.Mirrored);
        return new ExchangePiece(
            pattern.Id,
            pattern.Quantity - left,
            left,
            pattern.Cloth,
            pattern.CutLine,
            [.. SewStretches.Of(pattern), .. pattern.Cutouts.Select(cutout => Closed(cutout.Rim))],
            [.. pattern.Cutouts.Select(cutout => cutout.CutLine)],
            [.. Drawn(pattern)],
            [.. pattern.Notches.Where(notch => notch.Form == NotchForm.Slit).Select(Slit)],
            [.. pattern.Drills.Where(drill => drill.IsPierced).Select(drill => new ExchangeDrill(drill.At, DrillMark.HoleDiameter))],
            pattern.Grain.From,
            pattern.Grain.To,
            [new ExchangeNote(pattern.LabelSpot, pattern.Id), .. pattern.Drills.Select(drill => new ExchangeNote(drill.At + new Point2(CrossHalf, CrossHalf), drill.Purpose))]);
    }

    private static ImmutableArray<Point2> Closed(ImmutableArray<Point2> ring) => ring.Add(ring[0]);

    /// <summary>What a pen draws: folds, clip and weld lines, ticks, crosses of marks that are not pierced.</summary>
    private static IEnumerable<ImmutableArray<Point2>> Drawn(Pattern pattern) =>
    [
        .. pattern.Folds.Select(fold => ImmutableArray.Create(fold.From, fold.To)),
        .. pattern.Lines.Select(line => line.Path),
        .. pattern.Notches.Where(notch => notch.Form == NotchForm.Tick).Select(notch => ImmutableArray.Create(notch.Outer, notch.Inner)),
        .. pattern.Drills.Where(drill => !drill.IsPierced).SelectMany(drill => Cross(drill.At)),
    ];

    private static IEnumerable<ImmutableArray<Point2>> Cross(Point2 at) =>
    [
        [at - new Point2(CrossHalf, 0), at + new Point2(CrossHalf, 0)],
        [at - new Point2(0, CrossHalf), at + new Point2(0, CrossHalf)],
    ];

    private static ExchangeNotch Slit(Notch notch)
    {
        var inward = notch.Inner - notch.Outer;
        return new ExchangeNotch(notch.Outer, ExchangeNotchKind.Slit, inward.Length, 0, Math.Atan2(inward.Y, inward.X) * 180 / Math.PI);
    }
}
