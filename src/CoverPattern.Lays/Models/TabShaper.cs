using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Lays.Models;

/// <summary>Shapes the tab of one edge so that it lies on no part of its own piece, nor where another of its tabs may lie.</summary>
/// <remarks>
/// Its height over each point of the edge is the least of: the tab's depth, two slopes from the ends, and a share of the way
/// straight outward to the piece's own outline, which matters in slits and inside corners.
/// </remarks>
internal sealed class TabShaper(ImmutableArray<Point2> outline, bool isClockwise)
{
    // Own choices: as wide as a finger holds and a glue stick covers, millimetres; slopes as on any paper model.
    private const double Depth = 6;
    private const double DepthOfShort = 0.35;
    private const double Slope = 55;
    private const double ShareOfCorner = 0.45;
    private const double ShareOfGap = 0.45;
    private const int Samples = 24;
    private const int MostTries = 8;

    /// <summary>The tab over an edge.</summary>
    /// <param name="from">Index of the edge's first corner.</param>
    /// <param name="to">Index of its last corner.</param>
    /// <param name="others">Tabs that the piece already has.</param>
    internal ImmutableArray<Point2> Shape(int from, int to, IEnumerable<ImmutableArray<Point2>> others)
    {
        var taken = others.ToArray();
        var depth = Math.Min(Depth, DepthOfShort * Point2.Distance(outline[from], outline[to]));
        var shape = Of(from, to, depth);
        for (var i = 0; i < MostTries && taken.Any(other => Meet(shape, other)); i++)
        {
            depth *= 0.6;
            shape = Of(from, to, depth);
        }

        return shape;
    }

    private ImmutableArray<Point2> Of(int from, int to, double depth)
    {
        var (start, end) = (outline[from], outline[to]);
        var length = Point2.Distance(start, end);
        var along = (end - start).Unit();
        var outward = (isClockwise ? 1 : -1) * along.QuarterTurned();
        var (left, right) = (Tangent(from), Tangent(to));
        // The corners of the plain tab and even steps between them, so that gaps are followed.
        var places = Enumerable.Range(1, Samples - 1).Select(i => i * length / Samples)
            .Append(Math.Min(depth / left, length / 2)).Append(Math.Max(length - (depth / right), length / 2))
            .Distinct().Order();
        var top = places.Select(at => (At: at, Height: Math.Min(Math.Min(depth, Math.Min(at * left, (length - at) * right)), ShareOfGap * Gap(start + (at * along), outward, from, to))));
        return Plain([start, .. top.Select(point => start + (point.At * along) + (point.Height * outward)), end]);
    }

    /// <summary>Tangent of the slope at a corner: at an inside corner a share of what is free there.</summary>
    private double Tangent(int corner)
    {
        var count = outline.Length;
        var (here, before, after) = (outline[corner], outline[(corner + count - 1) % count], outline[(corner + 1) % count]);
        var inside = Math.Atan2(Point2.Cross(after - here, before - here), Point2.Dot(after - here, before - here)) * (isClockwise ? -1 : 1);
        var free = inside > 0 ? (2 * Math.PI) - inside : -inside;
        return Math.Tan(Math.Min(Slope * Math.PI / 180, ShareOfCorner * free));
    }

    /// <summary>How far it is straight outward to the outline; without limit where there is nothing that way.</summary>
    private double Gap(Point2 point, Point2 outward, int from, int to)
    {
        var gap = double.PositiveInfinity;
        for (var i = 0; i < outline.Length; i++)
        {
            var (a, b) = (outline[i] - point, outline[(i + 1) % outline.Length] - point);
            var (left, right) = (Point2.Cross(outward, a), Point2.Cross(outward, b));
            if (IsOfEdge(i, from, to) || (left < 0) == (right < 0))
            {
                continue;
            }

            var reach = Point2.Dot(outward, Point2.Between(a, b, left / (left - right)));
            gap = reach > 0 ? Math.Min(gap, reach) : gap;
        }

        return gap;
    }

    private bool IsOfEdge(int i, int from, int to) => (i - from + outline.Length) % outline.Length < (to - from + outline.Length) % outline.Length;

    private static bool Meet(ImmutableArray<Point2> left, ImmutableArray<Point2> right)
    {
        // Tabs of neighbouring edges share a corner of the outline; all else must stay apart.
        for (var i = 1; i < left.Length; i++)
        {
            for (var j = 1; j < right.Length; j++)
            {
                var isShared = left[i - 1] == right[j - 1] || left[i - 1] == right[j] || left[i] == right[j - 1] || left[i] == right[j];
                if (!isShared && Segments.Distance(left[i - 1], left[i], right[j - 1], right[j]) < 1e-6)
                {
                    return true;
                }
            }
        }

        return false;
    }

    /// <summary>The same line without corners that lie straight between their neighbours.</summary>
    private static ImmutableArray<Point2> Plain(ImmutableArray<Point2> line)
    {
        var kept = new List<Point2> { line[0] };
        for (var i = 1; i + 1 < line.Length; i++)
        {
            if (Segments.Distance(kept[^1], line[i + 1], line[i]) > 1e-4)
            {
                kept.Add(line[i]);
            }
        }

        kept.Add(line[^1]);
        return [.. kept];
    }
}
