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

/// <summary>Finds the patches under the clips of inside corners and makes pieces of them: round, of the cover's cloth, cut to their size.</summary>
/// <remarks>They are found on the finished shape of the piece, so that a patch and the arc drawn for it come from one clip line.</remarks>
internal static class ClipPatches
{
    // So far, at least, the patch reaches beyond the clip; common practice, no source, millimetres.
    private const double Beyond = 20;
    private const double LeastBeyond = 5;

    // It takes at most this share of the shorter edge at the corner, as the patch of a hub does.
    private const double LargestShare = 0.4;

    /// <summary>Radius of the patch under a clip, whole millimetres; 0 where no clip is drawn.</summary>
    /// <param name="pattern">The pattern, its cut line drawn.</param>
    /// <param name="corner">One of its inside corners.</param>
    internal static double RadiusOf(Pattern pattern, InsideCorner corner)
    {
        var clip = corner.Clip(pattern.CutLine).FirstOrDefault();
        if (clip is null)
        {
            return 0;
        }

        var runs = pattern.Runs;
        var shorter = Math.Min(runs[corner.Run].LengthMm, runs[(corner.Run + runs.Length - 1) % runs.Length].LengthMm);
        var reach = Point2.Distance(clip.Path[0], corner.At);
        return Math.Ceiling(Math.Max(reach + LeastBeyond, Math.Min(reach + Beyond, LargestShare * shorter)));
    }

    /// <summary>Radius of the patch that is cut for a clip; 0 where none is needed: there is no clip, or a patch over the hub is as large.</summary>
    /// <param name="pattern">The pattern.</param>
    /// <param name="draft">The draft that it was made from.</param>
    /// <param name="corner">One of its inside corners.</param>
    internal static double CutRadius(Pattern pattern, PieceDraft draft, InsideCorner corner)
    {
        var radius = RadiusOf(pattern, corner);
        return draft.Runs[corner.Run].PatchRadius >= radius ? 0 : radius;
    }

    /// <summary>The patches of one cover, in order of the labels of their pieces.</summary>
    /// <param name="job">Hem, corners and cloth are read.</param>
    /// <param name="shell">The finished surface.</param>
    /// <param name="cut">The surface cut up.</param>
    /// <param name="panels">Its panels laid flat.</param>
    internal static ImmutableArray<ClipPatch> Plan(Job job, Shell shell, Subdivision cut, ImmutableArray<Panel> panels)
    {
        var bent = panels.Where(panel => HasInsideCorner(panel.Outline)).ToArray();
        if (bent.Length == 0)
        {
            return [];
        }

        var (maker, nodes) = (new DraftMaker(job, shell, cut, ArcSorter.Sort([.. cut.Arcs.Select(ClassedLine.Of)])), new CornerNodes(shell, cut));
        (Panel Panel, PieceDraft Draft)[] drafts = [.. bent.Select(panel => (panel, maker.Make(panel))).OrderBy(entry => entry.Item2.Label, StringComparer.Ordinal)];
        var sorted = PieceFinisher.Sort([.. drafts.Select(entry => entry.Draft)], job);
        var corners = sorted.Models.Select(model => CornersOf(job, model)).ToArray();
        var counts = new Dictionary<string, int>(StringComparer.Ordinal);
        var patches = ImmutableArray.CreateBuilder<ClipPatch>();
        foreach (var ((panel, draft), (model, match)) in drafts.Zip(sorted.Matches))
        {
            foreach (var (run, radius) in corners[model])
            {
                var hub = HubAt(shell, nodes, panel.Outline[match.RunOf[run]].Side, cut, match.Mirrored);
                var number = counts[hub] = counts.GetValueOrDefault(hub) + 1;
                patches.Add(new ClipPatch(hub + "-clip" + (number > 1 ? number.ToString(CultureInfo.InvariantCulture) : string.Empty), draft.Label, hub, radius));
            }
        }

        return patches.ToImmutable();
    }

    /// <summary>The pieces that are cut.</summary>
    internal static IEnumerable<AddedPiece> Pieces(Job job, ImmutableArray<ClipPatch> patches) => patches.Select(patch => AddedPiece.Disc(
        patch.Label, job.Cloths[0].Name, PieceKind.Patch, new AddedEdge(patch.Label, IsSecond: false, EdgeRole.Raw, 0) { Radius = patch.RadiusMm }));

    /// <summary>One note on all of them.</summary>
    internal static IEnumerable<Notice> Notices(Job job, ImmutableArray<ClipPatch> patches)
    {
        if (!patches.IsEmpty)
        {
            var sizes = patches.Select(patch => 2 * patch.RadiusMm).Distinct().Order().Select(size => size.ToString("0", CultureInfo.InvariantCulture));
            var corners = patches.Length == 1 ? "1 inside corner of one cover gets" : FormattableString.Invariant($"{patches.Length} inside corners of one cover get");
            yield return new Notice(
                NoticeLevel.Note,
                "clip-patches",
                patches[0].Label,
                FormattableString.Invariant($"{corners} a patch under the clip, round, of {job.Cloths[0].Name}, {string.Join(", ", sizes)} mm across: {patches[0].Label} goes on {patches[0].Piece} at {patches[0].Hub}{(patches.Length == 1 ? string.Empty : ", and so on by their labels")}. Lay it on the inside with its middle on the pivot mark, stitch it down, then clip."));
        }
    }

    private static ImmutableArray<(int Run, double Radius)> CornersOf(Job job, PieceDraft model)
    {
        var pattern = PatternMaker.Make(model, ImmutableHashSet<string>.Empty, HemFold.Of(job.Hem), job.Seam.Corners);
        return [.. InsideCorner.Find(pattern).Select(corner => (corner.Run, CutRadius(pattern, model, corner))).Where(entry => entry.Item2 > 0)];
    }

    /// <summary>A quick look: whether any corner of an outline bends inward at all.</summary>
    private static bool HasInsideCorner(ImmutableArray<PanelEdge> outline) => Enumerable.Range(0, outline.Length).Any(i =>
        outline[i] is var before && outline[(i + 1) % outline.Length] is var after && Point2.Cross(before.To - before.From, after.To - after.From) < 0);

    /// <summary>The corner at which a run of the model begins: the end of the like edge where the piece is its mirror twin.</summary>
    private static string HubAt(Shell shell, CornerNodes nodes, PatchSide side, Subdivision cut, bool mirrored)
    {
        var corner = mirrored ? side with { Edge = (side.Edge + 1) % cut.Patches[side.Patch].Corners.Length } : side;
        return nodes.NodeAt(corner) is var node and >= 0 ? shell.Nodes[node].Label : FormattableString.Invariant($"E{side.Patch}.{side.Edge}");
    }
}
