using System.Collections.Immutable;

namespace CoverPattern.Patterns.Seams;

/// <summary>What becomes of every edge of a shell; nothing is cut yet.</summary>
/// <param name="Edges">One entry an edge of the shell, in its order.</param>
public sealed record SeamPlan(ImmutableArray<EdgePlan> Edges);
