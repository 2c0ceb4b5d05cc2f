using System.Collections.Immutable;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Pieces;

/// <summary>A mark inside a piece.</summary>
/// <param name="At">Its place.</param>
/// <param name="Purpose">What it shows, for people.</param>
/// <param name="IsPierced">Whether a hole is made there; else it is drawn.</param>
public sealed record DrillMark(Point2 At, string Purpose, bool IsPierced = false)
{
    /// <summary>Diameter of a pierced mark's hole, millimetres; common practice, no source.</summary>
    public const double HoleDiameter = 3;

    // Corners of the hole as it is cut; the program's own choice: 0.1 mm from the circle.
    private const int Corners = 8;

    /// <summary>The hole's edge: ring, counter-clockwise, on the grid.</summary>
    public ImmutableArray<Point2> HoleRing()
    {
        var ring = ImmutableArray.CreateBuilder<Point2>(Corners);
        for (var corner = 0; corner < Corners; corner++)
        {
            var angle = 2 * System.Math.PI * corner / Corners;
            ring.Add(Grid.Snap(At + ((HoleDiameter / 2) * new Point2(System.Math.Cos(angle), System.Math.Sin(angle)))));
        }

        return ring.ToImmutable();
    }
}
