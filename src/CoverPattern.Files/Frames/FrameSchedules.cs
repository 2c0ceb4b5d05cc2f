using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Files.Reports;
using CoverPattern.Patterns.Frames;

namespace CoverPattern.Files.Frames;

/// <summary>What somebody needs to know who builds the frame, as tables: struts, stock, hubs, order of erection.</summary>
internal static class FrameSchedules
{
    private const double Degrees = 180 / Math.PI;

    // Bends printed to a tenth of a degree.
    private const double SameBend = 0.05;

    // Lengths nearer than this print alike, millimetres.
    private const double SameLength = 0.05;

    /// <summary>The tables, in the order of the paper.</summary>
    /// <param name="frame">The frame.</param>
    /// <param name="stock">Its cutting list; null for none.</param>
    /// <param name="ruler">How lengths are written.</param>
    /// <param name="cutOffMm">What tubes are shorter than from hub centre to hub centre, millimetres.</param>
    internal static ImmutableArray<ScheduleTable> Of(Frame frame, StockList? stock, Ruler ruler, double cutOffMm) =>
        [Struts(frame, ruler, cutOffMm), .. stock is null ? ImmutableArray<ScheduleTable>.Empty : [Stock(stock, ruler)], Hubs(frame, ruler), Erection(frame)];

    private static ScheduleTable Struts(Frame frame, Ruler ruler, double cutOffMm)
    {
        var bends = StrutEnds.Bends(frame);
        var ground = frame.Base.Length;
        string Bend(StrutClass own)
        {
            var ends = frame.Struts.Zip(bends).Where(pair => pair.First.Class == own.Label && pair.First.LengthMm >= own.ShortestMm - SameLength && pair.First.LengthMm <= own.LongestMm + SameLength)
                .SelectMany(pair => new[] { (Hub: pair.First.From, Bend: pair.Second.From), (Hub: pair.First.To, Bend: pair.Second.To) }).ToArray();

            // At a base hub the facets lie on one side only, so hubs above the base tell the bend where there are some.
            return Range([.. ends.Where(end => end.Hub >= ground).DefaultIfEmpty(ends[0]).Select(end => end.Bend * Degrees)], SameBend, value => Printed.Number(value, 1));
        }

        string Spread(StrutClass own, double less) => own.LongestMm - own.ShortestMm < SameLength
            ? ruler.Allowance(own.LengthMm - less)
            : $"{ruler.Allowance(own.ShortestMm - less)} to {ruler.Allowance(own.LongestMm - less)}";
        ImmutableArray<string> tube = cutOffMm > 0 ? ["hole to hole " + ruler.Unit] : [];
        return new ScheduleTable(
            "Struts, hub centre to hub centre",
            ["class", "length " + ruler.Unit, .. tube, "count", "end bend degrees"],
            [.. frame.Classes.Select(own => ImmutableArray.Create<string>([own.Label, Spread(own, 0), .. tube.Select(_ => Spread(own, cutOffMm)), Printed.Count(own.Count), Bend(own)]))]);
    }

    private static string Range(double[] values, double alike, Func<double, string> written) =>
        values.Max() - values.Min() < alike ? written(values.Average()) : $"{written(values.Min())} to {written(values.Max())}";

    private static ScheduleTable Stock(StockList stock, Ruler ruler)
    {
        var waste = stock.Bars.Sum(bar => bar.RestMm) / (stock.Bars.Length * stock.BarMm);
        var proof = stock.Fewest == stock.Bars.Length ? "no cutting takes fewer" : $"no cutting takes fewer than {Printed.Count(stock.Fewest)}";
        return new ScheduleTable(
            $"Stock, {Printed.Count(stock.Bars.Length)} bars of {ruler.WithUnit(stock.BarMm)}, {Printed.Number(100 * waste, 1)} % left over; {proof}",
            ["bars", "cut from each", "rest " + ruler.Unit],
            [
                .. stock.Bars.GroupBy(Cut, StringComparer.Ordinal)
                    .OrderByDescending(group => group.Count()).ThenBy(group => group.Key, StringComparer.Ordinal)
                    .Select(group => ImmutableArray.Create(Printed.Count(group.Count()), group.Key, ruler.Of(group.Min(bar => bar.RestMm)))),
            ]);
    }

    /// <summary>What is cut from a bar, such as "2 C + 1 A".</summary>
    private static string Cut(StockBar bar) => string.Join(" + ", bar.Classes.CountBy(name => name).Select(pair => $"{Printed.Count(pair.Value)} {pair.Key}"));

    private static ScheduleTable Hubs(Frame frame, Ruler ruler)
    {
        var struts = frame.Struts.SelectMany(strut => new[] { strut.From, strut.To }).CountBy(hub => hub).ToDictionary(pair => pair.Key, pair => pair.Value);
        return new ScheduleTable(
            "Hubs, z = 0 at the lowest base hub centres, front on +x",
            ["hub", "struts", "x " + ruler.Unit, "y " + ruler.Unit, "z " + ruler.Unit, "base raise " + ruler.Unit],
            [.. frame.Hubs.Select((hub, i) => ImmutableArray.Create(
                hub.Label, Printed.Count(struts[i]), ruler.Of(hub.Position.X), ruler.Of(hub.Position.Y), ruler.Of(hub.Position.Z), i < frame.Base.Length ? ruler.Of(hub.Position.Z) : ""))]);
    }

    /// <summary>Ring by ring from the base up: the struts along a ring, then those that rise from it.</summary>
    private static ScheduleTable Erection(Frame frame)
    {
        var steps = frame.Hubs.Select(hub => hub.Ring).Distinct().Order().SelectMany(ring =>
        {
            var own = frame.Struts.Where(strut => Math.Min(frame.Hubs[strut.From].Ring, frame.Hubs[strut.To].Ring) == ring).ToLookup(strut => frame.Hubs[strut.From].Ring == frame.Hubs[strut.To].Ring);
            return new[] { (Where: FormattableString.Invariant($"along ring {ring}"), Struts: own[true]), (Where: FormattableString.Invariant($"from ring {ring} up"), Struts: own[false]) };
        });
        return new ScheduleTable(
            "Erection, from the base up",
            ["step", "where", "struts"],
            [.. steps.Where(step => step.Struts.Any()).Select((step, i) => ImmutableArray.Create(
                Printed.Count(i + 1), $"{step.Where}, {Printed.Count(step.Struts.Count())} struts", string.Join(", ", Listed(frame, step.Struts))))]);
    }

    private static IEnumerable<string> Listed(Frame frame, IEnumerable<Strut> struts) =>
        struts.Select(strut => $"{strut.Class} {frame.Hubs[strut.From].Label}-{frame.Hubs[strut.To].Label}");
}
