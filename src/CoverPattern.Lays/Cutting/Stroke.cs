using System.Collections.Immutable;
using CoverPattern.Geometry;

namespace CoverPattern.Lays.Cutting;

/// <summary>One movement of the tool without lifting it.</summary>
/// <param name="Piece">Label of the piece it belongs to.</param>
/// <param name="Use">What is done along it.</param>
/// <param name="Purpose">What it shows or cuts, such as "sew line".</param>
/// <param name="Points">Where it goes, lay coordinates, millimetres; a closed one ends where it began.</param>
public sealed record Stroke(string Piece, StrokeUse Use, string Purpose, ImmutableArray<Point2> Points)
{
    /// <summary>Where the tool goes down.</summary>
    public Point2 Start => Points[0];

    /// <summary>Where the tool is lifted.</summary>
    public Point2 End => Points[^1];

    /// <summary>Length of the movement, millimetres.</summary>
    public double Length
    {
        get
        {
            var sum = 0.0;
            for (var i = 1; i < Points.Length; i++)
            {
                sum += Point2.Distance(Points[i - 1], Points[i]);
            }

            return sum;
        }
    }

    internal bool IsClosed => Start == End;

    /// <summary>The same movement begun at another corner of a closed stroke, or run from the other end.</summary>
    /// <param name="at">Index of a corner; of an open stroke its first or last.</param>
    internal Stroke From(int at)
    {
        if (at == 0)
        {
            return this;
        }

        return IsClosed
            ? this with { Points = [.. Points[at..], .. Points[1..(at + 1)]] }
            : this with { Points = [.. System.Linq.Enumerable.Reverse(Points)] };
    }
}
