using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Jobs;

/// <summary>Reads the cloths of a job.</summary>
internal static class ClothReader
{
    internal static ImmutableArray<Cloth> Read(ImmutableArray<JobSection> sections, JobNotes notes)
    {
        var placeBySameness = new Dictionary<string, string>(StringComparer.Ordinal);
        var cloths = ImmutableArray.CreateBuilder<Cloth>(sections.Length);
        foreach (var section in sections)
        {
            var cloth = Read(section, notes);
            if (cloth.Name.Length > 0 && !placeBySameness.TryAdd(ClothNames.Sameness(cloth.Name), section.PlaceOf("name")))
            {
                notes.Refuse(
                    section.PlaceOf("name"),
                    $"\"{cloth.Name}\", as at {placeBySameness[ClothNames.Sameness(cloth.Name)]}",
                    "a name of its own; capitals do not tell names apart, nor do spaces, dashes and underscores");
            }

            cloths.Add(cloth);
        }

        return cloths.ToImmutable();
    }

    private static Cloth Read(JobSection section, JobNotes notes)
    {
        var cloth = new Cloth(
            section.Take<string>("name", Values.ClothName) ?? "",
            section.Take<Measure>("rollWidth", Values.Length),
            section.Take<Measure>("selvedge", Values.Length),
            section.Take<Measure>("safetyStrip", Values.Length),
            section.States("mass") ? section.Take<double>("mass", Values.Mass) : null,
            section.Take<Nap>("nap", Values.Word),
            section.Take<string>("face", Values.Word) is not "reversible")
        {
            Thickness = section.States("thickness") ? section.Take<Measure>("thickness", Values.Length) : null,
            ServiceTemperature = section.States("serviceTemperature") ? section.Take<int>("serviceTemperature", Values.Whole) : null,
            Weld = section.Take<string>("weld", Values.ClothName),
            Rolls = RollReader.Read(section, notes),
        };
        if (notes.AreClean(section.PlaceOf("rollWidth"), section.PlaceOf("selvedge"), section.PlaceOf("safetyStrip"))
            && section.States("rollWidth")
            && cloth.UsableWidth <= 0)
        {
            notes.Refuse(
                section.PlaceOf("rollWidth"),
                FormattableString.Invariant($"{cloth.RollWidth.Typed}, which leaves {cloth.UsableWidth:0.###} mm to use"),
                FormattableString.Invariant($"more than selvedge and safety strip of both sides, {cloth.RollWidth.Millimetres - cloth.UsableWidth:0.###} mm"));
        }

        return cloth;
    }
}
