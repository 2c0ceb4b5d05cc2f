using System;
using System.Collections.Generic;
using System.Linq;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>Moves hubs so that they lie as near as may be, by least squares, on their facets' planes moved out by the stand-off.</summary>
/// <remarks>
/// Normal equations (sum n n') x = d sum n, solved on their own axes (Jacobi's turns); a direction that the planes leave free
/// gets no step. The product takes singular values of the planes themselves: another road.
/// </remarks>
internal static class TrueHubs
{
    // Own values below this share of the facets at a hub are nothing but rounding: three planes that meet in a line.
    private const double Free = 1e-12;

    private const int Sweeps = 12;

    internal static SpacePoint StepOf(IReadOnlyCollection<SpacePoint> normals, double standOff)
    {
        var matrix = new double[3, 3];
        var axes = new double[3, 3] { { 1, 0, 0 }, { 0, 1, 0 }, { 0, 0, 1 } };
        foreach (var parts in normals.Select(PartsOf))
        {
            for (var i = 0; i < 9; i++)
            {
                matrix[i / 3, i % 3] += parts[i / 3] * parts[i % 3];
            }
        }

        for (var sweep = 0; sweep < Sweeps; sweep++)
        {
            Turn(matrix, axes, 0, 1);
            Turn(matrix, axes, 0, 2);
            Turn(matrix, axes, 1, 2);
        }

        var sum = normals.Aggregate(default(SpacePoint), (total, normal) => total + normal);
        return Enumerable.Range(0, 3)
            .Where(i => matrix[i, i] > Free * normals.Count)
            .Select(i => (Axis: new SpacePoint(axes[0, i], axes[1, i], axes[2, i]), Value: matrix[i, i]))
            .Aggregate(default(SpacePoint), (step, own) => step + ((standOff * own.Axis.Dot(sum) / own.Value) * own.Axis));
    }

    private static double[] PartsOf(SpacePoint point) => [point.X, point.Y, point.Z];

    /// <summary>Turns the plane of two axes so that the matrix has nothing between them.</summary>
    private static void Turn(double[,] matrix, double[,] axes, int p, int q)
    {
        if (matrix[p, q] == 0)
        {
            return;
        }

        var ratio = (matrix[q, q] - matrix[p, p]) / (2 * matrix[p, q]);
        var tangent = (ratio >= 0 ? 1 : -1) / (Math.Abs(ratio) + Math.Sqrt((ratio * ratio) + 1));
        var cosine = 1 / Math.Sqrt((tangent * tangent) + 1);
        var sine = tangent * cosine;
        for (var i = 0; i < 3; i++)
        {
            (matrix[i, p], matrix[i, q]) = ((cosine * matrix[i, p]) - (sine * matrix[i, q]), (sine * matrix[i, p]) + (cosine * matrix[i, q]));
            (axes[i, p], axes[i, q]) = ((cosine * axes[i, p]) - (sine * axes[i, q]), (sine * axes[i, p]) + (cosine * axes[i, q]));
        }

        for (var i = 0; i < 3; i++)
        {
            (matrix[p, i], matrix[q, i]) = ((cosine * matrix[p, i]) - (sine * matrix[q, i]), (sine * matrix[p, i]) + (cosine * matrix[q, i]));
        }
    }
}
