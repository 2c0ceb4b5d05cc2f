using System.Collections.Immutable;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Patches joined over folds and laid flat: one piece of cloth without allowances.</summary>
/// <param name="Patches">Indexes of its patches; the first is the main one, whose chart is the panel's plane.</param>
/// <param name="FlatMaps">For each patch the move from its chart to the panel's plane.</param>
/// <param name="Outline">Edges round the panel, counter-clockwise seen from outside.</param>
/// <param name="Folds">Arcs inside it.</param>
public sealed record Panel(
    ImmutableArray<int> Patches,
    ImmutableArray<RigidMap> FlatMaps,
    ImmutableArray<PanelEdge> Outline,
    ImmutableArray<int> Folds);

/// <summary>An edge of a panel.</summary>
/// <param name="Side">The patch's edge it is.</param>
/// <param name="Arc">Index of the arc.</param>
/// <param name="From">Its first corner in the panel's plane.</param>
/// <param name="To">Its last corner.</param>
public sealed record PanelEdge(PatchSide Side, int Arc, Point2 From, Point2 To);
