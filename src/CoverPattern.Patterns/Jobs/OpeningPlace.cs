namespace CoverPattern.Patterns.Jobs;

/// <summary>Where an opening lies: by facet, or by height and direction.</summary>
/// <param name="Facet">Label of the facet that holds its middle; empty where height and direction tell.</param>
/// <param name="Right">How far right of the facet's incentre.</param>
/// <param name="Up">How far above it, square to the facet's ring edge.</param>
public sealed record OpeningPlace(string Facet, Measure Right, Measure Up)
{
    /// <summary>Height of its middle above the deck; null where a facet tells.</summary>
    public Measure? Above { get; init; }

    /// <summary>Direction of its middle seen from the deck's centre, counter-clockwise from the front seen from above, degrees.</summary>
    public double Towards { get; init; }

    /// <summary>By how much it is turned in its place, counter-clockwise seen from outside, degrees.</summary>
    public double Turned { get; init; }
}
