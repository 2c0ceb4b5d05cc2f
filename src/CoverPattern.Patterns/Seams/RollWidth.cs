using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Seams;

/// <summary>Tells whether a panel can lie on the roll at all, before it is known what corners add.</summary>
internal sealed class RollWidth
{
    private readonly StrutTable struts;
    private readonly double allowances;
    private readonly bool turnsFreely;

    internal RollWidth(Job job, StrutTable struts)
    {
        this.struts = struts;
        Usable = job.Cloths[0].UsableWidth;
        // The least that any two seams add: no piece that fits is refused here; what is still too wide the lay refuses.
        allowances = 2 * Math.Min(job.Seam.MakeUp.OverMm, job.Seam.MakeUp.UnderMm);
        turnsFreely = job.Lay.Turns == TurnRule.Free && job.Cloths[0].Nap == Nap.None;
    }

    /// <summary>Width on which pieces may lie, millimetres.</summary>
    internal double Usable { get; }

    /// <summary>Width across the roll that the widest of some panels needs, seams included, millimetres; they lie with the long side along it.</summary>
    internal double Needed(IEnumerable<ImmutableArray<int>> panels, IReadOnlySet<int> slits) => panels.Max(facets => WidthOf(facets, slits)) + allowances;

    private double WidthOf(ImmutableArray<int> facets, IReadOnlySet<int> slits)
    {
        // A single facet keeps its ring edge along the roll, unless it may turn.
        if (facets.Length == 1 && !turnsFreely)
        {
            var chart = struts.Shell.Faces[facets[0]].Chart;
            return chart.Max(corner => corner.Y) - chart.Min(corner => corner.Y);
        }

        var flat = FlatPanel.Lay(struts.Shell, facets, slits);
        return flat.Ring.IsEmpty ? double.PositiveInfinity : LeastBox.Round(flat.Ring).Width;
    }
}
