using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Shells;

/// <summary>The line on which two base facets that go on below their chords meet.</summary>
internal static class CornerLine
{
    // Facets that turn less than this at a hub are one plane (sine; 0.6 degrees): their line of meeting is anywhere.
    private const double OnePlane = 0.01;

    /// <summary>The direction of the corner line, downward, length 1.</summary>
    /// <param name="before">Outward normal of the facet whose chord ends at the hub.</param>
    /// <param name="after">Outward normal of the facet whose chord begins there.</param>
    /// <returns>
    /// The step along both planes; where they are one plane the steepest step down it, which is plumb seen from outside.
    /// Length 0 or NaN where that plane is level.
    /// </returns>
    internal static Point3 Down(Point3 before, Point3 after)
    {
        var along = Point3.Cross(before, after);
        if (along.Length >= OnePlane)
        {
            return (along.Z > 0 ? -1 : 1) * along.Unit();
        }

        var normal = (before + after).Unit();
        return ((normal.Z * normal) - new Point3(0, 0, 1)).Unit();
    }
}
