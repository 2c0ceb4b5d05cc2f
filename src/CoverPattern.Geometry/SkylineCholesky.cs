using System;
using System.Collections.Immutable;

namespace CoverPattern.Geometry;

/// <summary>Solves symmetric positive equations whose rows begin late: only what lies between the first entry of a row and its diagonal is kept.</summary>
internal sealed class SkylineCholesky
{
    private readonly double[][] rows;
    private readonly ImmutableArray<int> starts;

    /// <param name="rows">Lower half, each row from its first entry to the diagonal; overwritten.</param>
    /// <param name="starts">Column of the first entry of each row.</param>
    /// <exception cref="ArgumentException">A diagonal falls to nothing: the equations do not determine the unknowns.</exception>
    internal SkylineCholesky(double[][] rows, ImmutableArray<int> starts)
    {
        (this.rows, this.starts) = (rows, starts);
        for (var i = 0; i < rows.Length; i++)
        {
            for (var j = starts[i]; j <= i; j++)
            {
                var value = rows[i][j - starts[i]] - Overlap(i, j);
                rows[i][j - starts[i]] = j < i ? value / rows[j][^1] : value > 0 ? Math.Sqrt(value) : throw new ArgumentException($"Equation {i} depends on those before it.", nameof(rows));
            }
        }
    }

    /// <summary>The unknowns for a right side.</summary>
    internal double[] Solve(double[] right)
    {
        var x = (double[])right.Clone();
        for (var i = 0; i < x.Length; i++)
        {
            for (var j = starts[i]; j < i; j++)
            {
                x[i] -= rows[i][j - starts[i]] * x[j];
            }

            x[i] /= rows[i][^1];
        }

        for (var i = x.Length - 1; i >= 0; i--)
        {
            x[i] /= rows[i][^1];
            for (var j = starts[i]; j < i; j++)
            {
                x[j] -= rows[i][j - starts[i]] * x[i];
            }
        }

        return x;
    }

    /// <summary>Sum of the products of two rows left of the second one's diagonal.</summary>
    private double Overlap(int i, int j)
    {
        var first = Math.Max(starts[i], starts[j]);
        ReadOnlySpan<double> upper = rows[i].AsSpan(first - starts[i]);
        ReadOnlySpan<double> lower = rows[j].AsSpan(first - starts[j]);
        var sum = 0.0;
        for (var k = 0; k < j - first; k++)
        {
            sum += upper[k] * lower[k];
        }

        return sum;
    }
}
