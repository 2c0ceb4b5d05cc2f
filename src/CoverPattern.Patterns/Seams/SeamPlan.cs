using System.Collections.Immutable;

namespace CoverPattern.Patterns.Seams;

/// <summary>What becomes of every edge of a shell; nothing is cut yet.</summary>
/// <param name="Edges">One entry an edge of the shell, in its order.</param>
public sealed record SeamPlan(ImmutableArray<EdgePlan> Edges)
{
    /// <summary>Parts of seams that are made otherwise.</summary>
    public ImmutableArray<SeamCut> Cuts { get; init; } = [];

    /// <summary>The panels; together they hold every face of the shell once.</summary>
    public ImmutableArray<PlannedPanel> Panels { get; init; } = [];
}
