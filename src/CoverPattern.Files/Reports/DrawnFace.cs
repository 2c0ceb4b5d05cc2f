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
        var face = shell.Faces[patch.Face];
        var corners = face.Nodes.Select(node => shell.Nodes[node].Position).ToArray();
        var along = (corners[1] - corners[0]).Unit();
        var rise = corners[^1] - corners[0];
        var across = (rise - (Point3.Dot(rise, along) * along)).Unit();
        var drawn = new DrawnFace(face.Label, face.Kind, []) { Chart = (corners[0], along, across) };
        return drawn with { Corners = drawn.InSpace(patch.Corners) };
    });

    /// <summary>Points of the face's chart in space.</summary>
    public ImmutableArray<Point3> InSpace(ImmutableArray<Point2> ring) =>
        ImmutableArray.CreateRange(ring, p => Chart.Origin + (p.X * Chart.Along) + (p.Y * Chart.Across));
}
