using System;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace CoverPattern.Lays.Nesting.Search;

/// <summary>The exact question whether the insides of two shapes share a point; shapes that only touch do not overlap.</summary>
internal static class Overlap
{
    private enum Verdict
    {
        Apart,
        Touching,
        Crossing,
    }

    /// <param name="a">The first shape, at the origin.</param>
    /// <param name="b">The second shape.</param>
    /// <param name="x">Where the second shape's origin lies, whole steps.</param>
    /// <param name="y">Where the second shape's origin lies, whole steps.</param>
    public static bool Exists(PreparedShape a, PreparedShape b, double x, double y)
    {
        double left = Math.Max(a.Box.Left, b.Box.Left + x), right = Math.Min(a.Box.Right, b.Box.Right + x);
        double bottom = Math.Max(a.Box.Bottom, b.Box.Bottom + y), top = Math.Min(a.Box.Top, b.Box.Top + y);
        if (left >= right || bottom >= top)
        {
            return false;
        }

        return Edges(a, b, (x, y), (left, bottom, right, top)) switch
        {
            Verdict.Crossing => true,
            Verdict.Touching => Contact.Overlaps(a, b, x, y),
            _ => Holds(b, a, -x, -y) || Holds(a, b, x, y),
        };
    }

    /// <summary>Tells whether a ring of the inner shape starts inside the outer one; the outlines must not meet.</summary>
    private static bool Holds(PreparedShape outer, PreparedShape inner, double x, double y)
    {
        for (var ring = 0; ring + 1 < inner.RingStarts.Length; ring++)
        {
            var start = inner.RingStarts[ring];
            if (Contains(outer, inner.X[start] + x, inner.Y[start] + y))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Even-odd rule by a ray to +x; the point must not lie on the outline.</summary>
    public static bool Contains(PreparedShape shape, double x, double y)
    {
        if (x <= shape.Box.Left || x >= shape.Box.Right || y <= shape.Box.Bottom || y >= shape.Box.Top)
        {
            return false;
        }

        var inside = false;
        for (var i = 0; i < shape.EdgeCount; i++)
        {
            var (fromY, stepY) = (shape.Y[i], shape.StepY[i]);
            if (fromY > y == fromY + stepY > y)
            {
                continue;
            }

            var side = (shape.StepX[i] * (y - fromY)) - (stepY * (x - shape.X[i]));
            inside ^= side > 0 == stepY > 0;
        }

        return inside;
    }

    /// <summary>Tests the edges of a that reach into the common box against all edges of b, four at a time.</summary>
    private static Verdict Edges(PreparedShape a, PreparedShape b, (double X, double Y) shift, (double Left, double Bottom, double Right, double Top) common)
    {
        var verdict = Verdict.Apart;
        for (var i = 0; i < a.EdgeCount; i++)
        {
            double px = a.X[i], py = a.Y[i], fx = a.StepX[i], fy = a.StepY[i];
            if (Math.Max(px, px + fx) < common.Left || Math.Min(px, px + fx) > common.Right
                || Math.Max(py, py + fy) < common.Bottom || Math.Min(py, py + fy) > common.Top)
            {
                continue;
            }

            switch (EdgeAgainst(b, (px - shift.X, py - shift.Y), (fx, fy)))
            {
                case Verdict.Crossing:
                    return Verdict.Crossing;
                case Verdict.Touching:
                    verdict = Verdict.Touching;
                    break;
                default:
                    break;
            }
        }

        return verdict;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Verdict EdgeAgainst(PreparedShape b, (double X, double Y) from, (double X, double Y) step)
    {
        ref var ux = ref MemoryMarshal.GetArrayDataReference(b.X);
        ref var uy = ref MemoryMarshal.GetArrayDataReference(b.Y);
        ref var sx = ref MemoryMarshal.GetArrayDataReference(b.StepX);
        ref var sy = ref MemoryMarshal.GetArrayDataReference(b.StepY);
        var (px, py) = (Vector256.Create(from.X), Vector256.Create(from.Y));
        var (fx, fy) = (Vector256.Create(step.X), Vector256.Create(step.Y));
        var touch = Vector256<double>.Zero;
        for (nuint k = 0; k < (nuint)b.X.Length; k += 4)
        {
            var ex = Vector256.LoadUnsafe(ref sx, k);
            var ey = Vector256.LoadUnsafe(ref sy, k);
            var rx = px - Vector256.LoadUnsafe(ref ux, k);
            var ry = py - Vector256.LoadUnsafe(ref uy, k);
            var turn = (ex * fy) - (ey * fx);
            var start = (ex * ry) - (ey * rx);
            var other = (fy * rx) - (fx * ry);
            // Products of two exact numbers keep their sign; NaN padding fails every comparison.
            var ours = start * (start + turn);
            var theirs = other * (other - turn);
            var crossing = Vector256.LessThan(ours, Vector256<double>.Zero) & Vector256.LessThan(theirs, Vector256<double>.Zero);
            if (Vector256.ExtractMostSignificantBits(crossing) != 0)
            {
                return Verdict.Crossing;
            }

            touch |= Vector256.LessThanOrEqual(ours, Vector256<double>.Zero) & Vector256.LessThanOrEqual(theirs, Vector256<double>.Zero);
        }

        return Vector256.ExtractMostSignificantBits(touch) != 0 ? Verdict.Touching : Verdict.Apart;
    }
}
