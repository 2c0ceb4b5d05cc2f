using System;
using System.Collections.Generic;
using System.Linq;
using CoverPattern.Files.Drawings;
using CoverPattern.Geometry;
using CoverPattern.Lays.Cutting;

namespace CoverPattern.Files.Plots;

/// <summary>Breaks the lines that drawings show broken, so that on the cloth nobody takes a fold for a sew line.</summary>
internal static class BrokenLines
{
    // Longer than on paper, for a pen is lifted at each (own choice), millimetres.
    private const double Drawn = 30;
    private const double Free = 15;

    /// <summary>The movements of a pen along one stroke: a fold's in equal dashes that begin and end where the fold does; any other as it is.</summary>
    /// <param name="stroke">The stroke.</param>
    internal static IEnumerable<Stroke> Of(Stroke stroke)
    {
        var length = stroke.Length;
        var count = (int)Math.Round((length + Free) / (Drawn + Free));
        if (stroke.Purpose != DrawingLayers.Fold.Purpose || stroke.Points.Length != 2 || count < 2)
        {
            return [stroke];
        }

        var period = (length + Free) / count / length;
        return Enumerable.Range(0, count).Select(i => stroke with
        {
            Points = [Along(stroke, i * period), Along(stroke, ((i + 1) * period) - (Free / length))],
        });
    }

    private static Point2 Along(Stroke stroke, double share) => Point2.Between(stroke.Start, stroke.End, share);
}
