using System;
using System.Collections.Immutable;
using System.Linq;
using MathNet.Numerics.LinearAlgebra;

namespace CoverPattern.Geometry;

/// <summary>Finds the point that lies best on several planes.</summary>
public static class PlaneSolver
{
    // Planes whose normals differ by less than this (radians) count as one: where they meet they leave a direction free.
    private const double SamePlane = 1e-9;

    /// <summary>The point nearest, by least squares, to all planes n.x = 1; of several such points the one nearest the origin.</summary>
    /// <param name="normals">Unit normals, at least one.</param>
    /// <returns>A point without unit: scale it by the planes' distance from the origin.</returns>
    /// <exception cref="ArgumentException">There is no normal.</exception>
    public static Point3 NearestToPlanes(ImmutableArray<Point3> normals)
    {
        if (normals.IsDefaultOrEmpty)
        {
            throw new ArgumentException("At least one plane is needed.", nameof(normals));
        }

        var matrix = Matrix<double>.Build.DenseOfRowArrays(normals.Select(n => new[] { n.X, n.Y, n.Z }));
        var parts = matrix.Svd();
        var onAxes = parts.U.TransposeThisAndMultiply(Vector<double>.Build.Dense(normals.Length, 1.0));
        var solution = Vector<double>.Build.Dense(3);
        for (var i = 0; i < parts.S.Count && parts.S[i] > SamePlane; i++)
        {
            solution += parts.VT.Row(i) * (onAxes[i] / parts.S[i]);
        }

        return new Point3(solution[0], solution[1], solution[2]);
    }
}
