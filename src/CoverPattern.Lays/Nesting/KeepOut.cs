using System.Collections.Generic;
using System.Collections.Immutable;
using CoverPattern.Geometry;

namespace CoverPattern.Lays.Nesting;

/// <summary>Shifts of one convex part against another that bring them closer than the spacing: the inside of a convex ring.</summary>
/// <remarks>Known as no-fit polygon [Adamowicz Albano 1976, from memory]. Held as two chains of corners, each rising in y.</remarks>
internal sealed class KeepOut
{
    private readonly GridPoint[] left;
    private readonly GridPoint[] right;

    /// <param name="ring">Convex ring, counter-clockwise.</param>
    public KeepOut(ImmutableArray<GridPoint> ring)
    {
        var (lowest, highest) = (0, 0);
        for (var i = 1; i < ring.Length; i++)
        {
            lowest = ring[i].Y < ring[lowest].Y ? i : lowest;
            highest = ring[i].Y > ring[highest].Y ? i : highest;
        }

        right = Chain(ring, lowest, highest, 1);
        left = Chain(ring, lowest, highest, ring.Length - 1);
        (LowY, HighY) = (ring[lowest].Y, ring[highest].Y);
        (LowX, HighX) = (long.MaxValue, long.MinValue);
        foreach (var corner in ring)
        {
            LowX = long.Min(LowX, corner.X);
            HighX = long.Max(HighX, corner.X);
        }
    }

    public long LowX { get; }

    public long HighX { get; }

    public long LowY { get; }

    public long HighY { get; }

    /// <summary>The shifts along x that are kept out at a shift along y: all strictly between the two numbers.</summary>
    /// <returns>False when none is.</returns>
    public bool TrySpan(long y, out long from, out long to)
    {
        (from, to) = (0, 0);
        if (y <= LowY || y >= HighY)
        {
            return false;
        }

        from = -CrossingRoundedUp(left, y, -1);
        to = CrossingRoundedUp(right, y, 1);
        return from + 1 < to;
    }

    private static GridPoint[] Chain(ImmutableArray<GridPoint> ring, int lowest, int highest, int step)
    {
        var chain = new List<GridPoint> { ring[lowest] };
        for (var i = lowest; i != highest;)
        {
            i = (i + step) % ring.Length;
            if (ring[i].Y <= chain[^1].Y)
            {
                // A level edge at the bottom: its far end begins the chain.
                chain[^1] = ring[i].Y == chain[^1].Y && chain.Count == 1 ? ring[i] : chain[^1];
                continue;
            }

            chain.Add(ring[i]);
        }

        return [.. chain];
    }

    /// <summary>x of a chain at y, times the sign, rounded up to a whole step.</summary>
    private static long CrossingRoundedUp(GridPoint[] chain, long y, long sign)
    {
        var above = 1;
        while (chain[above].Y < y)
        {
            above++;
        }

        var (low, high) = (chain[above - 1], chain[above]);
        var rise = high.Y - low.Y;
        var run = sign * (high.X - low.X) * (y - low.Y);
        var whole = run / rise;
        return (sign * low.X) + whole + (run > whole * rise ? 1 : 0);
    }
}
