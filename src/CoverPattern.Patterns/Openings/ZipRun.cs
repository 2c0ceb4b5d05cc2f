namespace CoverPattern.Patterns.Openings;

/// <summary>One zip along a rim, or between two leaves.</summary>
/// <param name="Label">Such as "O1z1".</param>
/// <param name="Part">Letter of the part that it holds, such as "f".</param>
/// <param name="From">Where its teeth begin, along the rim from where that begins, counter-clockwise, millimetres; on a line between leaves, from the head.</param>
/// <param name="LengthMm">Length of its teeth; both sides are equally long, millimetres.</param>
public sealed record ZipRun(string Label, string Part, double From, double LengthMm)
{
    /// <summary>Whether it runs down between two leaves instead of along the rim.</summary>
    public bool IsBetweenLeaves { get; init; }
}
