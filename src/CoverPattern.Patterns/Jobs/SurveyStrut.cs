namespace CoverPattern.Patterns.Jobs;

/// <summary>A connection as a survey lists it.</summary>
/// <param name="From">Index of one hub.</param>
/// <param name="To">Index of the other.</param>
/// <param name="Place">Where it stands in the survey, such as "line 80".</param>
public readonly record struct SurveyStrut(int From, int To, string Place);
