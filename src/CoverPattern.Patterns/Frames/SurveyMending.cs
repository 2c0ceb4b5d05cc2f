using System.Collections.Immutable;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Frames;

/// <summary>What came of putting a survey in order.</summary>
/// <param name="Mesh">Null when there are faults.</param>
/// <param name="Faults">Why the survey cannot be a frame; each names the place in the survey.</param>
public sealed record SurveyMending(SurveyMesh? Mesh, ImmutableArray<Fault> Faults);
