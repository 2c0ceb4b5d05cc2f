using System.Collections.Immutable;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Pieces;

/// <summary>A hole in a piece.</summary>
/// <param name="Purpose">What it is for, such as "window".</param>
/// <param name="Rim">Its finished edge, where its partner is sewn on: ring, clockwise, first point not repeated.</param>
/// <param name="CutLine">Where the cloth is cut: ring, clockwise, inside the rim by the allowance.</param>
/// <param name="Run">The rim as one edge from the rim's first corner all round to it.</param>
public sealed record Cutout(string Purpose, ImmutableArray<Point2> Rim, ImmutableArray<Point2> CutLine, EdgeRun Run);
