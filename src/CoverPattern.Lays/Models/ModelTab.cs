using System.Collections.Immutable;
using CoverPattern.Geometry;

namespace CoverPattern.Lays.Models;

/// <summary>A strip of paper at one edge of a model piece, glued under the edge it is joined to.</summary>
/// <param name="Run">Index of the edge.</param>
/// <param name="Shape">Its corners, from the edge's first end round the outside to its last; millimetres of paper.</param>
public sealed record ModelTab(int Run, ImmutableArray<Point2> Shape);
