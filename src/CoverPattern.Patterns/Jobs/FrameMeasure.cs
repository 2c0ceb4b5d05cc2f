namespace CoverPattern.Patterns.Jobs;

/// <summary>Which measure of the frame its size states; all run hub centre to hub centre.</summary>
public enum FrameMeasure
{
    /// <summary>Radius of the sphere through the hub centres.</summary>
    Radius,

    /// <summary>Diameter of the sphere through the hub centres.</summary>
    Diameter,

    /// <summary>Diameter of the circle through the lowest hub centres.</summary>
    FloorDiameter,

    /// <summary>Height of the top hub centre above the lowest hub centres.</summary>
    Height,
}
