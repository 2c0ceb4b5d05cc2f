using System.Collections.Immutable;

namespace CoverPattern.Lays;

/// <summary>Where every piece of one cloth lies on the roll.</summary>
/// <remarks>Coordinates: x along the roll from the cut end, y across from the lower edge of the roll, as the cloth lies on the table.</remarks>
/// <param name="Cloth">Name of the cloth.</param>
/// <param name="RollWidthMm">Full width of the roll, millimetres.</param>
/// <param name="UsableWidthMm">Width on which pieces may lie, in the middle of the roll, millimetres.</param>
/// <param name="EndAllowanceMm">Cloth left free at each end, millimetres.</param>
/// <param name="LengthMm">Cloth to cut off the roll, both end allowances included, millimetres.</param>
/// <param name="SpacingMm">Least distance between two pieces, millimetres.</param>
/// <param name="FaceDown">Whether the cloth lies face down on the table.</param>
/// <param name="Placements">One entry a piece, in order of their labels.</param>
/// <param name="Number">Which lay of this cloth it is, from 1: what is too long for one lay is laid in several, whole covers in each.</param>
public sealed record Lay(
    string Cloth,
    double RollWidthMm,
    double UsableWidthMm,
    double EndAllowanceMm,
    double LengthMm,
    double SpacingMm,
    bool FaceDown,
    ImmutableArray<Placement> Placements,
    int Number = 1);
