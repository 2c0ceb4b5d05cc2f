using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Makes pieces of panels and of what is added to them: allowances, corners, notches, labels; equal pieces share a pattern.</summary>
public static class PieceFinisher
{
    /// <summary>Finishes every panel, for all covers of the job.</summary>
    /// <param name="job">Seams, hem, cloth and number of covers are read.</param>
    /// <param name="shell">The finished surface.</param>
    /// <param name="subdivision">The surface cut up.</param>
    /// <param name="panels">Its panels laid flat.</param>
    /// <param name="added">Pieces that are no part of the shell; none by default.</param>
    public static PieceFinishing Finish(
        Job job, Shell shell, Subdivision subdivision, ImmutableArray<Panel> panels, ImmutableArray<AddedPiece> added = default)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(shell);
        ArgumentNullException.ThrowIfNull(subdivision);

        var clips = ClipPatches.Plan(job, shell, subdivision, panels);
        ImmutableArray<AddedPiece> more = [.. added.IsDefault ? [] : added, .. ClipPatches.Pieces(job, clips)];
        var classes = ArcSorter.Sort([.. subdivision.Arcs.Select(ClassedLine.Of), .. AddedDrafts.Lines(more)]);
        var rims = subdivision.Arcs.Zip(classes).Where(entry => entry.First.Region is { Radius: null }).ToDictionary(entry => entry.First.Label, entry => entry.Second, StringComparer.Ordinal);
        var maker = new DraftMaker(job, shell, subdivision, classes);
        ImmutableArray<PieceDraft> drafts =
            [.. OneLabelEach(panels.Select(maker.Make)).Concat(AddedDrafts.Make(more, classes[subdivision.Arcs.Length..], rims)).OrderBy(draft => draft.Label, StringComparer.Ordinal)];
        var sorted = Sort(drafts, job);
        var hem = HemFold.Of(job.Hem);
        var bothWays = BothWays(sorted);
        var ties = TiePlanner.Plan(job, shell, subdivision);
        var marks = new DrawnMarks(job, ties, drafts, bothWays);
        ImmutableArray<Pattern> shapes =
            [.. sorted.Models.Select(model => RoofMarks.On(marks.On(HemMarks.Draw(PatternMaker.Make(model, bothWays, hem, job.Seam.Corners), model.FaceLabels, job.Hem), model), job)).Select((shape, i) => job.Marks.Pierce ? Piercing.On(shape, sorted.Models[i]) : shape)];
        var faults = shapes.SelectMany((shape, i) => PatternCheck.Faults(job, sorted.Models[i], shape)).DistinctBy(fault => fault.Place);
        var set = new PieceSet(Numbered(shapes, sorted, job), PieceLister.List(drafts, sorted, job.Covers)) { Ties = ties, ClipPatches = clips };
        return new PieceFinishing(set, [.. faults]) { Notices = [.. CornerCheck.Notices(job, set), .. ClipPatches.Notices(job, clips), .. Piercing.Notices(job, set)] };
    }

    /// <summary>A panel that an opening cuts in two is two pieces: the second is numbered.</summary>
    private static IEnumerable<PieceDraft> OneLabelEach(IEnumerable<PieceDraft> drafts)
    {
        var counts = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var draft in drafts)
        {
            var count = counts[draft.Label] = counts.GetValueOrDefault(draft.Label) + 1;
            yield return count == 1 ? draft : draft with { Label = string.Create(CultureInfo.InvariantCulture, $"{draft.Label}-{count}") };
        }
    }

    /// <summary>Finds the drafts that are equal.</summary>
    internal static SortedDrafts Sort(ImmutableArray<PieceDraft> drafts, Job job)
    {
        var models = new List<PieceDraft>();
        var matches = ImmutableArray.CreateBuilder<(int Model, DraftMatch Match)>();
        foreach (var draft in drafts)
        {
            var cloth = job.Cloths.Single(cloth => string.Equals(cloth.Name, draft.Cloth, StringComparison.Ordinal));
            var found = models
                .Select((model, i) => (i, Match: DraftMatch.Find(model, draft, cloth, job.Lay.Turns)))
                .FirstOrDefault(pair => pair.Match is not null);
            if (found.Match is null)
            {
                found = (models.Count, DraftMatch.Find(draft, draft, cloth, job.Lay.Turns));
                models.Add(draft);
            }

            matches.Add((found.i, found.Match!));
        }

        return new SortedDrafts([.. models], matches.ToImmutable());
    }

    /// <summary>Classes of seams on patterns of which both hands are cut: their marks must read alike from both ends.</summary>
    private static HashSet<string> BothWays(SortedDrafts sorted) =>
    [
        .. sorted.Matches.Where(entry => entry.Match.Mirrored)
            .SelectMany(entry => sorted.Models[entry.Model].Runs)
            .Select(run => run.Class.Label),
    ];

    private static ImmutableArray<Pattern> Numbered(ImmutableArray<Pattern> shapes, SortedDrafts sorted, Job job) =>
    [
        .. shapes.Select((shape, i) => shape with
        {
            Id = sorted.PatternId(i),
            Quantity = job.Covers * sorted.Matches.Count(entry => entry.Model == i),
        }),
    ];
}
