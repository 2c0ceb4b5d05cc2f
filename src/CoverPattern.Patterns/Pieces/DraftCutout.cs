using System.Collections.Immutable;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Pieces;

/// <summary>A hole of a draft: round, or a ring.</summary>
/// <param name="Purpose">What it is for, such as "window".</param>
/// <param name="Run">The rim as one edge; a circle is drawn on the grid with the pattern.</param>
internal sealed record DraftCutout(string Purpose, DraftRun Run)
{
    /// <summary>The rim where it is no circle: clockwise, unsnapped millimetres; empty otherwise.</summary>
    internal ImmutableArray<Point2> Ring { get; init; } = [];

    /// <summary>Whether it is a circle.</summary>
    internal bool IsRound => Run.Round is not null;

    internal RoundEdge Round => Run.Round!;
}
