using System.Collections.Immutable;

namespace CoverPattern.Geometry;

/// <summary>Joints that bars hold.</summary>
/// <param name="Joints">Where they are, in their order.</param>
/// <param name="WorstBar">Largest difference between a bar's length and the length asked, millimetres.</param>
/// <param name="WorstWish">Largest wish left open, millimetres.</param>
/// <param name="Rounds">Steps taken.</param>
public sealed record BarSolution(ImmutableArray<Point3> Joints, double WorstBar, double WorstWish, int Rounds);
