namespace CoverPattern.Patterns.Jobs;

/// <summary>Rows of facets next to each other, counted from the deck up.</summary>
/// <param name="First">The lowest row, 1 or more.</param>
/// <param name="Last">The highest row, not below the first.</param>
public sealed record RowRange(int First, int Last)
{
    /// <summary>The words of the job file.</summary>
    public override string ToString() => System.FormattableString.Invariant($"\"{First}{(Last > First ? System.FormattableString.Invariant($"-{Last}") : string.Empty)}\"");
}
