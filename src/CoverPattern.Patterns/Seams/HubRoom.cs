namespace CoverPattern.Patterns.Seams;

/// <summary>The room for a patch over a hub.</summary>
/// <param name="Hub">Label of the hub.</param>
/// <param name="RadiusMm">Radius that fits, whole millimetres; may be too small for a patch.</param>
/// <param name="WithoutOpeningsMm">The same if there were no openings.</param>
/// <param name="Opening">Label of the rim of the nearest opening in the faces round the hub; empty when there is none.</param>
/// <param name="HasZip">Whether a zip ends at the hub: no patch goes over it.</param>
internal sealed record HubRoom(string Hub, double RadiusMm, double WithoutOpeningsMm, string Opening, bool HasZip);
