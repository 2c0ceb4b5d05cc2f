using System.Collections.Immutable;

namespace CoverPattern.Patterns.Pieces;

/// <summary>One piece of cloth with its place on one cover.</summary>
/// <param name="Label">Unique label, such as "P1.07", with the cover in front when there are several: "C03 P1.07".</param>
/// <param name="Pattern">Id of its pattern.</param>
/// <param name="Mirrored">Whether the pattern is mirrored (y to -y, run order kept) to become this piece.</param>
/// <param name="Runs">What each run of the pattern is joined to, in the pattern's order.</param>
/// <param name="Facets">Labels of the faces covered, in the order of the pattern's facets.</param>
public sealed record Piece(
    string Label,
    string Pattern,
    bool Mirrored,
    ImmutableArray<PieceRun> Runs,
    ImmutableArray<string> Facets);
