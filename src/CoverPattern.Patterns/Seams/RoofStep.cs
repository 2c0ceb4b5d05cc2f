namespace CoverPattern.Patterns.Seams;

/// <summary>One strut of the line between roof and wall.</summary>
/// <param name="Edge">Index of the shell's edge.</param>
/// <param name="From">Index of the node where it begins, the roof on the left seen from outside.</param>
/// <param name="To">Index of the node where it ends.</param>
/// <param name="Roof">Index of the face on the roof's side.</param>
/// <param name="Wall">Index of the face on the wall's side.</param>
/// <param name="LengthMm">Length, millimetres.</param>
public sealed record RoofStep(int Edge, int From, int To, int Roof, int Wall, double LengthMm);
