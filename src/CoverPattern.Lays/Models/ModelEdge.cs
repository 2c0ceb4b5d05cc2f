using CoverPattern.Geometry;

namespace CoverPattern.Lays.Models;

/// <summary>An edge of a model piece.</summary>
/// <param name="From">First end, millimetres of paper.</param>
/// <param name="To">Last end.</param>
/// <param name="Inward">Direction of length 1 from the edge into the piece.</param>
/// <param name="Arc">Label of the line on the cover; the edge it is glued to bears the same.</param>
/// <param name="Partner">Label of the piece it is glued to; empty where it is glued to none.</param>
public sealed record ModelEdge(Point2 From, Point2 To, Point2 Inward, string Arc, string Partner);
