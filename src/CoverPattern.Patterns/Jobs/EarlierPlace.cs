using System.Collections.Immutable;

namespace CoverPattern.Patterns.Jobs;

/// <summary>Where a piece of an earlier lay lies: its pattern mirrored first, then turned, then moved.</summary>
/// <param name="Piece">Label of the piece; of that on top where several plies are cut.</param>
/// <param name="Under">Labels of the pieces cut under it, ply by ply downward.</param>
/// <param name="X">Shift along the roll, millimetres.</param>
/// <param name="Y">Shift across the roll, millimetres.</param>
/// <param name="TurnDegrees">Turn, degrees counter-clockwise.</param>
/// <param name="Mirrored">Whether the pattern's y changes sign first.</param>
public sealed record EarlierPlace(string Piece, ImmutableArray<string> Under, double X, double Y, double TurnDegrees, bool Mirrored);
