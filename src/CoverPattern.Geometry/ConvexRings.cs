using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;

namespace CoverPattern.Geometry;

/// <summary>Work on convex rings on the grid: counter-clockwise, first point not repeated, no three corners on a line.</summary>
public static class ConvexRings
{
    // A tangent every 36 degrees at most keeps the grown ring within 5 % of the growth.
    private const double WidestCorner = Math.PI / 5;

    /// <summary>The convex ring round points that do not all lie on one line; exact.</summary>
    public static ImmutableArray<GridPoint> Hull(IEnumerable<GridPoint> points)
    {
        var sorted = points.Distinct().OrderBy(p => p.X).ThenBy(p => p.Y).ToArray();
        return [.. Chain(sorted), .. Chain([.. sorted.Reverse()])];
    }

    /// <summary>The ring turned half round the origin.</summary>
    public static ImmutableArray<GridPoint> HalfTurned(ImmutableArray<GridPoint> ring) =>
        [.. ring.Select(p => new GridPoint(-p.X, -p.Y))];

    /// <summary>All sums of a point of one ring and a point of the other (Minkowski sum); exact.</summary>
    /// <returns>Convex ring; corners on a line may occur where edges of both are parallel.</returns>
    public static ImmutableArray<GridPoint> Sum(ImmutableArray<GridPoint> left, ImmutableArray<GridPoint> right)
    {
        var (i, j) = (LowestCorner(left), LowestCorner(right));
        var (leftEnd, rightEnd) = (i + left.Length, j + right.Length);
        var sum = ImmutableArray.CreateBuilder<GridPoint>(left.Length + right.Length);
        while (i < leftEnd || j < rightEnd)
        {
            var (a, b) = (At(left, i), At(right, j));
            sum.Add(new GridPoint(a.X + b.X, a.Y + b.Y));
            var turn = Turn(a, At(left, i + 1), b, At(right, j + 1));
            var takeLeft = i < leftEnd && (j >= rightEnd || turn >= 0);
            var takeRight = j < rightEnd && (i >= leftEnd || turn <= 0);
            i += takeLeft ? 1 : 0;
            j += takeRight ? 1 : 0;
        }

        return sum.ToImmutable();
    }

    /// <summary>A convex ring that holds every point within a distance of the given one, and little more.</summary>
    /// <param name="ring">Convex ring.</param>
    /// <param name="by">Distance in steps of the grid, positive.</param>
    /// <remarks>
    /// Edges move outward and corners are cut by tangents to the circle round the corner, so parallel edges and
    /// corners level with each other keep the exact distance; each edge lies one step further out to make good the rounding of corners to the grid.
    /// </remarks>
    public static ImmutableArray<GridPoint> Grow(ImmutableArray<GridPoint> ring, double by)
    {
        var grown = ImmutableArray.CreateBuilder<GridPoint>(2 * ring.Length);
        for (var i = 0; i < ring.Length; i++)
        {
            var (before, corner, after) = (At(ring, i + ring.Length - 1), ring[i], At(ring, i + 1));
            var from = Direction(before, corner);
            var bend = Math.Atan2(Point2.Cross(from, Direction(corner, after)), Point2.Dot(from, Direction(corner, after)));
            AddTangents(grown, corner, (from, bend), by + 1);
        }

        return grown.ToImmutable();
    }

    private static void AddTangents(ImmutableArray<GridPoint>.Builder grown, GridPoint corner, (Point2 From, double Bend) turn, double by)
    {
        var outward = Math.Atan2(-turn.From.X, turn.From.Y);
        var end = outward + turn.Bend;
        for (var from = outward; from < end || from == outward;)
        {
            var to = Math.Min(end, NextQuarter(from));
            var parts = Math.Max(1, (int)Math.Ceiling((to - from) / WidestCorner));
            var half = (to - from) / parts / 2;
            for (var part = 0; part < parts; part++)
            {
                var angle = from + (((2 * part) + 1) * half);
                var reach = by / Math.Cos(half);
                grown.Add(new GridPoint(
                    corner.X + (long)Math.Round(reach * Math.Cos(angle)),
                    corner.Y + (long)Math.Round(reach * Math.Sin(angle))));
            }

            from = to;
            if (to <= outward)
            {
                return;
            }
        }
    }

    /// <summary>The next direction along an axis, so that corners level with each other keep the exact distance.</summary>
    private static double NextQuarter(double angle) => (Math.Floor((angle / (Math.PI / 2)) + 1e-9) + 1) * (Math.PI / 2);

    private static Point2 Direction(GridPoint from, GridPoint to) => new Point2(to.X - from.X, to.Y - from.Y).Unit();

    private static GridPoint At(ImmutableArray<GridPoint> ring, int i) => ring[i % ring.Length];

    private static int LowestCorner(ImmutableArray<GridPoint> ring)
    {
        var lowest = 0;
        for (var i = 1; i < ring.Length; i++)
        {
            if (ring[i].Y < ring[lowest].Y || (ring[i].Y == ring[lowest].Y && ring[i].X < ring[lowest].X))
            {
                lowest = i;
            }
        }

        return lowest;
    }

    /// <summary>Which of two edges comes first counter-clockwise from +x: +1 the left one, -1 the right one, 0 neither.</summary>
    private static int Turn(GridPoint leftFrom, GridPoint leftTo, GridPoint rightFrom, GridPoint rightTo)
    {
        var (x1, y1) = (leftTo.X - leftFrom.X, leftTo.Y - leftFrom.Y);
        var (x2, y2) = (rightTo.X - rightFrom.X, rightTo.Y - rightFrom.Y);
        var (isUp1, isUp2) = (y1 > 0 || (y1 == 0 && x1 > 0), y2 > 0 || (y2 == 0 && x2 > 0));
        return isUp1 != isUp2 ? (isUp1 ? 1 : -1) : Math.Sign((x1 * y2) - (y1 * x2));
    }

    private static List<GridPoint> Chain(GridPoint[] sorted)
    {
        var chain = new List<GridPoint>();
        foreach (var point in sorted)
        {
            while (chain.Count >= 2 && ExactPredicates.Side(chain[^2], chain[^1], point) <= 0)
            {
                chain.RemoveAt(chain.Count - 1);
            }

            chain.Add(point);
        }

        chain.RemoveAt(chain.Count - 1);
        return chain;
    }
}
