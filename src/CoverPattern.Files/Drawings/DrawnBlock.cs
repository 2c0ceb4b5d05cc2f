using System.Collections.Immutable;

namespace CoverPattern.Files.Drawings;

/// <summary>A figure drawn once and inserted any number of times, also mirrored.</summary>
/// <remarks>It holds no texts: a text inside would be mirrored with it. Texts stand on the sheet.</remarks>
/// <param name="Name">Unique in the drawing.</param>
/// <param name="Lines">Its lines in its own coordinates.</param>
public sealed record DrawnBlock(string Name, ImmutableArray<DrawnLine> Lines);
