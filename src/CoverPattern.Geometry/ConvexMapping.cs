using System.Collections.Generic;
using System.Linq;

namespace CoverPattern.Geometry;

/// <summary>Carries points of a convex polygon into another one with as many corners: corner to corner, side to side, and what is inside stays inside.</summary>
public static class ConvexMapping
{
    /// <param name="from">Convex ring, counter-clockwise, first point not repeated, no corner straight.</param>
    /// <param name="to">Convex ring with as many corners.</param>
    /// <param name="point">A point in the first ring or on it.</param>
    /// <returns>Its place in the second ring. For triangles the map is affine; along each side it is linear.</returns>
    /// <remarks>Weighs the corners by the coordinates of [Wachspress 1975], written without division so that sides and corners are no special case.</remarks>
    public static Point2 Carry(IReadOnlyList<Point2> from, IReadOnlyList<Point2> to, Point2 point)
    {
        var count = from.Count;
        double[] beside = [.. Enumerable.Range(0, count).Select(i => Doubled(point, from[i], from[(i + 1) % count]))];
        var weights = Enumerable.Range(0, count).Select(i =>
        {
            var before = (i + count - 1) % count;
            return Doubled(from[before], from[i], from[(i + 1) % count])
                * Enumerable.Range(0, count).Where(side => side != before && side != i).Aggregate(1.0, (product, side) => product * beside[side]);
        }).ToArray();
        return (1 / weights.Sum()) * Enumerable.Range(0, count).Select(i => weights[i] * to[i]).Aggregate((left, right) => left + right);
    }

    /// <summary>Twice the signed area of a triangle.</summary>
    private static double Doubled(Point2 one, Point2 two, Point2 three) => Point2.Cross(two - one, three - one);
}
