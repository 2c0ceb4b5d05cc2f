namespace CoverPattern.Patterns.Seams;

/// <summary>What one opening lets through.</summary>
/// <param name="Label">Its label, such as "O1".</param>
/// <param name="OpenMm2">Area inside its rim along the cloth, square millimetres.</param>
/// <param name="FreeMm2">What of it is free: less where a screen covers it.</param>
/// <param name="MiddleMm">Height of its middle above the deck, millimetres.</param>
/// <param name="HasScreen">Whether a screen covers it.</param>
public sealed record VentArea(string Label, double OpenMm2, double FreeMm2, double MiddleMm, bool HasScreen);
