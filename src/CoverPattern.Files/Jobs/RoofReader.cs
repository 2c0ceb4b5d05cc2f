using System.Collections.Immutable;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Jobs;

/// <summary>Reads the roof that comes off.</summary>
internal static class RoofReader
{
    internal static RoofWish Read(JobSection section, ImmutableArray<Cloth> cloths, JobNotes notes)
    {
        if (section.States("row") == section.States("facets") && !section.IsMissed)
        {
            notes.Refuse(section.Place, section.States("row") ? "row and facets" : "neither row nor facets", "one of them: \"row\": 3 or \"facets\": [\"F4.01\"]");
        }

        var wish = new RoofWish(
            section.Take<Measure>("flap", Values.Length),
            section.Take<Measure>("tabs", Values.Length),
            section.Take<Measure>("hookLoop", Values.Length))
        {
            Row = section.States("row") ? section.Take<int>("row", Values.Whole) : null,
            Facets = section.States("facets") && section.Take<ImmutableArray<string>>("facets", Values.Labels) is { IsDefault: false } labels ? labels : [],
            Screen = section.States("screen") ? WindowReader.Cloth("screen", section, cloths, notes) : null,
            HasLoops = section.Take<bool>("loops", Values.Flag),
        };
        if (notes.AreClean(section.Place) && wish.HookLoop.Millimetres > wish.Flap.Millimetres / 2)
        {
            notes.Refuse(section.PlaceOf("hookLoop"), wish.HookLoop.Typed, $"at most half the flap, {wish.Flap.Typed}: the load tabs lie above it");
        }

        return wish;
    }
}
