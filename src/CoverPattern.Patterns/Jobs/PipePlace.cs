namespace CoverPattern.Patterns.Jobs;

/// <summary>Where the middle line of a pipe meets the cover: by facet, by place on the plan, or by height and direction.</summary>
/// <param name="Run">Which way the pipe runs.</param>
/// <param name="Facet">Label of the facet; empty where the others tell.</param>
/// <param name="Right">How far right of the facet's incentre, seen from outside.</param>
/// <param name="Up">How far above it, square to the facet's ring edge.</param>
public sealed record PipePlace(PipeRun Run, string Facet, Measure Right, Measure Up)
{
    /// <summary>Place of an upright pipe on the plan of the frame: towards the front, and to the left of that; null where another tells.</summary>
    public (Measure X, Measure Y)? Plan { get; init; }

    /// <summary>Height of a level pipe above the deck; null where another tells.</summary>
    public Measure? Above { get; init; }

    /// <summary>Direction of that pipe from the deck's centre, counter-clockwise seen from above, 0 at the front, degrees.</summary>
    public double Towards { get; init; }
}
