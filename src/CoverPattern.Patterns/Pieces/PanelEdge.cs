using CoverPattern.Geometry;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Pieces;

/// <summary>An edge of a panel.</summary>
/// <param name="Side">The patch's edge it is.</param>
/// <param name="Arc">Index of the arc.</param>
/// <param name="From">Its first corner in the panel's plane.</param>
/// <param name="To">Its last corner.</param>
public sealed record PanelEdge(PatchSide Side, int Arc, Point2 From, Point2 To);
