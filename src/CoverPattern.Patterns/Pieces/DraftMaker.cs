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
    }

    internal PieceDraft Make(Panel panel)
    {
        var turn = RigidMap.FromDegrees(IsUpsideDown(panel) ? 180 : 0, default, mirrored: false);
        var faces = panel.Patches.Select(patch => shell.Faces[subdivision.Patches[patch].Face]).ToArray();
        return new PieceDraft(
            "P" + faces[0].Label[1..],
            job.Cloths[0].Name,
            PieceKind.Facet,
            turn.Apply(panel.Outline.Select(edge => edge.From)),
            [.. panel.Outline.Select(MakeRun)])
        {
            Faces = [.. panel.Patches.Zip(panel.FlatMaps, (patch, map) => turn.After(map).Apply(subdivision.Patches[patch].Corners))],
            FaceLabels = [.. faces.Select(face => face.Label)],
            Folds = [.. panel.Folds.Select(fold => Line(panel, fold, turn))],
            Cutouts = [.. panel.Patches.Zip(panel.FlatMaps).SelectMany(pair => subdivision.Patches[pair.First].Holes.Select(hole => Cutout(hole, turn.After(pair.Second))))],
        };
    }

    /// <summary>Charts begin with the ring edge on +x; where the face hangs below that edge, up the cover is down the chart.</summary>
    private bool IsUpsideDown(Panel panel)
    {
        var nodes = shell.Faces[subdivision.Patches[panel.Patches[0]].Face].Nodes.Select(node => shell.Nodes[node].Position.Z).ToArray();
        return nodes.Average() < (nodes[0] + nodes[1]) / 2;
    }

    private DraftRun MakeRun(PanelEdge edge)
    {
        var arc = subdivision.Arcs[edge.Arc];
        var side = arc.Role != EdgeRole.Seam ? EdgeSide.None : arc.First == edge.Side ? EdgeSide.Over : EdgeSide.Under;
        var allowance = arc.Role == EdgeRole.Hem
            ? job.Hem.Allowance
            : Allowance.OfSeam(arc.MakeUp!, side);
        return new DraftRun(new ArcSide(arc.Label, arc.First != edge.Side), classes[edge.Arc], side, allowance);
    }

    /// <summary>A hole, carried with its patch to the draft; its rim has the first side of the line on the cover.</summary>
    private DraftCutout Cutout(PatchHole hole, RigidMap map)
    {
        var region = hole.Region;
        var up = map.Apply(region.Up) - map.Apply(default(Point2));
        return new DraftCutout(region.Purpose, new DraftRun(new ArcSide(region.Label, IsSecond: false), classes[hole.Arc], EdgeSide.None, region.Allowance)
        {
            Round = new RoundEdge(map.Apply(region.Centre.At), region.Radius, WindowMarks.Quarters(up, region.Radius)),
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
