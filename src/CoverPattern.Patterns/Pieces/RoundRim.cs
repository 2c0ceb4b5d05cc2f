using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Draws holes and the ticks of round edges on the grid.</summary>
internal static class RoundRim
{
    // Length of a pen tick where the edge has no allowance to hold it (own choice: seen across a table), millimetres.
    private const double TickLength = 8;

    /// <summary>The hole of a pattern.</summary>
    /// <param name="cutout">The hole; its cloth is cut on the circle that is smaller by the allowance.</param>
    /// <param name="place">Where a point of the draft lies on the pattern, on the grid.</param>
    internal static Cutout Draw(DraftCutout cutout, Func<Point2, Point2> place)
    {
        var run = cutout.Run;
        var rim = cutout.IsRound ? Circles.Hole(place(cutout.Round.Centre), cutout.Round.Radius) : [.. cutout.Ring.Select(place)];
        var edge = new EdgeRun(
            0, 0, run.Class.Role, run.Class.Label, run.Class.MakeUp?.Name ?? string.Empty, run.Side, Rings.Perimeter(rim), run.Allowance);
        return new Cutout(cutout.Purpose, rim, cutout.IsRound ? Circles.Hole(place(cutout.Round.Centre), cutout.Round.Radius - run.Allowance) : Inside(rim, run.Allowance), edge);
    }

    /// <summary>Where the cloth of a hole that is no circle is cut.</summary>
    private static ImmutableArray<Point2> Inside(ImmutableArray<Point2> rim, double allowance) =>
        CutLine.Draw([.. rim.Select((corner, i) => new SewEdge(corner, rim[(i + 1) % rim.Length], EdgeRole.Rim, allowance))], default);

    /// <summary>The ticks of a round edge, in order along it.</summary>
    /// <param name="run">The edge.</param>
    /// <param name="index">Index of the run.</param>
    /// <param name="round">Its circle on the pattern.</param>
    /// <param name="ring">Its ring on the pattern: clockwise for a hole.</param>
    internal static ImmutableArray<Notch> Marks(DraftRun run, int index, RoundEdge round, ImmutableArray<Point2> ring) =>
        [.. round.Marks.Select(mark => Mark(run, index, (mark, round.Centre), ring)).OrderBy(notch => notch.AtMm)];

    private static Notch Mark(DraftRun run, int index, (Point2 Direction, Point2 Centre) mark, ImmutableArray<Point2> ring)
    {
        var isHole = Rings.SignedArea(ring) < 0;
        var (at, on) = Along(ring, mark.Direction, isHole);
        var outward = isHole ? -1 * mark.Direction : mark.Direction;
        var outer = on + (run.Allowance * outward);
        var depth = run.Allowance > 0 ? Math.Min(TickLength, run.Allowance) : TickLength;
        return new Notch(index, at, NotchForm.Tick, Grid.Snap(on), Grid.Snap(outer), Grid.Snap(outer - (depth * outward)));
    }

    /// <summary>Where a direction from the centre meets a ring of even steps that begins on +x.</summary>
    private static (double At, Point2 On) Along(ImmutableArray<Point2> ring, Point2 direction, bool isClockwise)
    {
        var angle = Math.Atan2(isClockwise ? -direction.Y : direction.Y, direction.X);
        var steps = (angle < 0 ? angle + (2 * Math.PI) : angle) / (2 * Math.PI) * ring.Length;
        var whole = (int)Math.Floor(steps);
        var (from, to) = (ring[whole % ring.Length], ring[(whole + 1) % ring.Length]);
        var before = Enumerable.Range(0, whole).Sum(i => Point2.Distance(ring[i], ring[(i + 1) % ring.Length]));
        return (before + ((steps - whole) * Point2.Distance(from, to)), Point2.Between(from, to, steps - whole));
    }
}
