using System.Collections.Immutable;

namespace CoverPattern.Patterns.Jobs;

/// <summary>Pieces drawn elsewhere that are cut with the cover.</summary>
/// <param name="Source">Name of their file beside the job.</param>
/// <param name="File">Its bytes, which the result carries on.</param>
/// <param name="Cloth">Name of the cloth they are cut from.</param>
/// <param name="Pieces">The pieces, names all different.</param>
public sealed record OutsideWish(string Source, ImmutableArray<byte> File, string Cloth, ImmutableArray<OutsidePiece> Pieces);
