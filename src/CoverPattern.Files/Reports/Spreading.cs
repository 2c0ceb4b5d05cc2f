using System;
using System.Collections.Generic;
using System.Linq;

namespace CoverPattern.Files.Reports;

/// <summary>Moves marks on a line apart.</summary>
internal static class Spreading
{
    /// <summary>Places near the wished ones, in the same order, none nearer to the next than the least gap.</summary>
    /// <param name="wished">Wished places, ascending.</param>
    /// <param name="gap">Least distance, in the same unit.</param>
    /// <remarks>The mean of pushing all to the right and pushing all to the left; both keep the gap, so the mean does.</remarks>
    public static double[] Apart(IReadOnlyList<double> wished, double gap)
    {
        var (right, left) = (wished.ToArray(), wished.ToArray());
        for (var i = 1; i < right.Length; i++)
        {
            right[i] = Math.Max(right[i], right[i - 1] + gap);
        }

        for (var i = left.Length - 2; i >= 0; i--)
        {
            left[i] = Math.Min(left[i], left[i + 1] - gap);
        }

        return [.. right.Zip(left, (a, b) => (a + b) / 2)];
    }
}
