using System.Collections.Immutable;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Finished pieces, or what in the job makes them impossible.</summary>
/// <param name="Set">Patterns and pieces.</param>
/// <param name="Faults">Allowances that are larger than their piece; empty when all is well.</param>
public sealed record PieceFinishing(PieceSet Set, ImmutableArray<Fault> Faults)
{
    /// <summary>What a person should see about the pieces.</summary>
    public ImmutableArray<Notice> Notices { get; init; } = [];
}
