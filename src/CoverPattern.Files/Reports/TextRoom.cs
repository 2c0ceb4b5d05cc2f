using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Files.Drawings;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Reports;

/// <summary>Finds where a text fits into an outline, as large as allowed and as far from the edges as can be.</summary>
internal static class TextRoom
{
    // Places tried along each direction of a triangle; finer steps move a text by less than its own height.
    private const int Steps = 12;

    // Free space round the letters, in heights of the capitals.
    private const double Padding = 0.25;

    // An outline with more corners, or one that bends inward, is searched in a convex room inside it: the work grows with the cube of the corners.
    private const int MostCorners = 16;

    // Text is laid along edges that are longer than this share of the way round.
    private const double LeastEdge = 0.05;

    // An upright text is kept when a turned one could not be larger than this.
    private const double TurnGain = 1.25;

    /// <summary>Places a text.</summary>
    /// <param name="ring">Counter-clockwise, first point not repeated; millimetres on paper.</param>
    /// <param name="text">What is written, with its style and its greatest height.</param>
    /// <param name="least">Height below which nothing is written, millimetres on paper.</param>
    /// <param name="limits">Further straight lines left of which it must stand.</param>
    /// <returns>The text in its place; null when it does not fit.</returns>
    public static FigureText? Fit(ImmutableArray<Point2> ring, FigureText text, double least, params ReadOnlySpan<TextLimit> limits)
    {
        ring = ring.Length <= MostCorners && IsConvex(ring) ? ring : ConvexRooms.Within(ring);
        var spots = Spots(ring).ToArray();
        if (spots.Length == 0)
        {
            return null;
        }

        TextLimit[] edges = [.. TextLimit.Round(ring), .. limits];
        var tries = Turns(ring).Select(turn => Largest(edges, spots, text.Text, turn))
            .Select(entry => entry with { Height = Math.Min(entry.Height, text.Height) })
            .Where(entry => entry.Height >= least).ToArray();
        if (tries.Length == 0)
        {
            return null;
        }

        var largest = tries.Max(entry => entry.Height);
        var (height, at, turn) = tries.First(entry => entry.Height * (entry.Turn == 0 ? TurnGain : 1) >= largest);
        return text with { At = at, Height = height, TurnDegrees = turn, Anchor = TextAnchor.Middle };
    }

    private static (double Height, Point2 At, double Turn) Largest(TextLimit[] edges, Point2[] spots, string text, double turn)
    {
        var along = RigidMap.FromDegrees(turn, default, mirrored: false).Apply(new Point2(1, 0));
        var half = new Point2((LetterWidth.Estimate(text, 1) / 2) + Padding, 0.5 + Padding);
        return spots.Select(at => (Height: HeightAt(edges, at, along, half), At: at, Turn: turn)).MaxBy(entry => entry.Height);
    }

    /// <summary>Height of the capitals for which the text's box just touches one of the edges; not positive outside them.</summary>
    private static double HeightAt(TextLimit[] edges, Point2 at, Point2 along, Point2 half)
    {
        var height = double.PositiveInfinity;
        foreach (var (start, inward) in edges)
        {
            var reach = (half.X * Math.Abs(Point2.Dot(inward, along))) + (half.Y * Math.Abs(Point2.Dot(inward, along.QuarterTurned())));
            height = Math.Min(height, Point2.Dot(inward, at - start) / reach);
        }

        return height;
    }

    /// <summary>Upright first, then along each long edge, so that it reads from below or from the right.</summary>
    internal static IEnumerable<double> Turns(ImmutableArray<Point2> ring)
    {
        var least = LeastEdge * Rings.Perimeter(ring);
        return
        [
            0,
            .. ring.Select((corner, i) => ring[(i + 1) % ring.Length] - corner).Where(edge => edge.Length > least)
                .Select(Readable).Where(turn => Math.Abs(turn) > 1).Distinct(),
        ];
    }

    /// <summary>Whether no corner bends inward by more than rounding.</summary>
    private static bool IsConvex(ImmutableArray<Point2> ring)
    {
        Point2[] edges = [.. ring.Select((corner, i) => ring[(i + 1) % ring.Length] - corner)];
        return Enumerable.Range(0, edges.Length).All(i => Point2.Cross(edges[i], edges[(i + 1) % edges.Length]) >= -1e-9 * edges[i].Length * edges[(i + 1) % edges.Length].Length);
    }

    /// <summary>Turn of a text along a step, degrees, above -90 and not above 90.</summary>
    internal static double Readable(Point2 along)
    {
        var degrees = Math.Atan2(along.Y, along.X) * 180 / Math.PI;
        return degrees switch
        {
            > 90.001 => degrees - 180,
            <= -89.999 => degrees + 180,
            _ => degrees,
        };
    }

    private static IEnumerable<Point2> Spots(ImmutableArray<Point2> ring)
    {
        for (var i = 1; i + 1 < ring.Length; i++)
        {
            for (var a = 1; a < Steps; a++)
            {
                for (var b = 1; a + b < Steps; b++)
                {
                    yield return ring[0] + ((double)a / Steps * (ring[i] - ring[0])) + ((double)b / Steps * (ring[i + 1] - ring[0]));
                }
            }
        }
    }
}
