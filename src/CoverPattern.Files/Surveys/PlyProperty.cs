namespace CoverPattern.Files.Surveys;

/// <summary>A property of an element of a PLY file.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Type">Type of the value, or of the list's members.</param>
/// <param name="CountType">Type of the count before a list; null for a single value.</param>
internal sealed record PlyProperty(string Name, string Type, string? CountType);
