using System.Collections.Immutable;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Frames;

/// <summary>A survey put in order: welded, one way round, upright, every facet plane.</summary>
/// <param name="Points">Hub centres, z up.</param>
/// <param name="Names">Names of the hubs; empty where the survey does not name all.</param>
/// <param name="Facets">Rings of hubs, counter-clockwise seen from outside.</param>
/// <param name="Folds">Edges added where a facet was not plane, or not convex.</param>
public sealed record SurveyMesh(
    ImmutableArray<Point3> Points,
    ImmutableArray<string> Names,
    ImmutableArray<ImmutableArray<int>> Facets,
    ImmutableArray<(int From, int To)> Folds);
