using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using System.Text.Json;

namespace CoverPattern.Files.Jobs;

/// <summary>A section of the job file being read: each question gives a value, or notes a fault and gives a stand-in.</summary>
internal sealed class JobSection
{
    private readonly JobNotes notes;
    private readonly Dictionary<string, JsonElement> members = new(StringComparer.Ordinal);

    /// <param name="place">Dotted place; empty at the top.</param>
    /// <param name="element">What stands there; null when nothing does.</param>
    /// <param name="notes">Takes faults and assumptions.</param>
    /// <param name="isMissed">Whether a fault says already that the section, or one round it, is missing.</param>
    internal JobSection(string place, JsonElement? element, JobNotes notes, bool isMissed = false)
    {
        (Place, this.notes) = (place, notes);
        if (element is { ValueKind: JsonValueKind.Object } section)
        {
            KeyCheck.Check(section, place, notes);
            foreach (var member in section.EnumerateObject())
            {
                members.TryAdd(member.Name, member.Value);
            }
        }
        else if (element is { } other)
        {
            notes.Refuse(place, JobNotes.Said(other), "a section in braces with " + JobKeys.Listing(JobNotes.Pattern(place)));
        }

        IsMissed = isMissed || (element is not { ValueKind: JsonValueKind.Object } && !notes.AreClean(place));
    }

    internal string Place { get; }

    /// <summary>Whether a fault says that the section is missing; its keys are then not missed one by one.</summary>
    internal bool IsMissed { get; }

    /// <summary>Whether the job states the key.</summary>
    internal bool States(string name) => members.ContainsKey(name);

    internal string PlaceOf(string name) => JobNotes.Join(Place, name);

    /// <summary>The value of a key, as stated or by default.</summary>
    /// <param name="name">The key.</param>
    /// <param name="read">Reads values of this kind.</param>
    /// <param name="fallback">Taken when nobody says, instead of the key's own default.</param>
    /// <returns>The value; a stand-in when there is none or it is refused.</returns>
    internal T? Take<T>(string name, ValueReader<T> read, string? fallback = null)
    {
        var key = Key(name);
        if ((Stated(key) ?? Assumed(key, fallback ?? key.Default)) is not { } said)
        {
            return default;
        }

        if (read(key, said, out var value, out var hint))
        {
            return value;
        }

        notes.Refuse(PlaceOf(name), JobNotes.Said(said), hint.Length > 0 ? $"{hint}; {key.Allowed}" : key.Allowed);
        return default;
    }

    internal JobSection Section(string name) => new(PlaceOf(name), Stated(Key(name)), notes, IsMissed);

    /// <summary>The sections of a list; none after a fault.</summary>
    internal ImmutableArray<JobSection> Sections(string name) =>
        [.. Items(name).Select(item => new JobSection(item.Place, item.Element, notes))];

    /// <summary>The members of a list, with the place of each; none after a fault.</summary>
    internal ImmutableArray<(string Place, JsonElement Element)> Items(string name)
    {
        var key = Key(name);
        if (Stated(key) is not { } list)
        {
            return [];
        }

        if (list.ValueKind == JsonValueKind.Array && list.GetArrayLength() >= key.Least && list.GetArrayLength() <= key.Most)
        {
            return [.. list.EnumerateArray().Select((item, index) => (FormattableString.Invariant($"{PlaceOf(name)}[{index}]"), item))];
        }

        notes.Refuse(PlaceOf(name), JobNotes.Said(list), key.Allowed);
        return [];
    }

    /// <summary>The members of a section whose keys are labels, with the place of each; none after a fault.</summary>
    internal ImmutableArray<(string Place, string Label, JsonElement Element)> Entries(string name)
    {
        var key = Key(name);
        if (Stated(key) is not { } section)
        {
            return [];
        }

        if (section.ValueKind == JsonValueKind.Object && section.EnumerateObject().Any())
        {
            return [.. section.EnumerateObject().Select(member => (JobNotes.Join(PlaceOf(name), member.Name), member.Name, member.Value))];
        }

        notes.Refuse(PlaceOf(name), JobNotes.Said(section), key.Allowed);
        return [];
    }

    private JobKey Key(string name) => JobKeys.Find(JobNotes.Join(JobNotes.Pattern(Place), name))
        ?? throw new ArgumentException($"No key {name} in section {Place}.", nameof(name));

    /// <summary>What the job states; a fault when it states nothing and must.</summary>
    private JsonElement? Stated(JobKey key)
    {
        if (members.TryGetValue(key.Name, out var element))
        {
            return element;
        }

        if (key.IsRequired && !IsMissed)
        {
            notes.Refuse(PlaceOf(key.Name), "nothing", "required: " + key.Allowed);
        }

        return null;
    }

    private JsonElement? Assumed(JobKey key, string value)
    {
        if (value.Length == 0)
        {
            return null;
        }

        notes.Assume(key, PlaceOf(key.Name), value);
        return key.Kind is KeyKind.Whole or KeyKind.Flag ? JsonElement.Parse(value) : JsonSerializer.SerializeToElement(value);
    }
}
