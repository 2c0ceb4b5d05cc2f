using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Openings;

namespace CoverPattern.Patterns.Seams;

/// <summary>A hole in a patch, where a region is taken out that lies inside its face.</summary>
/// <param name="Arc">Index of its rim.</param>
/// <param name="Region">The region.</param>
public sealed record PatchHole(int Arc, Region Region)
{
    /// <summary>Its corners in the face's chart, clockwise seen from outside from where the rim begins, first not repeated.</summary>
    public ImmutableArray<Point2> Ring => [Region.Rim[0].Points[0], .. Region.Rim[0].Points.Skip(1).Reverse()];
}
