using System.Collections.Generic;
using System.Linq;
using MathNet.Numerics.LinearAlgebra;

namespace CoverPattern.Geometry;

/// <summary>Finds the sphere that lies best on points.</summary>
public static class SphereFit
{
    // Below this share of the largest, a direction counts as undetermined: the points lie in a plane.
    private const double Flat = 1e-9;

    /// <summary>The centre by algebraic least squares: |p|^2 = 2 c.p + k, linear in c and k.</summary>
    /// <param name="points">Any points.</param>
    /// <returns>Null when fewer than four points do not lie in one plane.</returns>
    public static Point3? Centre(IReadOnlyList<Point3> points)
    {
        if (points.Count < 4)
        {
            return null;
        }

        var middle = (1.0 / points.Count) * points.Aggregate(default(Point3), (sum, point) => sum + point);
        var scale = points.Max(point => Point3.Distance(point, middle));
        var near = points.Select(point => (1 / scale) * (point - middle)).ToArray();
        var matrix = Matrix<double>.Build.DenseOfRowArrays(near.Select(p => new[] { 2 * p.X, 2 * p.Y, 2 * p.Z, 1 }));
        var parts = matrix.Svd();
        if (!(parts.S[3] > Flat * parts.S[0]))
        {
            return null;
        }

        var solution = parts.Solve(Vector<double>.Build.DenseOfEnumerable(near.Select(p => Point3.Dot(p, p))));
        return middle + (scale * new Point3(solution[0], solution[1], solution[2]));
    }
}
