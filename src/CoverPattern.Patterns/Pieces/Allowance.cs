using System;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Pieces;

/// <summary>How much cloth stands beyond the sew line of an edge.</summary>
public static class Allowance
{
    /// <summary>Cloth beyond a seam's sew line on one side, millimetres.</summary>
    /// <param name="makeUp">The construction.</param>
    /// <param name="side">Which side of the seam.</param>
    public static double OfSeam(MakeUp makeUp, EdgeSide side)
    {
        ArgumentNullException.ThrowIfNull(makeUp);
        return side == EdgeSide.Under ? makeUp.UnderMm : makeUp.OverMm;
    }
}
