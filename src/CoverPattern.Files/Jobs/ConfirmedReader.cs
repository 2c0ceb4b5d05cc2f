using System;
using System.Collections.Immutable;
using System.Text.Json;

namespace CoverPattern.Files.Jobs;

/// <summary>Reads the places of defaults that somebody has confirmed.</summary>
internal static class ConfirmedReader
{
    /// <param name="items">The members of the list, with their places.</param>
    /// <param name="counts">Number of cloths and of entries of windows, openings and pipes in the job.</param>
    /// <param name="notes">Takes faults.</param>
    internal static ImmutableArray<string> Read(ImmutableArray<(string Place, JsonElement Element)> items, (int Cloths, int Windows, int Openings, int Pipes) counts, JobNotes notes)
    {
        var known = JobKeys.Confirmable(counts.Cloths, counts.Windows, counts.Openings, counts.Pipes);
        var confirmed = ImmutableArray.CreateBuilder<string>();
        foreach (var (place, element) in items)
        {
            var word = element.ValueKind == JsonValueKind.String ? element.GetString()! : "";
            if (known.Contains(word, StringComparer.Ordinal) && !confirmed.Contains(word))
            {
                confirmed.Add(word);
            }
            else
            {
                notes.Refuse(place, JobNotes.Said(element), confirmed.Contains(word) ? "each place once; leave one" : Advice(word, known));
            }
        }

        return confirmed.ToImmutable();
    }

    private static string Advice(string word, ImmutableArray<string> known) => NearWords.Nearest(word, known) is { } near
        ? $"did you mean \"{near}\"?"
        : "a place that has a default: " + string.Join(", ", known);
}
