using System;
using System.Collections.Generic;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Lays.Cutting;

namespace CoverPattern.Lays.Tests.Cutting;

/// <summary>A long search for a short way of the tool by chance (annealing), to measure the planner by: same rules, other method.</summary>
/// <remarks>
/// Pieces are whole one after the other, of two near ones the clearly smaller first, uses of strokes in order: what docs/plots.md says.
/// Moves: a stretch of pieces turned or moved, a stretch of strokes of one use turned or moved, a stroke begun elsewhere.
/// </remarks>
internal sealed class TravelReference
{
    private readonly List<List<Stroke>> pieces;
    private readonly List<int> order;
    private readonly bool[,] isBefore;
    private readonly Random chance;

    private TravelReference(CutPlan plan, int seed)
    {
        pieces = [.. plan.Strokes.GroupBy(stroke => stroke.Piece).Select(piece => piece.ToList())];
        order = [.. Enumerable.Range(0, pieces.Count)];
        chance = new Random(seed);
        var boxes = pieces.Select(piece => Rings.Bounds(piece[^1].Points)).ToArray();
        var areas = pieces.Select(piece => Math.Abs(Rings.SignedArea(piece[^1].Points))).ToArray();
        isBefore = new bool[pieces.Count, pieces.Count];
        for (var i = 0; i < pieces.Count; i++)
        {
            for (var j = 0; j < pieces.Count; j++)
            {
                isBefore[i, j] = i != j && areas[i] < 0.8 * areas[j] && Gap(boxes[i], boxes[j]) < 30;
            }
        }
    }

    /// <summary>The shortest travel found from a plan, millimetres.</summary>
    public static double Shortest(CutPlan plan, int moves, int seed)
    {
        var search = new TravelReference(plan, seed);
        var (now, best) = (search.Travel(), search.Travel());
        var heat = now / plan.Strokes.Length * 0.5;
        var cooling = Math.Pow(1e-3, 1.0 / moves);
        for (var i = 0; i < moves; i++, heat *= cooling)
        {
            var undo = search.Change();
            var then = search.Travel();
            if (then <= now || search.chance.NextDouble() < Math.Exp((now - then) / heat))
            {
                now = then;
                best = Math.Min(best, now);
            }
            else
            {
                undo();
            }
        }

        return best;
    }

    private static double Gap(Box2 left, Box2 right)
    {
        var x = Math.Max(0, Math.Max(left.Low.X, right.Low.X) - Math.Min(left.High.X, right.High.X));
        var y = Math.Max(0, Math.Max(left.Low.Y, right.Low.Y) - Math.Min(left.High.Y, right.High.Y));
        return new Point2(x, y).Length;
    }

    private double Travel()
    {
        var (at, sum) = (default(Point2), 0.0);
        foreach (var piece in order)
        {
            foreach (var stroke in pieces[piece])
            {
                sum += Point2.Distance(at, stroke.Points[0]);
                at = stroke.Points[^1];
            }
        }

        return sum;
    }

    private Action Change() => chance.Next(4) == 0 ? ChangeOrder() : ChangePiece(pieces[chance.Next(pieces.Count)]);

    private Action ChangeOrder()
    {
        var before = order.ToArray();
        Shuffle(order, _ => { });
        if (Enumerable.Range(0, order.Count).Any(i => Enumerable.Range(0, i).Any(j => isBefore[order[i], order[j]])))
        {
            Restore();
        }

        return Restore;

        void Restore()
        {
            order.Clear();
            order.AddRange(before);
        }
    }

    private Action ChangePiece(List<Stroke> piece)
    {
        var before = piece.ToArray();
        var at = chance.Next(piece.Count);
        var (first, last) = (piece.FindIndex(stroke => stroke.Use == piece[at].Use), piece.FindLastIndex(stroke => stroke.Use == piece[at].Use));
        if (chance.Next(3) == 0)
        {
            piece[at] = Begun(piece[at]);
        }
        else
        {
            var stage = piece.GetRange(first, last - first + 1);
            Shuffle(stage, i => stage[i] = Turned(stage[i]));
            for (var i = 0; i < stage.Count; i++)
            {
                piece[first + i] = stage[i];
            }
        }

        return () =>
        {
            piece.Clear();
            piece.AddRange(before);
        };
    }

    /// <summary>Turns a stretch round or moves it.</summary>
    private void Shuffle<T>(List<T> list, Action<int> turn)
    {
        var (one, two) = (chance.Next(list.Count), chance.Next(list.Count));
        var (first, count) = (Math.Min(one, two), Math.Min(Math.Abs(one - two) + 1, chance.Next(2) == 0 ? 3 : list.Count));
        if (chance.Next(2) == 0)
        {
            list.Reverse(first, count);
            for (var i = first; i < first + count; i++)
            {
                turn(i);
            }

            return;
        }

        var stretch = list.GetRange(first, count);
        list.RemoveRange(first, count);
        list.InsertRange(chance.Next(list.Count + 1), stretch);
    }

    private static Stroke Turned(Stroke stroke) => stroke.Points[0] == stroke.Points[^1] ? stroke : stroke with { Points = [.. stroke.Points.Reverse()] };

    private Stroke Begun(Stroke stroke)
    {
        if (stroke.Points[0] != stroke.Points[^1])
        {
            return Turned(stroke);
        }

        var at = chance.Next(stroke.Points.Length - 1);
        return stroke with { Points = [.. stroke.Points[at..], .. stroke.Points[1..(at + 1)]] };
    }
}
