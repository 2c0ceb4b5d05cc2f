using System.Collections.Immutable;

namespace CoverPattern.Patterns.Jobs;

/// <summary>Which openings let air in below and out above.</summary>
/// <param name="Low">Labels of the low ones, such as "O1" or "W2.07".</param>
/// <param name="High">Labels of the high ones.</param>
/// <param name="MeshShare">Share of a screen that is open, 0 to 1.</param>
public sealed record VentWish(ImmutableArray<string> Low, ImmutableArray<string> High, double MeshShare)
{
    /// <summary>Air inside and outside for the inner figure of the flow, whole degrees Celsius; null where the shop wants none.</summary>
    public (int Inside, int Outside)? Celsius { get; init; }
}
