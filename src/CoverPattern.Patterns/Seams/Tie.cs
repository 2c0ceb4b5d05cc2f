namespace CoverPattern.Patterns.Seams;

/// <summary>A tie sewn into a seam, to go round the strut below it.</summary>
/// <param name="Hub">Label of the hub it holds.</param>
/// <param name="Arc">Label of the seam.</param>
/// <param name="FromStart">Whether the hub is where the over side's edge begins.</param>
/// <param name="DistanceMm">From the hub along the seam, millimetres.</param>
public sealed record Tie(string Hub, string Arc, bool FromStart, double DistanceMm);
