using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Openings;

/// <summary>A straight line on one face of a shell, drawn on the piece that has it.</summary>
/// <param name="Face">Index of the face.</param>
/// <param name="From">Where it begins, in the face's chart.</param>
/// <param name="To">Where it ends.</param>
/// <param name="Purpose">What it shows, for people.</param>
/// <remarks>Where a longer line crosses an edge both faces take their ends from one record of the crossing.</remarks>
public sealed record SurfaceLine(int Face, Point2 From, Point2 To, string Purpose)
{
    /// <summary>Purpose of the line along which a slit is cut.</summary>
    public const string Slit = "slit";

    /// <summary>Purpose of the line to which the upper edge of a drip flap is stitched.</summary>
    public const string Drip = "drip flap";

    /// <summary>Purpose of the lines along which a hood is sewn on.</summary>
    public const string Hood = "hood";

    /// <summary>Label of the opening it belongs to.</summary>
    public string Opening { get; init; } = string.Empty;

    /// <summary>Its length, millimetres.</summary>
    public double Length => Point2.Distance(From, To);
}
