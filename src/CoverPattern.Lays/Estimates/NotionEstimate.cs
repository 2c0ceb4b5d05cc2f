namespace CoverPattern.Lays.Estimates;

/// <summary>Strip or zip that goes into seams.</summary>
/// <param name="What">"binding" or "zip".</param>
/// <param name="MakeUp">Name of the construction that takes it.</param>
/// <param name="Count">How many seams take one.</param>
/// <param name="LengthMm">Sewn length together, nothing added for ends, millimetres.</param>
/// <param name="WidthMm">Width of a binding to be cut, millimetres; 0 for a zip.</param>
public sealed record NotionEstimate(string What, string MakeUp, int Count, double LengthMm, double WidthMm);
