using System.Collections.Immutable;

namespace CoverPattern.Lays.Estimates;

/// <summary>What is to be sewn.</summary>
/// <param name="Covers">How many covers it speaks of.</param>
/// <param name="Pieces">Pieces in them.</param>
/// <param name="Seams">Seams by construction.</param>
/// <param name="HemMm">Finished lower edge, millimetres.</param>
public sealed record SewingEstimate(int Covers, int Pieces, ImmutableArray<SeamEstimate> Seams, double HemMm)
{
    /// <summary>Bindings and zips that the seams take.</summary>
    public ImmutableArray<NotionEstimate> Notions { get; init; } = [];
}
