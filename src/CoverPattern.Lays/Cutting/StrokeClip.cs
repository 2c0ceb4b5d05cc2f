using System;
using System.Collections.Generic;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Lays.Cutting;

/// <summary>Keeps what of a stroke lies between two lines across the roll.</summary>
internal static class StrokeClip
{
    /// <summary>The parts of a stroke with from &lt;= x &lt;= to, shifted so that from becomes 0.</summary>
    internal static IEnumerable<Stroke> Between(Stroke stroke, double from, double to)
    {
        var part = new List<Point2>();
        for (var i = 1; i < stroke.Points.Length; i++)
        {
            if (Clip(stroke.Points[i - 1], stroke.Points[i], from, to) is not { } piece)
            {
                continue;
            }

            if (part.Count > 0 && part[^1] != piece.From)
            {
                yield return Shifted(stroke, part, from);
                part = [];
            }

            if (part.Count == 0)
            {
                part.Add(piece.From);
            }

            part.Add(piece.To);
        }

        if (part.Count > 0)
        {
            yield return Shifted(stroke, part, from);
        }
    }

    /// <summary>A step within the strip; null when it lies outside or only touches it.</summary>
    private static (Point2 From, Point2 To)? Clip(Point2 start, Point2 end, double from, double to)
    {
        if (start.X == end.X)
        {
            return start.X >= from && start.X <= to ? (start, end) : null;
        }

        var (first, second) = (At(from), At(to));
        var (enter, leave) = (Math.Max(0, Math.Min(first, second)), Math.Min(1, Math.Max(first, second)));
        return enter < leave ? (Point(enter), Point(leave)) : null;

        double At(double x) => (x - start.X) / (end.X - start.X);
        Point2 Point(double share) => share == 0 ? start : share == 1 ? end : Point2.Between(start, end, share);
    }

    private static Stroke Shifted(Stroke stroke, List<Point2> points, double from) =>
        stroke with { Points = [.. points.Select(point => point - new Point2(from, 0))] };
}
