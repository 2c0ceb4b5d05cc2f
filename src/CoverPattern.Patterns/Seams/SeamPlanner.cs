using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Seams;

/// <summary>Decides where pieces are joined and which lies over.</summary>
public static class SeamPlanner
{
    // Centres nearer in height than this count as level, and as in line with the middle, millimetres: rounding of double arithmetic at 100 m.
    private const double Level = 1e-6;

    /// <summary>Plans every edge of a shell.</summary>
    /// <param name="job">The make-up of seams is read.</param>
    /// <param name="shell">The finished surface.</param>
    /// <param name="panels">Which faces become which piece.</param>
    /// <returns>
    /// Edges of one face are the hem, edges between two faces of one panel folds unless slit, all others seams. Over lies the
    /// face whose centre is higher, so that water runs off; at equal height, and between two parts of one row that are no
    /// single facets, the counter-clockwise neighbour, so that uprights all face one way round; of two that lie opposite across
    /// the middle the one whose label comes later.
    /// </returns>
    public static SeamPlan Plan(Job job, Shell shell, PanelPlan panels)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(shell);
        ArgumentNullException.ThrowIfNull(panels);

        var panelOf = PanelOfFaces(shell, panels);
        var plan = new SeamPlan([.. shell.Edges.Select((_, edge) => PlanEdge(job.Seam.MakeUp, shell, panels, panelOf, edge))])
        {
            Panels = panels.Panels,
            Cuts = SeamCut.Of(job, shell),
        };
        return SeamMakeUps.Choose(job, shell, plan);
    }

    /// <summary>For each face of the shell the index of its panel; -1 for none.</summary>
    internal static ImmutableArray<int> PanelOfFaces(Shell shell, PanelPlan panels)
    {
        var panelOf = Enumerable.Repeat(-1, shell.Faces.Length).ToArray();
        foreach (var (panel, i) in panels.Panels.Select((panel, i) => (panel, i)))
        {
            foreach (var face in panel.Faces)
            {
                panelOf[face] = i;
            }
        }

        return [.. panelOf];
    }

    /// <summary>Whether two edges of cloth are joined along an edge of the shell.</summary>
    internal static bool IsSeam(Shell shell, PanelPlan panels, ImmutableArray<int> panelOf, int edge) => shell.Edges[edge].Right >= 0
        && (panelOf[shell.Edges[edge].Left] != panelOf[shell.Edges[edge].Right] || panels.Slits.BinarySearch(edge) >= 0);

    private static EdgePlan PlanEdge(MakeUp makeUp, Shell shell, PanelPlan panels, ImmutableArray<int> panelOf, int edge)
    {
        if (shell.Edges[edge].Right < 0)
        {
            return new EdgePlan(EdgeRole.Hem, null, -1);
        }

        if (!IsSeam(shell, panels, panelOf, edge))
        {
            return new EdgePlan(EdgeRole.Fold, null, -1);
        }

        var (left, right) = (shell.Edges[edge].Left, shell.Edges[edge].Right);
        bool IsSingle(int face) => panels.Panels[panelOf[face]].Shape == PanelShape.Facet;
        var isUpright = panels.FaceRows[left] == panels.FaceRows[right] && !IsSingle(left) && !IsSingle(right);
        var over = FaceOver(shell, shell.Edges[edge], isUpright);
        return new EdgePlan(EdgeRole.Seam, makeUp, panels.Turned.Contains(edge) ? left + right - over : over);
    }

    private static int FaceOver(Shell shell, ShellEdge edge, bool isUpright)
    {
        var (left, right) = (Centre(shell, edge.Left), Centre(shell, edge.Right));
        if (!isUpright && Math.Abs(left.Z - right.Z) > Level)
        {
            return left.Z > right.Z ? edge.Left : edge.Right;
        }

        // On one line with the middle of the cover, or in the middle itself, neither is the counter-clockwise one: rounding must not choose.
        var turn = Point2.Cross(left.Plan, right.Plan);
        var isLater = Math.Abs(turn) > Level * Math.Max(left.Plan.Length, right.Plan.Length) ? turn > 0 : string.CompareOrdinal(shell.Faces[edge.Right].Label, shell.Faces[edge.Left].Label) > 0;
        return isLater ? edge.Right : edge.Left;
    }

    private static Point3 Centre(Shell shell, int face)
    {
        var nodes = shell.Faces[face].Nodes;
        return (1.0 / nodes.Length) * nodes.Aggregate(default(Point3), (sum, node) => sum + shell.Nodes[node].Position);
    }
}
