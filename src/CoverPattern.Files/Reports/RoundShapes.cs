using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Files.Reports;

/// <summary>What papers say of pieces and holes that are round.</summary>
internal static class RoundShapes
{
    // Corners of the polygon that stands for the circle in which a name is written.
    private const int NameCorners = 16;

    /// <summary>Where the name of a pattern is written: its main face; in an added or pierced piece the free circle of the label.</summary>
    public static ImmutableArray<Point2> NameRoom(Pattern pattern) => pattern.Cutouts.IsEmpty && !pattern.Facets.IsEmpty
        ? pattern.Facets[0]
        :
        [
            .. Enumerable.Range(0, NameCorners).Select(i => pattern.LabelSpot + (pattern.LabelRadius
                * new Point2(Math.Cos(2 * Math.PI * i / NameCorners), Math.Sin(2 * Math.PI * i / NameCorners)))),
        ];

    /// <summary>The ring that a run lies on.</summary>
    public static ImmutableArray<Point2> RingOf(Pattern pattern, int run) =>
        run < pattern.Runs.Length ? pattern.SewLine : pattern.Cutouts[run - pattern.Runs.Length].Rim;

    /// <summary>Diameter of the circle of a ring's area, in print.</summary>
    public static string Diameter(ImmutableArray<Point2> ring, Ruler ruler) => ruler.Of(2 * Math.Sqrt(Math.Abs(Rings.SignedArea(ring)) / Math.PI));
}
