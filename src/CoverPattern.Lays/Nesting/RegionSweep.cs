using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Lays.Nesting;

/// <summary>Finds the pairs of regions that overlap or come too close, by the exact tests of Geometry alone.</summary>
internal static class RegionSweep
{
    /// <summary>A thousandth of a millimetre, one step of the grid: what snapping may take from a distance.</summary>
    public const double Tolerance = 0.001;

    /// <summary>Goes through all pairs whose boxes are nearer than the spacing.</summary>
    /// <param name="regions">Regions as they lie.</param>
    /// <param name="spacing">Least distance asked, millimetres.</param>
    /// <returns>Indices of the pair and its distance, -1 for an overlap; in order of the indices.</returns>
    public static ImmutableArray<(int First, int Second, double Distance)> Clashes(ImmutableArray<GridRegion> regions, double spacing)
    {
        var reach = (long)Math.Ceiling(spacing * Grid.StepsPerMillimetre);
        var byLeft = Enumerable.Range(0, regions.Length).OrderBy(i => regions[i].Low.X).ThenBy(i => i).ToArray();
        var open = new List<int>();
        var clashes = new List<(int First, int Second, double Distance)>();
        foreach (var i in byLeft)
        {
            open.RemoveAll(j => regions[j].High.X + reach < regions[i].Low.X);
            foreach (var j in open.Where(j => IsLevel(regions[i], regions[j], reach)))
            {
                if (TryClash(regions[i], regions[j], spacing, out var distance))
                {
                    clashes.Add((Math.Min(i, j), Math.Max(i, j), distance));
                }
            }

            open.Add(i);
        }

        return [.. clashes.Order()];
    }

    private static bool IsLevel(GridRegion left, GridRegion right, long reach) =>
        left.Low.Y <= right.High.Y + reach && right.Low.Y <= left.High.Y + reach;

    private static bool TryClash(GridRegion left, GridRegion right, double spacing, out double distance)
    {
        if (RegionPairs.InteriorsMeet(left, right))
        {
            distance = -1;
            return true;
        }

        distance = spacing > 0 ? RegionPairs.BoundaryDistance(left, right, spacing) : 0;
        return distance < spacing - Tolerance;
    }
}
