namespace CoverPattern.Geometry;

/// <summary>What is wished of a joint.</summary>
public enum JointWishKind
{
    /// <summary>A height z.</summary>
    Height,

    /// <summary>A distance from the z axis.</summary>
    Radius,

    /// <summary>The same distance from the z axis as all joints with this wish and its number have on the mean.</summary>
    OneCircle,
}
