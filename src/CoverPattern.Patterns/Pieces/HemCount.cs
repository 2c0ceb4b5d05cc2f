using System;
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
    /// <summary>Counts the hem of a cut-up shell.</summary>
    /// <param name="hem">What was wished.</param>
    /// <param name="cut">The shell.</param>
    public static HemCount Of(HemWish hem, Subdivision cut)
    {
        ArgumentNullException.ThrowIfNull(hem);
        ArgumentNullException.ThrowIfNull(cut);

        var lengths = cut.Arcs.Where(arc => arc.Role == EdgeRole.Hem).Select(arc => arc.LengthMm).ToArray();
        double Along(HemKind kind, double without = 0) => hem.Kind == kind ? lengths.Sum(length => Math.Max(0, length - without)) : 0;
        return new HemCount(
            hem.Fixings is { } fixings ? lengths.Sum(length => HemMarks.Bays(length, fixings)) : 0,
            Along(HemKind.Webbing),
            Along(HemKind.Sleeve, 2 * (hem.Gap?.Millimetres ?? 0)),
            Along(HemKind.Strip));
    }
}
