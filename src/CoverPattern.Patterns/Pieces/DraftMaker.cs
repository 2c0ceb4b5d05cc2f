using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Turns panels to their grain and gives every edge its allowance.</summary>
internal sealed class DraftMaker
{
    private readonly Job job;
    private readonly Shell shell;
    private readonly Subdivision subdivision;
    private readonly ImmutableArray<ArcClass> classes;
    private readonly ImmutableDictionary<int, PlannedPanel> panelOfFace;
    private readonly CornerNodes nodes;
    private readonly Dictionary<string, double> patchRadii;

    /// <param name="job">Hem, seams and cloth are read.</param>
    /// <param name="shell">The finished surface.</param>
    /// <param name="subdivision">The surface cut up.</param>
    /// <param name="classes">Class of every arc, in their order.</param>
    internal DraftMaker(Job job, Shell shell, Subdivision subdivision, ImmutableArray<ArcClass> classes)
    {
        this.job = job;
        this.shell = shell;
        this.subdivision = subdivision;
        this.classes = classes;
        panelOfFace = subdivision.Panels.SelectMany(panel => panel.Faces.Select(face => (face, panel))).ToImmutableDictionary(entry => entry.face, entry => entry.panel);
        nodes = new CornerNodes(shell, subdivision);
        patchRadii = HubPatchPlanner.Plan(job, shell, subdivision).ToDictionary(patch => patch.Hub, patch => patch.RadiusMm, StringComparer.Ordinal);
    }

    internal PieceDraft Make(Panel panel)
    {
        var turn = PanelTurn.Find(shell, subdivision, panel);
        ImmutableArray<int> faces = [.. panel.Patches.Select(patch => subdivision.Patches[patch].Face)];
        var planned = panelOfFace[faces[0]];
        var corners = turn.Apply(panel.Outline.Select(edge => edge.From));
        return new PieceDraft(
            planned.Label,
            job.Cloths[0].Name,
            KindOf(planned.Shape),
            corners,
            StopRoom.Fit([.. Arcs(panel.Outline).Select(MakeRun)], corners))
        {
            Faces = [.. panel.Patches.Zip(panel.FlatMaps, (patch, map) => turn.After(map).Apply(subdivision.Patches[patch].Corners))],
            FaceLabels = [.. faces.Select(face => shell.Faces[face].Label)],
            Folds = [.. panel.Folds.Select(fold => Line(panel, fold, turn))],
            Drawn = [.. panel.Patches.Zip(panel.FlatMaps).SelectMany(pair => subdivision.Drawn.Where(line => line.Patch == pair.First).Select(line => new MarkLine(turn.After(pair.Second).Apply(line.Path), line.Purpose)))],
            SplashLines = SplashBand.UpperLine(job, shell, subdivision, panel),
            Cutouts =
            [
                .. panel.Patches.Zip(panel.FlatMaps).SelectMany(pair => subdivision.Patches[pair.First].Holes.Select(hole => Cutout(hole, turn.After(pair.Second)))),
                .. panel.Holes.Select(hole => new DraftCutout(RegionOf(hole[0]).Purpose, MakeRun(hole)) { Ring = turn.Apply(hole.Select(edge => edge.From)) }),
            ],
        };
    }

    private static PieceKind KindOf(PanelShape shape) => shape switch
    {
        PanelShape.Facet => PieceKind.Facet,
        PanelShape.Band => PieceKind.Band,
        PanelShape.Gore => PieceKind.Gore,
        PanelShape.Group => PieceKind.Group,
        PanelShape.Skirt => PieceKind.Strip,
        _ => throw new ArgumentOutOfRangeException(nameof(shape), shape, "Unknown shape of a panel."),
    };

    /// <summary>Edges in order, those of one rim together.</summary>
    private IEnumerable<ImmutableArray<PanelEdge>> Arcs(ImmutableArray<PanelEdge> outline)
    {
        for (var (first, count) = (0, 0); first < outline.Length; first += count)
        {
            count = subdivision.Arcs[outline[first].Arc].Role == EdgeRole.Rim ? outline.Skip(first).TakeWhile(edge => edge.Arc == outline[first].Arc).Count() : 1;
            yield return outline.Slice(first, count);
        }
    }

    /// <summary>The region whose rim an edge is.</summary>
    private Region RegionOf(PanelEdge edge) => subdivision.Arcs[edge.Arc].Region!;

    private DraftRun MakeRun(ImmutableArray<PanelEdge> edges)
    {
        var edge = edges[0];
        var arc = subdivision.Arcs[edge.Arc];
        if (arc.Role == EdgeRole.Rim)
        {
            return new DraftRun(new ArcSide(arc.Label, IsSecond: false), classes[edge.Arc], EdgeSide.None, RegionOf(edge).Allowance) { Steps = edges.Length, Places = arc.Marks };
        }

        var side = arc.Role != EdgeRole.Seam ? EdgeSide.None : arc.First == edge.Side ? EdgeSide.Over : EdgeSide.Under;
        var allowance = arc.Role == EdgeRole.Hem
            ? job.Hem.Allowance
            : Allowance.OfSeam(arc.MakeUp!, side);
        return new DraftRun(new ArcSide(arc.Label, arc.First != edge.Side), classes[edge.Arc], side, allowance)
        {
            Stops = HubStops.Of(job, subdivision, nodes, edge.Side),
            Hubs = arc.Role == EdgeRole.Seam ? (nodes.IsHub(edge.Side), nodes.IsHub(subdivision.After(edge.Side))) : default,
            PatchRadius = nodes.NodeAt(edge.Side) is var node and >= 0 ? patchRadii.GetValueOrDefault(shell.Nodes[node].Label) : 0,
            PlainAllowance = arc.MakeUp is { IsFelled: true } felled ? Math.Min(allowance, felled.Width.Millimetres) : allowance,
        };
    }

    /// <summary>A hole, carried with its patch to the draft; its rim has the first side of the line on the cover.</summary>
    private DraftCutout Cutout(PatchHole hole, RigidMap map)
    {
        var region = hole.Region;
        var arc = subdivision.Arcs[hole.Arc];
        if (region.Radius is not { } radius)
        {
            return new DraftCutout(region.Purpose, new DraftRun(new ArcSide(arc.Label, IsSecond: false), classes[hole.Arc], EdgeSide.None, region.Allowance) { Steps = hole.Ring.Length, Places = arc.Marks })
            {
                Ring = map.Apply(hole.Ring),
            };
        }

        var up = map.Apply(region.Up) - map.Apply(default(Point2));
        return new DraftCutout(region.Purpose, new DraftRun(new ArcSide(arc.Label, IsSecond: false), classes[hole.Arc], EdgeSide.None, region.Allowance)
        {
            Round = new RoundEdge(map.Apply(region.Centre.At), radius, WindowMarks.Quarters(up, radius)),
        });
    }

    private FoldLine Line(Panel panel, int fold, RigidMap turn)
    {
        var side = subdivision.Arcs[fold].First;
        var map = turn.After(panel.FlatMaps[panel.Patches.IndexOf(side.Patch)]);
        var corners = subdivision.Patches[side.Patch].Corners;
        return new FoldLine(map.Apply(corners[side.Edge]), map.Apply(corners[(side.Edge + 1) % corners.Length]));
    }
}
