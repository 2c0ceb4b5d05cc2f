using System.Collections.Immutable;

namespace CoverPattern.Lays.Nesting;

/// <summary>Where every item lies on the strip.</summary>
/// <param name="Length">Used length of the strip, millimetres, from x = 0 to the rightmost point of an item.</param>
/// <param name="Placements">One entry a copy, in order of item and copy.</param>
/// <param name="Method">Name of the method that found it, for people.</param>
public sealed record NestingLayout(double Length, ImmutableArray<NestingPlacement> Placements, string Method)
{
    /// <summary>For a lay by hand: the length of the tight one, millimetres; null where none was made.</summary>
    public double? TightLength { get; init; }
}
