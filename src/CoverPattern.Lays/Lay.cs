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
    int Number = 1)
{
    /// <summary>Which roll of the cloth it is cut from, counted from 1 as the job names them; 0 when the job names none.</summary>
    public int Roll { get; init; }

    /// <summary>What is written on that roll; empty when nothing is.</summary>
    public string RollName { get; init; } = string.Empty;

    /// <summary>Where it begins on the roll, millimetres from the roll's cut end.</summary>
    public double FromMm { get; init; }

    /// <summary>Plies that are cut at once, each of the lay's length; 1 or more.</summary>
    public int Plies { get; init; } = 1;

    /// <summary>Whether every second ply, from the one under the top on, lies the other way up.</summary>
    public bool FaceToFace { get; init; }

    /// <summary>Flawed areas that reach into it.</summary>
    public ImmutableArray<LayFlaw> Flaws { get; init; } = [];

    /// <summary>What was used to make it.</summary>
    public LayMaking Making { get; init; } = LayMaking.Plain;

    /// <summary>Cloth off the roll, all plies, millimetres.</summary>
    public double ClothMm => Plies * LengthMm;

    /// <summary>Pieces cut from it, all plies.</summary>
    public int PieceCount => System.Linq.Enumerable.Sum(Placements, placement => 1 + placement.Under.Length);
}
