namespace CoverPattern.Lays.Nesting.Search;

/// <summary>Draws places at which one shape leans against another: a corner of one on an edge of the other, with insides apart there.</summary>
/// <remarks>
/// In a tight lay every piece touches others, and of places drawn anywhere next to none do. Elsewhere the two may overlap: that is for the cost to tell.
/// No chart is asked, so the places do not hang on the moment at which it is made.
/// </remarks>
internal static class Leaning
{
    /// <returns>Where the moved shape's origin lies, seen from the other's; rounded to whole steps.</returns>
    public static (int X, int Y) Draw(PreparedShape moved, PreparedShape other, Chance chance)
    {
        if (chance.Below(2) == 0)
        {
            return OfEdge(moved, other, chance);
        }

        var (x, y) = OfEdge(other, moved, chance);
        return (-x, -y);
    }

    /// <summary>Where the origin of the shape with the corner lies, seen from that of the shape with the edge.</summary>
    private static (int X, int Y) OfEdge(PreparedShape corners, PreparedShape edges, Chance chance)
    {
        var edge = chance.Below(edges.EdgeCount);
        var corner = FirstOn(corners, (edges.StepX[edge], edges.StepY[edge]), chance.Below(corners.EdgeCount));
        var share = chance.Unit();
        return ((int)(edges.X[edge] + (share * edges.StepX[edge]) - corners.X[corner]), (int)(edges.Y[edge] + (share * edges.StepY[edge]) - corners.Y[corner]));
    }

    /// <summary>The first corner, from a given one on, that an edge of this direction can bear on its right; every closed outline has one.</summary>
    private static int FirstOn(PreparedShape shape, (double X, double Y) edge, int from)
    {
        for (int k = 0, i = from; k < shape.EdgeCount; k++, i = i + 1 < shape.EdgeCount ? i + 1 : 0)
        {
            var before = shape.Previous[i];
            var (inX, inY, outX, outY) = (shape.StepX[before], shape.StepY[before], shape.StepX[i], shape.StepY[i]);
            var isConvex = (inX * outY) - (inY * outX) > 0;
            if (isConvex && (edge.X * outY) - (edge.Y * outX) <= 0 && (edge.X * inY) - (edge.Y * inX) >= 0)
            {
                return i;
            }
        }

        return from;
    }
}
