using System.Collections.Immutable;
using CoverPattern.Geometry;

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
    ImmutableArray<int> Folds)
{
    /// <summary>Edges round each opening that lies inside it over folds, clockwise seen from outside; openings inside one patch are holes of that.</summary>
    public ImmutableArray<ImmutableArray<PanelEdge>> Holes { get; init; } = [];
}
