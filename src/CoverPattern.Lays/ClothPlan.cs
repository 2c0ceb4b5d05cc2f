using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Lays.Nesting;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Lays;

/// <summary>Lays the pieces of one cloth.</summary>
/// <param name="job">How to lay.</param>
/// <param name="cloth">The cloth.</param>
/// <param name="patterns">Patterns by their ids.</param>
/// <param name="nest">Places outlines on a strip.</param>
internal sealed class ClothPlan(Job job, Cloth cloth, Dictionary<string, Pattern> patterns, Func<NestingTask, NestingLayout> nest)
{
    private readonly UsableStrip strip = UsableStrip.Of(cloth.RollWidth.Millimetres, cloth.UsableWidth, job.Lay.EndAllowance.Millimetres);

    // Lays of equal sets of pieces are equal; they are searched once.
    private readonly Dictionary<string, NestingLayout> known = new(StringComparer.Ordinal);

    /// <summary>The lays, numbered from 1.</summary>
    /// <param name="pieces">Pieces of this cloth in order of cover and label.</param>
    public ImmutableArray<Lay> Lay(Piece[] pieces)
    {
        if (pieces.Length == 0)
        {
            return [];
        }

        RequireStrip(pieces[0]);
        var covers = pieces.GroupBy(piece => CoverLabels.CoverOf(piece.Label), StringComparer.Ordinal).Select(cover => cover.ToArray()).ToArray();
        var area = covers[0].Sum(piece => LaidShapes.Area(patterns[piece.Pattern]));
        var (most, parts) = (LayPlanner.CoversInALay(area, strip.Width), 1);
        while (true)
        {
            try
            {
                return [.. Shared(covers, most, parts).Select((set, i) => LayOne(set, i + 1))];
            }
            catch (StripTooLongException) when (most > 1 || parts < covers[0].Length)
            {
                // The guess of the density was too good for these pieces: fewer covers a lay, and at last a part of one.
                (most, parts) = most > 1 ? (Math.Max(1, Math.Min(most, covers.Length) / 2), 1) : (1, parts + 1);
            }
        }
    }

    /// <summary>Covers shared out evenly over as few lays as hold them; a cover that is too much for one lay, in even parts.</summary>
    private static IEnumerable<Piece[]> Shared(Piece[][] covers, int most, int parts) => parts == 1
        ? Evenly(covers, ((covers.Length - 1) / most) + 1).Select(some => some.SelectMany(cover => cover).ToArray())
        : covers.SelectMany(cover => Evenly(cover, parts));

    private static IEnumerable<T[]> Evenly<T>(T[] all, int shares) =>
        Enumerable.Range(0, shares).Select(i => all[(int)((long)all.Length * i / shares)..(int)((long)all.Length * (i + 1) / shares)]);

    private Lay LayOne(Piece[] pieces, int number)
    {
        var kinds = pieces.GroupBy(piece => (piece.Pattern, piece.Mirrored)).Select(kind => kind.ToArray()).ToArray();
        var layout = Nest(kinds);
        var byLabel = pieces.ToDictionary(piece => piece.Label, piece => patterns[piece.Pattern], StringComparer.Ordinal);
        var order = pieces.Select((piece, i) => (piece.Label, i)).ToDictionary(entry => entry.Label, entry => entry.i, StringComparer.Ordinal);
        ImmutableArray<Placement> placements = [.. kinds.SelectMany((kind, item) => Named(kind, layout.Placements.Where(p => p.Item == item)))
            .OrderBy(placement => order[placement.Piece])];
        return new Lay(
            cloth.Name,
            cloth.RollWidth.Millimetres,
            cloth.UsableWidth,
            job.Lay.EndAllowance.Millimetres,
            placements.Max(placement => End(placement, byLabel[placement.Piece])) + job.Lay.EndAllowance.Millimetres,
            job.Lay.Spacing.Millimetres,
            job.Lay.FaceDown,
            placements,
            number);
    }

    /// <summary>How far along the roll a piece reaches, by its true outline: the search knows round ones only coarsely.</summary>
    private static double End(Placement placement, Pattern pattern)
    {
        var turn = RigidMap.FromDegrees(placement.TurnDegrees, default, placement.Mirrored);
        return placement.X + pattern.CutLine.Max(corner => Grid.Snap(turn.Apply(corner)).X);
    }

    private NestingLayout Nest(Piece[][] kinds)
    {
        var key = string.Join(';', kinds.Select(kind => FormattableString.Invariant($"{kind[0].Pattern}/{kind[0].Mirrored}/{kind.Length}")));
        if (!known.TryGetValue(key, out var layout))
        {
            var turns = LayPlanner.TurnsOn(cloth, job.Lay.Turns);
            ImmutableArray<NestingItem> items = [.. kinds.Select(kind => ItemOf(kind, turns))];
            var task = new NestingTask(strip.Width, job.Lay.Spacing.Millimetres, items, job.Lay.Effort, job.Lay.Seed);
            layout = NestNamed(task, kinds);
            known.Add(key, layout);
        }

        return layout;
    }

    private NestingLayout NestNamed(NestingTask task, Piece[][] kinds)
    {
        try
        {
            return nest(task);
        }
        catch (ItemTooWideException fault)
        {
            throw new RollTooNarrowException(cloth.Name, kinds[fault.Item][0].Label, fault.LeastWidth, cloth.UsableWidth);
        }
    }

    private NestingItem ItemOf(Piece[] kind, AllowedTurns turns)
    {
        var (pattern, isMirrored) = (patterns[kind[0].Pattern], IsMirrored(kind[0]));
        return new NestingItem(
            CoarseOutline.Around(LaidShapes.Ring(pattern.CutLine, isMirrored)),
            [.. pattern.Cutouts.Select(cutout => LaidShapes.Ring(cutout.CutLine, isMirrored))],
            kind.Length,
            turns);
    }

    /// <summary>Equal pieces take their places in order of their labels along the roll, so that the ticket reads well.</summary>
    private IEnumerable<Placement> Named(Piece[] kind, IEnumerable<NestingPlacement> places) =>
        kind.Zip(
            places.OrderBy(place => place.Shift.X).ThenBy(place => place.Shift.Y),
            (piece, place) => new Placement(piece.Label, place.Shift.X + strip.Origin.X, place.Shift.Y + strip.Origin.Y, place.TurnDegrees, IsMirrored(piece)));

    private bool IsMirrored(Piece piece) => piece.Mirrored != job.Lay.FaceDown;

    private void RequireStrip(Piece first)
    {
        if (strip.Width <= 0)
        {
            var height = Rings.Bounds(patterns[first.Pattern].CutLine).Height;
            throw new RollTooNarrowException(cloth.Name, first.Label, height, cloth.UsableWidth);
        }
    }
}
