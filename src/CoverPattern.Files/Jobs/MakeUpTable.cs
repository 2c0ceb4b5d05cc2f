using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using System.Text.Json;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Jobs;

/// <summary>The shop's table of make-ups as it is read; forms are make-ups of their own where the table has no entry of their name.</summary>
internal sealed class MakeUpTable
{
    private readonly JobNotes notes;
    private readonly List<(string Place, string Name)> joined = [];

    private MakeUpTable(JobNotes notes) => this.notes = notes;

    /// <summary>The entries in order; those that are refused are stand-ins.</summary>
    internal ImmutableArray<MakeUp> Entries { get; private set; } = [];

    internal static MakeUpTable Read(ImmutableArray<JobSection> sections, JobNotes notes)
    {
        var table = new MakeUpTable(notes);
        var placeByName = new Dictionary<string, string>(StringComparer.Ordinal);
        var entries = ImmutableArray.CreateBuilder<MakeUp>(sections.Length);
        foreach (var section in sections)
        {
            var entry = table.ReadEntry(section);
            if (entry.Name.Length > 0 && !placeByName.TryAdd(entry.Name, section.PlaceOf("name")))
            {
                notes.Refuse(section.PlaceOf("name"), $"\"{entry.Name}\", as at {placeByName[entry.Name]}", "a name of its own");
            }

            entries.Add(entry);
        }

        table.Entries = entries.ToImmutable();
        return table;
    }

    /// <summary>Reads the name of an entry or the word of a form; an entry of a form's name goes first.</summary>
    /// <param name="take">Told of the entry, null for a bare form, and of the form.</param>
    internal ValueReader<string> Named(Action<MakeUp?, MakeUpForm> take) => (JobKey key, JsonElement element, out string? value, out string hint) =>
    {
        var name = element.ValueKind == JsonValueKind.String ? element.GetString() : null;
        (value, hint) = (name, "");
        var entry = Entries.FirstOrDefault(known => known.Name == name);
        if (entry is not null || (name is not null && key.Words.Contains(name, StringComparer.Ordinal)))
        {
            take(entry, entry?.Form ?? Enum.Parse<MakeUpForm>(name!, ignoreCase: true));
            return true;
        }

        var names = Entries.Select(known => known.Name);
        hint = name is not null && NearWords.Nearest(name, key.Words.Concat(names)) is { } near ? $"did you mean \"{near}\"?"
            : Entries.IsEmpty ? ""
            : "in the table: " + string.Join(", ", names);
        return false;
    };

    /// <summary>Holds the cloths that entries join against those of the job.</summary>
    internal void CheckJoins(ImmutableArray<Cloth> cloths)
    {
        string[] known = [.. cloths.Select(cloth => cloth.Name), MakeUp.WeldableCloth, MakeUp.AnyCloth];
        foreach (var (place, name) in joined.Where(entry => notes.AreClean("cloths") && !known.Contains(entry.Name, StringComparer.Ordinal)))
        {
            var near = NearWords.Nearest(name, known) is { } word ? $"did you mean \"{word}\"? " : "";
            notes.Refuse(place, $"\"{name}\"", $"{near}a cloth of this job, \"{MakeUp.WeldableCloth}\" or \"{MakeUp.AnyCloth}\": {string.Join(", ", known)}");
        }
    }

    private MakeUp ReadEntry(JobSection section)
    {
        var name = section.Take<string>("name", Values.ClothName) ?? "";
        var form = section.Take<MakeUpForm>("form", Values.Word);
        var usual = MakeUp.Of(form, section.Take<Measure>("width", Values.Length));
        var entry = usual with
        {
            Name = name,
            OverMm = Millimetres(section, "over", usual.OverMm),
            UnderMm = Millimetres(section, "under", usual.UnderMm),
            Rows = section.States("rows") ? section.Take<int>("rows", Values.Whole) : usual.Rows,
            RowGapMm = Millimetres(section, "rowGap", usual.RowGapMm),
            TurnInMm = Millimetres(section, "turnIn", usual.TurnInMm),
            Joins = ReadJoins(section, form),
            IsTicked = section.States("notches") ? section.Take<string>("notches", Values.Word) is "tick" : usual.IsTicked,
            Plies = section.States("plies") ? section.Take<int>("plies", Values.Whole) : usual.Plies,
        };
        MakeUpCheck.Check(section, entry, notes);
        return entry;
    }

    private ImmutableArray<string> ReadJoins(JobSection section, MakeUpForm form)
    {
        if (!section.States("joins"))
        {
            return [MakeUp.Welds(form) ? MakeUp.WeldableCloth : MakeUp.AnyCloth];
        }

        var names = ImmutableArray.CreateBuilder<string>();
        foreach (var (place, element) in section.Items("joins"))
        {
            if (element.ValueKind == JsonValueKind.String)
            {
                names.Add(element.GetString()!);
                joined.Add((place, names[^1]));
            }
            else
            {
                notes.Refuse(place, JobNotes.Said(element), "the name of a cloth in quotes");
            }
        }

        return names.ToImmutable();
    }

    private static double Millimetres(JobSection section, string name, double usual) =>
        section.States(name) ? section.Take<Measure>(name, Values.Length).Millimetres : usual;
}
