using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Seams;

/// <summary>What becomes of one edge of a shell.</summary>
/// <param name="Role">Seam, fold or hem.</param>
/// <param name="MakeUp">How a seam is made; null elsewhere.</param>
/// <param name="Over">Index of the face that lies over at a seam; -1 elsewhere.</param>
public readonly record struct EdgePlan(EdgeRole Role, MakeUp? MakeUp, int Over);
