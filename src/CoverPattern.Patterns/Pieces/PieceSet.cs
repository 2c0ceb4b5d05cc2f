using System.Collections.Immutable;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Pieces;

/// <summary>All patterns and pieces of a job.</summary>
/// <param name="Patterns">Shapes, in order of their ids.</param>
/// <param name="Pieces">Pieces, in order of cover and label.</param>
public sealed record PieceSet(ImmutableArray<Pattern> Patterns, ImmutableArray<Piece> Pieces)
{
    /// <summary>Ties to be sewn into the seams of one cover, in order of their hubs.</summary>
    public ImmutableArray<Tie> Ties { get; init; } = [];

    /// <summary>What goes on the openings of one cover beside cloth.</summary>
    public ImmutableArray<Fitting> Fittings { get; init; } = [];

    /// <summary>Patches under the clips of inside corners of one cover, each with the piece it goes on.</summary>
    public ImmutableArray<ClipPatch> ClipPatches { get; init; } = [];
}
