using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Files.Reports;

/// <summary>A face in space with what is cut out of it, seen from the axis of the cover.</summary>
internal sealed class SpaceFace
{
    private readonly ImmutableArray<Point3> feet;

    /// <param name="shell">The finished surface.</param>
    /// <param name="drawn">The face in space.</param>
    /// <param name="patch">What is left of it.</param>
    public SpaceFace(Shell shell, DrawnFace drawn, Patch patch)
    {
        var face = shell.Faces[patch.Face];
        (Label, Kind, Corners, Patch) = (drawn.Label, drawn.Kind, drawn.Corners, patch);
        Holes = [.. patch.Holes.Select(hole => drawn.InSpace(hole.Ring))];
        var hubs = face.Nodes.Where(node => !shell.Nodes[node].Label.EndsWith('f')).Select(node => face.Chart[face.Nodes.IndexOf(node)]).ToArray();
        feet = [.. Corners.Where((_, i) => !Array.Exists(hubs, hub => Point2.Distance(hub, patch.Corners[i]) < 1e-6))];
        var middle = (1.0 / Corners.Length) * Corners.Select(corner => corner.Plan).Aggregate((left, right) => left + right);
        Direction = Math.Atan2(middle.Y, middle.X);
    }

    public string Label { get; }

    public FaceKind Kind { get; }

    public ImmutableArray<Point3> Corners { get; }

    public ImmutableArray<ImmutableArray<Point3>> Holes { get; }

    public Patch Patch { get; }

    /// <summary>Direction of its middle seen from the axis, radians.</summary>
    public double Direction { get; }

    public bool IsSkirt => Kind == FaceKind.Skirt;

    /// <summary>Cloth in it, square millimetres.</summary>
    public double Area => Rings.SignedArea(Patch.Corners);

    /// <summary>Whether the axis passes through it.</summary>
    public bool IsRoundAxis => Enumerable.Range(0, Corners.Length).All(i => Point2.Cross(Corners[i].Plan, Corners[(i + 1) % Corners.Length].Plan) > 0);

    /// <summary>Whether a corner of the skirt is one of its foot.</summary>
    public bool IsFoot(Point3 corner) => feet.Contains(corner);

    /// <summary>Direction of a point seen from the axis, radians; that of the face at the axis itself.</summary>
    public double DirectionOf(Point3 point) => point.Plan.Length > 0 ? Math.Atan2(point.Y, point.X) : Direction;
}
