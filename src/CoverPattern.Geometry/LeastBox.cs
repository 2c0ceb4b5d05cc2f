using System;
using System.Collections.Generic;
using System.Linq;

namespace CoverPattern.Geometry;

/// <summary>The rectangle of least width round points, its long side in any direction.</summary>
/// <param name="Angle">Direction of the long side, radians, above -pi/2 up to pi/2.</param>
/// <param name="Length">Along that direction, millimetres.</param>
/// <param name="Width">Square to it, millimetres; not more than the length.</param>
public readonly record struct LeastBox(double Angle, double Length, double Width)
{
    // Widths nearer than this count as equal, millimetres; directions nearer than this too, radians.
    private const double SameWidth = 0.001;
    private const double SameAngle = 1e-6;

    /// <summary>Finds the box.</summary>
    /// <param name="points">At least three, not all on one line.</param>
    /// <returns>Of boxes equally narrow the one whose long side is nearest to +x; of two equally near the counter-clockwise one.</returns>
    /// <remarks>A box of least width lies along an edge of the convex ring round the points [Shamos 1978, from memory]: all are tried.</remarks>
    public static LeastBox Round(IEnumerable<Point2> points)
    {
        var hull = Hull(points);
        var boxes = hull.Select((corner, i) => Along(hull, hull[(i + 1) % hull.Count] - corner)).ToArray();
        var least = boxes.Min(box => box.Width);
        return boxes.Where(box => box.Width <= least + SameWidth)
            .OrderBy(box => Math.Round(Math.Abs(box.Angle) / SameAngle))
            .ThenByDescending(box => box.Angle)
            .First();
    }

    private static LeastBox Along(List<Point2> hull, Point2 step)
    {
        var along = step.Unit();
        var (reach, across) = (hull.Select(corner => Point2.Dot(along, corner)).ToArray(), hull.Select(corner => Point2.Cross(along, corner)).ToArray());
        var angle = Math.Atan2(step.Y, step.X);
        var halfTurned = angle > Math.PI / 2 ? angle - Math.PI : angle <= -Math.PI / 2 ? angle + Math.PI : angle;
        return new LeastBox(halfTurned, reach.Max() - reach.Min(), across.Max() - across.Min());
    }

    /// <summary>The convex ring, counter-clockwise, by the monotone chain.</summary>
    private static List<Point2> Hull(IEnumerable<Point2> points)
    {
        Point2[] sorted = [.. points.OrderBy(point => point.X).ThenBy(point => point.Y)];
        return [.. Chain(sorted).SkipLast(1), .. Chain(sorted.Reverse()).SkipLast(1)];
    }

    private static List<Point2> Chain(IEnumerable<Point2> sorted)
    {
        var chain = new List<Point2>();
        foreach (var point in sorted)
        {
            while (chain.Count > 1 && Point2.Cross(chain[^1] - chain[^2], point - chain[^1]) <= 0)
            {
                chain.RemoveAt(chain.Count - 1);
            }

            chain.Add(point);
        }

        return chain;
    }
}
