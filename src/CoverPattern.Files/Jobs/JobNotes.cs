using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using System.Text.Json;
using System.Text.RegularExpressions;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Jobs;

/// <summary>What is noted while a job is read: faults, and defaults taken.</summary>
internal sealed partial class JobNotes
{
    private const int LongestSaid = 60;
    private const int MostFaults = 1000;
    private readonly List<Assumption> assumed = [];

    internal List<Fault> Faults { get; } = [];

    /// <summary>Defaults taken, in the order in which a job is written.</summary>
    internal ImmutableArray<Assumption> Assumed =>
        [.. assumed.OrderBy(assumption => JobKeys.All.IndexOf(JobKeys.Find(Pattern(assumption.Place))!))];

    /// <summary>Whether so much is wrong that nothing more is worth a look.</summary>
    internal bool IsFull => Faults.Count > MostFaults;

    /// <summary>Notes a fault; behind the thousandth comes one that says so, and no more: such a file is no job.</summary>
    internal void Refuse(string place, string said, string allowed)
    {
        if (Faults.Count < MostFaults)
        {
            Faults.Add(new Fault(place, said, allowed));
        }
        else if (Faults.Count == MostFaults)
        {
            Faults.Add(new Fault("", FormattableString.Invariant($"more than {MostFaults} faults"), "a job file; the rest was not looked at"));
        }
    }

    internal void Assume(JobKey key, string place, string value)
    {
        if (key.IsAssumable)
        {
            assumed.Add(new Assumption(place, value, key.Standing));
        }
    }

    /// <summary>Whether nothing is wrong at these places nor inside them.</summary>
    internal bool AreClean(params ReadOnlySpan<string> places)
    {
        foreach (var place in places)
        {
            if (Faults.Any(fault => fault.Place == place || fault.Place.StartsWith(place + ".", StringComparison.Ordinal)))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>The place of a key in a section; odd keys are quoted, so that a place stays one line of plain letters.</summary>
    internal static string Join(string section, string key)
    {
        if (!PlainKey().IsMatch(key))
        {
            var shown = key.Length > LongestSaid ? key[..LongestSaid] : key;
            return $"{section}[\"{JsonEncodedText.Encode(Whole(shown))}\"]";
        }

        return section.Length == 0 ? key : section + "." + key;
    }

    /// <summary>The place with empty brackets for any member of a list.</summary>
    internal static string Pattern(string place) => Index().Replace(place, "[]");

    /// <summary>What the job said, in one short line.</summary>
    internal static string Said(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Object => element.EnumerateObject().Any() ? "a section in braces" : "an empty section",
        JsonValueKind.Array => element.EnumerateArray().Any() ? "a list in brackets" : "an empty list",
        _ => Shorten(element.GetRawText()),
    };

    /// <summary>Cuts long words short, and shows control characters as "?": what is said may go to a terminal.</summary>
    private static string Shorten(string raw) =>
        string.Concat((raw.Length > LongestSaid ? Whole(raw[..LongestSaid]) + "..." : raw).Select(c => char.IsControl(c) ? '?' : c));

    /// <summary>Drops half a character at the end, left there by cutting.</summary>
    private static string Whole(string text) => text.Length > 0 && char.IsHighSurrogate(text[^1]) ? text[..^1] : text;

    [GeneratedRegex(@"\A[A-Za-z0-9_$-]{1,60}\z", RegexOptions.None, matchTimeoutMilliseconds: -1)]
    private static partial Regex PlainKey();

    [GeneratedRegex(@"\[[0-9]+\]", RegexOptions.None, matchTimeoutMilliseconds: -1)]
    private static partial Regex Index();
}
