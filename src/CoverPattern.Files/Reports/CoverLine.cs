using System.Collections.Immutable;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Reports;

/// <summary>A line of the cover's surface in one face.</summary>
/// <param name="Style">Classes that the style sheet knows: "rim", "rim zip", "slit", "zip" or "mark".</param>
/// <param name="Name">What is written beside it; empty where it bears no name.</param>
/// <param name="Face">Index of the face.</param>
/// <param name="Points">From end to end; a closed line repeats its first point.</param>
internal sealed record CoverLine(string Style, string Name, int Face, ImmutableArray<Point2> Points)
{
    /// <summary>Class of the edge of an opening.</summary>
    public const string Rim = "rim";

    /// <summary>Classes of the edge of an opening along which a zip runs.</summary>
    public const string ZippedRim = "rim zip";

    /// <summary>Class of a cut in the cloth that a zip closes.</summary>
    public const string Slit = "slit";

    /// <summary>Class of a seam that a zip joins.</summary>
    public const string Zip = "zip";

    /// <summary>Class of lines to which something is sewn on.</summary>
    public const string Mark = "mark";

    /// <summary>Whether it is the edge of an opening.</summary>
    public bool IsRim => Style is Rim or ZippedRim;

    /// <summary>Whether a zip is drawn along it.</summary>
    public bool IsZip => Style is Zip or ZippedRim;
}
