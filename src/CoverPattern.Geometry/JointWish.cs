namespace CoverPattern.Geometry;

/// <summary>A wish on one joint that bars leave free to be met: weighed against the other wishes, never against a bar.</summary>
/// <param name="Joint">Index of the joint.</param>
/// <param name="Kind">What is wished.</param>
/// <param name="Value">Millimetres; for one circle the number of that circle: joints of one number stand on one.</param>
public readonly record struct JointWish(int Joint, JointWishKind Kind, double Value);
