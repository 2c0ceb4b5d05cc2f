using System.Collections.Immutable;

namespace CoverPattern.Patterns.Jobs;

/// <summary>Where the deck or ground lies under the base hubs; all that is stated here drives skirt and hem only.</summary>
/// <param name="Datum">Which height of the base the deck passes through, when neither plinth nor heights are stated.</param>
public sealed record DeckWish(DeckDatum Datum)
{
    /// <summary>How far the lowest hub centres stand above the deck; null when they do not stand on a plinth.</summary>
    public Measure? Plinth { get; init; }

    /// <summary>Measured height of each base hub centre above the deck; empty when nobody measured.</summary>
    public ImmutableArray<HubHeight> Heights { get; init; } = [];

    /// <summary>Measured height of all high base hubs above the low ones; null when nobody measured.</summary>
    public Measure? Raise { get; init; }

    /// <summary>Height of the ground below each base hub, above the deck; empty where the ground is the deck.</summary>
    public ImmutableArray<HubHeight> Ground { get; init; } = [];

    /// <summary>How the deck is tilted; null when it is level.</summary>
    public DeckTilt? Tilt { get; init; }

    /// <summary>Whether the heights of the base hubs were measured.</summary>
    public bool IsMeasured => Raise is not null || !Heights.IsEmpty;
}
