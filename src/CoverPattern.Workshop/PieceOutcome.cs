using System.Collections.Immutable;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Workshop;

/// <summary>What came of the stages up to the pieces: pieces, or what in the job is wrong.</summary>
/// <param name="Pieces">Null when there are faults.</param>
/// <param name="Faults">Empty when there are pieces.</param>
public sealed record PieceOutcome(MadePieces? Pieces, ImmutableArray<Fault> Faults);
