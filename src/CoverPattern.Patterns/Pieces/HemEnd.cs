using System;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Pieces;

/// <summary>The end of a turned-up hem: the mirror, about the finished edge, of the cloth it will lie on.</summary>
internal static class HemEnd
{
    // A neighbour that rises less steeply than this from the finished edge (sine) is joined by a mitre instead.
    private const double LeastRise = 0.17;

    /// <summary>Whether the neighbour rises steeply enough from the finished edge to be mirrored.</summary>
    internal static bool Leads(SewEdge hem, SewEdge neighbour) =>
        Math.Abs(Point2.Dot(neighbour.Along, hem.Outward)) > LeastRise;

    /// <summary>Corners of the hem's end, from its raw edge to where the neighbour's cut line meets the finished edge.</summary>
    /// <param name="hem">The finished edge.</param>
    /// <param name="corner">The end of it that is asked for.</param>
    /// <param name="neighbour">The edge that rises there.</param>
    /// <param name="fold">How the hem folds.</param>
    /// <remarks>
    /// Cloth at a distance y below the finished edge comes to lie at the height y above it up to the depth h, and the
    /// turn-under beyond at 2h - y: so the outline there is that of the cloth at these heights.
    /// </remarks>
    internal static Point2[] Draw(SewEdge hem, Point2 corner, SewEdge neighbour, HemFold fold)
    {
        var (along, down) = (hem.Along, hem.Outward);
        var onEdge = corner + (neighbour.Allowance * neighbour.Outward);

        double OutAt(double height)
        {
            var point = Lines.Meet(onEdge, neighbour.Along, corner - (height * down), along);
            return Point2.Dot(point - corner, along);
        }

        Point2 At(double below, double height) => corner + (OutAt(height) * along) + (below * down);
        return
        [
            At(fold.Depth + fold.TurnUnder, Math.Max(0, fold.Depth - fold.TurnUnder)),
            At(fold.Depth, fold.Depth),
            At(0, 0),
        ];
    }
}
