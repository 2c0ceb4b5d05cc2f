using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Finds a place for the grain line.</summary>
internal static class GrainPlacer
{
    // Nearer to a fold that runs along it the grain line would be taken for the fold (own choice), millimetres and degrees.
    private const double Clear = 12;
    private const double Along = 10;

    // How far below the label, as shares of the circle's radius, the best first: all leave half the radius to either side.
    private static readonly ImmutableArray<double> Below = [0.5, 0.4, 0.6, 0.3, 0.7];

    /// <summary>Along +x through the largest circle inside the piece, below the label, and beside folds that run along it.</summary>
    /// <param name="circle">The circle; the label stands in its middle.</param>
    /// <param name="folds">Folds of the piece.</param>
    internal static GrainLine Place(InscribedCircle circle, ImmutableArray<FoldLine> folds)
    {
        var places = Below.Select(share => At(circle, share)).ToArray();
        return places.FirstOrDefault(place => !folds.Any(fold => IsTakenFor(place, fold)), places[0]);
    }

    private static GrainLine At(InscribedCircle circle, double share)
    {
        var middle = circle.Centre - new Point2(0, circle.Radius * share);
        var half = new Point2(circle.Radius / 2, 0);
        return new GrainLine(Grid.Snap(middle - half), Grid.Snap(middle + half));
    }

    private static bool IsTakenFor(GrainLine grain, FoldLine fold)
    {
        var run = fold.To - fold.From;
        var slope = Math.Atan2(Math.Abs(run.Y), Math.Abs(run.X)) * 180 / Math.PI;
        return slope < Along && new[] { grain.From, Point2.Between(grain.From, grain.To, 0.5), grain.To }.Any(point => Segments.Distance(fold.From, fold.To, point) < Clear);
    }
}
