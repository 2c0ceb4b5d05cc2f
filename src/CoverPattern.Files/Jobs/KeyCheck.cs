using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json;

namespace CoverPattern.Files.Jobs;

/// <summary>Holds the keys of a section against the known ones: a key nobody reads would be a wish nobody fulfils.</summary>
internal static class KeyCheck
{
    /// <summary>Notes unknown and repeated keys.</summary>
    internal static void Check(JsonElement section, string place, JobNotes notes)
    {
        var pattern = JobNotes.Pattern(place);
        var known = JobKeys.In(pattern).Select(key => key.Name).ToArray();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var name in section.EnumerateObject().Select(member => member.Name).TakeWhile(_ => !notes.IsFull))
        {
            if (!seen.Add(name))
            {
                notes.Refuse(JobNotes.Join(place, name), "the same key again", "each key once; leave one");
            }
            else if (!known.Contains(name, StringComparer.Ordinal))
            {
                notes.Refuse(JobNotes.Join(place, name), "an unknown key", Advice(name, known));
            }
        }
    }

    private static string Advice(string name, string[] known)
    {
        var listing = "known here: " + string.Join(", ", known);
        if (NearWords.Nearest(name, known) is { } near)
        {
            return $"did you mean \"{near}\"? {listing}";
        }

        var elsewhere = JobKeys.All.FirstOrDefault(key => string.Equals(key.Name, name, StringComparison.OrdinalIgnoreCase));
        return elsewhere is null ? listing : $"did you mean \"{elsewhere.Place}\"? {listing}";
    }
}
