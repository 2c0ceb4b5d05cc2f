using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Frames;

/// <summary>A point where struts meet.</summary>
/// <param name="Label">Ring and position, such as "H0.07".</param>
/// <param name="Ring">Ring of hubs, 0 at the base, counted up.</param>
/// <param name="Position">Hub centre, millimetres; z = 0 at the lowest hub centres.</param>
public sealed record Hub(string Label, int Ring, Point3 Position);
