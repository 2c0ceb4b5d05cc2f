using System.Collections.Immutable;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Surveys;

/// <summary>What came of reading a survey.</summary>
/// <param name="Survey">Null when there are faults.</param>
/// <param name="Faults">All that is wrong, each with its place in the survey.</param>
public sealed record SurveyReading(FrameSurvey? Survey, ImmutableArray<Fault> Faults);
