using System;

namespace CoverPattern.Lays.Nesting.Search;

/// <summary>Decides for two outlines that meet, without crossing edge through edge, whether their insides overlap.</summary>
/// <remarks>
/// A boundary can enter the other's inside only where a corner of one lies on the other. There the two cones of inside
/// directions are compared. When no cones overlap, each ring lies wholly outside or wholly inside, and one corner that is off
/// the other's outline tells which.
/// </remarks>
internal static class Contact
{
    /// <param name="a">The first shape, at the origin.</param>
    /// <param name="b">The second shape.</param>
    /// <param name="x">Where the second shape's origin lies, whole steps.</param>
    /// <param name="y">Where the second shape's origin lies, whole steps.</param>
    public static bool Overlaps(PreparedShape a, PreparedShape b, double x, double y)
    {
        Span<bool> aOnB = a.EdgeCount <= 512 ? stackalloc bool[a.EdgeCount] : new bool[a.EdgeCount];
        Span<bool> bOnA = b.EdgeCount <= 512 ? stackalloc bool[b.EdgeCount] : new bool[b.EdgeCount];
        return CornersEnter(a, b, (x, y), aOnB) || CornersEnter(b, a, (-x, -y), bOnA)
            || Holds(b, a, (-x, -y), aOnB) || Holds(a, b, (x, y), bOnA);
    }

    /// <summary>The cone of a shape at one of its corners.</summary>
    public static Cone At(PreparedShape shape, int corner)
    {
        var before = shape.Previous[corner];
        return new Cone(shape.StepX[corner], shape.StepY[corner], -shape.StepX[before], -shape.StepY[before]);
    }

    /// <summary>The half plane to the left of an edge.</summary>
    public static Cone Beside(PreparedShape shape, int edge) =>
        new(shape.StepX[edge], shape.StepY[edge], -shape.StepX[edge], -shape.StepY[edge]);

    /// <summary>Looks at every corner of a that lies on b's outline; notes them.</summary>
    private static bool CornersEnter(PreparedShape a, PreparedShape b, (double X, double Y) shift, Span<bool> onOutline)
    {
        for (var i = 0; i < a.EdgeCount; i++)
        {
            for (var j = 0; j < b.EdgeCount; j++)
            {
                var place = PlaceOnEdge(b, j, a.X[i] - shift.X, a.Y[i] - shift.Y);
                if (place < 0)
                {
                    continue;
                }

                onOutline[i] = true;
                if (Cone.Overlap(At(a, i), place == 0 ? At(b, j) : Beside(b, j)))
                {
                    return true;
                }
            }
        }

        return false;
    }

    /// <summary>0 when the point is the edge's start, 1 when inside it, -1 else; its end is the next edge's start.</summary>
    private static int PlaceOnEdge(PreparedShape shape, int edge, double x, double y)
    {
        double offX = x - shape.X[edge], offY = y - shape.Y[edge], stepX = shape.StepX[edge], stepY = shape.StepY[edge];
        if (offX == 0 && offY == 0)
        {
            return 0;
        }

        // Whether it lies between the ends is asked first: then no product leaves the exact range.
        return offX * (stepX - offX) >= 0 && offY * (stepY - offY) >= 0
            && (stepX * offY) - (stepY * offX) == 0 && (offX != stepX || offY != stepY)
            ? 1
            : -1;
    }

    private static bool Holds(PreparedShape outer, PreparedShape inner, (double X, double Y) shift, Span<bool> onOutline)
    {
        for (var ring = 0; ring + 1 < inner.RingStarts.Length; ring++)
        {
            for (var i = inner.RingStarts[ring]; i < inner.RingStarts[ring + 1]; i++)
            {
                if (onOutline[i])
                {
                    continue;
                }

                if (Overlap.Contains(outer, inner.X[i] + shift.X, inner.Y[i] + shift.Y))
                {
                    return true;
                }

                break;
            }
        }

        return false;
    }
}
