namespace CoverPattern.Patterns.Seams;

/// <summary>A round patch over a hub.</summary>
/// <param name="Hub">Label of the hub.</param>
/// <param name="RadiusMm">Its radius, whole millimetres.</param>
public sealed record HubPatch(string Hub, double RadiusMm);
