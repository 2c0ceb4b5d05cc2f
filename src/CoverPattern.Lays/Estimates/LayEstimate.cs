namespace CoverPattern.Lays.Estimates;

/// <summary>What one lay takes and yields.</summary>
/// <param name="Cloth">Name of the cloth.</param>
/// <param name="Number">Which lay of this cloth it is, from 1.</param>
/// <param name="LengthMm">Length of the lay, both end allowances included, millimetres; each ply takes as much cloth.</param>
/// <param name="ClothAreaM2">Roll width x length of all plies, square metres.</param>
/// <param name="PieceAreaM2">Inside the cut lines less inner cuts, square metres.</param>
/// <param name="UtilisationPercent">Piece area / (usable width x length without end allowances), percent, over all plies.</param>
/// <param name="RollPercent">Piece area / cloth area, percent.</param>
/// <param name="FalloutM2">Cloth that is in no piece, square metres.</param>
/// <param name="Pieces">Pieces on the lay.</param>
/// <param name="WeightKg">Weight of the pieces, kilograms; null when the cloth's mass is not stated.</param>
public sealed record LayEstimate(
    string Cloth,
    int Number,
    double LengthMm,
    double ClothAreaM2,
    double PieceAreaM2,
    double UtilisationPercent,
    double RollPercent,
    double FalloutM2,
    int Pieces,
    double? WeightKg);
