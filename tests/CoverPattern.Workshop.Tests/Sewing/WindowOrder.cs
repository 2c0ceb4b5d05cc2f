namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>One round window that was ordered; lengths in millimetres.</summary>
/// <param name="Facet">Label of its facet.</param>
/// <param name="Aperture">Radius that one sees through.</param>
/// <param name="Outer">Radius of the ring's finished outer edge.</param>
/// <param name="Pane">Radius of pane and screen.</param>
/// <param name="TurnUnder">Cloth turned under.</param>
/// <param name="HasScreen">Whether there is a screen too.</param>
/// <param name="Right">How far right of the facet's incentre it stands.</param>
/// <param name="Up">How far above it.</param>
internal sealed record WindowOrder(string Facet, double Aperture, double Outer, double Pane, double TurnUnder, bool HasScreen, double Right, double Up);
