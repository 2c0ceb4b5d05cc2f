using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Seams;

/// <summary>The line along which a roof comes off.</summary>
/// <param name="Faces">Indexes of the roof's faces, rising.</param>
/// <param name="Steps">All struts of the line, each with the roof on its left seen from outside, in the order of the shell's edges.</param>
/// <param name="Loops">The closed lines they make, each from its first corner round; empty where they make none: <see cref="RoofCheck"/> tells why.</param>
public sealed record RoofLine(ImmutableSortedSet<int> Faces, ImmutableArray<RoofStep> Steps, ImmutableArray<ImmutableArray<RoofStep>> Loops)
{
    /// <summary>The roof of a job; null where none is wished.</summary>
    /// <param name="job">Its roof is read.</param>
    /// <param name="frame">The frame.</param>
    /// <param name="shell">The finished surface.</param>
    public static RoofLine? Find(Job job, Frame frame, Shell shell)
    {
        System.ArgumentNullException.ThrowIfNull(job);
        System.ArgumentNullException.ThrowIfNull(frame);
        System.ArgumentNullException.ThrowIfNull(shell);
        if (job.Roof is not { } wish)
        {
            return null;
        }

        var rows = frame.Facets.ToDictionary(facet => facet.Label, facet => facet.Row, System.StringComparer.Ordinal);
        bool IsRoof(ShellFace face) => face.Kind == FaceKind.Facet && (wish.Row is { } row ? rows[face.Label] >= row : wish.Facets.Contains(face.Label, System.StringComparer.Ordinal));
        var faces = Enumerable.Range(0, shell.Faces.Length).Where(face => IsRoof(shell.Faces[face])).ToImmutableSortedSet();
        ImmutableArray<RoofStep> steps = [.. Enumerable.Range(0, shell.Edges.Length).Where(edge => shell.Edges[edge].Right >= 0).SelectMany(edge => Step(shell, faces, edge))];
        return new RoofLine(faces, steps, Chain(shell, steps));
    }

    /// <summary>The plan with a zip along the line, the roof's side over; lines that are no seams stay as they are.</summary>
    /// <param name="plan">What becomes of the shell's edges.</param>
    public SeamPlan ZipIn(SeamPlan plan)
    {
        System.ArgumentNullException.ThrowIfNull(plan);
        var edges = plan.Edges.ToBuilder();
        foreach (var step in Steps.Where(step => edges[step.Edge].Role == EdgeRole.Seam))
        {
            edges[step.Edge] = edges[step.Edge] with { MakeUp = RoofWish.Zip, Over = step.Roof };
        }

        return plan with { Edges = edges.ToImmutable() };
    }

    /// <summary>Angle that the cloth has at a node on one side of the line, radians; the line is closed there.</summary>
    /// <param name="shell">The finished surface.</param>
    /// <param name="node">Index of a node of the line.</param>
    /// <param name="onRoof">Whether the roof's side is meant.</param>
    public double AngleAt(Shell shell, int node, bool onRoof)
    {
        System.ArgumentNullException.ThrowIfNull(shell);
        return Enumerable.Range(0, shell.Faces.Length).Where(face => Faces.Contains(face) == onRoof).Sum(face => Corner(shell.Faces[face], node));
    }

    private static double Corner(ShellFace face, int node)
    {
        var at = face.Nodes.IndexOf(node);
        if (at < 0)
        {
            return 0;
        }

        var (before, after) = (face.Chart[(at + face.Chart.Length - 1) % face.Chart.Length] - face.Chart[at], face.Chart[(at + 1) % face.Chart.Length] - face.Chart[at]);
        return System.Math.Atan2(System.Math.Abs(Point2.Cross(after, before)), Point2.Dot(after, before));
    }

    private static IEnumerable<RoofStep> Step(Shell shell, ImmutableSortedSet<int> faces, int at)
    {
        var edge = shell.Edges[at];
        if (faces.Contains(edge.Left) != faces.Contains(edge.Right))
        {
            yield return faces.Contains(edge.Left)
                ? new RoofStep(at, edge.From, edge.To, edge.Left, edge.Right, edge.LengthMm)
                : new RoofStep(at, edge.To, edge.From, edge.Right, edge.Left, edge.LengthMm);
        }
    }

    /// <summary>Closed lines, each from its hub with the first label on; none where a hub has not one strut in and one out.</summary>
    private static ImmutableArray<ImmutableArray<RoofStep>> Chain(Shell shell, ImmutableArray<RoofStep> steps)
    {
        if (steps.DistinctBy(step => step.From).Count() != steps.Length || !steps.Select(step => step.To).ToHashSet().SetEquals(steps.Select(step => step.From)))
        {
            return [];
        }

        var next = steps.ToDictionary(step => step.From);
        var loops = ImmutableArray.CreateBuilder<ImmutableArray<RoofStep>>();
        foreach (var first in steps.OrderBy(step => shell.Nodes[step.From].Label, System.StringComparer.Ordinal))
        {
            if (!next.ContainsKey(first.From))
            {
                continue;
            }

            var loop = ImmutableArray.CreateBuilder<RoofStep>();
            for (var step = first; ; step = next[step.To])
            {
                loop.Add(step);
                next.Remove(step.From, out _);
                if (!next.ContainsKey(step.To))
                {
                    break;
                }
            }

            loops.Add(loop.ToImmutable());
        }

        return loops.ToImmutable();
    }
}
