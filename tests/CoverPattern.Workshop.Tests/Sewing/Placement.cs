using System;
using System.Collections.Generic;
using System.Linq;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>A flat facet lifted onto the cover, stiffly.</summary>
/// <param name="FlatMiddle">Point of the pattern that comes to <paramref name="Middle"/>.</param>
/// <param name="Middle">Its place in space.</param>
/// <param name="AlongX">Where the pattern's +x points to.</param>
/// <param name="AlongY">Where the pattern's +y points to.</param>
/// <param name="Error">Largest distance of a corner from the true one, millimetres.</param>
/// <param name="TrueEdgeOf">For each edge of the flat ring, from each corner to the next, the index of the true face's edge.</param>
internal sealed record Placement(
    FlatPoint FlatMiddle, SpacePoint Middle, SpacePoint AlongX, SpacePoint AlongY, double Error, IReadOnlyList<int> TrueEdgeOf)
{
    internal SpacePoint Lift(FlatPoint point) =>
        Middle + ((point - FlatMiddle).X * AlongX) + ((point - FlatMiddle).Y * AlongY);

    /// <summary>All ways to lay a ring on a true face with the cloth's face outside, corner on corner, best fit each.</summary>
    /// <param name="ring">The facet on its pattern, counter-clockwise.</param>
    /// <param name="mirrored">Whether the pattern is turned over (y to -y) before it is laid.</param>
    /// <param name="face">The true face, with as many corners.</param>
    internal static IEnumerable<Placement> AllOf(IReadOnlyList<FlatPoint> ring, bool mirrored, TrueFace face)
    {
        var count = ring.Count;
        for (var shift = 0; shift < count; shift++)
        {
            // Turned over, the ring runs the other way: its corner i lies on the true corner shift - i.
            int Modulo(int i) => ((i % count) + count) % count;
            int[] corners = [.. Enumerable.Range(0, count).Select(i => Modulo(mirrored ? shift - i : shift + i))];
            int[] edges = [.. Enumerable.Range(0, count).Select(i => mirrored ? Modulo(shift - i - 1) : corners[i])];
            yield return Fit(ring, mirrored, face, corners, edges);
        }
    }

    /// <summary>
    /// The same way laid by some corners alone: where a rim crosses the border flat its end lies well along the border, but not to the
    /// hundredth of a millimetre, and is no corner to lay a facet by.
    /// </summary>
    /// <param name="ring">The facet on its pattern.</param>
    /// <param name="face">The true face.</param>
    /// <param name="isFirm">Whether a corner of the true face is one to lay by; with fewer than two the way stays as it is.</param>
    internal Placement LaidBy(IReadOnlyList<FlatPoint> ring, TrueFace face, Func<SpacePoint, bool> isFirm)
    {
        var pairs = ring.Select((flat, i) => (Flat: flat, True: face.Corners.MinBy(corner => corner.DistanceTo(Lift(ring[i]))))).Where(pair => isFirm(pair.True)).ToArray();
        if (pairs.Length < 2)
        {
            return this;
        }

        var (flatMiddle, middle) = (FlatPoint.MiddleOf([.. pairs.Select(pair => pair.Flat)]), (1.0 / pairs.Length) * pairs.Select(pair => pair.True).Aggregate((sum, corner) => sum + corner));
        var (cosine, sine) = (0.0, 0.0);
        foreach (var (flat, corner) in pairs)
        {
            var (from, step) = (flat - flatMiddle, corner - middle);
            var wanted = new FlatPoint(step.Dot(AlongX), step.Dot(AlongY));
            (cosine, sine) = (cosine + from.Dot(wanted), sine + from.Cross(wanted));
        }

        var angle = Math.Atan2(sine, cosine);
        return this with
        {
            FlatMiddle = flatMiddle,
            Middle = middle,
            AlongX = (Math.Cos(angle) * AlongX) + (Math.Sin(angle) * AlongY),
            AlongY = (Math.Cos(angle) * AlongY) - (Math.Sin(angle) * AlongX),
        };
    }

    /// <summary>Least squares in the plane: middles meet, then the turn that lines the corners up best.</summary>
    private static Placement Fit(IReadOnlyList<FlatPoint> ring, bool mirrored, TrueFace face, int[] corners, int[] edges)
    {
        var across = face.Outward.Cross(face.Round);
        var middle = (1.0 / ring.Count) * corners.Select(corner => face.Corners[corner]).Aggregate((sum, corner) => sum + corner);
        var flatMiddle = FlatPoint.MiddleOf([.. ring]);
        var (cosine, sine) = (0.0, 0.0);
        foreach (var (corner, i) in corners.Select((corner, i) => (corner, i)))
        {
            var step = face.Corners[corner] - middle;
            var wanted = new FlatPoint(step.Dot(face.Round), step.Dot(across));
            var flat = ring[i] - flatMiddle;
            flat = mirrored ? flat with { Y = -flat.Y } : flat;
            (cosine, sine) = (cosine + flat.Dot(wanted), sine + flat.Cross(wanted));
        }

        var angle = Math.Atan2(sine, cosine);
        var alongX = (Math.Cos(angle) * face.Round) + (Math.Sin(angle) * across);
        var alongY = (mirrored ? -1 : 1) * face.Outward.Cross(alongX);
        var placed = new Placement(flatMiddle, middle, alongX, alongY, 0, edges);
        return placed with { Error = corners.Select((corner, i) => placed.Lift(ring[i]).DistanceTo(face.Corners[corner])).Max() };
    }
}
