using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;

namespace CoverPattern.Geometry;

/// <summary>Cuts a ring on the grid into convex rings with the same corners.</summary>
/// <remarks>Ears are cut off one by one and the triangles joined again where the result stays convex [Hertel Mehlhorn 1983, from memory].</remarks>
public static class ConvexParts
{
    /// <summary>Convex rings, counter-clockwise, that together cover a ring.</summary>
    /// <param name="ring">Counter-clockwise, first point not repeated.</param>
    /// <param name="mostHollows">Inside corners that are kept; the shallowest beyond are filled up, so that the parts cover a little more.</param>
    /// <returns>The parts; the convex ring round all corners when the ring crosses or touches itself.</returns>
    public static ImmutableArray<ImmutableArray<GridPoint>> Cover(ImmutableArray<GridPoint> ring, int mostHollows)
    {
        if (!ExactPredicates.IsSimple(ring))
        {
            return [ConvexRings.Hull(ring)];
        }

        var corners = WithoutStraightCorners(ring);
        FillHollows(corners, mostHollows);
        var triangles = CutEars([.. corners]);
        return triangles is null ? [ConvexRings.Hull(ring)] : Join(triangles);
    }

    /// <summary>Convex rings, counter-clockwise, that together cover a ring but for its holes.</summary>
    /// <param name="ring">Counter-clockwise, first point not repeated.</param>
    /// <param name="holes">Clockwise, inside the ring, apart from each other.</param>
    /// <param name="most">Inside corners of the ring, and corners of each hole, that are kept; the parts may cover a little more.</param>
    /// <returns>The parts; those without holes when the holes cannot be cut out.</returns>
    public static ImmutableArray<ImmutableArray<GridPoint>> Cover(
        ImmutableArray<GridPoint> ring, ImmutableArray<ImmutableArray<GridPoint>> holes, int most)
    {
        if (holes.IsEmpty || !ExactPredicates.IsSimple(ring) || !holes.All(ExactPredicates.IsSimple))
        {
            return Cover(ring, most);
        }

        var outer = WithoutStraightCorners(ring);
        FillHollows(outer, most);
        var inner = holes.Select(hole => Smaller(hole, most)).ToArray();
        var joined = HoleBridges.Join(outer, inner);
        var triangles = joined is null ? null : CutEars(joined);

        // The ears of a ring with double edges are trusted only as far as their areas add up.
        return triangles is not null && Sum(triangles) == DoubleArea(outer) + Sum(inner)
            ? Join(triangles)
            : Cover(ring, most);
    }

    /// <summary>A hole with few corners inside the given one, clockwise as it is.</summary>
    private static List<GridPoint> Smaller(ImmutableArray<GridPoint> hole, int most)
    {
        var corners = WithoutStraightCorners([.. hole.Reverse()]);
        while (corners.Count > most)
        {
            // Whether a corner is an ear asks all others: it is asked of the shallowest first, so that one answer does.
            var ear = Enumerable.Range(0, corners.Count).OrderBy(i => Depth(corners, i)).Append(-1).First(i => i < 0 || IsEar(corners, i));
            if (ear < 0 || corners.Count <= 4)
            {
                break;
            }

            corners.RemoveAt(ear);
        }

        corners.Reverse();
        return corners;
    }

    private static Int128 Sum(IEnumerable<List<GridPoint>> rings) => rings.Aggregate(Int128.Zero, (sum, ring) => sum + DoubleArea(ring));

    private static Int128 DoubleArea(List<GridPoint> ring)
    {
        var sum = Int128.Zero;
        for (var i = 0; i < ring.Count; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Count]);
            sum += ((Int128)a.X * b.Y) - ((Int128)b.X * a.Y);
        }

        return sum;
    }

    private static List<GridPoint> WithoutStraightCorners(ImmutableArray<GridPoint> ring)
    {
        var corners = new List<GridPoint>(ring);
        for (var i = 0; i < corners.Count && corners.Count > 3;)
        {
            if (Bend(corners, i) == 0)
            {
                corners.RemoveAt(i);
                i = Math.Max(0, i - 1);
            }
            else
            {
                i++;
            }
        }

        return corners;
    }

    private static void FillHollows(List<GridPoint> corners, int mostHollows)
    {
        while (true)
        {
            var hollows = Enumerable.Range(0, corners.Count).Where(i => Bend(corners, i) <= 0).ToArray();
            if (hollows.Length <= mostHollows)
            {
                return;
            }

            var fillable = hollows.OrderBy(i => Depth(corners, i)).Append(-1).First(i => i < 0 || IsEmpty(corners, i));
            if (fillable < 0)
            {
                return;
            }

            corners.RemoveAt(fillable);
        }
    }

    private static List<List<GridPoint>>? CutEars(List<GridPoint> corners)
    {
        var triangles = new List<List<GridPoint>>();
        while (corners.Count > 3)
        {
            var ear = 0;
            while (ear < corners.Count && !IsEar(corners, ear))
            {
                ear++;
            }

            if (ear == corners.Count)
            {
                return null;
            }

            triangles.Add([Before(corners, ear), corners[ear], After(corners, ear)]);
            corners.RemoveAt(ear);
        }

        if (Bend(corners, 0) > 0)
        {
            triangles.Add(corners);
        }

        return triangles.Count > 0 ? triangles : null;
    }

    private static bool IsEar(List<GridPoint> corners, int i) => Bend(corners, i) > 0 && IsEmpty(corners, i);

    /// <summary>Whether no other corner lies in the triangle of a corner and its neighbours, its edges included.</summary>
    private static bool IsEmpty(List<GridPoint> corners, int i)
    {
        ImmutableArray<GridPoint> triangle = [Before(corners, i), corners[i], After(corners, i)];
        return corners.TrueForAll(point => triangle.Contains(point) || ExactPredicates.Locate(triangle, point) < 0);
    }

    private static List<GridPoint> Merged(List<GridPoint> part, List<GridPoint> other, int at, int otherAt)
    {
        // part runs ... a b ..., the other ... b a ...: a, the other from behind a round to before b, b.
        var merged = new List<GridPoint>(part.Take(at + 1));
        merged.AddRange(Enumerable.Range(2, other.Count - 2).Select(k => other[(otherAt + k) % other.Count]));
        merged.AddRange(part.Skip(at + 1));
        return merged;
    }

    private static ImmutableArray<ImmutableArray<GridPoint>> Join(List<List<GridPoint>> parts)
    {
        for (var i = 0; i < parts.Count; i++)
        {
            while (TryJoin(parts, i))
            {
            }
        }

        return [.. parts.Select(part => WithoutStraightCorners([.. part]).ToImmutableArray())];
    }

    private static bool TryJoin(List<List<GridPoint>> parts, int i)
    {
        for (var j = i + 1; j < parts.Count; j++)
        {
            for (var at = 0; at < parts[i].Count; at++)
            {
                var otherAt = parts[j].IndexOf(After(parts[i], at));
                if (otherAt < 0 || After(parts[j], otherAt) != parts[i][at])
                {
                    continue;
                }

                var merged = Merged(parts[i], parts[j], at, otherAt);
                if (Enumerable.Range(0, merged.Count).All(k => Bend(merged, k) >= 0))
                {
                    parts[i] = merged;
                    parts.RemoveAt(j);
                    return true;
                }
            }
        }

        return false;
    }

    private static GridPoint Before(List<GridPoint> corners, int i) => corners[(i + corners.Count - 1) % corners.Count];

    private static GridPoint After(List<GridPoint> corners, int i) => corners[(i + 1) % corners.Count];

    private static int Bend(List<GridPoint> corners, int i) => ExactPredicates.Side(Before(corners, i), corners[i], After(corners, i));

    private static long Depth(List<GridPoint> corners, int i)
    {
        var (a, b, c) = (Before(corners, i), corners[i], After(corners, i));
        return Math.Abs(((b.X - a.X) * (c.Y - a.Y)) - ((b.Y - a.Y) * (c.X - a.X)));
    }
}
