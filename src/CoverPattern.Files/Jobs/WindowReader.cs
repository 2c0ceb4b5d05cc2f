using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Jobs;

/// <summary>Reads windows and what they keep clear.</summary>
internal static class WindowReader
{
    // Room between the edge of the pane and the outer stitching of the ring (own choice), millimetres.
    private const double StitchRoom = 5;

    internal static ImmutableArray<WindowWish> Read(ImmutableArray<JobSection> sections, ImmutableArray<Cloth> cloths, JobNotes notes) =>
        [.. sections.Select(section => Read(section, cloths, notes))];

    /// <summary>The clearances; where there are no openings nobody needs them, and nothing is assumed.</summary>
    internal static ClearanceWish ReadClearances(JobSection section, bool areNeeded) => areNeeded || JobKeys.In(section.Place).Any(key => section.States(key.Name))
        ? new(
            section.Take<Measure>("tube", Values.Length),
            section.Take<Measure>("hub", Values.Length),
            section.Take<Measure>("seam", Values.Length),
            section.Take<Measure>("opening", Values.Length),
            section.Take<Measure>("hem", Values.Length),
            section.Take<Measure>("tight", Values.Length))
        : ClearanceWish.Usual;

    private static WindowWish Read(JobSection section, ImmutableArray<Cloth> cloths, JobNotes notes)
    {
        if (section.States("facets") == section.States("rows") && !section.IsMissed)
        {
            notes.Refuse(section.Place, section.States("facets") ? "facets and rows" : "neither facets nor rows", "one of them: \"facets\": [\"F2.07\"] or \"rows\": \"2\"");
        }

        var wish = new WindowWish(
            section.States("facets") ? section.Take<ImmutableArray<string>>("facets", Values.Labels) : [],
            section.States("rows") ? section.Take<RowRange>("rows", Values.Rows) : null,
            section.Take<Measure>("aperture", Values.Length),
            section.Take<Measure>("ring", Values.Length),
            section.Take<Measure>("lap", Values.Length),
            section.Take<Measure>("turnUnder", Values.Length),
            Cloth("pane", section, cloths, notes) ?? "")
        {
            Screen = section.States("screen") ? Cloth("screen", section, cloths, notes) : null,
            Right = section.States("right") ? section.Take<Measure>("right", Values.SignedLength) : default,
            Up = section.States("up") ? section.Take<Measure>("up", Values.SignedLength) : default,
        };
        CheckSums(wish, section, notes);
        return wish;
    }

    /// <summary>The name of a cloth that the job has.</summary>
    internal static string? Cloth(string key, JobSection section, ImmutableArray<Cloth> cloths, JobNotes notes)
    {
        var name = section.Take<string>(key, Values.ClothName);
        if (name is not null && notes.AreClean(section.PlaceOf(key)) && notes.AreClean("cloths") && !cloths.Any(cloth => string.Equals(cloth.Name, name, StringComparison.Ordinal)))
        {
            notes.Refuse(section.PlaceOf(key), $"\"{name}\"", "the name of one of the cloths: " + string.Join(", ", cloths.Select(cloth => $"\"{cloth.Name}\"")));
        }

        return name;
    }

    private static void CheckSums(WindowWish wish, JobSection section, JobNotes notes)
    {
        if (!notes.AreClean(section.Place))
        {
            return;
        }

        if (wish.Rows is null && wish.Facets.IsEmpty)
        {
            notes.Refuse(section.PlaceOf("rows"), "\"rest\"", "rows such as \"2\" or \"1-3\"");
        }

        if (wish.Lap.Millimetres > wish.Ring.Millimetres - StitchRoom)
        {
            notes.Refuse(section.PlaceOf("lap"), wish.Lap.Typed, FormattableString.Invariant($"at least {StitchRoom:0} mm less than the ring, {wish.Ring.Typed}: the pane must lie inside the outer stitching"));
        }

        if (2 * wish.TurnUnder.Millimetres > Math.Min(wish.Ring.Millimetres, wish.ApertureRadius))
        {
            notes.Refuse(section.PlaceOf("turnUnder"), wish.TurnUnder.Typed, $"at most half the ring, {wish.Ring.Typed}, and a quarter of the aperture, {wish.Aperture.Typed}");
        }
    }
}
