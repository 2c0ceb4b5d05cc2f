namespace CoverPattern.Patterns.Pieces;

/// <summary>An edge of another piece, or of the same one.</summary>
/// <param name="Piece">Label of the piece.</param>
/// <param name="Run">Index of the run there.</param>
public sealed record PartnerRun(string Piece, int Run);
