using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Seams;

/// <summary>Finds the struts that a job names.</summary>
internal static class StrutWishes
{
    /// <summary>The edges named, without those that do not exist, of which a fault tells.</summary>
    internal static ImmutableArray<int> Find(StrutTable struts, string place, ImmutableArray<string> names, List<Fault> faults)
    {
        foreach (var name in names.Where(name => struts.EdgeNamed(name) < 0))
        {
            faults.Add(new Fault(place, $"\"{name}\"", $"a strut of this frame by its two hubs, such as \"{struts.NameOf(0)}\""));
        }

        return [.. names.Select(struts.EdgeNamed).Where(edge => edge >= 0).Distinct()];
    }

    /// <summary>Words for a list of struts as a job has it.</summary>
    internal static string Said(ImmutableArray<string> names, string nothing) =>
        names.IsEmpty ? nothing : string.Join(", ", names.Select(name => $"\"{name}\""));
}
