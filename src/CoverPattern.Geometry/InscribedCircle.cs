using System;
using System.Collections.Generic;
using System.Linq;

namespace CoverPattern.Geometry;

/// <summary>A circle inside an outline.</summary>
/// <param name="Centre">Its centre.</param>
/// <param name="Radius">Millimetres.</param>
public readonly record struct InscribedCircle(Point2 Centre, double Radius)
{
    /// <summary>The largest circle inside a ring, within a given error of its radius.</summary>
    /// <param name="ring">Ring of either direction, first point not repeated.</param>
    /// <param name="error">By how much a larger circle may be missed, millimetres, positive.</param>
    /// <remarks>
    /// Squares of a grid are split again as long as one could still hold a better centre: the distance to the outline
    /// changes by no more than the step taken. Method: [Garcia-Castellanos 2007] by cell refinement (from memory).
    /// </remarks>
    public static InscribedCircle Largest(IReadOnlyList<Point2> ring, double error) => Largest([ring], error);

    /// <summary>The largest circle between an outline and its holes, within a given error of its radius.</summary>
    /// <param name="rings">The outline first, then the holes; each of either direction, first point not repeated.</param>
    /// <param name="error">By how much a larger circle may be missed, millimetres, positive.</param>
    public static InscribedCircle Largest(IReadOnlyList<IReadOnlyList<Point2>> rings, double error)
    {
        ArgumentNullException.ThrowIfNull(rings);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(error, 0);
        var box = Rings.Bounds(rings[0]);
        var half = Math.Max(box.Width, box.Height) / 2;
        var squares = new PriorityQueue<(Point2 Centre, double Half), double>();
        var best = new InscribedCircle(box.Centre, Depth(rings, box.Centre));
        squares.Enqueue((box.Centre, half), double.NegativeInfinity);
        while (squares.TryDequeue(out var square, out var negatedBound) && -negatedBound > best.Radius + error)
        {
            foreach (var centre in Quarters(square))
            {
                var depth = Depth(rings, centre);
                best = depth > best.Radius ? new InscribedCircle(centre, depth) : best;
                var bound = depth + (square.Half / 2 * Math.Sqrt(2));
                if (bound > best.Radius + error)
                {
                    squares.Enqueue((centre, square.Half / 2), -bound);
                }
            }
        }

        return best;
    }

    private static IEnumerable<Point2> Quarters((Point2 Centre, double Half) square)
    {
        var step = square.Half / 2;
        return new[] { (-step, -step), (step, -step), (-step, step), (step, step) }
            .Select(offset => square.Centre + new Point2(offset.Item1, offset.Item2));
    }

    /// <summary>Distance to the nearest ring, negative outside and in holes.</summary>
    private static double Depth(IReadOnlyList<IReadOnlyList<Point2>> rings, Point2 point)
    {
        var (inside, nearest) = (false, double.PositiveInfinity);
        foreach (var ring in rings)
        {
            for (var i = 0; i < ring.Count; i++)
            {
                var (a, b) = (ring[i], ring[(i + 1) % ring.Count]);
                if (a.Y > point.Y != b.Y > point.Y && point.X < a.X + ((point.Y - a.Y) / (b.Y - a.Y) * (b.X - a.X)))
                {
                    inside = !inside;
                }

                nearest = Math.Min(nearest, Segments.Distance(a, b, point));
            }
        }

        return inside ? nearest : -nearest;
    }
}
