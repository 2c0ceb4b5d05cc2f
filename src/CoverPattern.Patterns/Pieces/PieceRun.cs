using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Pieces;

/// <summary>What an edge of a piece is joined to.</summary>
/// <param name="Arc">Label of the line on the cover, such as "S017"; both partners carry it.</param>
/// <param name="Role">What the edge is for.</param>
/// <param name="Partner">The edge it is joined to; null for hems, rims and bound edges.</param>
public sealed record PieceRun(string Arc, EdgeRole Role, PartnerRun? Partner);
