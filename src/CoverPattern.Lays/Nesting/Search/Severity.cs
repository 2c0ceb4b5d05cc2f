using System;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace CoverPattern.Lays.Nesting.Search;

/// <summary>How bad an overlap is: smooth, positive everywhere, larger for deeper overlaps and for bulky shapes.</summary>
/// <remarks>
/// Sum over all pairs of circles of depth times smaller radius, the depth bent so that it stays positive for circles that
/// miss each other; the root of the sum times the roots of both hulls' sizes [Gardeyn 2025]. Only exact vector operations
/// (no fused or approximate ones), so that every processor gives the same bits.
/// </remarks>
internal static class Severity
{
    // Depth below which the measure bends, as part of the larger diameter; 3 % was clearly worse, 0.4 % no better.
    private const float BendShare = 0.01f;

    // Far above the rounding of floats: what is taken for enough is enough.
    private const float Reserve = 1.0001f;

    /// <param name="a">The first shape, at the origin.</param>
    /// <param name="b">The second shape.</param>
    /// <param name="x">Where the second shape's origin lies, steps.</param>
    /// <param name="y">Where the second shape's origin lies, steps.</param>
    public static float Of(PreparedShape a, PreparedShape b, float x, float y) => Of(a, b, x, y, float.PositiveInfinity);

    /// <summary>The same, but without end when it is more than <paramref name="enough"/>: the largest circles tell that soon.</summary>
    /// <inheritdoc cref="Of(PreparedShape, PreparedShape, float, float)"/>
    public static float Of(PreparedShape a, PreparedShape b, float x, float y, float enough)
    {
        var root = enough / (a.Bulk * b.Bulk);
        var enoughSum = Reserve * root * root;
        var bend = BendShare * (a.Diameter > b.Diameter ? a.Diameter : b.Diameter);
        var (knee, twice, squared) = (Vector256.Create(bend), Vector256.Create(2 * bend), Vector256.Create(bend * bend));
        var bx = Vector256.LoadUnsafe(ref MemoryMarshal.GetArrayDataReference(b.PoleX)) + Vector256.Create(x);
        var by = Vector256.LoadUnsafe(ref MemoryMarshal.GetArrayDataReference(b.PoleY)) + Vector256.Create(y);
        var br = Vector256.LoadUnsafe(ref MemoryMarshal.GetArrayDataReference(b.PoleRadius));
        var sum = Vector256<float>.Zero;
        for (var i = 0; i < a.Poles; i++)
        {
            var dx = bx - Vector256.Create(a.PoleX[i]);
            var dy = by - Vector256.Create(a.PoleY[i]);
            var radius = Vector256.Create(a.PoleRadius[i]);
            var depth = radius + br - Vector256.Sqrt((dx * dx) + (dy * dy));
            var bent = squared / (twice - depth);
            var kept = Vector256.ConditionalSelect(Vector256.LessThan(depth, knee), bent, depth);
            sum += kept * Vector256.ConditionalSelect(Vector256.LessThan(radius, br), radius, br);
            if ((i & 1) == 0 && AddLanes(sum) > enoughSum)
            {
                return float.PositiveInfinity;
            }
        }

        return MathF.Sqrt(AddLanes(sum)) * a.Bulk * b.Bulk;
    }

    /// <summary>No shift within some steps of this one is less bad: no depth changes by more than the shift does.</summary>
    public static float Least(PreparedShape a, PreparedShape b, float x, float y, float reach)
    {
        var radii = 0f;
        foreach (var one in a.PoleRadius)
        {
            foreach (var other in b.PoleRadius)
            {
                radii += Math.Min(one, other);
            }
        }

        var root = Of(a, b, x, y) / (a.Bulk * b.Bulk);
        var sum = ((root * root) / Reserve) - (Reserve * reach * radii);
        return sum > 0 ? MathF.Sqrt(sum) * a.Bulk * b.Bulk / Reserve : 0;
    }

    /// <summary>Adds the lanes in a fixed order.</summary>
    private static float AddLanes(Vector256<float> lanes)
    {
        var half = lanes.GetLower() + lanes.GetUpper();
        return (half.GetElement(0) + half.GetElement(2)) + (half.GetElement(1) + half.GetElement(3));
    }
}
