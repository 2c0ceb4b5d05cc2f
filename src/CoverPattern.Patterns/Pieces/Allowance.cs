using System;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Pieces;

/// <summary>How much cloth stands beyond the sew line of an edge.</summary>
public static class Allowance
{
    /// <summary>Cloth beyond a seam's sew line on one side.</summary>
    /// <param name="makeUp">The construction.</param>
    /// <param name="width">Plain: the allowance itself; else the finished width, millimetres.</param>
    /// <param name="side">Which side of the seam.</param>
    /// <returns>Millimetres.</returns>
    /// <remarks>
    /// Sew lines: plain, the stitch line; lapped, the middle of the lap; felled, the first stitch row, both edges lying behind
    /// the upper piece, the under side twice as wide to fold over (checked against the blog rule 1/2 in and 1 in for a finished
    /// 1/2 in); welded, the edge of the upper piece.
    /// </remarks>
    public static double OfSeam(SeamMakeUp makeUp, double width, EdgeSide side) => (makeUp, side) switch
    {
        (SeamMakeUp.Plain, _) => width,
        (SeamMakeUp.Lapped, _) => width / 2,
        (SeamMakeUp.Felled, EdgeSide.Under) => 2 * width,
        (SeamMakeUp.Felled, _) => width,
        (SeamMakeUp.Welded, EdgeSide.Under) => width,
        (SeamMakeUp.Welded, _) => 0,
        _ => throw new ArgumentOutOfRangeException(nameof(makeUp), makeUp, "Unknown make-up of a seam."),
    };
}
