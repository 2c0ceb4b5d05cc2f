using System.Collections.Generic;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Shells;

/// <summary>Statements about deck and ground that cannot stand together.</summary>
internal static class DeckWords
{
    /// <summary>One fault for every pair.</summary>
    internal static IEnumerable<Fault> Contradictions(Job job)
    {
        var deck = job.Deck;
        var (isMean, isMeasured) = (deck.Datum == DeckDatum.Mean, !deck.Heights.IsEmpty);
        if (isMeasured && deck.Raise is { } raise)
        {
            yield return new Fault("deck.raise", raise.Typed + " beside deck.heights", "one of the two: heights state every hub already");
        }

        if (isMeasured && deck.Plinth is { } plinth)
        {
            yield return new Fault("deck.plinth", plinth.Typed + " beside deck.heights", "one of the two: heights are above the deck, plinth included");
        }

        if (isMeasured && isMean)
        {
            yield return new Fault("deck.datum", "\"mean\" beside deck.heights", "one of the two: heights say where the deck lies");
        }

        if (isMeasured && deck.Tilt is not null)
        {
            yield return new Fault("deck.fall", "a fall beside deck.heights", "one of the two: heights above the deck hold its fall already; or state deck.raise");
        }

        if (isMean && deck.Plinth is { } other)
        {
            yield return new Fault("deck.plinth", other.Typed + " beside the datum \"mean\"", "one of the two: a plinth is counted from the lowest hub centres");
        }

        if (!deck.Ground.IsEmpty && deck.Tilt is not null)
        {
            yield return new Fault("deck.fall", "a fall beside deck.ground", "one of the two: ground heights hold the fall already");
        }

        if (job.Skirt.Shape == SkirtShape.Chords)
        {
            foreach (var place in BesideChords(deck))
            {
                yield return new Fault(place, "stated beside the skirt's shape \"chords\"", "one of the two: such an edge hangs from the hubs and follows neither deck nor ground");
            }
        }
    }

    /// <summary>The place of the statement that lifts deck or hubs; null when the model stands on its lowest hubs.</summary>
    internal static string? Stated(DeckWish deck) =>
        !deck.Ground.IsEmpty ? "deck.ground"
        : !deck.Heights.IsEmpty ? "deck.heights"
        : deck.Tilt is not null ? "deck.fall"
        : deck.Raise is not null ? "deck.raise"
        : null;

    private static IEnumerable<string> BesideChords(DeckWish deck)
    {
        if (deck.Datum == DeckDatum.Mean)
        {
            yield return "deck.datum";
        }

        if (deck.Plinth is not null)
        {
            yield return "deck.plinth";
        }

        if (!deck.Ground.IsEmpty)
        {
            yield return "deck.ground";
        }

        if (deck.Tilt is not null)
        {
            yield return "deck.fall";
        }
    }
}
