using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Lays.Nesting;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Lays;

/// <summary>Lays pieces where lays are limited: by the table, by rolls of given lengths, or both.</summary>
/// <remarks>
/// Rolls are filled one behind the other, each with lays that end on the table and on the roll; the last lay is as short as it gets.
/// Which rolls are taken, and in which order, is tried: the shortest total, and of equal ones the one that leaves long remnants.
/// </remarks>
/// <param name="job">How to lay.</param>
/// <param name="cloth">The cloth.</param>
/// <param name="maker">Makes tasks and lays of it.</param>
/// <param name="patterns">Patterns by their ids.</param>
/// <param name="nest">Places as many outlines as go on a strip of limited length, millimetres.</param>
internal sealed class RollPlan(
    Job job, Cloth cloth, LayMaker maker, Dictionary<string, Pattern> patterns, Func<NestingTask, double, NestingLayout> nest)
{
    private static readonly Dictionary<string, NestingPlacement> NoneStay = [];

    // Beyond this many ways to take the rolls the gain no longer pays the time; own choice.
    private const int MostWays = 6;
    private const int MostFound = 3;

    // Parts by which the length of a lay of several plies may be missed at the first try and at the last; own choice.
    private const double FirstSlack = 0.01;
    private const double LastSlack = 0.7;

    /// <summary>The lays in order of roll and place.</summary>
    /// <param name="sets">Number of plies, and what is cut through as many.</param>
    /// <exception cref="NotEnoughClothException">The rolls do not hold the pieces.</exception>
    /// <exception cref="PieceTooLongException">A piece is longer than the table or every roll.</exception>
    /// <exception cref="FlawsOnPliesException">No lay of several plies keeps clear of the flaws of each.</exception>
    public ImmutableArray<Lay> Lay(ImmutableArray<(int Plies, ImmutableArray<PieceStack> Stacks)> sets)
    {
        if (cloth.Rolls.IsEmpty)
        {
            var (lays, left) = Along([0], sets);
            return left.IsEmpty ? lays : throw new PieceTooLongException(cloth.Name, left[0].Top.Label, LeastLength(left[0]), job.Lay.Table!.Value.Millimetres - (2 * maker.Strip.Origin.X));
        }

        var tried = new List<(ImmutableArray<Lay> Lays, ImmutableArray<PieceStack> Left)>();
        foreach (var way in RollWays.Of(cloth, LeastCloth(sets)).Take(MostWays))
        {
            tried.Add(Along(way, sets));
            if (tried.Count(one => one.Left.IsEmpty) >= MostFound)
            {
                break;
            }
        }

        return tried.Where(one => one.Left.IsEmpty).Select(one => one.Lays).OrderBy(Total).ThenByDescending(Remnants).FirstOrDefault() is { IsDefault: false } best
            ? best
            : throw NotEnough(tried.MinBy(one => AreaOf(one.Left)).Left);
    }

    /// <summary>Lays along some rolls in order; what found no place is told too.</summary>
    private (ImmutableArray<Lay> Lays, ImmutableArray<PieceStack> Left) Along(ImmutableArray<int> rolls, ImmutableArray<(int Plies, ImmutableArray<PieceStack> Stacks)> sets)
    {
        var lays = ImmutableArray.CreateBuilder<Lay>();
        var left = ImmutableArray.CreateBuilder<PieceStack>();
        var used = rolls.ToDictionary(roll => roll, _ => 0.0);
        foreach (var (plies, stacks) in sets)
        {
            var open = stacks;
            foreach (var roll in rolls)
            {
                while (!open.IsEmpty && LayOne(open, plies, LaySpot.On(cloth, roll, used[roll])) is { } lay)
                {
                    lays.Add(lay);
                    used[roll] += lay.ClothMm;
                    var laid = lay.Placements.Select(placement => placement.Piece).ToHashSet(StringComparer.Ordinal);
                    open = [.. open.Where(stack => !laid.Contains(stack.Top.Label))];
                }
            }

            left.AddRange(open);
        }

        return (lays.ToImmutable(), left.ToImmutable());
    }

    /// <summary>One lay; null when nothing finds a place any more.</summary>
    private Lay? LayOne(ImmutableArray<PieceStack> stacks, int plies, LaySpot spot)
    {
        var limit = Math.Min(RoomOn(spot.Roll, spot.FromMm) / plies, job.Lay.Table?.Millimetres ?? Grid.LargestMillimetres) - (2 * maker.Strip.Origin.X);
        if (limit <= 0)
        {
            return null;
        }

        var fitting = stacks.Where(stack => LeastLength(stack) <= limit).ToImmutableArray();
        if (spot.Roll == 0 && fitting.Length < stacks.Length)
        {
            var longest = stacks.MaxBy(LeastLength)!;
            throw new PieceTooLongException(cloth.Name, longest.Top.Label, LeastLength(longest), limit);
        }

        if (fitting.IsEmpty)
        {
            return null;
        }

        return plies > 1 && !spot.Flaws.IsEmpty ? OnPlies(fitting, plies, spot, limit) : OnSpot(fitting, spot, limit);
    }

    private Lay? OnSpot(ImmutableArray<PieceStack> stacks, LaySpot spot, double limit)
    {
        var kinds = LayMaker.Kinds(stacks);
        var layout = nest(maker.TaskOf(kinds, spot), limit);
        return layout.Placements.IsEmpty ? null : maker.Finish(stacks, layout, spot, NoneStay);
    }

    /// <summary>
    /// A lay of several plies off a roll with flaws. Where a flaw lies on the upper plies hangs on the length of the lay, and that on the flaws:
    /// a range is guessed, each flaw takes all its places of that range, and a lay that ends in the range is right.
    /// </summary>
    private Lay? OnPlies(ImmutableArray<PieceStack> stacks, int plies, LaySpot spot, double limit)
    {
        var least = OnSpot(stacks, LaySpot.Anywhere, limit)?.LengthMm ?? 0;
        for (var slack = FirstSlack; slack <= LastSlack; slack *= 2)
        {
            var lengths = (Least: least, Most: least * (1 + slack));
            if (OnSpot(stacks, LaySpot.OnPlies(cloth, spot.Roll, spot.FromMm, plies, lengths), limit) is not { } lay)
            {
                return null;
            }

            if (lay.LengthMm >= lengths.Least && lay.LengthMm <= lengths.Most)
            {
                return lay with { Flaws = LaySpot.OnPlies(cloth, spot.Roll, spot.FromMm, plies, (lay.LengthMm, lay.LengthMm)).Flaws };
            }

            // The next range is twice as wide, with this length within.
            least = lay.LengthMm / (1 + slack);
        }

        throw new FlawsOnPliesException(cloth.Name, spot.Roll, plies);
    }

    private double RoomOn(int roll, double fromMm) =>
        roll > 0 && cloth.Rolls[roll - 1].Length is { } length ? length.Millimetres - fromMm : double.PositiveInfinity;

    /// <summary>Least length a stack takes along the strip in any turn in which it fits across.</summary>
    private double LeastLength(PieceStack stack)
    {
        var item = maker.TaskOf([[stack]], LaySpot.Anywhere).Items[0];
        var boxes = TurnChoices.Of(item).Select(turn => Rings.Bounds(new NestingPlacement(0, turn, default).Apply(item.Outline))).ToArray();
        // What fits across in no turn is refused when it is laid, with a message of its own.
        return boxes.Where(box => box.Height <= maker.Strip.Width).Select(box => box.Width).DefaultIfEmpty(0).Min();
    }

    private double AreaOf(IEnumerable<PieceStack> stacks) => stacks.Sum(stack => stack.Pieces.Length * LaidShapes.Area(patterns[stack.Top.Pattern]));

    /// <summary>No lays of these pieces take less: their area fills the usable width.</summary>
    private double LeastCloth(ImmutableArray<(int Plies, ImmutableArray<PieceStack> Stacks)> sets) => sets.Sum(set => AreaOf(set.Stacks)) / maker.Strip.Width;

    private static double Total(ImmutableArray<Lay> lays) => Math.Round(lays.Sum(lay => lay.ClothMm));

    /// <summary>Greater when what is left over lies in few long pieces.</summary>
    private double Remnants(ImmutableArray<Lay> lays) => cloth.Rolls.Select((roll, i) => roll.Length is { } length
        ? length.Millimetres - lays.Where(lay => lay.Roll == i + 1).Sum(lay => lay.ClothMm)
        : 0).Sum(rest => rest * rest);

    private NotEnoughClothException NotEnough(ImmutableArray<PieceStack> left)
    {
        var labels = left.SelectMany(stack => stack.Pieces).Select(piece => piece.Label).ToImmutableArray();
        return new NotEnoughClothException(cloth.Name, cloth.Rolls.Sum(roll => roll.Length?.Millimetres ?? 0), labels, AreaOf(left) / maker.Strip.Width);
    }
}
