using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Lays;

/// <summary>All rolls of a cloth together do not hold its pieces.</summary>
public sealed class NotEnoughClothException : WorkException
{
    private const int MostNamed = 8;

    /// <param name="cloth">Name of the cloth.</param>
    /// <param name="rollsMm">Length of all its rolls, millimetres.</param>
    /// <param name="left">Labels of the pieces that found no place.</param>
    /// <param name="leastMm">Cloth that these take at the very least, millimetres.</param>
    public NotEnoughClothException(string cloth, double rollsMm, ImmutableArray<string> left, double leastMm)
        : base(
            cloth,
            FormattableString.Invariant($"The rolls of cloth {cloth}, {rollsMm / 1000:0.00} m in all, do not hold its pieces: {left.Length} found no place ({string.Join(", ", left.Take(MostNamed))}{(left.Length > MostNamed ? ", ..." : string.Empty)}), which take {leastMm / 1000:0.00} m more at the very least. Name a further or a longer roll, allow other turns, or raise lay.effort."))
    {
        Left = left;
    }

    /// <summary>Labels of the pieces that found no place.</summary>
    public ImmutableArray<string> Left { get; }
}
