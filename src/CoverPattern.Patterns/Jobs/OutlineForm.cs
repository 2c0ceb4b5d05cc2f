namespace CoverPattern.Patterns.Jobs;

/// <summary>The form of an opening.</summary>
public enum OutlineForm
{
    /// <summary>A circle.</summary>
    Circle,

    /// <summary>Four square corners.</summary>
    Rectangle,

    /// <summary>A rectangle whose corners are quarter circles.</summary>
    Rounded,

    /// <summary>Straight sides and a half circle over them.</summary>
    Arch,

    /// <summary>A polygon of equal sides and angles.</summary>
    Regular,

    /// <summary>Any corners.</summary>
    Polygon,

    /// <summary>Whole facets, less a margin all round.</summary>
    Facets,

    /// <summary>An upright straight line: a slit.</summary>
    Line,
}
