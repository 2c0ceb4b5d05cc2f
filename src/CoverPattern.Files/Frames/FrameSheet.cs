using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using System.Text;
using CoverPattern.Patterns.Frames;

namespace CoverPattern.Files.Frames;

/// <summary>The paper for whoever builds the frame: struts, stock, hubs, order of erection; plain text, cells apart by tabs.</summary>
public static class FrameSheet
{
    private const double Degrees = 180 / Math.PI;

    /// <summary>Writes the paper.</summary>
    /// <param name="frame">The frame.</param>
    /// <param name="stock">Bars that the struts are cut from; empty where no bar was named.</param>
    /// <param name="barMm">Length of a bar, millimetres; 0 where none was named.</param>
    public static string Write(Frame frame, ImmutableArray<StockBar> stock, double barMm)
    {
        ArgumentNullException.ThrowIfNull(frame);
        var text = new StringBuilder();
        WriteStruts(text, frame);
        WriteStock(text, stock, barMm);
        WriteHubs(text, frame);
        WriteErection(text, frame);
        return text.ToString();
    }

    private static void WriteStruts(StringBuilder text, Frame frame)
    {
        var bends = StrutEnds.Bends(frame);
        text.Append("STRUTS, hub centre to hub centre\nclass\tlength mm\tcount\tend bend degrees\n");
        foreach (var own in frame.Classes)
        {
            var ground = frame.Base.Length;
            var ends = frame.Struts.Zip(bends).Where(pair => pair.First.Class == own.Label && Math.Abs(pair.First.LengthMm - own.LengthMm) < 1e-3)
                .SelectMany(pair => new[] { (Hub: pair.First.From, Bend: pair.Second.From), (Hub: pair.First.To, Bend: pair.Second.To) }).ToArray();
            var inside = ends.Where(end => end.Hub >= ground).DefaultIfEmpty(ends[0]).Select(end => end.Bend * Degrees).ToArray();
            text.Append(FormattableString.Invariant($"{own.Label}\t{own.LengthMm:0.0}\t{own.Count}\t{Range(inside)}\n"));
        }
    }

    private static string Range(double[] values) => values.Max() - values.Min() < 0.05
        ? FormattableString.Invariant($"{values.Average():0.0}")
        : FormattableString.Invariant($"{values.Min():0.0} to {values.Max():0.0}");

    private static void WriteStock(StringBuilder text, ImmutableArray<StockBar> stock, double barMm)
    {
        if (stock.IsEmpty)
        {
            return;
        }

        text.Append(FormattableString.Invariant($"\nSTOCK, {stock.Length} bars of {barMm:0} mm, {stock.Sum(bar => bar.RestMm) / (stock.Length * barMm) * 100:0.0} % left over\nbars\tcut\trest mm\n"));
        foreach (var alike in stock.GroupBy(bar => string.Join(" + ", bar.Classes), StringComparer.Ordinal).OrderByDescending(group => group.Count()).ThenBy(group => group.Key, StringComparer.Ordinal))
        {
            text.Append(FormattableString.Invariant($"{alike.Count()}\t{alike.Key}\t{alike.Min(bar => bar.RestMm):0}\n"));
        }
    }

    private static void WriteHubs(StringBuilder text, Frame frame)
    {
        var struts = frame.Struts.SelectMany(strut => new[] { strut.From, strut.To }).CountBy(hub => hub).ToDictionary(pair => pair.Key, pair => pair.Value);
        text.Append("\nHUBS, z = 0 at the lowest base hub centres, front on +x\nhub\tstruts\tx mm\ty mm\tz mm\tbase raise mm\n");
        foreach (var (hub, i) in frame.Hubs.Select((hub, i) => (hub, i)))
        {
            var raise = i < frame.Base.Length ? FormattableString.Invariant($"{hub.Position.Z:0.0}") : "";
            text.Append(FormattableString.Invariant($"{hub.Label}\t{struts[i]}\t{hub.Position.X:0.0}\t{hub.Position.Y:0.0}\t{hub.Position.Z:0.0}\t{raise}\n"));
        }
    }

    /// <summary>Ring by ring from the base up: the struts along a ring, then those that rise from it.</summary>
    private static void WriteErection(StringBuilder text, Frame frame)
    {
        text.Append("\nERECTION, from the base up\nstep\tstruts\n");
        var step = 1;
        foreach (var ring in frame.Hubs.Select(hub => hub.Ring).Distinct().Order())
        {
            var own = frame.Struts.Where(strut => Math.Min(frame.Hubs[strut.From].Ring, frame.Hubs[strut.To].Ring) == ring).ToArray();
            WriteStep(text, ref step, FormattableString.Invariant($"along ring {ring}"), frame, own.Where(strut => frame.Hubs[strut.From].Ring == frame.Hubs[strut.To].Ring));
            WriteStep(text, ref step, FormattableString.Invariant($"from ring {ring} up"), frame, own.Where(strut => frame.Hubs[strut.From].Ring != frame.Hubs[strut.To].Ring));
        }
    }

    private static void WriteStep(StringBuilder text, ref int step, string where, Frame frame, IEnumerable<Strut> struts)
    {
        var list = struts.Select(strut => $"{strut.Class} {frame.Hubs[strut.From].Label}-{frame.Hubs[strut.To].Label}").ToArray();
        if (list.Length > 0)
        {
            text.Append(FormattableString.Invariant($"{step++}\t{where}, {list.Length} struts: {string.Join(", ", list)}\n"));
        }
    }
}
