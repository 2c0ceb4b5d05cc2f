using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Arcs that are alike: one role, one make-up, one length within 0.002 mm; their marks are alike too.</summary>
/// <param name="Label">Such as "c07".</param>
/// <param name="Role">What the arcs are for.</param>
/// <param name="MakeUp">How they are made, for seams; null elsewhere.</param>
/// <param name="LengthMm">Length of the shortest, millimetres.</param>
/// <param name="MarkCode">Number of the pattern of marks; unlike between classes of seams less than 10 mm apart.</param>
internal sealed record ArcClass(string Label, EdgeRole Role, MakeUp? MakeUp, double LengthMm, int MarkCode);
