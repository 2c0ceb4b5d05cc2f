using System.Collections.Immutable;

namespace CoverPattern.Patterns.Jobs;

/// <summary>A frame known by the lengths of its struts.</summary>
/// <param name="Lengths">One for each class, as measured.</param>
/// <param name="Odd">Struts that are longer or shorter than their class, one by one.</param>
public sealed record StrutWish(ImmutableArray<StrutLength> Lengths, ImmutableArray<StrutLength> Odd)
{
    /// <summary>From the hole at an end to the hub centre, added at both ends, millimetres.</summary>
    public double EndAllowanceMm { get; init; }

    /// <summary>From hole to bend, where lengths were measured along the tube before it was bent; 0 for straight ones, hole to hole as built.</summary>
    public double BendAtMm { get; init; }

    /// <summary>Measured diameter of the circle through the lowest hub centres; null where the base hubs are taken to stand on one circle.</summary>
    public Measure? FloorDiameter { get; init; }

    /// <summary>Measured raise of the highest base hubs over the lowest; never used to make the frame, only held against it.</summary>
    public Measure? Raise { get; init; }
}
