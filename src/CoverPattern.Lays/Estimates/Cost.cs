using System.Collections.Immutable;

namespace CoverPattern.Lays.Estimates;

/// <summary>What the cloth of the lays and the work on them cost, as far as rates are stated; thread, zips and fittings are not in it.</summary>
/// <param name="Currency">The word behind sums; may be empty.</param>
/// <param name="Lines">Cloths, then work.</param>
/// <param name="Minutes">All work; null when the time of a line is missing.</param>
/// <param name="Total">Sum of the lines; null when one is not priced.</param>
/// <param name="Missing">Rates that are missing, in words.</param>
public sealed record Cost(string Currency, ImmutableArray<CostLine> Lines, double? Minutes, double? Total, ImmutableArray<string> Missing)
{
    /// <summary>Why there is no total; empty when there is one.</summary>
    public string NotPriced => Missing.IsEmpty ? string.Empty : "not priced: " + string.Join(", ", Missing) + (Missing.Length == 1 ? " is missing" : " are missing");
}
