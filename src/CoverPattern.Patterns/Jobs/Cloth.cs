using System.Collections.Immutable;

namespace CoverPattern.Patterns.Jobs;

/// <summary>A cloth as it comes on the roll.</summary>
/// <param name="Name">The shop's name for it; unique in the job; used in file names.</param>
/// <param name="RollWidth">Full width, positive.</param>
/// <param name="Selvedge">Firm woven edge on each side, not used.</param>
/// <param name="SafetyStrip">Further strip on each side, not used.</param>
/// <param name="MassPerArea">Grams per square metre; null when the shop did not say.</param>
/// <param name="Nap">Which way pieces may lie.</param>
/// <param name="HasFace">Whether the two sides differ, so that mirror twins are different pieces.</param>
public sealed record Cloth(
    string Name,
    Measure RollWidth,
    Measure Selvedge,
    Measure SafetyStrip,
    double? MassPerArea,
    Nap Nap,
    bool HasFace)
{
    /// <summary>What it welds with: cloths weld with equal family only, such as "pvc"; null when the shop did not say.</summary>
    public string? Weld { get; init; }

    /// <summary>Thickness of one ply; null when the shop did not say.</summary>
    public Measure? Thickness { get; init; }

    /// <summary>Service temperature that its maker's sheet states, degrees Celsius; null when the shop did not say.</summary>
    public int? ServiceTemperature { get; init; }

    /// <summary>Rolls that there are, in the order in which the job names them; none: cloth as much as is needed. Only the last may be without a length.</summary>
    public ImmutableArray<RollWish> Rolls { get; init; } = [];

    /// <summary>Width on which pieces may lie, millimetres.</summary>
    public double UsableWidth => RollWidth.Millimetres - (2 * (Selvedge.Millimetres + SafetyStrip.Millimetres));
}
