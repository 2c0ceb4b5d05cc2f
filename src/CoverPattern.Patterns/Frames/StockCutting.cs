using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;

namespace CoverPattern.Patterns.Frames;

/// <summary>Cuts the struts of a frame from bars of stock.</summary>
/// <remarks>
/// k cuts fit a bar when their lengths, each with one kerf, are not more than bar and kerf together: the last cut may end with the bar.
/// Two ways are gone and the one with fewer bars is taken: longest first, each from the first bar with room (at most 11/9 of the
/// fewest bars and one more; first fit decreasing, from memory), and bar by bar with the least rest. How few bars there could
/// be is told by <see cref="FewestBars"/>.
/// </remarks>
public static class StockCutting
{
    // Lengths alike to a thousandth of a millimetre are one length: they differ by rounding.
    private const int Decimals = 3;

    // Sums are kept in half millimetres, rounded up: finer than a saw cuts.
    private const double Step = 0.5;

    // With more unlike lengths, such as on a measured frame, bars are filled longest first only.
    private const int MostLengths = 40;

    /// <summary>Cuts all struts.</summary>
    /// <param name="frame">Its struts, hub centre to hub centre.</param>
    /// <param name="cutOffMm">What each strut is shorter than from hub centre to hub centre; negative when tubes reach beyond, millimetres.</param>
    /// <param name="barMm">Length of a bar, millimetres.</param>
    /// <param name="kerfMm">What the saw takes at a cut, millimetres.</param>
    /// <returns>Null when a strut is longer than a bar, or nothing is left of one.</returns>
    public static ImmutableArray<StockBar>? Cut(Frame frame, double cutOffMm, double barMm, double kerfMm)
    {
        var cuts = Cuts(frame, cutOffMm);
        if (cuts.Any(cut => cut.Length > barMm || cut.Length <= 0))
        {
            return null;
        }

        var first = FirstFit(cuts, barMm, kerfMm);
        if (cuts.Distinct().Count() > MostLengths || first.Length == FewestBars(frame, cutOffMm, barMm, kerfMm))
        {
            return first;
        }

        var full = FullestFirst(cuts, barMm, kerfMm);
        return full.Length < first.Length ? full : first;
    }

    /// <summary>No cutting takes fewer bars than this.</summary>
    /// <inheritdoc cref="Cut"/>
    /// <returns>The larger of two bounds: all lengths and kerfs over the bar; and for each k the struts of which no k + 1 fit a bar, over k.</returns>
    public static int FewestBars(Frame frame, double cutOffMm, double barMm, double kerfMm)
    {
        var sizes = Cuts(frame, cutOffMm).Select(cut => cut.Length + kerfMm).ToArray();
        var room = barMm + kerfMm;
        var bySize = Enumerable.Range(1, sizes.Length).Max(k => (int)Math.Ceiling((double)sizes.Count(size => (k + 1) * size > room) / k));
        return Math.Max((int)Math.Ceiling((sizes.Sum() / room) - 1e-9), bySize);
    }

    private static (string Class, double Length)[] Cuts(Frame frame, double cutOffMm)
    {
        ArgumentNullException.ThrowIfNull(frame);
        return [.. frame.Struts.OrderByDescending(strut => strut.LengthMm).ThenBy(strut => strut.Class, StringComparer.Ordinal).Select(strut => (strut.Class, Math.Round(strut.LengthMm - cutOffMm, Decimals)))];
    }

    private static ImmutableArray<StockBar> FirstFit((string Class, double Length)[] cuts, double barMm, double kerfMm)
    {
        var (bars, rests) = (new List<List<string>>(), new List<double>());
        foreach (var (name, length) in cuts)
        {
            var bar = rests.FindIndex(rest => rest >= length);
            if (bar < 0)
            {
                bar = bars.Count;
                bars.Add([]);
                rests.Add(barMm);
            }

            bars[bar].Add(name);
            rests[bar] = Math.Max(0, rests[bar] - length - kerfMm);
        }

        return [.. bars.Zip(rests, (classes, rest) => new StockBar([.. classes], rest))];
    }

    /// <summary>Bar by bar: the longest strut left, and beside it those that leave the least of the bar; the same again as long as there are struts for it.</summary>
    private static ImmutableArray<StockBar> FullestFirst((string Class, double Length)[] cuts, double barMm, double kerfMm)
    {
        var kinds = cuts.GroupBy(cut => cut).Select(group => (group.Key.Class, group.Key.Length, Left: group.Count())).ToArray();
        var bars = ImmutableArray.CreateBuilder<StockBar>();
        while (Array.FindIndex(kinds, kind => kind.Left > 0) is var longest and >= 0)
        {
            kinds[longest].Left--;
            var chosen = Fullest(kinds, barMm - kinds[longest].Length, kerfMm);
            kinds[longest].Left++;
            chosen[longest]++;
            var times = Enumerable.Range(0, kinds.Length).Where(kind => chosen[kind] > 0).Min(kind => kinds[kind].Left / chosen[kind]);
            var rest = barMm - kinds.Select((kind, i) => chosen[i] * (kind.Length + kerfMm)).Sum();
            var bar = new StockBar([.. kinds.SelectMany((kind, i) => Enumerable.Repeat(kind.Class, chosen[i]))], Math.Max(0, rest));
            bars.AddRange(Enumerable.Repeat(bar, times));
            for (var kind = 0; kind < kinds.Length; kind++)
            {
                kinds[kind].Left -= times * chosen[kind];
            }
        }

        return bars.ToImmutable();
    }

    /// <summary>How many of each kind fill a room best, each after a kerf: for every sum that can be filled the kind added last, by dynamic programming.</summary>
    private static int[] Fullest((string Class, double Length, int Left)[] kinds, double room, double kerfMm)
    {
        var most = Math.Max(0, (int)Math.Floor(room / Step));
        var added = Enumerable.Repeat(-1, most + 1).ToArray();
        int SizeOf(int kind) => (int)Math.Ceiling((kinds[kind].Length + kerfMm) / Step);
        for (var kind = 0; kind < kinds.Length; kind++)
        {
            var size = SizeOf(kind);
            for (var copy = Math.Min(kinds[kind].Left, most / size); copy > 0; copy--)
            {
                // Downward, so that each copy stands in a sum once.
                for (var filled = most; filled >= size; filled--)
                {
                    if (added[filled] < 0 && (filled == size || added[filled - size] >= 0))
                    {
                        added[filled] = kind;
                    }
                }
            }
        }

        var chosen = new int[kinds.Length];
        for (var filled = Array.FindLastIndex(added, kind => kind >= 0); filled > 0; filled -= SizeOf(added[filled]))
        {
            chosen[added[filled]]++;
        }

        return chosen;
    }
}
