using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Makes the pieces of a splash band: for every panel that reaches down to the foot a second layer of its lower part.</summary>
/// <remarks>
/// Heights above the finished edge run evenly along every edge of the shell, so the band's upper line crosses a seam at one share
/// of it on both sides. The band lies on its panel before that is sewn: its sides go into the panel's seams and its foot into
/// the hem, with their allowances; its upper edge is turned under and stitched down.
/// </remarks>
public static class SplashBand
{
    // Common practice, no source: as the turn-under of a hem, millimetres.
    private const double TurnUnder = 12;

    // A scrap smaller than this is left off, square millimetres: a tip 20 mm wide and high.
    private const double LeastArea = 200;

    /// <summary>Purpose of the line on the panel beneath to which the upper edge is laid.</summary>
    internal const string LinePurpose = "splash line";

    // Corners nearer than this are one: rounding of double arithmetic at 100 m, millimetres.
    private const double OnePoint = 1e-6;

    /// <summary>The pieces, in order of the panels; none when no band is wished.</summary>
    /// <param name="job">Skirt, hem and their cloth are read.</param>
    /// <param name="shell">The finished surface.</param>
    /// <param name="cut">The surface cut up.</param>
    /// <param name="panels">Its panels laid flat.</param>
    public static ImmutableArray<AddedPiece> Make(Job job, Shell shell, Subdivision cut, ImmutableArray<Panel> panels)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(shell);
        ArgumentNullException.ThrowIfNull(cut);

        if (job.Skirt.Splash is not { } splash)
        {
            return [];
        }

        var pieces = ImmutableArray.CreateBuilder<AddedPiece>();
        var count = 0;
        foreach (var loop in panels.SelectMany(panel => Loops(shell, cut, panel, splash.Width.Millimetres)))
        {
            pieces.Add(AddedPiece.Polygon(
                "Q" + (pieces.Count + 1).ToString("D3", CultureInfo.InvariantCulture),
                splash.Cloth,
                PieceKind.Strip,
                [.. loop.Select(edge => (edge.From, Edge(job, cut, edge, "Q" + (++count).ToString("D4", CultureInfo.InvariantCulture))))]));
        }

        return pieces.ToImmutable();
    }

    /// <summary>The band's upper line on a panel, in its draft's coordinates; nothing when no band is wished.</summary>
    /// <param name="job">Its skirt is read.</param>
    /// <param name="shell">The finished surface.</param>
    /// <param name="cut">The surface cut up.</param>
    /// <param name="panel">One of its panels laid flat.</param>
    internal static ImmutableArray<FoldLine> UpperLine(Job job, Shell shell, Subdivision cut, Panel panel) => job.Skirt.Splash is not { } splash
        ? []
        : [.. Loops(shell, cut, panel, splash.Width.Millimetres).SelectMany(loop => loop).Where(edge => edge.Arc < 0).Select(edge => new FoldLine(edge.From, edge.To))];

    private static AddedEdge Edge(Job job, Subdivision cut, BandEdge edge, string label)
    {
        if (edge.Arc < 0)
        {
            return new AddedEdge(label, IsSecond: false, EdgeRole.Turned, TurnUnder);
        }

        var arc = cut.Arcs[edge.Arc];
        var allowance = arc.Role == EdgeRole.Hem ? job.Hem.Allowance : Allowance.OfSeam(arc.MakeUp!, arc.First == edge.Side ? EdgeSide.Over : EdgeSide.Under);
        return new AddedEdge(label, IsSecond: false, EdgeRole.Raw, allowance);
    }

    /// <summary>Outlines of the parts of a panel below the band's upper line.</summary>
    private static IEnumerable<ImmutableArray<BandEdge>> Loops(Shell shell, Subdivision cut, Panel panel, double width)
    {
        var turn = PanelTurn.Find(shell, cut, panel);
        var edges = panel.Patches.Zip(panel.FlatMaps).SelectMany(pair => Below(shell, cut, pair.First, width)
            .Select(edge => edge with { From = turn.After(pair.Second).Apply(edge.From), To = turn.After(pair.Second).Apply(edge.To) }))
            .Where(edge => edge.Arc < 0 || !panel.Folds.Contains(edge.Arc))
            .ToList();
        while (edges.Count > 0)
        {
            var loop = Chain(edges);
            if (Rings.SignedArea([.. loop.Select(edge => edge.From)]) >= LeastArea)
            {
                yield return loop;
            }
        }
    }

    /// <summary>Takes one closed outline out of a list of edges.</summary>
    private static ImmutableArray<BandEdge> Chain(List<BandEdge> edges)
    {
        var loop = ImmutableArray.CreateBuilder<BandEdge>();
        var next = 0;
        do
        {
            loop.Add(edges[next]);
            edges.RemoveAt(next);
            next = edges.FindIndex(edge => Point2.Distance(edge.From, loop[^1].To) <= OnePoint);
        }
        while (next >= 0 && Point2.Distance(loop[^1].To, loop[0].From) > OnePoint);

        return loop.ToImmutable();
    }

    /// <summary>What is left of a patch below the line, edge by edge.</summary>
    private static IEnumerable<BandEdge> Below(Shell shell, Subdivision cut, int index, double width)
    {
        var patch = cut.Patches[index];
        var heights = patch.Corners.Select(corner => HeightOf(shell, patch, corner) - width).ToArray();
        if (heights.Min() >= 0)
        {
            return [];
        }

        var count = heights.Length;
        var corners = new List<(Point2 At, int Edge)>();
        for (var i = 0; i < count; i++)
        {
            var (here, there) = (heights[i], heights[(i + 1) % count]);
            if (here <= 0)
            {
                corners.Add((patch.Corners[i], here == 0 && there > 0 ? -1 : i));
            }

            if (here * there < 0)
            {
                // From the lower end on either side of the edge, so that both sides round alike.
                var (low, high) = here < 0 ? (i, (i + 1) % count) : ((i + 1) % count, i);
                var at = Point2.Between(patch.Corners[low], patch.Corners[high], heights[low] / (heights[low] - heights[high]));
                corners.Add((at, here < 0 ? -1 : i));
            }
        }

        return corners.Select((corner, i) => new BandEdge(
            corner.At, corners[(i + 1) % corners.Count].At, corner.Edge < 0 ? -1 : patch.Arcs[corner.Edge], new PatchSide(index, corner.Edge)));
    }

    /// <summary>Height of a patch's corner above the finished edge: its node's, or between those of the edge of the face on which it lies.</summary>
    private static double HeightOf(Shell shell, Patch patch, Point2 corner)
    {
        var face = shell.Faces[patch.Face];
        var at = face.Chart.IndexOf(corner);
        if (at >= 0)
        {
            return shell.Nodes[face.Nodes[at]].AboveHem;
        }

        var count = face.Chart.Length;
        var edge = Enumerable.Range(0, count).MinBy(i => Segments.Distance(face.Chart[i], face.Chart[(i + 1) % count], corner));
        var share = Point2.Distance(face.Chart[edge], corner) / Point2.Distance(face.Chart[edge], face.Chart[(edge + 1) % count]);
        var (from, to) = (shell.Nodes[face.Nodes[edge]].AboveHem, shell.Nodes[face.Nodes[(edge + 1) % count]].AboveHem);
        return from + (share * (to - from));
    }

    /// <summary>An edge of the band.</summary>
    /// <param name="From">First corner.</param>
    /// <param name="To">Last corner.</param>
    /// <param name="Arc">The panel's arc that it lies on; -1 for the band's upper line.</param>
    /// <param name="Side">Which side of the arc.</param>
    private sealed record BandEdge(Point2 From, Point2 To, int Arc, PatchSide Side);
}
