using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Files.Reports;

/// <summary>A face of the finished cover as it stands in space.</summary>
/// <param name="Label">Its label.</param>
/// <param name="Kind">What it covers.</param>
/// <param name="Corners">Counter-clockwise seen from outside, millimetres.</param>
internal sealed record DrawnFace(string Label, FaceKind Kind, ImmutableArray<Point3> Corners)
{
    /// <summary>Direction that points outward, of any length.</summary>
    public Point3 Outward => Corners.Skip(2).Select((_, i) => Point3.Cross(Corners[i + 1] - Corners[0], Corners[i + 2] - Corners[0]))
        .Aggregate((left, right) => left + right);

    /// <summary>Where the face's chart lies: its origin and its two directions.</summary>
    private (Point3 Origin, Point3 Along, Point3 Across) Chart { get; init; }

    /// <summary>All that is left of the shell above its hem.</summary>
    public static IEnumerable<DrawnFace> Of(Shell shell, Subdivision cut) => cut.Patches.Select(patch =>
    {
        var whole = Whole(shell, patch.Face);
        return whole with { Corners = [.. patch.Corners.Select(whole.InSpace)] };
    });

    /// <summary>A face with nothing cut off.</summary>
    public static DrawnFace Whole(Shell shell, int index)
    {
        var face = shell.Faces[index];
        ImmutableArray<Point3> corners = [.. face.Nodes.Select(node => shell.Nodes[node].Position)];
        var along = (corners[1] - corners[0]).Unit();
        var rise = corners[^1] - corners[0];
        return new DrawnFace(face.Label, face.Kind, corners) { Chart = (corners[0], along, (rise - (Point3.Dot(rise, along) * along)).Unit()) };
    }

    /// <summary>A point of the face's chart in space.</summary>
    public Point3 InSpace(Point2 point) => Chart.Origin + (point.X * Chart.Along) + (point.Y * Chart.Across);
}
