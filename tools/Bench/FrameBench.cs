using System;
using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using System.Linq;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;

namespace Bench;

/// <summary>Frames from strut lengths: how long it takes to recognise the family and to solve for the hubs.</summary>
internal static class FrameBench
{
    public static int Run(ReadOnlySpan<string> words)
    {
        var rounds = words.Length > 0 ? int.Parse(words[0], CultureInfo.InvariantCulture) : 5;
        Console.WriteLine("frame\tround\tstruts\tfamily ms\tframe ms\tworst strut mm");
        foreach (var (frequency, rows) in new[] { (3, 5), (4, 7), (6, 10), (8, 13), (12, 19) })
        {
            for (var round = 1; round <= rounds; round++)
            {
                Time(frequency, rows, round);
            }
        }

        return 0;
    }

    /// <summary>Lengths cut to the millimetre, as a shop would, those of the very flat 12V to a tenth; the first round is a cold start.</summary>
    private static void Time(int frequency, int rows, int round)
    {
        var wish = new FrameWish(FrameFamily.Icosahedron, frequency, rows, "", FrameMeasure.Radius, new Measure(3657.6, ""));
        ImmutableArray<StrutLength> lengths = [.. FrameBuilder.Build(wish).Classes.Select(own => new StrutLength(own.Label, new Measure(Math.Round(own.LengthMm, frequency < 12 ? 0 : 1), "")))];
        wish = wish with { Struts = new StrutWish(lengths, []) };

        var clock = Stopwatch.StartNew();
        var best = StrutFamily.Rank(wish)[0].Wish;
        var family = clock.Elapsed.TotalMilliseconds;
        clock.Restart();
        var frame = StrutFrame.Build(best);
        Console.WriteLine(FormattableString.Invariant(
            $"{frequency}V {rows} rows\t{round}\t{frame.Struts.Length}\t{family:0}\t{clock.Elapsed.TotalMilliseconds:0}\t{StrutFrame.Residuals(frame).Values.Max():0.0E+0}"));
    }
}
