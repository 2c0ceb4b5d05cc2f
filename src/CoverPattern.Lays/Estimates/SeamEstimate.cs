namespace CoverPattern.Lays.Estimates;

/// <summary>Seams of one construction.</summary>
/// <param name="MakeUp">Name of the construction.</param>
/// <param name="Seams">How many seams; each is counted once, not once a side.</param>
/// <param name="LengthMm">Their sewn length, millimetres.</param>
public sealed record SeamEstimate(string MakeUp, int Seams, double LengthMm)
{
    /// <summary>Rows of stitches in each; 0 for a weld.</summary>
    public int Rows { get; init; }
}
