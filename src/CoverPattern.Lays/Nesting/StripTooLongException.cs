using System;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Lays.Nesting;

/// <summary>The items need a longer strip than the grid reaches.</summary>
public sealed class StripTooLongException : WorkException
{
    /// <param name="copies">How many items were to be placed.</param>
    public StripTooLongException(int copies)
        : base(
            FormattableString.Invariant($"{copies} items"),
            FormattableString.Invariant($"{copies} items need more than {Grid.LargestMillimetres / 1000:F0} m of the strip, the longest lay this program can prove. Lay fewer at a time or take a wider strip."))
    {
    }
}
