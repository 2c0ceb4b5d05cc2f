using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Openings;

/// <summary>Draws straight lines of an opening's plane on a shell.</summary>
internal static class SurfaceLines
{
    /// <summary>A line, walked from its middle both ways; face by face from its beginning, with the edges it crosses; nothing with the stop where it cannot be walked.</summary>
    /// <param name="start">A walk at the opening's middle.</param>
    /// <param name="from">Where the line begins, in the opening's plane.</param>
    /// <param name="to">Where it ends.</param>
    /// <param name="purpose">What it shows.</param>
    internal static (ImmutableArray<SurfaceLine> Lines, ImmutableArray<int> Crossed, WalkStop Stop) Draw(SurfaceWalk start, Point2 from, Point2 to, string purpose)
    {
        var there = start.Anew();
        if (there.Go(Point2.Between(from, to, 0.5)) is var way and not WalkStop.Arrived)
        {
            return ([], [], way);
        }

        var (back, forward) = (there.Anew(), there.Anew());
        var (first, second) = (back.Go(from), forward.Go(to));
        if (first != WalkStop.Arrived || second != WalkStop.Arrived)
        {
            return ([], [], first != WalkStop.Arrived ? first : second);
        }

        // In the face of the middle both halves are one line.
        RimStretch[] halves = [.. back.Way.Skip(1).Reverse().Select(stretch => stretch.Reversed), new RimStretch(there.Face, [back.Way[0].Points[^1], forward.Way[0].Points[^1]], null, null), .. forward.Way.Skip(1)];
        return (
            [.. halves.Select(stretch => new SurfaceLine(stretch.Face, stretch.Points[0], stretch.Points[^1], purpose))],
            [.. back.Way.Concat(forward.Way).Select(stretch => stretch.Leave).OfType<LinePoint>().Select(point => point.Edge)],
            WalkStop.Arrived);
    }
}
