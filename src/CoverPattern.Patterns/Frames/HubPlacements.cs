using System;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Frames;

/// <summary>Where the hubs of a divided solid are pushed to.</summary>
internal static class HubPlacements
{
    // On the unit icosahedron, corner up: upper and lower corners at +-1/sqrt 5, half an edge seen from the centre in radians.
    private static readonly double CornerHeight = 1 / Math.Sqrt(5);
    private static readonly double HalfEdge = Math.Atan(2) / 2;

    /// <summary>The rule of a division.</summary>
    /// <param name="division">The division.</param>
    /// <param name="frequency">3 or 4 where the base is made level.</param>
    internal static HubPlacement Of(FrameDivision division, int frequency) => division switch
    {
        FrameDivision.EqualChord or FrameDivision.ClassTwo => Outward,
        FrameDivision.EqualArc => EqualArc,
        FrameDivision.LevelByEdgeHubs => Shifted(2, EdgeShare(frequency)),
        FrameDivision.LevelByInnerHubs => Inner(InnerWeight()),
        _ => throw new ArgumentOutOfRangeException(nameof(division), division, "Unknown division."),
    };

    private static Point3 Outward((SolidCorner Corner, int Weight)[] weighted) =>
        weighted.Aggregate(default(Point3), (sum, pair) => sum + (pair.Weight * pair.Corner.Position)).Unit();

    /// <summary>
    /// Hubs on edges in equal arcs; each inner hub in the middle of the three points where the great circles between hubs of
    /// equal weight on the edges cross (from memory of Clinton's methods 2 and 3, which are one at 3V).
    /// </summary>
    private static Point3 EqualArc((SolidCorner Corner, int Weight)[] weighted)
    {
        var sum = weighted.Sum(pair => pair.Weight);
        if (weighted.Length < 3)
        {
            return weighted.Length == 1 ? weighted[0].Corner.Position : Arc(weighted[0].Corner.Position, weighted[1].Corner.Position, (double)weighted[1].Weight / sum);
        }

        var middle = weighted.Aggregate(default(Point3), (total, pair) => total + pair.Corner.Position);
        var circles = Enumerable.Range(0, 3).Select(i =>
        {
            var (own, next, last) = (weighted[i], weighted[(i + 1) % 3], weighted[(i + 2) % 3]);
            var share = 1 - ((double)own.Weight / sum);
            return Point3.Cross(Arc(own.Corner.Position, next.Corner.Position, share), Arc(own.Corner.Position, last.Corner.Position, share));
        }).ToArray();
        return Enumerable.Range(0, 3).Aggregate(default(Point3), (total, i) =>
        {
            var crossing = Point3.Cross(circles[i], circles[(i + 1) % 3]).Unit();
            return total + (Point3.Dot(crossing, middle) > 0 ? crossing : -1 * crossing);
        }).Unit();
    }

    /// <summary>Hubs on the edges next to a corner stand at a share of the edge's arc from that corner; all others as by equal chords.</summary>
    private static HubPlacement Shifted(int corners, double share) => weighted =>
    {
        if (weighted.Length != corners || weighted[0].Weight == weighted[1].Weight)
        {
            return Outward(weighted);
        }

        var (near, far) = weighted[0].Weight > weighted[1].Weight ? (weighted[0], weighted[1]) : (weighted[1], weighted[0]);
        return Arc(near.Corner.Position, far.Corner.Position, share);
    };

    /// <summary>
    /// An edge between an upper and a lower corner crosses the equator at its middle; a hub at arc s from there lies
    /// sin s x (corner height / sin of half the edge) high. It shall lie as high as the hubs inside the faces of the belt.
    /// </summary>
    private static double EdgeShare(int frequency)
    {
        var height = Math.Abs(BeltHub(frequency == 3 ? 1 : 2).Z);
        var arc = Math.Asin(height * Math.Sin(HalfEdge) / CornerHeight);
        return (HalfEdge - arc) / (2 * HalfEdge);
    }

    private static HubPlacement Inner(double weight) => weighted => weighted.Length < 3
        ? Outward(weighted)
        : weighted.Aggregate(default(Point3), (sum, pair) => sum + ((pair.Weight == 2 ? weight : 1) * pair.Corner.Position)).Unit();

    /// <summary>The weight of the near corner that puts inner hubs of the 4V as low as the hubs on the belt's edges; found by halving.</summary>
    private static double InnerWeight()
    {
        var faces = Icosahedron.Faces();
        var belt = faces[1];
        var wanted = -Outward([(belt.A, 1), (belt.B, 3)]).Z;
        var (low, high) = (1.0, 3.0);
        for (var step = 0; step < 60; step++)
        {
            var middle = (low + high) / 2;
            (low, high) = -BeltHub(middle).Z < wanted ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }

    /// <summary>The inner hub of the face between two upper corners and a lower one, its weight on the lower one.</summary>
    private static Point3 BeltHub(double weight)
    {
        var belt = Icosahedron.Faces()[2];
        return (belt.A.Position + (weight * belt.B.Position) + belt.C.Position).Unit();
    }

    /// <summary>The point of the great circle from one point of the sphere to another.</summary>
    private static Point3 Arc(Point3 from, Point3 to, double share)
    {
        var angle = 2 * Math.Asin(Point3.Distance(from, to) / 2);
        return ((Math.Sin((1 - share) * angle) * from) + (Math.Sin(share * angle) * to)).Unit();
    }
}
