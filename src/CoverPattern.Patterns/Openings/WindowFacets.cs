using System;
using System.Collections.Generic;
using System.Linq;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Openings;

/// <summary>Finds the facets that an entry of windows names.</summary>
internal static class WindowFacets
{
    /// <summary>Indexes of the facets; what is unknown becomes a fault.</summary>
    internal static IEnumerable<int> Find(WindowWish wish, int entry, Frame frame, List<Fault> faults) =>
        wish.Rows is { } rows ? InRows(rows, entry, frame, faults) : [.. wish.Facets.Select((label, i) => Named(label, (entry, i), frame, faults)).Where(face => face >= 0)];

    private static int[] InRows(RowRange rows, int entry, Frame frame, List<Fault> faults)
    {
        var top = frame.Facets.Max(facet => facet.Row);
        if (rows.Last > top)
        {
            faults.Add(new Fault(Place(entry, "rows"), rows.ToString(), FormattableString.Invariant($"rows 1 to {top}, counted from the deck up")));
            return [];
        }

        return [.. Enumerable.Range(0, frame.Facets.Length).Where(i => frame.Facets[i].Row >= rows.First && frame.Facets[i].Row <= rows.Last)];
    }

    private static int Named(string label, (int Entry, int Index) at, Frame frame, List<Fault> faults)
    {
        var face = Enumerable.Range(0, frame.Facets.Length).Where(i => string.Equals(frame.Facets[i].Label, label, StringComparison.Ordinal)).DefaultIfEmpty(-1).First();
        if (face < 0)
        {
            var skirt = label.EndsWith('k') ? "; windows do not go into skirt faces" : string.Empty;
            faults.Add(new Fault(
                FormattableString.Invariant($"{Place(at.Entry, "facets")}[{at.Index}]"),
                $"\"{label}\"",
                $"the label of a facet, \"{frame.Facets[0].Label}\" to \"{frame.Facets[^1].Label}\"{skirt}"));
        }

        return face;
    }

    internal static string Place(int entry, string key) => FormattableString.Invariant($"windows[{entry}].{key}");
}
