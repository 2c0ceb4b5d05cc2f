using System;
using System.Collections.Generic;
using System.Linq;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Pieces;

/// <summary>What the lower edge of one cover takes beside cloth and thread.</summary>
/// <param name="Fixings">Points at which it is held; 0 when none are asked for.</param>
/// <param name="WebbingMm">Webbing in it, without joints, millimetres; 0 in other hems.</param>
/// <param name="SleeveMm">Turned-up sleeve, gaps at hubs left out, millimetres; 0 in other hems.</param>
/// <param name="StripMm">Screw strip along it, millimetres; 0 in other hems.</param>
public sealed record HemCount(int Fixings, double WebbingMm, double SleeveMm, double StripMm)
{
    /// <summary>Raw edge in the gaps of a sleeve, to be bound, millimetres; 0 in other hems.</summary>
    public double BoundMm { get; init; }

    /// <summary>Lengths of binding that takes: one over each base hub, or over a whole piece of edge that is too short for a sleeve.</summary>
    public int Gaps { get; init; }

    /// <summary>Counts the hem of a cut-up shell.</summary>
    /// <param name="hem">What was wished.</param>
    /// <param name="cut">The shell.</param>
    public static HemCount Of(HemWish hem, Subdivision cut)
    {
        ArgumentNullException.ThrowIfNull(cut);
        return Of(hem, [.. cut.Arcs.Where(arc => arc.Role == EdgeRole.Hem).Select(arc => arc.LengthMm)]);
    }

    /// <summary>Counts a hem by the lengths of its pieces, from corner to corner.</summary>
    /// <param name="hem">What was wished.</param>
    /// <param name="lengths">Millimetres.</param>
    public static HemCount Of(HemWish hem, IReadOnlyCollection<double> lengths)
    {
        ArgumentNullException.ThrowIfNull(hem);

        // As the cut line has it: where hardly anything is left between two gaps nothing is turned up.
        var gap = hem.Gap?.Millimetres ?? 0;
        double Bare(double length) => gap == 0 ? 0 : length < (2 * gap) + CutLine.LeastTab ? length : 2 * gap;
        double Along(HemKind kind) => hem.Kind == kind ? lengths.Sum() : 0;
        return new HemCount(
            hem.Fixings is { } fixings ? lengths.Sum(length => HemMarks.Bays(length, fixings)) : 0,
            Along(HemKind.Webbing),
            hem.Kind == HemKind.Sleeve ? lengths.Sum(length => length - Bare(length)) : 0,
            Along(HemKind.Strip))
        {
            BoundMm = lengths.Sum(Bare),
            Gaps = gap > 0 ? lengths.Count : 0,
        };
    }
}
