using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Draws the rim of a patch on the pieces round its corner.</summary>
internal static class PatchArc
{
    /// <summary>Purpose of the line where the patch lies over a hub.</summary>
    internal const string OverHub = "patch";

    /// <summary>Purpose of the line where it lies under the clip of an inside corner.</summary>
    internal const string UnderClip = "clip patch";

    // The drawn chords stay this near to the circle, millimetres.
    private const double Deviation = 0.02;

    /// <summary>The arc inside the piece from edge to edge of the corner; nothing where there is no patch.</summary>
    /// <param name="pattern">The pattern.</param>
    /// <param name="run">Index of the run that begins at the hub.</param>
    /// <param name="radius">Radius of the patch, millimetres; 0 for none.</param>
    /// <param name="purpose">What kind of patch it is.</param>
    internal static IEnumerable<MarkLine> Draw(Pattern pattern, int run, double radius, string purpose)
    {
        if (radius <= 0)
        {
            yield break;
        }

        var count = pattern.SewLine.Length;
        var at = pattern.Runs[run].From;
        var corner = pattern.SewLine[at];
        var (from, to) = (Angle(pattern.SewLine[(at + 1) % count] - corner), Angle(pattern.SewLine[(at + count - 1) % count] - corner));
        var sweep = to > from ? to - from : to - from + (2 * Math.PI);
        var steps = Math.Max(2, (int)Math.Ceiling(sweep / (2 * Math.Acos(1 - (Deviation / radius)))));
        var ring = Rings.ToSteps(pattern.CutLine);
        ImmutableArray<Point2> path =
        [
            .. Enumerable.Range(0, steps + 1).Select(i => from + (sweep * i / steps))
                .Select(angle => Grid.Snap(corner + (radius * new Point2(Math.Cos(angle), Math.Sin(angle)))))
                // Where an edge has no allowance the first point lies on the cut line and may be rounded beyond it.
                .SkipWhile(point => ExactPredicates.Locate(ring, Grid.ToSteps(point)) < 0)
                .TakeWhile(point => ExactPredicates.Locate(ring, Grid.ToSteps(point)) >= 0),
        ];
        if (path.Length > 1)
        {
            yield return new MarkLine(path, purpose);
        }
    }

    private static double Angle(Point2 direction) => Math.Atan2(direction.Y, direction.X);
}
