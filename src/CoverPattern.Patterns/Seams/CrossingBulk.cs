namespace CoverPattern.Patterns.Seams;

/// <summary>What lies one above the other at a crossing.</summary>
/// <param name="Crossing">The place.</param>
/// <param name="Seams">Seams that meet there.</param>
/// <param name="Folds">Fold lines that meet there.</param>
/// <param name="IsFelled">Whether a felled seam runs into the crossing itself, not stopping short of it.</param>
/// <param name="StopsShort">Whether felled seams stop short of it.</param>
/// <param name="Plies">Layers of cloth at the thickest spot.</param>
/// <param name="ThicknessMm">Their thickness, not pressed, millimetres; null when the cloth's is not stated.</param>
public sealed record CrossingBulk(Crossing Crossing, int Seams, int Folds, bool IsFelled, bool StopsShort, int Plies, double? ThicknessMm)
{
    /// <summary>Whether the hem runs through it: at the foot of a skirt, and at base hubs that have none.</summary>
    public bool IsAtHem { get; init; }

    /// <summary>Whether the rim of an opening runs through it.</summary>
    public bool IsAtRim { get; init; }
}
