using System.Collections.Immutable;

namespace CoverPattern.Patterns.Seams;

/// <summary>A point of the cover where lines meet or end.</summary>
/// <param name="Label">The hub's or foot's label; where a line runs out between them, the labels of the lines, such as "S017+E003".</param>
/// <param name="Place">What kind of place it is.</param>
/// <param name="Arcs">Indexes of the arcs that end here, counter-clockwise seen from outside; at an edge of the cover from the edge to the edge.</param>
/// <param name="Corners">The patches' corners that meet here in the same order, each as the patch's edge that begins here.</param>
public sealed record Crossing(string Label, CrossingPlace Place, ImmutableArray<int> Arcs, ImmutableArray<PatchSide> Corners);
