using System.Collections.Immutable;

namespace CoverPattern.Lays;

/// <summary>Where one piece lies: its pattern mirrored first, then turned, then moved.</summary>
/// <param name="Piece">Label of the piece; of that on top where several plies are cut at once.</param>
/// <param name="X">Shift along the roll, millimetres, on the grid.</param>
/// <param name="Y">Shift across the roll, millimetres, on the grid.</param>
/// <param name="TurnDegrees">Turn, degrees counter-clockwise.</param>
/// <param name="Mirrored">Whether the pattern's y changes sign first: true for a right-handed piece on cloth that lies face down.</param>
public sealed record Placement(string Piece, double X, double Y, double TurnDegrees, bool Mirrored)
{
    /// <summary>Labels of the pieces of the same pattern that are cut under it, ply by ply downward; none on a single ply.</summary>
    public ImmutableArray<string> Under { get; init; } = [];

    /// <summary>All pieces that are cut here, the top one first.</summary>
    public ImmutableArray<string> Pieces => [Piece, .. Under];

    /// <summary>For drawings: the top piece, and how many lie under it.</summary>
    public string Name => Under.IsEmpty ? Piece : System.FormattableString.Invariant($"{Piece} +{Under.Length}");
}
