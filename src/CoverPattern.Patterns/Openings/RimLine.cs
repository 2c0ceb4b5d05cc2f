using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Openings;

/// <summary>A rim laid out flat: the faces it runs over one beside the other, so that every length and every bend is that of the cloth.</summary>
/// <remarks>Round a hub it does not come back to its beginning; its lengths and bends are true all the same.</remarks>
public sealed class RimLine
{
    // What bends less is no bend: rounding; radians.
    private const double NoBend = 1e-7;

    // Places nearer than this along the rim are one: rounding; millimetres.
    private const double Same = 1e-6;

    private RimLine(ImmutableArray<Point2> points, ImmutableArray<(int Stretch, int Index)> where, bool isClosed, double endBend)
    {
        (Points, Where, IsClosed) = (points, where, isClosed);
        ImmutableArray<double> steps = [.. points.Skip(1).Select((point, i) => Point2.Distance(points[i], point))];
        At = [0, .. steps.Select((_, i) => steps.Take(i + 1).Sum())];
        Bends = [endBend, .. Enumerable.Range(1, points.Length - 2).Select(i => Bend(points[i - 1], points[i], points[i + 1])), endBend];
    }

    /// <summary>Its points; of a closed rim the first stands at the end again, as it comes out there.</summary>
    internal ImmutableArray<Point2> Points { get; }

    /// <summary>For each point how far along the rim it lies, millimetres.</summary>
    internal ImmutableArray<double> At { get; }

    /// <summary>For each point by how much the rim turns there, counter-clockwise, radians; at the ends of an open one 0.</summary>
    internal ImmutableArray<double> Bends { get; }

    /// <summary>For each point its stretch and its index there; where the rim crosses a line, that of the later stretch.</summary>
    internal ImmutableArray<(int Stretch, int Index)> Where { get; }

    internal bool IsClosed { get; }

    /// <summary>Up for the opening, length 1; null where its rim leaves out the face in which it has its middle.</summary>
    internal Point2? Up { get; private init; }

    internal double Length => At[^1];

    /// <summary>Lays the rim of a region out.</summary>
    internal static RimLine Of(ClippedShell surface, Region region)
    {
        var (points, where) = (new List<Point2>(), new List<(int Stretch, int Index)>());
        var map = RigidMap.Identity;
        Point2? up = null;
        foreach (var (stretch, i) in region.Rim.Select((stretch, i) => (stretch, i)))
        {
            if (i > 0)
            {
                map = map.After(surface.Laying(stretch.Face, stretch.Enter!.Value.Edge, region.Rim[i - 1].Face));
                points.RemoveAt(points.Count - 1);
                where.RemoveAt(where.Count - 1);
            }

            up ??= stretch.Face == region.Centre.Face ? (map with { Shift = default }).Apply(region.Up) : null;
            points.AddRange(map.Apply(stretch.Points));
            where.AddRange(Enumerable.Range(0, stretch.Points.Length).Select(at => (i, at)));
        }

        if (region.ReachesHem)
        {
            return new RimLine([.. points], [.. where], isClosed: false, endBend: 0) { Up = up };
        }

        // The last stretch leads into the first: laid out once more, the first step tells the bend there.
        var first = region.Rim[0];
        var last = first.IsRing ? map : map.After(surface.Laying(first.Face, first.Enter!.Value.Edge, region.Rim[^1].Face));
        if (first.IsRing)
        {
            points.Add(points[0]);
            where.Add((0, 0));
        }

        var (begin, next) = (last.Apply(first.Points[0]), last.Apply(first.Points[1]));
        return new RimLine([.. points], [.. where], isClosed: true, Bend(points[^2], begin, next)) { Up = up };
    }

    /// <summary>A place along the rim brought to its first time round; what rounding puts at the very end is the beginning.</summary>
    internal double Wrapped(double along) => along % Length is var at && at < Length - Same ? at : 0;

    /// <summary>The point so far along the rim.</summary>
    internal Point2 PointAt(double along)
    {
        var i = Math.Clamp(At.Count(at => at < along) - 1, 0, Points.Length - 2);
        return Point2.Between(Points[i], Points[i + 1], (along - At[i]) / (At[i + 1] - At[i]));
    }

    /// <summary>The points from one place along the rim to another, both included.</summary>
    internal ImmutableArray<Point2> Between(double from, double to) =>
        [PointAt(from), .. Enumerable.Range(0, Points.Length).Where(i => At[i] > from + Same && At[i] < to - Same).Select(i => Points[i]), PointAt(to)];

    /// <summary>Radius of the tightest curve between two places, corners left out, millimetres; infinite where it is straight.</summary>
    /// <remarks>Where a projected rim crosses a line of the cover it bends a little: that is no curve, and less than a corner a zip goes round.</remarks>
    /// <param name="from">Along the rim, millimetres.</param>
    /// <param name="to">The same.</param>
    /// <param name="corner">What bends more is a corner, radians.</param>
    internal double TightestRadius(double from, double to, double corner)
    {
        // A stretch begins at a line; the last point is the first once more.
        int[] bent = [.. Enumerable.Range(0, Points.Length - 1).Where(i => Math.Abs(Bends[i]) > NoBend && Where[i].Index > 0)];
        var radius = double.PositiveInfinity;
        for (var k = 0; k < bent.Length; k++)
        {
            var i = bent[k];
            if (At[i] <= from || At[i] >= to || Math.Abs(Bends[i]) >= corner)
            {
                continue;
            }

            // A chord of a circle of radius r bends by its length over r at each end; longer steps beside it are straight parts.
            double[] beside = [.. new[] { k > 0 ? At[i] - At[bent[k - 1]] : double.NaN, k + 1 < bent.Length ? At[bent[k + 1]] - At[i] : double.NaN }.Where(double.IsFinite)];
            radius = Math.Min(radius, beside.Length == 0 ? radius : beside.Min() / Math.Abs(Bends[i]));
        }

        return radius;
    }

    private static double Bend(Point2 before, Point2 at, Point2 after) => Math.Atan2(Point2.Cross(at - before, after - at), Point2.Dot(at - before, after - at));
}
