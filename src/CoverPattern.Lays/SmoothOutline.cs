using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Lays;

/// <summary>Outlines with curved parts made simpler, for the search alone: always outward, so that what holds for the outline holds for the piece.</summary>
/// <remarks>
/// An inside corner is left out: the outline grows by the triangle there. An edge between two outside corners is left out and its
/// neighbours prolonged until they meet. What grows least goes first (own construction).
/// </remarks>
internal static class SmoothOutline
{
    // The outline grows by this at most at one place, millimetres: cloth that the search gives away.
    private const double MostGrowth = 3;

    // A prolonged corner is put on the grid outside of where the lines meet by this, millimetres.
    private const double Rounding = 0.004;

    /// <summary>A ring on the grid that holds the given one; the same when nothing may be left out.</summary>
    /// <param name="ring">On the grid, counter-clockwise.</param>
    /// <param name="most">Corners at which it is simple enough.</param>
    public static ImmutableArray<Point2> Around(ImmutableArray<Point2> ring, int most) =>
        Simpler(ring, most) is var smooth && ring.All(corner => ExactPredicates.Locate(Rings.ToSteps(smooth), Grid.ToSteps(corner)) >= 0) ? smooth : ring;

    /// <summary>A hole on the grid inside the given one; the same when nothing may be left out.</summary>
    /// <param name="hole">On the grid, clockwise, so that the cloth is on its left as it is on an outline's.</param>
    /// <param name="most">Corners at which it is simple enough.</param>
    public static ImmutableArray<Point2> Within(ImmutableArray<Point2> hole, int most) =>
        Simpler(hole, most) is var smooth && hole.All(corner => ExactPredicates.Locate(Rings.ToSteps(smooth), Grid.ToSteps(corner)) <= 0) ? smooth : hole;

    /// <summary>The ring with what grows the cloth least left out; the same when it would touch itself.</summary>
    private static ImmutableArray<Point2> Simpler(ImmutableArray<Point2> ring, int most)
    {
        var corners = ring.ToList();
        while (corners.Count > most)
        {
            var (growth, at) = Enumerable.Range(0, corners.Count).Select(i => (Growth(corners, i), i)).Min();
            if (growth > MostGrowth)
            {
                break;
            }

            LeaveOut(corners, at);
        }

        var smooth = Grid.Snap(corners);
        return ExactPredicates.IsSimple(Rings.ToSteps(smooth)) ? smooth : ring;
    }

    /// <summary>By how much the outline grows when an inside corner, or the edge behind an outside corner, is left out; infinite where that cannot be.</summary>
    private static double Growth(List<Point2> corners, int i)
    {
        var (before, corner, after, next) = (At(corners, i - 1), corners[i], At(corners, i + 1), At(corners, i + 2));
        if (Bend(before, corner, after) <= 0)
        {
            return Lines.Distance(before, after, corner);
        }

        // Prolonged edges must turn by less than a quarter together, or they meet far away or never.
        return Bend(corner, after, next) > 0 && Point2.Dot(corner - before, next - after) > 0
            ? Lines.Distance(corner, after, Lines.Meet(corner, corner - before, after, next - after)) + Rounding
            : double.PositiveInfinity;
    }

    private static void LeaveOut(List<Point2> corners, int i)
    {
        var (before, corner, after, next) = (At(corners, i - 1), corners[i], At(corners, i + 1), At(corners, i + 2));
        if (Bend(before, corner, after) > 0)
        {
            var outward = -1 * (after - corner).Unit().QuarterTurned();
            corners[i] = Lines.Meet(corner, corner - before, after, next - after) + (Rounding * outward);
            corners.RemoveAt((i + 1) % corners.Count);
        }
        else
        {
            corners.RemoveAt(i);
        }
    }

    private static Point2 At(List<Point2> corners, int i) => corners[(i + corners.Count) % corners.Count];

    private static double Bend(Point2 before, Point2 corner, Point2 after) => Point2.Cross(corner - before, after - corner);
}
