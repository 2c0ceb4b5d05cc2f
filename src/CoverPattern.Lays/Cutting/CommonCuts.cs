using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Lays.Cutting;

/// <summary>Leaves out of an outline what the outlines of pieces that are cut already have cut.</summary>
internal static class CommonCuts
{
    // Lines nearer than this are one cut, millimetres: twenty steps of the grid, a fifth of what a knife table keeps.
    private const double Near = 0.02;

    // A shorter stretch is not worth lifting the knife for, millimetres; own choice.
    private const double Shortest = 1;

    /// <summary>What is left to cut of an outline.</summary>
    /// <param name="outline">A closed stroke.</param>
    /// <param name="done">Outlines that are cut, closed: the first point repeated.</param>
    /// <returns>The stroke itself where nothing is common; else open strokes, none where all is cut.</returns>
    internal static ImmutableArray<Stroke> Left(Stroke outline, IReadOnlyList<ImmutableArray<Point2>> done)
    {
        var parts = new List<List<Point2>>();
        var isWhole = true;
        for (var i = 1; i < outline.Points.Length; i++)
        {
            var (from, to) = (outline.Points[i - 1], outline.Points[i]);
            foreach (var (start, end) in Free(Cut(from, to, done)))
            {
                isWhole &= start == 0 && end == 1;
                Append(parts, start == 0 ? from : Point2.Between(from, to, start), end == 1 ? to : Point2.Between(from, to, end));
            }

            isWhole &= parts.Count > 0 && parts[^1][^1] == to;
        }

        if (isWhole)
        {
            return [outline];
        }

        // The ring has no beginning of its own: what ends and begins at its first corner is one stroke.
        if (parts.Count > 1 && parts[0][0] == parts[^1][^1])
        {
            parts[^1].AddRange(parts[0].Skip(1));
            parts.RemoveAt(0);
        }

        return [.. parts.Select(part => outline with { Points = [.. part] })];
    }

    private static void Append(List<List<Point2>> parts, Point2 from, Point2 to)
    {
        if (parts.Count == 0 || parts[^1][^1] != from)
        {
            parts.Add([from]);
        }

        parts[^1].Add(to);
    }

    /// <summary>The parts of 0 to 1 that are in no stretch.</summary>
    private static IEnumerable<(double From, double To)> Free(IEnumerable<(double From, double To)> cut)
    {
        var at = 0.0;
        foreach (var (from, to) in cut.Order())
        {
            if (from > at)
            {
                yield return (at, from);
            }

            at = Math.Max(at, to);
        }

        if (at < 1)
        {
            yield return (at, 1);
        }
    }

    /// <summary>The stretches of a step, in shares of it, along which another outline runs.</summary>
    private static IEnumerable<(double From, double To)> Cut(Point2 from, Point2 to, IReadOnlyList<ImmutableArray<Point2>> done) =>
        done.SelectMany(ring => Enumerable.Range(1, ring.Length - 1).Select(i => Along(from, to, ring[i - 1], ring[i])))
            .Where(stretch => (stretch.To - stretch.From) * Point2.Distance(from, to) >= Shortest);

    /// <summary>The stretch of a step, in shares of it, that lies near another step.</summary>
    private static (double From, double To) Along(Point2 from, Point2 to, Point2 otherFrom, Point2 otherTo)
    {
        var along = otherTo - otherFrom;
        var length = along.Length;
        if (length == 0)
        {
            return (0, 0);
        }

        var unit = along.Unit();
        var (low, high) = (0.0, 1.0);
        // Both the distance from the other's line and the place along it are linear along the step.
        Narrow(Point2.Cross(unit, from - otherFrom), Point2.Cross(unit, to - otherFrom), -Near, Near, ref low, ref high);
        Narrow(Point2.Dot(unit, from - otherFrom), Point2.Dot(unit, to - otherFrom), 0, length, ref low, ref high);
        return low < high ? (low, high) : (0, 0);
    }

    private static void Narrow(double atStart, double atEnd, double least, double most, ref double low, ref double high)
    {
        var rise = atEnd - atStart;
        if (rise == 0)
        {
            high = atStart >= least && atStart <= most ? high : low;
            return;
        }

        var (first, second) = ((least - atStart) / rise, (most - atStart) / rise);
        low = Math.Max(low, Math.Min(first, second));
        high = Math.Min(high, Math.Max(first, second));
    }
}
