namespace CoverPattern.Patterns.Frames;

/// <summary>Struts of one length, or of measured lengths so near that a schedule takes them together.</summary>
/// <param name="Label">"A" for the shortest.</param>
/// <param name="LengthMm">Hub centre to hub centre, millimetres; of unlike ones their mean.</param>
/// <param name="Count">Number of struts.</param>
public sealed record StrutClass(string Label, double LengthMm, int Count)
{
    /// <summary>Length of the shortest of them, millimetres.</summary>
    public double ShortestMm { get; init; } = LengthMm;

    /// <summary>Length of the longest of them, millimetres.</summary>
    public double LongestMm { get; init; } = LengthMm;
}
