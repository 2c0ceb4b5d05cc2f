namespace CoverPattern.Patterns.Pieces;

/// <summary>A round hole of a draft.</summary>
/// <param name="Purpose">What it is for, such as "window".</param>
/// <param name="Run">The rim as one edge; its circle is drawn on the grid with the pattern.</param>
internal sealed record DraftCutout(string Purpose, DraftRun Run)
{
    internal RoundEdge Round => Run.Round!;
}
