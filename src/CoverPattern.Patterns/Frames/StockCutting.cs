using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;

namespace CoverPattern.Patterns.Frames;

/// <summary>Cuts the struts of a frame from bars of stock.</summary>
public static class StockCutting
{
    /// <summary>Longest first, each from the first bar that still has room: at most 11/9 of the fewest bars and one more (first fit decreasing; from memory).</summary>
    /// <param name="frame">Its struts, hub centre to hub centre.</param>
    /// <param name="cutOffMm">What each strut is shorter than from hub centre to hub centre; negative when tubes reach beyond, millimetres.</param>
    /// <param name="barMm">Length of a bar, millimetres.</param>
    /// <param name="kerfMm">What the saw takes at a cut, millimetres.</param>
    /// <returns>Null when a strut is longer than a bar.</returns>
    public static ImmutableArray<StockBar>? Cut(Frame frame, double cutOffMm, double barMm, double kerfMm)
    {
        ArgumentNullException.ThrowIfNull(frame);
        var (bars, rests) = (new List<List<string>>(), new List<double>());
        foreach (var strut in frame.Struts.OrderByDescending(strut => strut.LengthMm).ThenBy(strut => strut.Class, StringComparer.Ordinal))
        {
            var length = strut.LengthMm - cutOffMm;
            if (length > barMm)
            {
                return null;
            }

            var bar = rests.FindIndex(rest => rest >= length);
            if (bar < 0)
            {
                bar = bars.Count;
                bars.Add([]);
                rests.Add(barMm);
            }

            bars[bar].Add(strut.Class);
            rests[bar] = Math.Max(0, rests[bar] - length - kerfMm);
        }

        return [.. bars.Zip(rests, (classes, rest) => new StockBar([.. classes], rest))];
    }
}
