using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Frames;

/// <summary>A triangle of the solid that is divided; corners counter-clockwise seen from outside.</summary>
internal sealed record SolidFace(SolidCorner A, SolidCorner B, SolidCorner C);

/// <summary>A corner of the solid that is divided.</summary>
/// <param name="Index">Number of the corner.</param>
/// <param name="Position">On the sphere of radius 1.</param>
internal sealed record SolidCorner(int Index, Point3 Position);
