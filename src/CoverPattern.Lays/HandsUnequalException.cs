using System;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Lays;

/// <summary>Plies are to lie face to face, and a pattern is not needed equally in both hands.</summary>
public sealed class HandsUnequalException : WorkException
{
    /// <param name="cloth">Name of the cloth.</param>
    /// <param name="pattern">Id of the pattern.</param>
    /// <param name="asDrawn">Pieces as drawn.</param>
    /// <param name="mirrored">Pieces mirrored.</param>
    public HandsUnequalException(string cloth, string pattern, int asDrawn, int mirrored)
        : base(
            pattern,
            FormattableString.Invariant($"Cloth {cloth} cannot be laid face to face: pattern {pattern} is needed {asDrawn} times as drawn and {mirrored} times mirrored, and every cut through two plies gives one of each. Say \"lay.spread\": \"oneWay\", or lay a single ply."))
    {
    }
}
