namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>What was ordered of a roof.</summary>
/// <param name="Flap">Width of its flap, millimetres.</param>
/// <param name="Tabs">Largest distance of load tabs, millimetres.</param>
/// <param name="HasScreen">Whether a screen lies beneath it.</param>
internal sealed record RoofOrder(double Flap, double Tabs, bool HasScreen);
