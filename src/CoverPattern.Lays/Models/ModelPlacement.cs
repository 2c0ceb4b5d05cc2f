using CoverPattern.Geometry;

namespace CoverPattern.Lays.Models;

/// <summary>Where a piece of a paper model is printed.</summary>
/// <param name="Piece">The piece.</param>
/// <param name="Sheet">Number of the sheet, from 1.</param>
/// <param name="Map">From the piece's place to the sheet, millimetres from its lower left corner.</param>
public sealed record ModelPlacement(ModelPiece Piece, int Sheet, RigidMap Map);
