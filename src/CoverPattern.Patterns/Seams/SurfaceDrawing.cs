using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Openings;

namespace CoverPattern.Patterns.Seams;

/// <summary>Puts lines of the surface on the patches that have them.</summary>
public static class SurfaceDrawing
{
    /// <summary>The cut surface with lines drawn.</summary>
    /// <param name="cut">The surface cut up.</param>
    /// <param name="lines">The lines; a face that rims divide has several patches, of which the one that holds a line's middle gets it.</param>
    public static Subdivision On(Subdivision cut, ImmutableArray<SurfaceLine> lines)
    {
        ArgumentNullException.ThrowIfNull(cut);
        return cut with { Drawn = [.. cut.Drawn, .. lines.SelectMany(line => Drawn(cut, line))] };
    }

    private static IEnumerable<DrawnLine> Drawn(Subdivision cut, SurfaceLine line)
    {
        var middle = Grid.ToSteps(Point2.Between(line.From, line.To, 0.5));
        return Enumerable.Range(0, cut.Patches.Length).Where(i => cut.Patches[i].Face == line.Face && ExactPredicates.Locate(Rings.ToSteps(cut.Patches[i].Corners), middle) > 0)
            .Select(i => new DrawnLine(i, [line.From, line.To], line.Purpose) { Opening = line.Opening });
    }
}
