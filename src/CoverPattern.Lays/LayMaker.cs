using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Lays.Nesting;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Lays;

/// <summary>Turns stacks of pieces into a task of outlines, and a layout of outlines into a lay.</summary>
/// <param name="job">How to lay.</param>
/// <param name="cloth">The cloth.</param>
/// <param name="patterns">Patterns by their ids.</param>
internal sealed class LayMaker(Job job, Cloth cloth, Dictionary<string, Pattern> patterns)
{
    public UsableStrip Strip { get; } = UsableStrip.Of(cloth.RollWidth.Millimetres, cloth.UsableWidth, job.Lay.EndAllowance.Millimetres);

    /// <summary>Stacks of equal outline and grade together, in the order of their first.</summary>
    public static PieceStack[][] Kinds(IEnumerable<PieceStack> stacks) =>
        [.. stacks.GroupBy(stack => (stack.Top.Pattern, stack.Top.Mirrored, stack.Grade)).Select(kind => kind.ToArray())];

    /// <summary>The task: one item a kind, in their order.</summary>
    public NestingTask TaskOf(PieceStack[][] kinds, LaySpot spot) =>
        new(Strip.Width, job.Lay.Spacing.Millimetres, [.. kinds.Select(ItemOf)], job.Lay.Effort, job.Lay.Seed)
        {
            Flaws = [.. spot.Flaws.Select(FlawOf)],
        };

    /// <summary>The lay: each placement gets a stack of its kind.</summary>
    /// <param name="stacks">All stacks of the task, in the order in which the lay lists them; items are counted among them.</param>
    /// <param name="layout">Where outlines lie; of a kind of which fewer lie there the first stacks are taken, of some kinds perhaps none.</param>
    /// <param name="spot">Where the lay begins.</param>
    /// <param name="stay">Stacks that have their place already, by top label.</param>
    public Lay Finish(ImmutableArray<PieceStack> stacks, NestingLayout layout, LaySpot spot, IReadOnlyDictionary<string, NestingPlacement> stay)
    {
        var order = stacks.Select((stack, i) => (stack.Top.Label, i)).ToDictionary(entry => entry.Label, entry => entry.i, StringComparer.Ordinal);
        ImmutableArray<Placement> placements = [.. Kinds(stacks).SelectMany((kind, item) => Named(kind, [.. layout.Placements.Where(p => p.Item == item)], stay)).OrderBy(placement => order[placement.Piece])];
        var patternOf = stacks.ToDictionary(stack => stack.Top.Label, stack => patterns[stack.Top.Pattern], StringComparer.Ordinal);
        var plies = 1 + placements[0].Under.Length;
        var lay = Lay(placements, placements.Max(placement => End(placement, patternOf[placement.Piece])) + job.Lay.EndAllowance.Millimetres);
        return lay with
        {
            Roll = spot.Roll,
            RollName = spot.RollName,
            FromMm = spot.FromMm,
            Plies = plies,
            FaceToFace = plies > 1 && job.Lay.Spread == PlySpread.FaceToFace,
            Flaws = [.. spot.Flaws.Where(flaw => flaw.X < lay.LengthMm)],
            Making = Making(LayOrigin.Made, layout),
        };
    }

    /// <summary>A lay of the job's cloth with nothing but places and a length.</summary>
    public Lay Lay(ImmutableArray<Placement> placements, double lengthMm) => new(
        cloth.Name,
        cloth.RollWidth.Millimetres,
        cloth.UsableWidth,
        job.Lay.EndAllowance.Millimetres,
        lengthMm,
        job.Lay.Spacing.Millimetres,
        job.Lay.FaceDown,
        placements);

    public LayMaking Making(LayOrigin origin, NestingLayout? layout)
    {
        var turns = LayPlanner.TurnsOn(cloth, job.Lay.Turns);
        return new LayMaking(
            origin,
            job.Lay.Style,
            layout?.Method ?? string.Empty,
            turns.IsFree ? "free" : turns.Degrees.Length > 1 ? "half" : "none",
            turns.IsFree ? 0 : job.Lay.OffGrainDegrees,
            job.Lay.InHoles)
        {
            TightMm = layout?.TightLength + (2 * job.Lay.EndAllowance.Millimetres),
        };
    }

    /// <summary>How far along the roll a piece reaches, by its true outline: the search knows round ones only coarsely.</summary>
    public static double End(Placement placement, Pattern pattern)
    {
        var turn = RigidMap.FromDegrees(placement.TurnDegrees, default, placement.Mirrored);
        return placement.X + pattern.CutLine.Max(corner => Grid.Snap(turn.Apply(corner)).X);
    }

    /// <summary>The least width that a piece takes across the roll in any turn it may take, millimetres.</summary>
    public double LeastWidth(Piece piece)
    {
        var item = ItemOf([new PieceStack([piece], 0)]);
        return TurnChoices.Of(item).Min(turn => new TurnedOutline(0, new NestingPlacement(0, turn, default), item).Height) / (double)Grid.StepsPerMillimetre;
    }

    public bool IsMirrored(Piece piece) => piece.Mirrored != job.Lay.FaceDown;

    private NestingItem ItemOf(PieceStack[] kind)
    {
        var (pattern, isMirrored) = (patterns[kind[0].Top.Pattern], IsMirrored(kind[0].Top));
        return new NestingItem(
            CoarseOutline.Around(LaidShapes.Ring(pattern.CutLine, isMirrored)),
            job.Lay.InHoles ? [.. pattern.Cutouts.Select(cutout => CoarseOutline.Within(LaidShapes.Ring(cutout.CutLine, isMirrored)))] : [],
            kind.Length,
            LayPlanner.TurnsOn(cloth, job.Lay.Turns) with { Within = job.Lay.OffGrainDegrees })
        {
            Grade = kind[0].Grade,
        };
    }

    private FlawedArea FlawOf(LayFlaw flaw)
    {
        var low = new Point2(flaw.X, flaw.Y) - Strip.Origin;
        return new FlawedArea([low, low + new Point2(flaw.LongMm, 0), low + new Point2(flaw.LongMm, flaw.WideMm), low + new Point2(0, flaw.WideMm)], flaw.LeastGrade ?? FlawedArea.NoItem);
    }

    /// <summary>Equal pieces take their places in order of their labels along the roll, so that the ticket reads well; those that stay have theirs.</summary>
    private IEnumerable<Placement> Named(PieceStack[] kind, List<NestingPlacement> places, IReadOnlyDictionary<string, NestingPlacement> stay)
    {
        var staying = kind.Where(stack => stay.ContainsKey(stack.Top.Label)).ToArray();
        foreach (var stack in staying)
        {
            places.Remove(stay[stack.Top.Label]);
            yield return At(stack, stay[stack.Top.Label]);
        }

        foreach (var (stack, place) in kind.Except(staying).Zip(places.OrderBy(place => place.Shift.X).ThenBy(place => place.Shift.Y)))
        {
            yield return At(stack, place);
        }
    }

    private Placement At(PieceStack stack, NestingPlacement place) =>
        new(stack.Top.Label, place.Shift.X + Strip.Origin.X, place.Shift.Y + Strip.Origin.Y, place.TurnDegrees, IsMirrored(stack.Top))
        {
            Under = [.. stack.Pieces.Skip(1).Select(piece => piece.Label)],
        };
}
