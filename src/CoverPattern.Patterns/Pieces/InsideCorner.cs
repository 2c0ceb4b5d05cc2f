using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Pieces;

/// <summary>A corner at which the sew line bends inward: the allowance must be clipped there to lie flat.</summary>
/// <param name="Run">Index of the run that begins at the corner.</param>
/// <param name="At">The corner.</param>
/// <param name="Outward">Across the allowance, in the middle between both edges, length 1.</param>
/// <param name="InsideDegrees">Angle inside the piece, more than 180 degrees.</param>
internal sealed record InsideCorner(int Run, Point2 At, Point2 Outward, double InsideDegrees)
{
    /// <summary>Purpose of the mark on the corner, about which the cloth turns under the needle.</summary>
    internal const string PivotPurpose = "pivot";

    /// <summary>Purpose of the line along which the allowance is clipped.</summary>
    internal const string ClipPurpose = "clip";

    // The clip ends this far from the sew line, millimetres; common practice, no source.
    private const double ClipShort = 2;

    // Rows and groups bend far less, a slit at a hub of the domes of 2V and more by 340 degrees and more; degrees.
    private const double SlitEnd = 300;

    // A flatter corner eases without a clip, degrees beyond 180; the program's own choice.
    private const double LeastBend = 5;

    /// <summary>Whether it is the end of a slit, whose two edges are sewn to each other: the slit itself is the clip.</summary>
    internal bool IsSlitEnd => InsideDegrees > SlitEnd;

    internal DrillMark Pivot => new(At, PivotPurpose);

    /// <summary>The inside corners of a pattern, between two edges of which one at least is a seam.</summary>
    /// <param name="pattern">Its sew line and runs are read.</param>
    internal static ImmutableArray<InsideCorner> Find(Pattern pattern)
    {
        var count = pattern.SewLine.Length;
        return
        [
            .. pattern.Runs.Select((run, i) => (Run: i, Before: pattern.Runs[(i + pattern.Runs.Length - 1) % pattern.Runs.Length], Corner: run.From, Role: run.Role))
                .Where(entry => entry.Role == EdgeRole.Seam || entry.Before.Role == EdgeRole.Seam)
                .Select(entry => Bend(entry.Run, pattern.SewLine[(entry.Corner + count - 1) % count], pattern.SewLine[entry.Corner], pattern.SewLine[(entry.Corner + 1) % count]))
                .Where(corner => corner.InsideDegrees > 180 + LeastBend),
        ];
    }

    /// <summary>The clip line from the cut line to 2 mm short of the sew line; none where the allowance is too narrow for one.</summary>
    /// <param name="cutLine">Ring round the piece.</param>
    internal IEnumerable<MarkLine> Clip(ImmutableArray<Point2> cutLine)
    {
        var reach = NotchReach.To(At, Outward, cutLine);
        if (!IsSlitEnd && reach > 2 * ClipShort && double.IsFinite(reach))
        {
            yield return new MarkLine([Grid.Snap(At + (reach * Outward)), Grid.Snap(At + (ClipShort * Outward))], ClipPurpose);
        }
    }

    /// <summary>The corner of a ring with cloth on its left; outside corners have less than 180 degrees.</summary>
    internal static InsideCorner Bend(int run, Point2 before, Point2 corner, Point2 after)
    {
        var (arriving, leaving) = ((corner - before).Unit(), (after - corner).Unit());
        var turn = Math.Atan2(Point2.Cross(arriving, leaving), Point2.Dot(arriving, leaving)) * 180 / Math.PI;
        var middle = arriving + leaving;
        return new InsideCorner(run, corner, -1 * middle.Unit().QuarterTurned(), 180 - turn);
    }
}
