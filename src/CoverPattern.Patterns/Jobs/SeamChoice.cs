using System.Collections.Immutable;

namespace CoverPattern.Patterns.Jobs;

/// <summary>Seams that are made otherwise than the rest.</summary>
/// <param name="Set">Which seams.</param>
/// <param name="Struts">Struts they run over, each as two labels of hubs, such as "H0.02-H1.01"; empty for other sets.</param>
/// <param name="MakeUp">How they are made.</param>
public sealed record SeamChoice(SeamSet Set, ImmutableArray<string> Struts, MakeUp MakeUp);
