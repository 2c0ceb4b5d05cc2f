using System;
using System.Collections.Generic;

namespace CoverPattern.Lays.Nesting.Search;

/// <summary>Fills an outline with circles, each the largest that fits into what the earlier ones leave.</summary>
/// <remarks>
/// The circle's centre is the point farthest from outline and earlier circles, found by splitting squares and dropping those
/// that cannot hold a better one: the distance changes by no more than one goes. [Gardeyn 2025] describes the use.
/// </remarks>
internal static class PoleFinder
{
    /// <summary>A circle: centre and radius in the units of the outline.</summary>
    internal readonly record struct Pole(double X, double Y, double Radius);

    private readonly record struct Square(double X, double Y, double Half, double Gap);

    /// <param name="rings">Outline and holes.</param>
    /// <param name="limit">Greatest number of circles.</param>
    /// <returns>One circle at least; smaller ones than a fiftieth of the first are left out.</returns>
    public static List<Pole> Find(double[][][] rings, int limit)
    {
        var poles = new List<Pole>();
        while (poles.Count < limit)
        {
            var pole = Largest(rings, poles);
            if (poles.Count > 0 && pole.Radius < poles[0].Radius / 50)
            {
                break;
            }

            poles.Add(pole);
        }

        return poles;
    }

    private static Pole Largest(double[][][] rings, List<Pole> taken)
    {
        var (low, high) = Bounds(rings[0]);
        var half = Math.Max(high.X - low.X, high.Y - low.Y) / 8;
        var queue = new PriorityQueue<Square, (double, int)>();
        var (order, tolerance) = (0, half * 0.02);
        var best = new Square(double.NaN, double.NaN, 0, double.NegativeInfinity);
        for (var x = low.X + half; x < high.X + half; x += 2 * half)
        {
            for (var y = low.Y + half; y < high.Y + half; y += 2 * half)
            {
                Offer(x, y, half);
            }
        }

        while (queue.TryDequeue(out var square, out _) && square.Gap + (square.Half * Math.Sqrt(2)) > best.Gap + tolerance)
        {
            var quarter = square.Half / 2;
            Offer(square.X - quarter, square.Y - quarter, quarter);
            Offer(square.X + quarter, square.Y - quarter, quarter);
            Offer(square.X - quarter, square.Y + quarter, quarter);
            Offer(square.X + quarter, square.Y + quarter, quarter);
        }

        return new Pole(best.X, best.Y, Math.Max(best.Gap, 0));

        void Offer(double x, double y, double size)
        {
            var square = new Square(x, y, size, Gap(rings, taken, (x, y)));
            best = square.Gap > best.Gap ? square : best;
            if (square.Gap + (size * Math.Sqrt(2)) > best.Gap + tolerance)
            {
                queue.Enqueue(square, (-(square.Gap + (size * Math.Sqrt(2))), order++));
            }
        }
    }

    /// <summary>Radius of the largest circle round the point that meets neither outline nor taken circles; negative outside.</summary>
    private static double Gap(double[][][] rings, List<Pole> taken, (double X, double Y) point)
    {
        var (nearest, inside) = (double.PositiveInfinity, false);
        foreach (var ring in rings)
        {
            for (var i = 0; i < ring.Length; i++)
            {
                var (a, b) = (ring[i], ring[(i + 1) % ring.Length]);
                nearest = Math.Min(nearest, SquaredDistance(a, b, point));
                if (a[1] > point.Y != b[1] > point.Y
                    && point.X < a[0] + ((point.Y - a[1]) / (b[1] - a[1]) * (b[0] - a[0])))
                {
                    inside = !inside;
                }
            }
        }

        var gap = inside ? Math.Sqrt(nearest) : -Math.Sqrt(nearest);
        foreach (var pole in taken)
        {
            gap = Math.Min(gap, Math.Sqrt(Square2(point.X - pole.X, point.Y - pole.Y)) - pole.Radius);
        }

        return gap;
    }

    private static double SquaredDistance(double[] a, double[] b, (double X, double Y) point)
    {
        var (stepX, stepY) = (b[0] - a[0], b[1] - a[1]);
        var along = ((point.X - a[0]) * stepX) + ((point.Y - a[1]) * stepY);
        var share = Math.Clamp(along / Math.Max(Square2(stepX, stepY), double.Epsilon), 0, 1);
        return Square2(point.X - a[0] - (share * stepX), point.Y - a[1] - (share * stepY));
    }

    private static double Square2(double x, double y) => (x * x) + (y * y);

    private static ((double X, double Y) Low, (double X, double Y) High) Bounds(double[][] ring)
    {
        var (low, high) = ((ring[0][0], ring[0][1]), (ring[0][0], ring[0][1]));
        foreach (var point in ring)
        {
            low = (Math.Min(low.Item1, point[0]), Math.Min(low.Item2, point[1]));
            high = (Math.Max(high.Item1, point[0]), Math.Max(high.Item2, point[1]));
        }

        return (low, high);
    }
}
