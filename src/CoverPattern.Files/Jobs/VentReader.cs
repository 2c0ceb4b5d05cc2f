using System.Collections.Immutable;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Jobs;

/// <summary>Reads which openings are vents.</summary>
internal static class VentReader
{
    internal static VentWish Read(JobSection section, JobNotes notes)
    {
        var (hasInside, hasOutside) = (section.States("inside"), section.States("outside"));
        if (hasInside != hasOutside)
        {
            var missing = hasInside ? "outside" : "inside";
            notes.Refuse(section.PlaceOf(missing), "nothing", "required with the other: " + JobKeys.Find("vents." + missing)!.Allowed);
        }

        var (inside, outside) = (hasInside ? section.Take<int>("inside", Values.Whole) : 0, hasOutside ? section.Take<int>("outside", Values.Whole) : 0);
        return new VentWish(Labels("low"), Labels("high"), section.Take<double>("meshOpen", Values.Ratio))
        {
            Celsius = hasInside && hasOutside ? (inside, outside) : null,
        };

        ImmutableArray<string> Labels(string key) => section.Take<ImmutableArray<string>>(key, Values.Labels) is { IsDefault: false } labels ? labels : [];
    }
}
