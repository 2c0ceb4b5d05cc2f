using System;
using System.Collections.Generic;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Shells;

/// <summary>Refuses faces that are too large to be drawn exactly.</summary>
/// <remarks>The grid holds coordinates up to 131 m (<see cref="Grid"/>); what is cut wider than its face, allowances and skirt, must fit as well.</remarks>
public static class FacetReach
{
    /// <summary>Longest side of a face or a panel, millimetres; as long as the longest band that a job may wish.</summary>
    public const double MostMm = 100_000;

    /// <summary>One fault for the largest face that is too large.</summary>
    /// <param name="shell">The surface.</param>
    public static IEnumerable<Fault> Faults(Shell shell)
    {
        ArgumentNullException.ThrowIfNull(shell);
        var largest = shell.Faces.MaxBy(face => Reach(face))!;
        if (Reach(largest) > MostMm)
        {
            yield return new Fault(
                "frame",
                FormattableString.Invariant($"facet {largest.Label}, {Reach(largest) / 1000:0.0} m long on the cover"),
                FormattableString.Invariant($"facets of at most {MostMm / 1000:0} m; look at the unit, or divide the frame into more facets"));
        }
    }

    private static double Reach(ShellFace face) => Math.Max(Rings.Bounds(face.Chart).Width, Rings.Bounds(face.Chart).Height);
}
