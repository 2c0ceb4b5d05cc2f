using System.Collections.Immutable;
using CoverPattern.Files.Results;
using CoverPattern.Lays;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Workshop.Plots;

/// <summary>A result as a folder keeps it.</summary>
/// <param name="Pieces">Patterns and pieces.</param>
/// <param name="Lays">Where they lie.</param>
/// <param name="Head">Of the run that made it.</param>
public sealed record StoredResult(PieceSet Pieces, ImmutableArray<Lay> Lays, SummaryHead Head);
