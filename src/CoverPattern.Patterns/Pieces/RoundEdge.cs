using System.Collections.Immutable;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Pieces;

/// <summary>An edge that is a whole circle.</summary>
/// <param name="Centre">Its centre, millimetres, unsnapped.</param>
/// <param name="Radius">Millimetres.</param>
/// <param name="Marks">Directions from the centre, length 1, in which the edge bears a tick.</param>
internal sealed record RoundEdge(Point2 Centre, double Radius, ImmutableArray<Point2> Marks);
