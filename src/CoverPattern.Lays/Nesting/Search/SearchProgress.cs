namespace CoverPattern.Lays.Nesting.Search;

/// <summary>How a search stands between two work units.</summary>
/// <param name="Share">Part of effort or time spent, 0 to 1.</param>
/// <param name="Length">Length of the best lay so far, millimetres.</param>
/// <param name="Evaluations">Places weighed by all workers since the start.</param>
public readonly record struct SearchProgress(double Share, double Length, long Evaluations);
