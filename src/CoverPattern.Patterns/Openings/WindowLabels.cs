using System.Collections.Generic;
using System.Linq;

namespace CoverPattern.Patterns.Openings;

/// <summary>Lists windows shortly.</summary>
public static class WindowLabels
{
    // More labels than this are not listed one by one.
    private const int MostListed = 12;

    /// <summary>Labels of windows in words, such as "W1.07, W1.08".</summary>
    public static string List(IEnumerable<LaidWindow> windows)
    {
        var labels = windows.Select(window => window.Label).ToArray();
        return string.Join(", ", labels.Take(MostListed)) + (labels.Length > MostListed ? ", ..." : string.Empty);
    }
}
