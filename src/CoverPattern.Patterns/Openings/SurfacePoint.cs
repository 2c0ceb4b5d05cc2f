using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Openings;

/// <summary>A point of a shell, by face and place in its chart.</summary>
/// <remarks>Points on hubs and on edges, which two faces share, will be told by hub, and by edge and fraction, once openings cross edges.</remarks>
/// <param name="Face">Index of the face.</param>
/// <param name="At">Place in its chart, millimetres.</param>
public readonly record struct SurfacePoint(int Face, Point2 At);
