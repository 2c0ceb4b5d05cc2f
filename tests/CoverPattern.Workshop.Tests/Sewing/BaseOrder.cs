using System.Collections.Generic;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>What was ordered below the base hubs.</summary>
/// <param name="Shape">"vertical", "slope" or "chords".</param>
internal sealed record BaseOrder(string Shape = "vertical")
{
    /// <summary>Heights of the base hub centres above the deck, counter-clockwise from the front; null where the model's hold.</summary>
    internal IReadOnlyList<double>? Measured { get; init; }

    /// <summary>Height of all but the lowest base hubs above these; null where the model's hold.</summary>
    internal double? Raise { get; init; }

    /// <summary>Heights of the ground below the base hubs, above the deck; null where the ground is the deck.</summary>
    internal IReadOnlyList<double>? Ground { get; init; }

    /// <summary>Whether the deck passes through the mean height of the base hubs.</summary>
    internal bool IsMean { get; init; }

    /// <summary>Height of the lowest hub over the deck.</summary>
    internal double Plinth { get; init; }

    /// <summary>Fall of the deck over length on plan.</summary>
    internal double Fall { get; init; }

    /// <summary>Where it falls to, degrees counter-clockwise from the front.</summary>
    internal double Towards { get; init; }

    /// <summary>Whether the skirt is a strip of its own, which has no place in the model's space.</summary>
    internal bool IsStrip => Shape != "slope" && (Measured ?? (object?)Raise) is not null;
}
