using System.Collections.Immutable;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Jobs;

/// <summary>A piece drawn elsewhere, as its file has it, turned so that its grain lies along +x; millimetres on the grid.</summary>
/// <param name="Name">Its name, safe in labels.</param>
/// <param name="Right">How many a cover has as drawn.</param>
/// <param name="Left">How many it has turned over.</param>
/// <param name="SewLine">Ring, counter-clockwise; the cut line where the file has no sew line all round.</param>
/// <param name="CutLine">Ring, counter-clockwise.</param>
public sealed record OutsidePiece(string Name, int Right, int Left, ImmutableArray<Point2> SewLine, ImmutableArray<Point2> CutLine)
{
    /// <summary>Holes: rings, clockwise.</summary>
    public ImmutableArray<ImmutableArray<Point2>> Cutouts { get; init; } = [];

    /// <summary>Lines that are drawn, not cut.</summary>
    public ImmutableArray<ImmutableArray<Point2>> Lines { get; init; } = [];

    /// <summary>Notches as slits: from the cut line inward.</summary>
    public ImmutableArray<(Point2 Outer, Point2 Inner)> Slits { get; init; } = [];

    /// <summary>Drill holes; drawn as marks, never pierced.</summary>
    public ImmutableArray<Point2> Drills { get; init; } = [];

    /// <summary>First end of the grain line.</summary>
    public Point2 GrainFrom { get; init; }

    /// <summary>Other end of the grain line.</summary>
    public Point2 GrainTo { get; init; }
}
