using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Sorts lines into classes that are alike.</summary>
internal static class ArcSorter
{
    /// <summary>Two grid steps, millimetres. The nearest unlike lengths known (4V 7/12 at 25 mm) lie 0.0041 mm apart.</summary>
    internal const double SameLength = 0.002;

    // Lengths nearer than this are told apart by eye only through their marks, millimetres.
    private const double EasilyMixedUp = 10;

    /// <summary>The class of every line.</summary>
    internal static ImmutableArray<ArcClass> Sort(ImmutableArray<ClassedLine> arcs)
    {
        var order = Enumerable.Range(0, arcs.Length)
            .OrderBy(i => arcs[i].Role).ThenBy(i => arcs[i].MakeUp?.Name, StringComparer.Ordinal).ThenBy(i => arcs[i].LengthMm).ThenBy(i => i);
        var classes = new List<ArcClass>();
        var byArc = new ArcClass[arcs.Length];
        foreach (var arc in order)
        {
            if (classes.Count == 0 || !Belongs(arcs[arc], classes[^1]))
            {
                classes.Add(Open(arcs[arc], classes));
            }

            byArc[arc] = classes[^1];
        }

        return [.. byArc];
    }

    private static bool Belongs(ClassedLine arc, ArcClass last) =>
        arc.Role == last.Role && arc.MakeUp == last.MakeUp && arc.LengthMm - last.LengthMm <= SameLength;

    private static ArcClass Open(ClassedLine arc, List<ArcClass> classes)
    {
        var near = classes
            .Where(other => other.Role == arc.Role && arc.LengthMm - other.LengthMm < EasilyMixedUp)
            .Select(other => other.MarkCode)
            .ToArray();
        var label = "c" + (classes.Count + 1).ToString("D2", CultureInfo.InvariantCulture);
        return new ArcClass(label, arc.Role, arc.MakeUp, arc.LengthMm, Enumerable.Range(0, near.Length + 1).First(code => !near.Contains(code)));
    }
}
