using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;

namespace CoverPattern.Files.Reports;

/// <summary>Lists labels shortly.</summary>
internal static class LabelRanges
{
    // Fewer labels than this are not worth a "to".
    private const int Least = 3;

    /// <summary>The labels in words, neighbours in a row drawn together, such as "F1.02, F2.01 to F2.09".</summary>
    /// <param name="labels">In order.</param>
    public static string List(IReadOnlyList<string> labels)
    {
        var runs = new List<List<string>>();
        foreach (var label in labels)
        {
            if (runs.Count > 0 && Follows(runs[^1][^1], label))
            {
                runs[^1].Add(label);
            }
            else
            {
                runs.Add([label]);
            }
        }

        return string.Join(", ", runs.SelectMany(run => run.Count < Least ? run : [run[0] + " to " + run[^1]]).ToImmutableArray());
    }

    private static bool Follows(string before, string label)
    {
        var (row, place) = Split(before);
        var (ownRow, ownPlace) = Split(label);
        return row == ownRow && place + 1 == ownPlace;
    }

    private static (string Row, int Place) Split(string label)
    {
        var stem = label.TrimEnd(['0', '1', '2', '3', '4', '5', '6', '7', '8', '9']);
        return int.TryParse(label.AsSpan(stem.Length), NumberStyles.None, CultureInfo.InvariantCulture, out var place)
            ? (stem, place)
            : (label, -1);
    }
}
