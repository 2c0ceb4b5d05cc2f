using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Shells;

/// <summary>Refuses a stand-off at which a facet of more than three sides would no longer lie in one plane.</summary>
/// <remarks>
/// Three planes meet in a point, more need not: where a wall's quadrangle and several facets meet at a hub, the moved hub lies
/// near all of their planes and exactly on none. The quadrangle is then cut as it is seen square to its first three corners,
/// which makes a diagonal or an edge short by about half the square of the bend over its length.
/// </remarks>
public static class PlaneCheck
{
    // Partner edges of cloth agree within this, millimetres: half of it for either side.
    private const double MostEdge = 0.005;

    // A corner may lie this far off, millimetres: less than a pen line.
    private const double MostDiagonal = 0.05;

    // A corner may stand this far out of the plane of the first three, millimetres: a bend that cloth takes unseen.
    private const double MostBend = 1;

    /// <summary>Yields one fault at most, for the facet that bends most.</summary>
    /// <param name="job">The stand-off is told.</param>
    /// <param name="frame">The frame.</param>
    /// <param name="shell">The surface fitted over it.</param>
    public static ImmutableArray<Fault> Faults(Job job, Frame frame, Shell shell)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(frame);
        ArgumentNullException.ThrowIfNull(shell);

        var worst = shell.Faces.Take(frame.Facets.Length).Where(face => face.Nodes.Length > 3)
            .Select(face => (face.Label, Off: Off(shell, face)))
            .OrderByDescending(face => face.Off).FirstOrDefault();
        return worst.Off > 1
            ? [new Fault("standOff", FormattableString.Invariant($"{job.StandOff.Millimetres:0.#} mm, at which facet {worst.Label} is bent"), FormattableString.Invariant($"a stand-off at which facets of more than three sides stay plane; this one misses that {worst.Off:0.#} times over. Take less stand-off, a base whose hubs stand more level, no riser, or a survey in which the facet is two triangles"))]
            : [];
    }

    /// <summary>How far edges and diagonals are from what they are in space, and corners out of the plane, as a share of what is allowed.</summary>
    private static double Off(Shell shell, ShellFace face)
    {
        var corners = face.Nodes.Select(node => shell.Nodes[node].Position).ToArray();
        var count = corners.Length;
        var across = Point3.Cross(corners[1] - corners[0], corners[^1] - corners[0]).Unit();
        var bend = corners.Max(corner => Math.Abs(Point3.Dot(corner - corners[0], across)));
        return (
            from i in Enumerable.Range(0, count)
            from j in Enumerable.Range(i + 1, count - i - 1)
            let most = j == i + 1 || (i == 0 && j == count - 1) ? MostEdge : MostDiagonal
            select Math.Abs(Point2.Distance(face.Chart[i], face.Chart[j]) - Point3.Distance(corners[i], corners[j])) / most).Append(bend / MostBend).Max();
    }
}
