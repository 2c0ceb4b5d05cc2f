using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Frames;

/// <summary>Where hubs of the divided solid are: corners of one face with whole weights.</summary>
/// <param name="weighted">Corners with positive weights, by number of the corner.</param>
/// <returns>On the sphere of radius 1.</returns>
internal delegate Point3 HubPlacement((SolidCorner Corner, int Weight)[] weighted);
