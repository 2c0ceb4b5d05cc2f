using System.Collections.Immutable;

namespace CoverPattern.Patterns.Jobs;

/// <summary>A facet as a survey lists it.</summary>
/// <param name="Hubs">Indexes of its hubs, either way round.</param>
/// <param name="Place">Where it stands in the survey, such as "line 80" or "face 3".</param>
public readonly record struct SurveyFacet(ImmutableArray<int> Hubs, string Place);
