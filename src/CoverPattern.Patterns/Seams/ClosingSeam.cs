using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Seams;

/// <summary>The chain of seams that is kept open until the girth is measured.</summary>
/// <remarks>
/// From the finished edge below a base hub up, at each hub along the steepest seam to the next ring, of equally steep ones
/// the counter-clockwise; at the rear from the rearmost base hub from which seams rise all the way. It ends at the ring below the top row, or where the job says: above that the girth is that of the
/// few pieces of the cap, which are closed flat.
/// </remarks>
public static class ClosingSeam
{
    /// <summary>How far the girth of a ring may be off before the seam is sewn, either way, millimetres (common practice, no source).</summary>
    public const double AllowedError = 10;

    /// <summary>What each side takes in for a millimetre of girth too long: both sides share it.</summary>
    public const double TakenIn = 0.5;

    // Struts nearer in steepness than this count as equally steep: rounding of double arithmetic.
    private const double EquallySteep = 1e-9;

    /// <summary>The edges of the chain, from the finished edge up.</summary>
    /// <param name="shell">The finished surface.</param>
    /// <param name="wish">Where it rises and ends.</param>
    /// <param name="plan">Tells the seams; without it every edge counts as one.</param>
    /// <returns>Indexes of the shell's edges; empty when there is no such base hub. Where no seam goes on, the steepest strut stands in it.</returns>
    public static ImmutableArray<int> Chain(Shell shell, ClosingWish wish, SeamPlan? plan = null)
    {
        ArgumentNullException.ThrowIfNull(shell);
        ArgumentNullException.ThrowIfNull(wish);

        var start = StartOf(shell, wish, plan);
        return start < 0 ? [] : ChainFrom(shell, start, wish, plan);
    }

    private static ImmutableArray<int> ChainFrom(Shell shell, int start, ClosingWish wish, SeamPlan? plan)
    {
        var hub = start;
        var chain = ImmutableArray.CreateBuilder<int>();
        chain.AddRange(EdgesAt(shell, hub).Where(edge => HubLabels.RingOf(Other(shell, edge, hub)) is null && shell.Edges[edge].Right >= 0));
        for (var ring = 0; ring < LastRing(shell, wish); ring++)
        {
            var up = EdgesAt(shell, hub).Where(edge => HubLabels.RingOf(Other(shell, edge, hub)) == ring + 1).ToArray();
            if (up.Length == 0)
            {
                break;
            }

            var seams = up.Where(edge => IsSeam(plan, edge)).ToArray();
            chain.Add(Steepest(shell, hub, seams.Length > 0 ? seams : up));
            hub = OtherEnd(shell.Edges[chain[^1]], hub);
        }

        return chain.ToImmutable();
    }

    private static bool IsSeam(SeamPlan? plan, int edge) => plan is null || plan.Edges[edge].Role == EdgeRole.Seam;

    /// <summary>Label of the base hub that the chain of a cut cover rises from; empty when there is none.</summary>
    public static string From(Shell shell, Subdivision cut) =>
        Edges(shell, cut).Where(edge => shell.Nodes[shell.Edges[edge].From].Ring is not null && shell.Nodes[shell.Edges[edge].To].Ring is not null)
            .Select(edge => new[] { shell.Nodes[shell.Edges[edge].From], shell.Nodes[shell.Edges[edge].To] }.MinBy(node => node.Ring)!.Label).FirstOrDefault(string.Empty);

    /// <summary>The struts that the chain of a cut cover runs over, from the base up.</summary>
    public static ImmutableArray<string> Struts(Shell shell, Subdivision cut)
    {
        ArgumentNullException.ThrowIfNull(shell);
        ArgumentNullException.ThrowIfNull(cut);

        return Named(shell, Edges(shell, cut));
    }

    /// <summary>The edges of the chain, from the base up.</summary>
    private static IEnumerable<int> Edges(Shell shell, Subdivision cut)
    {
        var closing = cut.FacesBeside(arc => arc.MakeUp is { IsClosing: true });
        return Enumerable.Range(0, shell.Edges.Length).Where(edge => closing.Contains((shell.Edges[edge].Left, shell.Edges[edge].Right)))
            .OrderBy(edge => Math.Min(shell.Nodes[shell.Edges[edge].From].Position.Z, shell.Nodes[shell.Edges[edge].To].Position.Z));
    }

    /// <summary>The struts among edges, in their order.</summary>
    private static ImmutableArray<string> Named(Shell shell, IEnumerable<int> edges) =>
    [
        .. edges
            .Where(edge => HubLabels.RingOf(shell.Nodes[shell.Edges[edge].From]) is not null && HubLabels.RingOf(shell.Nodes[shell.Edges[edge].To]) is not null)
            .Select(edge => HubLabels.StrutOf(shell, edge)),
    ];

    /// <summary>The ring of hubs that the chain ends at.</summary>
    public static int LastRing(Shell shell, ClosingWish wish)
    {
        ArgumentNullException.ThrowIfNull(wish);
        return wish.To ?? Math.Max(1, TopRing(shell) - 1);
    }

    /// <summary>The highest ring of hubs.</summary>
    public static int TopRing(Shell shell)
    {
        ArgumentNullException.ThrowIfNull(shell);
        return shell.Nodes.Max(node => HubLabels.RingOf(node) ?? 0);
    }

    /// <summary>Length of the cover round each ring of hubs that the chain crosses, along the cloth, after ease, millimetres.</summary>
    public static ImmutableArray<RingGirth> Girths(Shell shell, ClosingWish wish)
    {
        ArgumentNullException.ThrowIfNull(shell);

        return [.. Enumerable.Range(0, LastRing(shell, wish) + 1).Select(ring => new RingGirth(ring, shell.Edges
            .Where(edge => HubLabels.RingOf(shell.Nodes[edge.From]) == ring && HubLabels.RingOf(shell.Nodes[edge.To]) == ring)
            .Sum(edge => edge.LengthMm)))];
    }

    /// <summary>Index of the base hub that is named, or of the rearmost from which seams rise all the way; -1 when there is none.</summary>
    internal static int StartOf(Shell shell, ClosingWish wish, SeamPlan? plan)
    {
        if (!string.Equals(wish.At, ClosingWish.Rear, StringComparison.Ordinal))
        {
            return BaseHubs(shell).Where(hub => string.Equals(shell.Nodes[hub].Label, wish.At, StringComparison.Ordinal)).DefaultIfEmpty(-1).First();
        }

        var rearFirst = BaseHubs(shell).OrderBy(hub => Math.Round(shell.Nodes[hub].Position.Plan.X, 6)).ThenBy(hub => hub).ToArray();
        return rearFirst.Where(hub => ChainFrom(shell, hub, wish, plan).All(edge => IsSeam(plan, edge))).DefaultIfEmpty(rearFirst[0]).First();
    }

    internal static IEnumerable<int> BaseHubs(Shell shell) =>
        Enumerable.Range(0, shell.Nodes.Length).Where(node => HubLabels.RingOf(shell.Nodes[node]) == 0);

    private static IEnumerable<int> EdgesAt(Shell shell, int node) =>
        Enumerable.Range(0, shell.Edges.Length).Where(edge => shell.Edges[edge].From == node || shell.Edges[edge].To == node);

    private static int Steepest(Shell shell, int hub, int[] edges)
    {
        var steepest = edges.Max(Rise);
        var here = shell.Nodes[hub].Position.Plan;
        return edges.Where(edge => Rise(edge) >= steepest - EquallySteep)
            .MaxBy(edge => Math.Round(Point2.Cross(here, Other(shell, edge, hub).Position.Plan), 6));

        double Rise(int edge) => (Other(shell, edge, hub).Position.Z - shell.Nodes[hub].Position.Z) / shell.Edges[edge].LengthMm;
    }

    private static ShellNode Other(Shell shell, int edge, int node) => shell.Nodes[OtherEnd(shell.Edges[edge], node)];

    private static int OtherEnd(ShellEdge edge, int node) => edge.From == node ? edge.To : edge.From;
}
