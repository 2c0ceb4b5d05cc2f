using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Lays;

/// <summary>Patterns as their outlines lie on the table, before any turn.</summary>
internal static class LaidShapes
{
    /// <summary>A ring, or its mirror image (y to -y) running the same way round.</summary>
    public static ImmutableArray<Point2> Ring(ImmutableArray<Point2> ring, bool isMirrored) =>
        isMirrored ? [.. ring.Reverse().Select(p => new Point2(p.X, 0 - p.Y))] : ring;

    /// <summary>Area of cloth in one piece: inside the cut line, less inner cuts, square millimetres.</summary>
    public static double Area(Pattern pattern) =>
        Rings.SignedArea(pattern.CutLine) - pattern.Cutouts.Sum(cutout => System.Math.Abs(Rings.SignedArea(cutout.CutLine)));

    /// <summary>Patterns by their ids.</summary>
    public static Dictionary<string, Pattern> ById(PieceSet pieces) => pieces.Patterns.ToDictionary(pattern => pattern.Id, System.StringComparer.Ordinal);
}
