using System;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Seams;

/// <summary>Decides where pieces are joined and which lies over: single facets, each with its skirt.</summary>
public static class SeamPlanner
{
    // Centres nearer in height than this count as level, millimetres: rounding of double arithmetic at 100 m.
    private const double Level = 1e-6;

    /// <summary>Plans every edge of a shell.</summary>
    /// <param name="job">The make-up of seams is read.</param>
    /// <param name="shell">The finished surface.</param>
    /// <returns>
    /// Base chords are folds to their skirt, edges of one face are the hem, all others are seams. Over lies the face whose
    /// centre is higher, so that water runs off; at equal height the counter-clockwise neighbour, so that uprights all face one way round.
    /// </returns>
    public static SeamPlan Plan(Job job, Shell shell)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(shell);

        return new SeamPlan([.. shell.Edges.Select(edge => PlanEdge(job.Seam.MakeUp, shell, edge))]);
    }

    private static EdgePlan PlanEdge(MakeUp makeUp, Shell shell, ShellEdge edge)
    {
        if (edge.Right < 0)
        {
            return new EdgePlan(EdgeRole.Hem, null, -1);
        }

        return shell.Faces[edge.Left].Kind == shell.Faces[edge.Right].Kind
            ? new EdgePlan(EdgeRole.Seam, makeUp, FaceOver(shell, edge))
            : new EdgePlan(EdgeRole.Fold, null, -1);
    }

    private static int FaceOver(Shell shell, ShellEdge edge)
    {
        var (left, right) = (Centre(shell, edge.Left), Centre(shell, edge.Right));
        if (Math.Abs(left.Z - right.Z) > Level)
        {
            return left.Z > right.Z ? edge.Left : edge.Right;
        }

        return Point2.Cross(left.Plan, right.Plan) > 0 ? edge.Right : edge.Left;
    }

    private static Point3 Centre(Shell shell, int face)
    {
        var nodes = shell.Faces[face].Nodes;
        return (1.0 / nodes.Length) * nodes.Aggregate(default(Point3), (sum, node) => sum + shell.Nodes[node].Position);
    }
}
