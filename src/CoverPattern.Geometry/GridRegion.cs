using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;

namespace CoverPattern.Geometry;

/// <summary>An area on the <see cref="Grid"/>: what lies left of every edge of its rings.</summary>
/// <remarks>The first ring is the outline, counter-clockwise; the others are holes, clockwise. First points are not repeated.</remarks>
public sealed class GridRegion
{
    /// <param name="rings">Outline and holes as the type's remarks say.</param>
    public GridRegion(ImmutableArray<ImmutableArray<GridPoint>> rings)
    {
        Rings = rings;
        Low = new GridPoint(rings[0].Min(p => p.X), rings[0].Min(p => p.Y));
        High = new GridPoint(rings[0].Max(p => p.X), rings[0].Max(p => p.Y));
    }

    /// <summary>Outline and holes.</summary>
    public ImmutableArray<ImmutableArray<GridPoint>> Rings { get; }

    /// <summary>Corner of least x and y of the upright rectangle round the outline.</summary>
    public GridPoint Low { get; }

    /// <summary>Corner of greatest x and y of the upright rectangle round the outline.</summary>
    public GridPoint High { get; }

    /// <summary>Makes a region from rings in millimetres that lie on the grid.</summary>
    public static GridRegion Of(IEnumerable<Point2> outline, IEnumerable<IEnumerable<Point2>> holes) =>
        new([Geometry.Rings.ToSteps(outline), .. holes.Select(Geometry.Rings.ToSteps)]);

    /// <summary>All edges, ring by ring.</summary>
    internal IEnumerable<(GridPoint From, GridPoint To)> Edges()
    {
        foreach (var ring in Rings)
        {
            for (var i = 0; i < ring.Length; i++)
            {
                yield return (ring[i], ring[i + 1 < ring.Length ? i + 1 : 0]);
            }
        }
    }
}
