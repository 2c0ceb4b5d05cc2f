using System.Collections.Immutable;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Jobs;

/// <summary>The finished outline of an opening, as it is seen from outside.</summary>
/// <param name="Form">Its form; the others tell its sizes as far as the form has them.</param>
public sealed record OutlineWish(OutlineForm Form)
{
    /// <summary>Width; diameter of a circle, and of the circle through the corners of a regular polygon.</summary>
    public Measure Width { get; init; }

    /// <summary>Height of rectangle, rounded rectangle and arch; length of a line.</summary>
    public Measure Height { get; init; }

    /// <summary>Radius of a rounded rectangle's corners.</summary>
    public Measure Corner { get; init; }

    /// <summary>Sides of a regular polygon, one corner up.</summary>
    public int Sides { get; init; }

    /// <summary>Corners of a polygon: right and up of the place, counter-clockwise or clockwise, millimetres.</summary>
    public ImmutableArray<Point2> Points { get; init; } = [];

    /// <summary>Labels of whole facets.</summary>
    public ImmutableArray<string> Facets { get; init; } = [];

    /// <summary>Cloth left at the edges of whole facets.</summary>
    public Measure Margin { get; init; }
}
