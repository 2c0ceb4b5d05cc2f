using System.Collections.Generic;

namespace CoverPattern.Files.Surveys;

/// <summary>A kind of thing that a PLY file lists.</summary>
/// <param name="Name">"vertex", "face" or another.</param>
/// <param name="Count">How many follow.</param>
/// <param name="Properties">What each consists of, in order.</param>
internal sealed record PlyElement(string Name, long Count, List<PlyProperty> Properties);
