using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Files.Reports;

/// <summary>A face in space with what is left of it, seen from the axis of the cover.</summary>
internal sealed class SpaceFace
{
    // Of a skirt: the chord of its hubs and the finished edge, in the face's chart; null elsewhere, and where openings take all of either.
    private readonly ((Point2 From, Point2 To) Chord, (Point2 From, Point2 To) Hem)? skirt;
    private readonly DrawnFace whole;
    private readonly ImmutableArray<Point2> chart;

    /// <param name="shell">The finished surface.</param>
    /// <param name="cut">It cut up.</param>
    /// <param name="index">Index of the face.</param>
    /// <param name="left">What is left of it, and the piece that covers it; null where openings take all.</param>
    public SpaceFace(Shell shell, Subdivision cut, int index, (Patch Patch, string Piece)? left)
    {
        (whole, chart, Index, Patch, Piece) = (DrawnFace.Whole(shell, index), shell.Faces[index].Chart, index, left?.Patch, left?.Piece ?? string.Empty);
        Corners = [.. (Patch?.Corners ?? []).Select(whole.InSpace)];
        var middle = (1.0 / whole.Corners.Length) * whole.Corners.Select(corner => corner.Plan).Aggregate((left, right) => left + right);
        Direction = Math.Atan2(middle.Y, middle.X);
        skirt = IsSkirt ? SkirtOf(shell, cut, index) : null;
    }

    /// <summary>Index of the face.</summary>
    public int Index { get; }

    public string Label => whole.Label;

    public FaceKind Kind => whole.Kind;

    public ImmutableArray<Point3> Corners { get; }

    public Patch? Patch { get; }

    /// <summary>The piece that covers it; empty where openings take all.</summary>
    public string Piece { get; }

    /// <summary>Direction of its middle seen from the axis, radians.</summary>
    public double Direction { get; }

    public bool IsSkirt => Kind == FaceKind.Skirt;

    /// <summary>Cloth in it, square millimetres.</summary>
    public double Area => Patch is null ? 0 : Rings.SignedArea(Patch.Corners);

    /// <summary>Whether the axis passes through it.</summary>
    public bool IsRoundAxis => Corners.Length > 0 && Enumerable.Range(0, Corners.Length).All(i => Point2.Cross(Corners[i].Plan, Corners[(i + 1) % Corners.Length].Plan) > 0);

    /// <summary>Where a point of its chart lies in a drawing of which the places of the hubs are known: straight lines between hubs stay straight.</summary>
    /// <param name="point">The point.</param>
    /// <param name="map">From space to the drawing.</param>
    /// <param name="foot">From a place on the chord of a skirt to its foot.</param>
    public Point2 Lay(Point2 point, Func<Point3, Point2> map, Func<Point2, Point2> foot)
    {
        if (skirt is not { } lines)
        {
            return ConvexMapping.Carry(chart, [.. whole.Corners.Select(map)], point);
        }

        var (from, to) = lines.Chord;
        var along = Math.Clamp(Point2.Dot(point - from, to - from) / Point2.Dot(to - from, to - from), 0, 1);
        var place = Point2.Between(map(whole.InSpace(from)), map(whole.InSpace(to)), along);
        var (below, above) = (Distance(lines.Chord, point), Distance(lines.Hem, point));
        return Point2.Between(place, foot(place), below / (below + above));
    }

    /// <summary>Direction of a point seen from the axis, radians; that of the face at the axis itself.</summary>
    public double DirectionOf(Point3 point) => point.Plan.Length > 0 ? Math.Atan2(point.Y, point.X) : Direction;

    private static double Distance((Point2 From, Point2 To) line, Point2 point) => Math.Abs(Point2.Cross((line.To - line.From).Unit(), point - line.From));

    /// <summary>The finished edge is one straight line across a face, whatever openings take of it.</summary>
    private static ((Point2 From, Point2 To) Chord, (Point2 From, Point2 To) Hem)? SkirtOf(Shell shell, Subdivision cut, int index)
    {
        var face = shell.Faces[index];
        Point2[] hubs = [.. face.Nodes.Select((node, i) => (node, i)).Where(entry => !shell.Nodes[entry.node].Label.EndsWith('f')).Select(entry => face.Chart[entry.i])];
        var edges =
            from part in cut.Insides.Prepend(cut)
            from patch in part.Patches
            where patch.Face == index
            from i in Enumerable.Range(0, patch.Corners.Length)
            where part.Arcs[patch.Arcs[i]].Role == EdgeRole.Hem
            select (patch.Corners[i], patch.Corners[(i + 1) % patch.Corners.Length]);
        (Point2 From, Point2 To)? hem = edges.OrderByDescending(edge => Math.Round(Point2.Distance(edge.Item1, edge.Item2), 3)).Select(edge => ((Point2, Point2)?)edge).FirstOrDefault();
        return hem is { } line && hubs.Length == 2 ? ((hubs[0], hubs[1]), line) : null;
    }
}
