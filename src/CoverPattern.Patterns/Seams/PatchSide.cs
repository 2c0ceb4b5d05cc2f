namespace CoverPattern.Patterns.Seams;

/// <summary>One edge of one patch.</summary>
/// <param name="Patch">Index of the patch.</param>
/// <param name="Edge">Index of the corner at which the edge begins, running counter-clockwise round the patch.</param>
public readonly record struct PatchSide(int Patch, int Edge);
