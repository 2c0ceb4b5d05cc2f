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
    // True corners are computed on the true edges, to rounding, millimetres.
    private const double OnLine = 1e-6;

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
    /// The same way laid by the border alone: where a rim crosses the border flat its end lies well across the border, but not to the
    /// hundredth of a millimetre along it. So each corner is drawn onto the edges of the face on which it has to lie, and along them
    /// only as much as it takes to hold what they leave free.
    /// </summary>
    /// <param name="ring">The facet on its pattern.</param>
    /// <param name="cell">Where it has to lie.</param>
    internal Placement LaidBy(IReadOnlyList<FlatPoint> ring, TrueCell cell)
    {
        var pulls = ring.SelectMany(flat => PullsOf(flat, cell.Face.Corners.MinBy(corner => corner.DistanceTo(Lift(flat))), cell.Whole)).ToArray();
        var way = this;
        for (var step = 0; step < 3; step++)
        {
            way = way.Drawn(pulls);
        }

        return way;
    }

    /// <summary>Across each edge of the whole face on which a true corner lies, and weakly every way.</summary>
    private IEnumerable<Pull> PullsOf(FlatPoint flat, SpacePoint corner, TrueFace whole)
    {
        const double weak = 1e-4;
        yield return new Pull(flat, corner, AlongX, weak);
        yield return new Pull(flat, corner, AlongY, weak);
        foreach (var i in Enumerable.Range(0, whole.Corners.Count))
        {
            var across = whole.Outward.Cross((whole.Corners[(i + 1) % whole.Corners.Count] - whole.Corners[i]).Unit);
            if (Math.Abs((corner - whole.Corners[i]).Dot(across)) <= OnLine)
            {
                yield return new Pull(flat, corner, across, 1);
            }
        }
    }

    /// <summary>One step of least squares (Gauss and Newton) for shift and turn.</summary>
    private Placement Drawn(IReadOnlyList<Pull> pulls)
    {
        SpacePoint sumX = default, sumY = default, sumTurn = default, wanted = default;
        foreach (var pull in pulls)
        {
            var from = pull.Flat - FlatMiddle;
            var (x, y) = (AlongX.Dot(pull.Towards), AlongY.Dot(pull.Towards));
            var row = new SpacePoint(x, y, (from.X * y) - (from.Y * x));
            sumX += pull.Weight * row.X * row;
            sumY += pull.Weight * row.Y * row;
            sumTurn += pull.Weight * row.Z * row;
            wanted += pull.Weight * (pull.Onto - Lift(pull.Flat)).Dot(pull.Towards) * row;
        }

        // Cramer's rule, the sums being columns.
        var determinant = sumX.Dot(sumY.Cross(sumTurn));
        var angle = sumX.Dot(sumY.Cross(wanted)) / determinant;
        return this with
        {
            Middle = Middle + (wanted.Dot(sumY.Cross(sumTurn)) / determinant * AlongX) + (sumX.Dot(wanted.Cross(sumTurn)) / determinant * AlongY),
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

    /// <summary>What draws a point of the pattern onto one of space, in one direction of the face's plane.</summary>
    private readonly record struct Pull(FlatPoint Flat, SpacePoint Onto, SpacePoint Towards, double Weight);
}
