using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Pieces;

/// <summary>What puts lines into one class.</summary>
/// <param name="Role">What the line is for.</param>
/// <param name="MakeUp">How it is made, for a seam; null elsewhere.</param>
/// <param name="LengthMm">Its length, millimetres.</param>
internal readonly record struct ClassedLine(EdgeRole Role, MakeUp? MakeUp, double LengthMm)
{
    internal static ClassedLine Of(Arc arc) => new(arc.Role, arc.MakeUp, arc.LengthMm);
}
