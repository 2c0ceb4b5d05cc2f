using System.Collections.Immutable;

namespace CoverPattern.Patterns.Seams;

/// <summary>One separating zip between roof and wall, from hub to hub.</summary>
/// <param name="Label">Such as "Z01"; "Z01s" that of the roof screen along the same line.</param>
/// <param name="Steps">The struts it runs along, the roof on its left seen from outside.</param>
/// <param name="LengthMm">Length of its teeth, one for both sides, millimetres.</param>
public sealed record RoofZip(string Label, ImmutableArray<RoofStep> Steps, double LengthMm)
{
    /// <summary>Index of the node where it starts: pin and box are at this end.</summary>
    public int From => Steps[0].From;

    /// <summary>Index of the node where it stops.</summary>
    public int To => Steps[^1].To;
}
