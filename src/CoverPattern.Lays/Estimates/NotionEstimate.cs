namespace CoverPattern.Lays.Estimates;

/// <summary>Strip, zip or tie that goes into seams.</summary>
/// <param name="What">"binding", "zip" or "tie".</param>
/// <param name="MakeUp">Name of the construction that takes it; empty for ties.</param>
/// <param name="Count">How many seams take one; how many ties.</param>
/// <param name="LengthMm">Sewn length together, nothing added for ends, millimetres.</param>
/// <param name="WidthMm">Width of a binding to be cut, millimetres; 0 for a zip; width of a tie's tape.</param>
public sealed record NotionEstimate(string What, string MakeUp, int Count, double LengthMm, double WidthMm);
