using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Pieces;

/// <summary>The sew line of a pattern as it can be drawn on its cloth.</summary>
/// <remarks>Beside a zip, sheet and mesh end short of the sew line, which is the middle of the teeth: drawn there it would lie on a neighbour's cloth.</remarks>
public static class SewStretches
{
    /// <summary>Lines in order; a ring ends where it begins.</summary>
    /// <param name="pattern">The pattern.</param>
    public static ImmutableArray<ImmutableArray<Point2>> Of(Pattern pattern)
    {
        ArgumentNullException.ThrowIfNull(pattern);

        var count = pattern.SewLine.Length;
        var isShort = new bool[count];
        foreach (var run in pattern.Runs.Where(run => run.AllowanceMm < 0))
        {
            for (var i = 0; i < (run.IsClosed ? count : (run.To - run.From + count) % count); i++)
            {
                isShort[(run.From + i) % count] = true;
            }
        }

        var start = Array.IndexOf(isShort, true);
        return start < 0 ? [pattern.SewLine.Add(pattern.SewLine[0])] : [.. Stretches(pattern.SewLine, isShort, start).SelectMany(line => Inside(pattern.CutLine, line))];
    }

    /// <summary>Edges that follow each other and are not short, beginning behind a short one.</summary>
    private static IEnumerable<List<Point2>> Stretches(ImmutableArray<Point2> ring, bool[] isShort, int start)
    {
        var line = new List<Point2>();
        for (var i = 1; i <= ring.Length; i++)
        {
            var at = (start + i) % ring.Length;
            if (!isShort[at])
            {
                line = line.Count > 0 ? line : [ring[at]];
                line.Add(ring[(at + 1) % ring.Length]);
            }
            else if (line.Count > 0)
            {
                yield return line;
                line = [];
            }
        }
    }

    /// <summary>The parts of a line inside a ring.</summary>
    private static IEnumerable<ImmutableArray<Point2>> Inside(ImmutableArray<Point2> ring, List<Point2> line)
    {
        var (steps, part) = (Rings.ToSteps(ring), ImmutableArray.CreateBuilder<Point2>());
        foreach (var (from, to) in line.Zip(line.Skip(1)).SelectMany(edge => Parts(ring, edge.First, edge.Second)))
        {
            if (ExactPredicates.Locate(steps, Grid.ToSteps(Point2.Between(from, to, 0.5))) < 0)
            {
                continue;
            }

            if (part.Count > 0 && part[^1] != from)
            {
                yield return part.DrainToImmutable();
            }

            if (part.Count == 0)
            {
                part.Add(from);
            }

            part.Add(to);
        }

        if (part.Count > 0)
        {
            yield return part.DrainToImmutable();
        }
    }

    /// <summary>An edge parted where it crosses a ring.</summary>
    private static IEnumerable<(Point2 From, Point2 To)> Parts(ImmutableArray<Point2> ring, Point2 from, Point2 to)
    {
        var shares = ring.Select((corner, i) => Share(from, to, corner, ring[(i + 1) % ring.Length])).Where(share => share is > 0 and < 1).Select(share => share!.Value).Order();
        var points = shares.Select(share => Grid.Snap(Point2.Between(from, to, share))).Prepend(from).Append(to).ToArray();
        return points.Zip(points.Skip(1)).Where(part => part.First != part.Second);
    }

    private static double? Share(Point2 from, Point2 to, Point2 otherFrom, Point2 otherTo)
    {
        var (step, other) = (to - from, otherTo - otherFrom);
        var slope = Point2.Cross(step, other);
        var along = slope == 0 ? double.NaN : Point2.Cross(otherFrom - from, step) / slope;
        return along is >= 0 and <= 1 ? Point2.Cross(otherFrom - from, other) / slope : null;
    }
}
