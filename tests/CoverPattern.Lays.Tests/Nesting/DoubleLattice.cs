using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Lays.Tests.Nesting;

/// <summary>The densest double lattice of a convex outline whose rows run along the strip, by trying many directions.</summary>
/// <remarks>
/// Copies touch in rows at a pitch of the longest chord in that direction; the half-turned rows between fill the gaps on the two lines whose
/// chords are half as long. A row takes the distance of those lines [Kuperberg Kuperberg 1990, from memory]; the formulas are worked out here anew.
/// </remarks>
/// <param name="Outline">The outline turned so that its rows run along x.</param>
/// <param name="Pitch">Distance from copy to copy in a row.</param>
/// <param name="RowHeight">Cloth a row takes across.</param>
/// <param name="Rim">What the first and the last row need more.</param>
internal sealed record DoubleLattice(ImmutableArray<Point2> Outline, double Pitch, double RowHeight, double Rim)
{
    private const int Directions = 720;

    public double Area => Rings.SignedArea(Outline);

    public double Density => Area / (Pitch * RowHeight);

    /// <summary>Copies side by side that are no narrower than one outline, so that a cell of so many in a row meets itself nowhere.</summary>
    public int CopiesInARow => (int)Math.Ceiling((Rings.Bounds(Outline).Width / Pitch) - 1e-9);

    public static DoubleLattice Densest(ImmutableArray<Point2> outline) => Enumerable.Range(0, Directions)
        .Select(k => Along([.. outline.Select(corner => RigidMap.FromDegrees(180.0 * k / Directions, default, mirrored: false).Apply(corner))]))
        .MaxBy(lattice => lattice.Density)!;

    /// <summary>Width of the strip on which so many rows lie.</summary>
    public double Width(int rows) => (rows * RowHeight) + (2 * Rim);

    private static DoubleLattice Along(ImmutableArray<Point2> outline)
    {
        // The chord's length is concave in the height and bends at corners only.
        double[] heights = [.. outline.Select(corner => corner.Y).Distinct().Order()];
        double[] chords = [.. heights.Select(height => Chord(outline, height))];
        var longest = chords.Max();
        var low = Crossing(heights, chords, longest / 2);
        var high = Crossing([.. heights.Reverse()], [.. chords.Reverse()], longest / 2);
        return new DoubleLattice(outline, longest, high - low, low - heights[0]);
    }

    /// <summary>The first height at which the chord is as long as asked.</summary>
    private static double Crossing(double[] heights, double[] chords, double length)
    {
        var k = Array.FindIndex(chords, chord => chord >= length);
        return k == 0 ? heights[0] : heights[k - 1] + ((length - chords[k - 1]) / (chords[k] - chords[k - 1]) * (heights[k] - heights[k - 1]));
    }

    private static double Chord(ImmutableArray<Point2> outline, double height)
    {
        double[] places = [.. Meetings(outline, height)];
        return places.Max() - places.Min();
    }

    private static IEnumerable<double> Meetings(ImmutableArray<Point2> outline, double height)
    {
        for (var i = 0; i < outline.Length; i++)
        {
            var (from, to) = (outline[i], outline[(i + 1) % outline.Length]);
            if (from.Y == height)
            {
                yield return from.X;
            }
            else if ((from.Y < height) != (to.Y < height) && to.Y != height)
            {
                yield return from.X + ((height - from.Y) / (to.Y - from.Y) * (to.X - from.X));
            }
        }
    }
}
