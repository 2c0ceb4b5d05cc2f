using System;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Shells;

/// <summary>The plane of a shell's face: from its chart to space and back.</summary>
/// <param name="Origin">Where the chart's origin lies.</param>
/// <param name="Along">The chart's x, length 1.</param>
/// <param name="Across">The chart's y, length 1.</param>
internal readonly record struct FacePlane(Point3 Origin, Point3 Along, Point3 Across)
{
    internal static FacePlane Of(Shell shell, int face)
    {
        var corners = shell.Faces[face].Nodes.Select(node => shell.Nodes[node].Position).ToArray();
        var along = (corners[1] - corners[0]).Unit();
        var normal = Point3.Cross(along, corners[^1] - corners[0]).Unit();
        return new FacePlane(corners[0], along, Point3.Cross(normal, along));
    }

    /// <summary>Outward, length 1.</summary>
    internal Point3 Normal => Point3.Cross(Along, Across);

    /// <summary>Angle between the outward normal and straight up, radians.</summary>
    internal double Tilt => Math.Atan2(Normal.Plan.Length, Normal.Z);

    internal Point3 ToSpace(Point2 point) => Origin + (point.X * Along) + (point.Y * Across);

    /// <summary>The foot of a point of space on the plane, in the chart.</summary>
    internal Point2 ToChart(Point3 point) => new(Point3.Dot(point - Origin, Along), Point3.Dot(point - Origin, Across));

    /// <summary>Up the cover in the chart, square to the first edge: charts whose face hangs below that edge stand on their heads.</summary>
    internal static Point2 UpOf(Shell shell, int face)
    {
        var heights = shell.Faces[face].Nodes.Select(node => shell.Nodes[node].Position.Z).ToArray();
        return new Point2(0, heights.Average() < (heights[0] + heights[1]) / 2 ? -1 : 1);
    }
}
