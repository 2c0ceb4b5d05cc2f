using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Seams;

/// <summary>Faces laid flat together, to find out whether they can be one panel.</summary>
/// <param name="IsWhole">Whether all faces hang together over folds.</param>
/// <param name="Closes">Whether folds that close a ring come out together, and nothing is left out inside.</param>
/// <param name="Ring">Outline; empty unless whole and closed.</param>
internal sealed record FlatPanel(bool IsWhole, bool Closes, ImmutableArray<Point2> Ring)
{
    // Folds that close a ring must come out together this well, millimetres.
    private const double Closure = 0.001;

    /// <summary>How long it is along or across its plane, millimetres; 0 without an outline.</summary>
    internal double Reach => Ring.IsEmpty ? 0 : Math.Max(Rings.Bounds(Ring).Width, Rings.Bounds(Ring).Height);

    /// <summary>Whether it lies flat without lying over itself, and is not too long for the grid.</summary>
    internal bool IsExact => IsWhole && Closes && Reach <= FacetReach.MostMm && ExactPredicates.IsSimple(Rings.ToSteps(Ring));

    /// <summary>Lays faces over their common edges.</summary>
    /// <param name="shell">The surface.</param>
    /// <param name="faces">The first gives the plane.</param>
    /// <param name="slits">Edges that are no folds though both faces belong to the panel.</param>
    internal static FlatPanel Lay(Shell shell, IReadOnlyCollection<int> faces, IReadOnlySet<int> slits)
    {
        var own = faces.ToHashSet();
        bool IsFold(int edge) => !slits.Contains(edge) && own.Contains(shell.Edges[edge].Left) && own.Contains(shell.Edges[edge].Right);
        var maps = new Dictionary<int, RigidMap> { [faces.First()] = RigidMap.Identity };
        var order = new Queue<int>(maps.Keys);
        var closes = true;
        while (order.TryDequeue(out var face))
        {
            foreach (var edge in shell.Faces[face].Edges.Where(IsFold))
            {
                var other = shell.Edges[edge].Left == face ? shell.Edges[edge].Right : shell.Edges[edge].Left;
                var (from, to) = Side(shell, face, edge, maps[face]);
                if (!maps.TryGetValue(other, out var known))
                {
                    var (otherFrom, otherTo) = Side(shell, other, edge, RigidMap.Identity);
                    maps.Add(other, RigidMap.Laying(otherTo, otherFrom, from, to));
                    order.Enqueue(other);
                    continue;
                }

                var (back, start) = Side(shell, other, edge, known);
                closes &= Math.Max(Point2.Distance(back, to), Point2.Distance(start, from)) <= Closure;
            }
        }

        var isWhole = maps.Count == own.Count;
        return isWhole && closes && Outline(shell, faces, maps, IsFold) is { } ring ? new FlatPanel(true, true, ring) : new FlatPanel(isWhole, false, []);
    }

    /// <summary>The corners round the panel; null when it has no border or a hole.</summary>
    private static ImmutableArray<Point2>? Outline(Shell shell, IReadOnlyCollection<int> faces, Dictionary<int, RigidMap> maps, Func<int, bool> isFold)
    {
        var border = faces.SelectMany(face => shell.Faces[face].Edges.Select((edge, at) => (face, edge, at))).Where(side => !isFold(side.edge)).ToArray();
        if (border.Length == 0)
        {
            return null;
        }

        var ring = ImmutableArray.CreateBuilder<Point2>();
        var (start, side) = ((border[0].face, border[0].at), (Face: border[0].face, At: border[0].at));
        do
        {
            ring.Add(maps[side.Face].Apply(shell.Faces[side.Face].Chart[side.At]));
            side = Following(shell, side);
            while (isFold(shell.Faces[side.Face].Edges[side.At]))
            {
                var edge = shell.Faces[side.Face].Edges[side.At];
                var other = shell.Edges[edge].Left == side.Face ? shell.Edges[edge].Right : shell.Edges[edge].Left;
                side = Following(shell, (other, shell.Faces[other].Edges.IndexOf(edge)));
            }
        }
        while (side != start);

        return ring.Count == border.Length ? ring.ToImmutable() : null;
    }

    private static (int Face, int At) Following(Shell shell, (int Face, int At) side) => (side.Face, (side.At + 1) % shell.Faces[side.Face].Edges.Length);

    private static (Point2 From, Point2 To) Side(Shell shell, int face, int edge, RigidMap map)
    {
        var (chart, at) = (shell.Faces[face].Chart, shell.Faces[face].Edges.IndexOf(edge));
        return (map.Apply(chart[at]), map.Apply(chart[(at + 1) % chart.Length]));
    }
}
