using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Shells;

/// <summary>A corner of a shell's faces: over a hub, or the foot of the skirt below one.</summary>
/// <param name="Label">The hub's label, with "f" behind it for a foot.</param>
/// <param name="Position">Millimetres; finished, so after stand-off and ease.</param>
/// <param name="AboveHem">Height above the finished lower edge, millimetres; negative: clipped away; 0: on the edge.</param>
public sealed record ShellNode(string Label, Point3 Position, double AboveHem)
{
    /// <summary>Ring of the hub that it lies over, 0 at the base; null for a foot. Labels of a survey do not tell it.</summary>
    public int? Ring { get; init; }
}
