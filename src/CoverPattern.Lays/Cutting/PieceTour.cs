using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Lays.Cutting;

/// <summary>In which order pieces are cut: short ways from one to the next, and of two neighbours the small one first, while the large one still holds the cloth.</summary>
/// <remarks>
/// A nearest-neighbour tour, then moves of up to three pieces and reversals as long as they shorten it (2-opt and Or-opt,
/// textbook methods, from memory). The way between two pieces is estimated by the gap of their boxes and, slightly, of their centres.
/// </remarks>
internal sealed class PieceTour
{
    // Pieces nearer than this hold each other's cloth; own choice, millimetres.
    private const double NeighbourGap = 30;

    // Of two neighbours the smaller goes first where it is smaller by more than this; own choice.
    private const double ClearlySmaller = 0.8;

    private const double CentreWeight = 0.05;
    private const int LongestMoved = 3;
    private const int MostPasses = 30;

    private readonly Box2[] boxes;
    private readonly bool[,] isBefore;
    private readonly int count;

    private PieceTour(ImmutableArray<Box2> boxes, ImmutableArray<double> areas)
    {
        this.boxes = [.. boxes];
        count = boxes.Length;
        isBefore = new bool[count, count];
        for (var i = 0; i < count; i++)
        {
            for (var j = 0; j < count; j++)
            {
                isBefore[i, j] = i != j && areas[i] < ClearlySmaller * areas[j] && Gap(boxes[i], boxes[j]) < NeighbourGap;
            }
        }
    }

    /// <summary>Orders pieces.</summary>
    /// <param name="boxes">Boxes round the pieces on the lay.</param>
    /// <param name="areas">Their areas.</param>
    /// <returns>Indexes of the pieces in the order of cutting.</returns>
    internal static ImmutableArray<int> Order(ImmutableArray<Box2> boxes, ImmutableArray<double> areas)
    {
        var tour = new PieceTour(boxes, areas);
        var order = tour.NearestFirst();
        for (var pass = 0; pass < MostPasses && tour.Shorten(order); pass++)
        {
        }

        return [.. order];
    }

    private static double Gap(Box2 left, Box2 right)
    {
        var x = Math.Max(0, Math.Max(left.Low.X, right.Low.X) - Math.Min(left.High.X, right.High.X));
        var y = Math.Max(0, Math.Max(left.Low.Y, right.Low.Y) - Math.Min(left.High.Y, right.High.Y));
        return new Point2(x, y).Length;
    }

    private double Way(int from, int to)
    {
        if (to < 0)
        {
            return 0;
        }

        return from < 0
            ? boxes[to].Low.Length
            : Gap(boxes[from], boxes[to]) + (CentreWeight * Point2.Distance(boxes[from].Centre, boxes[to].Centre));
    }

    private int[] NearestFirst()
    {
        var waits = Enumerable.Range(0, count).Select(j => Enumerable.Range(0, count).Count(i => isBefore[i, j])).ToArray();
        var open = new SortedSet<int>(Enumerable.Range(0, count));
        var order = new int[count];
        var at = -1;
        for (var k = 0; k < count; k++)
        {
            at = open.Where(j => waits[j] == 0).MinBy(j => Way(at, j));
            order[k] = at;
            open.Remove(at);
            foreach (var later in open)
            {
                waits[later] -= isBefore[at, later] ? 1 : 0;
            }
        }

        return order;
    }

    private bool Shorten(int[] order)
    {
        var isShorter = false;
        for (var first = 0; first < count; first++)
        {
            for (var last = first; last < count; last++)
            {
                isShorter |= last > first && TryReverse(order, first, last);
                isShorter |= last - first < LongestMoved && TryMove(order, first, last);
            }
        }

        return isShorter;
    }

    private int At(int[] order, int i) => i >= 0 && i < count ? order[i] : -1;

    private bool TryReverse(int[] order, int first, int last)
    {
        var (before, after) = (At(order, first - 1), At(order, last + 1));
        var gain = Way(before, order[first]) + Way(order[last], after) - Way(before, order[last]) - Way(order[first], after);
        if (gain <= 1e-6 || HasOrderInside(order, first, last))
        {
            return false;
        }

        Array.Reverse(order, first, last - first + 1);
        return true;
    }

    private bool HasOrderInside(int[] order, int first, int last)
    {
        for (var i = first; i < last; i++)
        {
            for (var j = i + 1; j <= last; j++)
            {
                if (isBefore[order[i], order[j]])
                {
                    return true;
                }
            }
        }

        return false;
    }

    /// <summary>Takes a stretch out and puts it where the way grows least.</summary>
    private bool TryMove(int[] order, int first, int last)
    {
        var (before, after) = (At(order, first - 1), At(order, last + 1));
        var saved = Way(before, order[first]) + Way(order[last], after) - Way(before, after);
        var best = (Gain: 1e-6, To: -1);
        for (var to = last + 1; to < count && MayPass(order, first, last, to); to++)
        {
            best = Better(best, saved - Inserted(order, (first, last), order[to], At(order, to + 1)), to);
        }

        for (var to = first - 1; to >= 0 && MayPass(order, first, last, to); to--)
        {
            best = Better(best, saved - Inserted(order, (first, last), At(order, to - 1), order[to]), to);
        }

        if (best.To >= 0)
        {
            Move(order, first, last, best.To);
        }

        return best.To >= 0;
    }

    private static (double Gain, int To) Better((double Gain, int To) best, double gain, int to) => gain > best.Gain ? (gain, to) : best;

    private double Inserted(int[] order, (int First, int Last) stretch, int before, int after) =>
        Way(before, order[stretch.First]) + Way(order[stretch.Last], after) - Way(before, after);

    /// <summary>Whether the stretch may change places with the piece it passes.</summary>
    private bool MayPass(int[] order, int first, int last, int passed)
    {
        for (var i = first; i <= last; i++)
        {
            if (passed > last ? isBefore[order[i], order[passed]] : isBefore[order[passed], order[i]])
            {
                return false;
            }
        }

        return true;
    }

    private static void Move(int[] order, int first, int last, int to)
    {
        var list = new List<int>(order);
        var stretch = list.GetRange(first, last - first + 1);
        list.RemoveRange(first, stretch.Count);
        list.InsertRange(to > last ? to - stretch.Count + 1 : to, stretch);
        list.CopyTo(order);
    }
}
