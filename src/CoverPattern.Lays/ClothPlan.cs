using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Lays.Nesting;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Lays;

/// <summary>Lays the pieces of one cloth.</summary>
/// <param name="job">How to lay.</param>
/// <param name="cloth">The cloth.</param>
/// <param name="patterns">Patterns by their ids.</param>
/// <param name="nest">Places outlines on a strip.</param>
internal sealed class ClothPlan(Job job, Cloth cloth, Dictionary<string, Pattern> patterns, OutlineNest nest)
{
    private static readonly Dictionary<string, NestingPlacement> NoneStay = [];

    private readonly LayMaker maker = new(job, cloth, patterns);

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

        var sets = PieceStacks.Of(job.Lay, cloth.Name, patterns, pieces);
        var lays = Continued(pieces) is { IsEmpty: false } continued ? continued : cloth.Rolls.IsEmpty && job.Lay.Table is null
            ? sets.SelectMany(set => ByCovers(set.Stacks)).ToImmutableArray()
            : new RollPlan(job, cloth, maker, patterns, nest.NestWithin).Lay(sets);
        return [.. lays.Select((lay, i) => lay with { Number = i + 1 })];
    }

    /// <summary>Patterns wider than the roll in every turn they may take.</summary>
    /// <param name="pieces">Pieces of this cloth.</param>
    public IEnumerable<TooWidePiece> TooWide(Piece[] pieces) => pieces.DistinctBy(piece => piece.Pattern)
        .Select(piece => new TooWidePiece(cloth.Name, piece.Label, maker.LeastWidth(piece), cloth.UsableWidth))
        .Where(piece => piece.PieceMm > maker.Strip.Width);

    /// <summary>Lays searched on from those that the job names; none when it names none of this cloth.</summary>
    private ImmutableArray<Lay> Continued(Piece[] pieces)
    {
        var earlier = job.Lay.Start?.Lays.Where(lay => string.Equals(lay.Cloth, cloth.Name, StringComparison.Ordinal)).OrderBy(lay => lay.Number).ToImmutableArray() ?? [];
        return earlier.IsEmpty ? [] : new ContinuedLays(job, cloth, maker, patterns, nest.Nest).Lay(earlier, pieces);
    }

    private ImmutableArray<Lay> ByCovers(ImmutableArray<PieceStack> stacks)
    {
        var covers = stacks.GroupBy(stack => CoverLabels.CoverOf(stack.Top.Label), StringComparer.Ordinal).Select(cover => cover.ToArray()).ToArray();
        var area = covers[0].Sum(stack => LaidShapes.Area(patterns[stack.Top.Pattern]));
        var (most, parts) = (LayPlanner.CoversInALay(area, maker.Strip.Width), 1);
        while (true)
        {
            try
            {
                return [.. Shared(covers, most, parts).Select(LayOne)];
            }
            catch (StripTooLongException) when (most > 1 || parts < covers[0].Length)
            {
                // The guess of the density was too good for these pieces: fewer covers a lay, and at last a part of one.
                (most, parts) = most > 1 ? (Math.Max(1, Math.Min(most, covers.Length) / 2), 1) : (1, parts + 1);
            }
        }
    }

    /// <summary>Covers shared out evenly over as few lays as hold them; a cover that is too much for one lay, in even parts.</summary>
    private static IEnumerable<PieceStack[]> Shared(PieceStack[][] covers, int most, int parts) => parts == 1
        ? Evenly(covers, ((covers.Length - 1) / most) + 1).Select(some => some.SelectMany(cover => cover).ToArray())
        : covers.SelectMany(cover => Evenly(cover, parts));

    private static IEnumerable<T[]> Evenly<T>(T[] all, int shares) =>
        Enumerable.Range(0, shares).Select(i => all[(int)((long)all.Length * i / shares)..(int)((long)all.Length * (i + 1) / shares)]);

    private Lay LayOne(PieceStack[] stacks)
    {
        var kinds = LayMaker.Kinds(stacks);
        var key = string.Join(';', kinds.Select(kind => FormattableString.Invariant($"{kind[0].Top.Pattern}/{kind[0].Top.Mirrored}/{kind[0].Grade}/{kind.Length}")));
        if (!known.TryGetValue(key, out var layout))
        {
            layout = nest.Nest(maker.TaskOf(kinds, LaySpot.Anywhere));
            known.Add(key, layout);
        }

        return maker.Finish([.. stacks], layout, LaySpot.Anywhere, NoneStay);
    }
}
