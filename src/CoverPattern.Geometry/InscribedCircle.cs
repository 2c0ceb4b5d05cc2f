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
    public static InscribedCircle Largest(IReadOnlyList<Point2> ring, double error)
    {
        ArgumentNullException.ThrowIfNull(ring);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(error, 0);

        var box = Rings.Bounds(ring);
        var half = Math.Max(box.Width, box.Height) / 2;
        var squares = new PriorityQueue<(Point2 Centre, double Half), double>();
        var best = new InscribedCircle(box.Centre, Depth(ring, box.Centre));
        squares.Enqueue((box.Centre, half), double.NegativeInfinity);
        while (squares.TryDequeue(out var square, out var negatedBound) && -negatedBound > best.Radius + error)
        {
            foreach (var centre in Quarters(square))
            {
                var depth = Depth(ring, centre);
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

    /// <summary>Distance to the outline, negative outside.</summary>
    private static double Depth(IReadOnlyList<Point2> ring, Point2 point)
    {
        var (inside, nearest) = (false, double.PositiveInfinity);
        for (var i = 0; i < ring.Count; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Count]);
            if (a.Y > point.Y != b.Y > point.Y && point.X < a.X + ((point.Y - a.Y) / (b.Y - a.Y) * (b.X - a.X)))
            {
                inside = !inside;
            }

            nearest = Math.Min(nearest, Segments.Distance(a, b, point));
        }

        return inside ? nearest : -nearest;
    }
}
