namespace CoverPattern.Patterns.Jobs;

/// <summary>The line from the top of a gore roof down to its eaves.</summary>
public enum GoreMeridian
{
    /// <summary>An arc, level at the top, through the eaves.</summary>
    Circle,

    /// <summary>A quarter of an ellipse, upright at the eaves.</summary>
    Ellipse,

    /// <summary>A straight line.</summary>
    Cone,

    /// <summary>Through rings of given radius and height.</summary>
    Points,
}
