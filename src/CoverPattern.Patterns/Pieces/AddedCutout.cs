namespace CoverPattern.Patterns.Pieces;

/// <summary>A round hole about the origin of an added piece.</summary>
/// <param name="Purpose">What it is for, such as "window".</param>
/// <param name="Edge">Its rim; it has a radius.</param>
public sealed record AddedCutout(string Purpose, AddedEdge Edge);
