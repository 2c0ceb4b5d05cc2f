namespace CoverPattern.Patterns.Frames;

/// <summary>Struts of one length.</summary>
/// <param name="Label">"A" for the shortest.</param>
/// <param name="LengthMm">Hub centre to hub centre, millimetres.</param>
/// <param name="Count">Number of struts.</param>
public sealed record StrutClass(string Label, double LengthMm, int Count);
