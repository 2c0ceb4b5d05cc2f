using System.Collections.Generic;

namespace CoverPattern.Lays.Nesting.Search;

/// <summary>
/// A straight piece of the shifts of a second shape against a first at which a corner of one slides along an edge of the other, with
/// insides apart. Where two shapes begin or cease to overlap, the shift lies on such a piece.
/// </summary>
internal readonly record struct Touching(double X, double Y, double ToX, double ToY)
{
    /// <summary>Adds all pieces of two shapes to a list.</summary>
    public static void Collect(PreparedShape a, PreparedShape b, List<Touching> pieces)
    {
        Collect(a, b, outward: false, pieces);
        Collect(b, a, outward: true, pieces);
    }

    /// <param name="corners">The shape whose corners touch.</param>
    /// <param name="edges">The shape whose edges are touched.</param>
    /// <param name="outward">Whether the corners belong to the second shape, so that shifts count from edge to corner.</param>
    /// <param name="pieces">Where they go.</param>
    private static void Collect(PreparedShape corners, PreparedShape edges, bool outward, List<Touching> pieces)
    {
        var sign = outward ? -1 : 1;
        for (var i = 0; i < corners.EdgeCount; i++)
        {
            var cone = Contact.At(corners, i);
            for (var j = 0; j < edges.EdgeCount; j++)
            {
                if (!Cone.Overlap(cone, Contact.Beside(edges, j)))
                {
                    var (x, y) = (corners.X[i] - edges.X[j], corners.Y[i] - edges.Y[j]);
                    pieces.Add(new Touching(sign * x, sign * y, sign * (x - edges.StepX[j]), sign * (y - edges.StepY[j])));
                }
            }
        }
    }
}
