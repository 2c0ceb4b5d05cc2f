using System.Collections.Immutable;

namespace CoverPattern.Patterns.Jobs;

/// <summary>What the shop's work and cloth cost; a rate that is not stated is not known, never zero.</summary>
/// <param name="Currency">The word behind sums; empty when the shop did not say.</param>
/// <param name="PerHour">Money for an hour of work; null when not stated.</param>
/// <param name="PieceMinutes">Minutes for a piece handled: taken up, laid, turned, put down; null when not stated.</param>
/// <param name="HemMinutes">Minutes for a metre of hem; null when not stated.</param>
/// <param name="Cloths">Prices of cloths; a cloth without one is not priced.</param>
/// <param name="Seams">Minutes by make-up; a make-up without them is not priced.</param>
public sealed record RatesWish(
    string Currency, double? PerHour, double? PieceMinutes, double? HemMinutes, ImmutableArray<ClothRate> Cloths, ImmutableArray<SeamRate> Seams)
{
    /// <summary>Nothing is stated.</summary>
    public static RatesWish None { get; } = new(string.Empty, null, null, null, [], []);

    /// <summary>Whether nothing at all is priced.</summary>
    public bool IsEmpty => PerHour is null && PieceMinutes is null && HemMinutes is null && Cloths.IsEmpty && Seams.IsEmpty;
}
