using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Openings;

/// <summary>What lies round the centre of a window, millimetres from it.</summary>
/// <param name="Axis">To the nearest strut axis, seen square to the facet; negative when the centre lies outside the facet.</param>
/// <param name="Hub">To the nearest hub centre, seen square to the facet.</param>
/// <param name="Edge">To the nearest edge of the cover's own facet; negative outside.</param>
/// <param name="AboveHem">Height above the finished lower edge.</param>
/// <param name="Steepness">How fast that height falls along the facet, 0 to 1.</param>
internal readonly record struct WindowRoom(double Axis, double Hub, double Edge, double AboveHem, double Steepness)
{
    /// <summary>Measures round a point of a face that covers a facet of the frame.</summary>
    /// <remarks>
    /// The cover lies outside the frame by the stand-off and is larger by the ease: the point is taken back by the ease and
    /// dropped on the frame's own facet, where the struts' axes are its sides.
    /// </remarks>
    internal static WindowRoom Round(Frame frame, Shell shell, SurfacePoint point)
    {
        var (face, plane) = (shell.Faces[point.Face], FacePlane.Of(shell, point.Face));
        ImmutableArray<Point3> hubs = [.. frame.Facets[point.Face].Hubs.Select(hub => frame.Hubs[hub].Position)];
        var bars = PlaneOf(hubs);
        var foot = bars.ToChart((1 / (1 + shell.Ease)) * plane.ToSpace(point.At));
        ImmutableArray<Point2> sides = [.. hubs.Select(bars.ToChart)];
        var height = FaceHeight.Of(shell, face);
        return new WindowRoom(Depth(sides, foot), sides.Min(hub => Point2.Distance(hub, foot)), Depth(face.Chart, point.At), height.At(point.At), height.Slope.Length);
    }

    /// <summary>Least distance from the sides of a convex ring to a point inside it; negative outside.</summary>
    private static double Depth(ImmutableArray<Point2> ring, Point2 point) => ring.Select((from, i) =>
        Point2.Cross((ring[(i + 1) % ring.Length] - from).Unit(), point - from)).Min();

    private static FacePlane PlaneOf(ImmutableArray<Point3> corners)
    {
        var along = (corners[1] - corners[0]).Unit();
        return new FacePlane(corners[0], along, Point3.Cross(Point3.Cross(along, corners[^1] - corners[0]).Unit(), along));
    }
}
