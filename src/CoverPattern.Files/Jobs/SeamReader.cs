using System;
using System.Collections.Immutable;
using System.Linq;
using System.Text.Json;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Jobs;

/// <summary>Reads how pieces are joined.</summary>
internal static class SeamReader
{
    private const double UsualClosing = 40;

    internal static SeamWish Read(JobSection section, MakeUpTable table, JobNotes notes)
    {
        var makeUp = ReadMakeUp(section, table, notes);
        var others = section.Sections("others");
        return new SeamWish(makeUp)
        {
            Turned = section.States("turned") ? section.Take<ImmutableArray<string>>("turned", Values.Labels) : [],
            Others = others.IsEmpty ? [] : [.. others.Select(other => ReadOther(other, makeUp, table, notes))],
            // An empty list stays the empty list, so that equal wishes are equal.
            Zips = section.Sections("zips") is { IsEmpty: false } zips ? [.. zips.Select(zip => new SeamZip(zip.Take<string>("strut", Values.Line) ?? string.Empty, zip.Take<Measure>("from", Values.Length), zip.Take<Measure>("length", Values.Length)))] : [],
            Corners = section.Take<CornerStyle>("corners", Values.Word),
            StopAtHubs = (makeUp.IsFelled || section.States("stopAtHubs")) && section.Take<bool>("stopAtHubs", Values.Flag),
            Closing = section.States("closing") ? ReadClosing(section.Section("closing"), makeUp) : null,
        };
    }

    /// <summary>A form takes its width from seam.width; an entry of the table has its own.</summary>
    private static MakeUp ReadMakeUp(JobSection section, MakeUpTable table, JobNotes notes)
    {
        MakeUp? entry = null;
        var form = default(MakeUpForm);
        section.Take<string>("makeUp", table.Named((found, itsForm) => (entry, form) = (found, itsForm)));
        if (entry is null)
        {
            return MakeUp.Of(form, section.Take<Measure>("width", Values.Length, MakeUpDefaults.SeamWidth(form)));
        }

        if (section.States("width"))
        {
            notes.Refuse(section.PlaceOf("width"), "a width", $"leave it out: \"{entry.Name}\" has its own in makeUps, {entry.Width.Typed}");
        }

        return entry;
    }

    /// <summary>A bare form has no width here, unless it is the one that all seams have: the table must give it.</summary>
    private static SeamChoice ReadOther(JobSection section, MakeUp usual, MakeUpTable table, JobNotes notes)
    {
        var makeUp = usual;
        section.Take<string>("makeUp", table.Named((entry, form) =>
        {
            makeUp = entry ?? usual;
            if (entry is null && MakeUp.Of(form, usual.Width).Name != usual.Name)
            {
                notes.Refuse(
                    section.PlaceOf("makeUp"),
                    $"\"{MakeUp.Of(form, usual.Width).Name}\", whose width nobody states",
                    "a name of makeUps: add an entry there with name, form and width");
            }
        }));
        var set = SeamSet.Struts;
        ImmutableArray<string> struts = [];
        section.Take<string>("between", (JobKey key, JsonElement element, out string? value, out string hint) =>
        {
            (value, hint) = (null, "");
            if (element.ValueKind != JsonValueKind.Array)
            {
                return Values.Word(key, element, out value, out hint) && Enum.TryParse(value, ignoreCase: true, out set);
            }

            struts = Struts(section.PlaceOf("between"), element, notes);
            return element.GetArrayLength() >= key.Least && element.GetArrayLength() <= key.Most;
        });
        return new SeamChoice(set, struts, makeUp);
    }

    private static ImmutableArray<string> Struts(string place, JsonElement list, JobNotes notes)
    {
        var struts = ImmutableArray.CreateBuilder<string>();
        foreach (var (i, item) in list.EnumerateArray().Index())
        {
            if (item.ValueKind == JsonValueKind.String)
            {
                struts.Add(item.GetString()!);
            }
            else
            {
                notes.Refuse(FormattableString.Invariant($"{place}[{i}]"), JobNotes.Said(item), "a strut as two labels of hubs, such as \"H0.02-H1.01\"");
            }
        }

        return struts.ToImmutable();
    }

    private static ClosingWish ReadClosing(JobSection section, MakeUp makeUp) => new(
        section.Take<string>("at", Values.Line) ?? ClosingWish.Rear,
        section.Take<Measure>("allowance", Values.Length, FormattableString.Invariant($"{Math.Max(UsualClosing, makeUp.WidestSideMm):0.###} mm")),
        section.States("to") ? section.Take<int>("to", Values.Whole) : null);
}
