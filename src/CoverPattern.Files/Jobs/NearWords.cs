using System;
using System.Collections.Generic;
using System.Linq;

namespace CoverPattern.Files.Jobs;

/// <summary>Finds what somebody probably meant.</summary>
internal static class NearWords
{
    private const int LongestWord = 64;

    /// <summary>The known word nearest to what was said, capitals aside; null when none is near: more than a third of its letters would change.</summary>
    internal static string? Nearest(string said, IEnumerable<string> known)
    {
        if (said.Length > LongestWord)
        {
            return null;
        }

        return known
            .Select(word => (Word: word, Steps: Distance(said.ToUpperInvariant(), word.ToUpperInvariant())))
            .Where(pair => pair.Steps <= Math.Max(1, pair.Word.Length / 3))
            .OrderBy(pair => pair.Steps)
            .ThenBy(pair => pair.Word, StringComparer.Ordinal)
            .Select(pair => pair.Word)
            .FirstOrDefault();
    }

    /// <summary>Letters to add, drop, change or swap with a neighbour, no letter twice.</summary>
    private static int Distance(string from, string to)
    {
        var steps = new int[from.Length + 1, to.Length + 1];
        for (var i = 0; i <= from.Length; i++)
        {
            for (var j = 0; j <= to.Length; j++)
            {
                steps[i, j] = i == 0 || j == 0 ? i + j : StepsTo(steps, from, to, (i, j));
            }
        }

        return steps[from.Length, to.Length];
    }

    private static int StepsTo(int[,] steps, string from, string to, (int I, int J) at)
    {
        var (i, j) = at;
        var change = from[i - 1] == to[j - 1] ? 0 : 1;
        var least = Math.Min(Math.Min(steps[i - 1, j], steps[i, j - 1]) + 1, steps[i - 1, j - 1] + change);
        var swapped = i > 1 && j > 1 && from[i - 1] == to[j - 2] && from[i - 2] == to[j - 1];
        return swapped ? Math.Min(least, steps[i - 2, j - 2] + 1) : least;
    }
}
