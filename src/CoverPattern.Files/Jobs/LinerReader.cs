using System.Collections.Immutable;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Jobs;

/// <summary>Reads liner and insulation.</summary>
internal static class LinerReader
{
    internal static LinerWish Read(JobSection section, ImmutableArray<Cloth> cloths, JobNotes notes) => new(
        WindowReader.Cloth("cloth", section, cloths, notes) ?? "",
        section.Take<Measure>("gap", Values.Length),
        section.Take<Measure>("hem", Values.Length))
    {
        RoofRow = section.States("roofRow") ? section.Take<int>("roofRow", Values.Whole) : null,
        Openings = section.States("openings") ? section.Take<ImmutableArray<string>>("openings", Values.Labels) is { IsDefault: false } labels ? labels : [] : null,
        Margin = section.Take<Measure>("margin", Values.Length),
    };

    internal static InsulationWish ReadInsulation(JobSection section, ImmutableArray<Cloth> cloths, JobNotes notes) => new(
        WindowReader.Cloth("cloth", section, cloths, notes) ?? "",
        section.Take<Measure>("tuck", Values.Length));
}
