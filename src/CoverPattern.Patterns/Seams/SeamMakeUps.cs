using System.Collections.Generic;
using System.Linq;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Seams;

/// <summary>Gives each seam of a plan its own make-up: the job's choices, and the seam that is sewn last.</summary>
internal static class SeamMakeUps
{
    /// <summary>The plan with every seam's make-up; roles and sides stay.</summary>
    /// <param name="job">Its seams' wishes are read.</param>
    /// <param name="shell">The finished surface.</param>
    /// <param name="plan">Where pieces are joined.</param>
    internal static SeamPlan Choose(Job job, Shell shell, SeamPlan plan)
    {
        if (job.Seam.Others.IsEmpty && job.Seam.Closing is null)
        {
            return plan;
        }

        var edges = plan.Edges.ToBuilder();
        foreach (var choice in job.Seam.Others)
        {
            foreach (var edge in Meant(shell, choice).Where(edge => edges[edge].Role == EdgeRole.Seam))
            {
                edges[edge] = edges[edge] with { MakeUp = choice.MakeUp };
            }
        }

        if (job.Seam.Closing is { } closing)
        {
            foreach (var edge in ClosingSeam.Chain(shell, closing, plan).Where(edge => edges[edge].Role == EdgeRole.Seam))
            {
                edges[edge] = edges[edge] with { MakeUp = edges[edge].MakeUp!.Closing(closing.Allowance.Millimetres) };
            }
        }

        return plan with { Edges = edges.ToImmutable() };
    }

    /// <summary>Edges of the shell that a choice speaks of, seams or not; struts that are not there are left out.</summary>
    internal static IEnumerable<int> Meant(Shell shell, SeamChoice choice)
    {
        if (choice.Set == SeamSet.Struts)
        {
            var edges = HubLabels.EdgesByStrut(shell);
            return choice.Struts.Where(edges.ContainsKey).Select(strut => edges[strut]);
        }

        return Enumerable.Range(0, shell.Edges.Length).Where(edge => IsAlongRing(shell, shell.Edges[edge]) == (choice.Set == SeamSet.Rows));
    }

    private static bool IsAlongRing(Shell shell, ShellEdge edge) =>
        HubLabels.RingOf(shell.Nodes[edge.From]) is { } ring && ring == HubLabels.RingOf(shell.Nodes[edge.To]);
}
