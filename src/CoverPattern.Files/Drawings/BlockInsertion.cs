using CoverPattern.Geometry;

namespace CoverPattern.Files.Drawings;

/// <summary>A block put on the sheet: mirrored first (y to -y), then turned, then moved.</summary>
/// <param name="Block">Name of the block.</param>
/// <param name="Shift">Millimetres.</param>
/// <param name="TurnDegrees">Degrees counter-clockwise.</param>
/// <param name="IsMirrored">Whether y changes sign before the turn.</param>
public sealed record BlockInsertion(string Block, Point2 Shift, double TurnDegrees, bool IsMirrored)
{
    public RigidMap Map => RigidMap.FromDegrees(TurnDegrees, Shift, IsMirrored);
}
