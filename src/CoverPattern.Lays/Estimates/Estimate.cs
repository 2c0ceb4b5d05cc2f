using System.Collections.Immutable;

namespace CoverPattern.Lays.Estimates;

/// <summary>What a job takes: cloth to buy, seams to sew.</summary>
/// <param name="Lays">One entry a lay, in order.</param>
/// <param name="PerCover">Sewing of one cover.</param>
/// <param name="Total">Sewing of all covers.</param>
/// <param name="ClothAreaM2">Cloth off all rolls, square metres.</param>
/// <param name="PieceAreaM2">Cloth in all pieces, square metres.</param>
/// <param name="FalloutM2">Cloth in no piece, square metres.</param>
/// <param name="WeightKg">Weight of all pieces, kilograms; null when the mass of a cloth is not stated.</param>
public sealed record Estimate(
    ImmutableArray<LayEstimate> Lays,
    SewingEstimate PerCover,
    SewingEstimate Total,
    double ClothAreaM2,
    double PieceAreaM2,
    double FalloutM2,
    double? WeightKg)
{
    /// <summary>Running metres by cloth, with what is spare apart.</summary>
    public ImmutableArray<ClothNeed> Buying { get; init; } = [];

    /// <summary>What it costs, as far as rates are stated.</summary>
    public required Cost Cost { get; init; }
}
