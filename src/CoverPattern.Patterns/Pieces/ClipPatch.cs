namespace CoverPattern.Patterns.Pieces;

/// <summary>A round patch under the clip at an inside corner, sewn to its piece before the allowance is clipped.</summary>
/// <param name="Label">Label of the patch on the first cover, such as "H3.02-clip".</param>
/// <param name="Piece">Label of the piece it goes on, on the first cover.</param>
/// <param name="Hub">Label of the corner of the cover on which its middle lies.</param>
/// <param name="RadiusMm">Its radius, whole millimetres.</param>
public sealed record ClipPatch(string Label, string Piece, string Hub, double RadiusMm);
