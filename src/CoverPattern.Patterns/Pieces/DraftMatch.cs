using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Pieces;

/// <summary>How a draft equals another one that came before it.</summary>
/// <param name="Mirrored">Whether it is the mirror twin.</param>
/// <param name="RunOf">For each run of the earlier draft, those of holes last, the index of the like run of this one.</param>
/// <param name="FaceOf">For each face of the earlier draft the index of the like face of this one.</param>
internal sealed record DraftMatch(bool Mirrored, ImmutableArray<int> RunOf, ImmutableArray<int> FaceOf)
{
    /// <summary>Finds out whether a draft is the same piece as an earlier one.</summary>
    /// <param name="model">The earlier draft.</param>
    /// <param name="draft">The draft asked about.</param>
    /// <param name="cloth">A one-way nap forbids turning; a face side forbids mirroring.</param>
    /// <param name="turns">Free turns leave the grain out of the comparison.</param>
    /// <returns>Null when they differ: in cloth or kind, in a run's class, side or allowance, in a fold, or anywhere by more than 0.002 mm.</returns>
    internal static DraftMatch? Find(PieceDraft model, PieceDraft draft, Cloth cloth, TurnRule turns)
    {
        var count = model.Runs.Length;
        if (!AreComparable(model, draft))
        {
            return null;
        }

        // Rims are marked from their beginning: their mirror twins are pieces of their own.
        foreach (var mirrored in cloth.HasFace || model.AllRuns.Any(run => run.Class.Role == EdgeRole.Rim && run.Round is null) ? new[] { false } : [false, true])
        {
            for (var shift = 0; shift < count; shift++)
            {
                ImmutableArray<int> runOf = [.. Enumerable.Range(0, count).Select(i => mirrored ? (shift + count - i) % count : (shift + i) % count)];
                if (RunsAgree(model, draft, runOf) && HubsAgree(model, draft, runOf, mirrored) && WithHoles(model, new TurnedDraft(draft, mirrored, runOf), Rule(cloth, turns)) is { } match)
                {
                    return match;
                }
            }
        }

        return null;
    }

    private static bool AreComparable(PieceDraft model, PieceDraft draft) =>
        draft.Kind == model.Kind
        && string.Equals(draft.Cloth, model.Cloth, StringComparison.Ordinal)
        && draft.Corners.Length == model.Corners.Length
        && draft.Runs.Length == model.Runs.Length
        && draft.Faces.Length == model.Faces.Length
        && draft.Folds.Length == model.Folds.Length
        && draft.SplashLines.Length == model.SplashLines.Length
        && ((draft.Drawn.IsEmpty && model.Drawn.IsEmpty) || ReferenceEquals(draft, model))
        && draft.Cutouts.Length == model.Cutouts.Length;

    /// <summary>How a draft may be turned; null: not at all.</summary>
    private static TurnRule? Rule(Cloth cloth, TurnRule turns) => cloth.Nap == Nap.OneWay ? null : turns;

    private static bool RunsAgree(PieceDraft model, PieceDraft draft, ImmutableArray<int> runOf) =>
        model.Runs.Zip(runOf.Select(run => draft.Runs[run]), Alike).All(same => same);

    private static bool Alike(DraftRun left, DraftRun right) => left.Class == right.Class
        && left.Side == right.Side
        && left.Allowance == right.Allowance
        && left.Steps == right.Steps
        && PlacesAgree(left.Places, right.Places)
        && left.Round?.Marks.Length == right.Round?.Marks.Length;

    private static bool PlacesAgree(ImmutableArray<(double At, string Purpose)> left, ImmutableArray<(double At, string Purpose)> right) =>
        left.Length == right.Length
        && left.Zip(right).All(pair => Math.Abs(pair.First.At - pair.Second.At) <= ArcSorter.SameLength && string.Equals(pair.First.Purpose, pair.Second.Purpose, StringComparison.Ordinal));

    /// <summary>Whether hubs, stops and patches are at the same ends; a mirrored run begins at its last corner.</summary>
    private static bool HubsAgree(PieceDraft model, PieceDraft draft, ImmutableArray<int> runOf, bool mirrored) => model.Runs.Zip(runOf).All(pair =>
    {
        var (run, like, begins) = (pair.First, draft.Runs[pair.Second], draft.Runs[mirrored ? (pair.Second + 1) % draft.Runs.Length : pair.Second]);
        return run.Stops == (mirrored ? (like.Stops.AtEnd, like.Stops.AtStart) : like.Stops)
            && run.Hubs == (mirrored ? (like.Hubs.AtEnd, like.Hubs.AtStart) : like.Hubs)
            && run.PatchRadius == begins.PatchRadius;
    });

    private static DraftMatch? WithHoles(PieceDraft model, TurnedDraft draft, TurnRule? turns)
    {
        var corners = draft.Corners;
        var (centre, modelCentre) = (Middle(corners), Middle(model.Corners));
        foreach (var turn in Turns(model, corners, turns))
        {
            var map = turn with { Shift = modelCentre - turn.Apply(centre) };
            if (model.Corners.Zip(corners).All(pair => Point2.Distance(pair.First, map.Apply(pair.Second)) <= ArcSorter.SameLength)
                && model.Runs.Zip(draft.RunOf).All(pair => MarksAgree(pair.First, draft.RoundOf(draft.Draft.Runs[pair.Second]), map))
                && HolesOf(model, draft, map) is { } holes
                && LinesAgree(model.Folds, draft.Draft.Folds, draft, map)
                && LinesAgree(model.SplashLines, draft.Draft.SplashLines, draft, map)
                && FacesOf(model, draft, map) is { } faces)
            {
                return new DraftMatch(draft.Mirrored, [.. draft.RunOf, .. holes.Select(hole => model.Runs.Length + hole)], faces);
            }
        }

        return null;
    }

    /// <summary>For each hole of the model the index of the one that lies there in the draft; null when one finds none.</summary>
    private static int[]? HolesOf(PieceDraft model, TurnedDraft draft, RigidMap map)
    {
        int[] holes = [.. model.Cutouts.Select(hole => Enumerable.Range(0, draft.Draft.Cutouts.Length)
            .Where(i => IsSame(hole, draft.Draft.Cutouts[i]) && AreOneRing(hole.Ring, draft.Draft.Cutouts[i].Ring, map) && MarksAgree(hole.Run, draft.RoundOf(draft.Draft.Cutouts[i].Run), map))
            .DefaultIfEmpty(-1).First())];
        return holes.Contains(-1) ? null : holes;
    }

    private static bool LinesAgree(ImmutableArray<FoldLine> model, ImmutableArray<FoldLine> lines, TurnedDraft draft, RigidMap map) => lines
        .Select(fold => (From: map.Apply(draft.PointOf(fold.From)), To: map.Apply(draft.PointOf(fold.To))))
        .All(fold => model.Any(other =>
            (AreSame(other.From, fold.From) && AreSame(other.To, fold.To)) || (AreSame(other.From, fold.To) && AreSame(other.To, fold.From))));

    /// <summary>For each face of the model the index of the one that lies there in the draft; null when one finds none.</summary>
    private static ImmutableArray<int>? FacesOf(PieceDraft model, TurnedDraft draft, RigidMap map)
    {
        Point2[] middles = [.. draft.Draft.Faces.Select(face => map.Apply(draft.PointOf(Middle(face))))];
        ImmutableArray<int> faceOf = [.. model.Faces.Select(face => Array.FindIndex(middles, middle => AreSame(middle, Middle(face))))];
        return faceOf.Contains(-1) || faceOf.Distinct().Count() != faceOf.Length ? null : faceOf;
    }

    private static bool AreSame(Point2 left, Point2 right) => Point2.Distance(left, right) <= ArcSorter.SameLength;

    private static bool AreOneRing(ImmutableArray<Point2> model, ImmutableArray<Point2> ring, RigidMap map) =>
        model.Length == ring.Length && model.Zip(ring).All(pair => AreSame(pair.First, map.Apply(pair.Second)));

    private static bool IsSame(DraftCutout left, DraftCutout right) =>
        string.Equals(left.Purpose, right.Purpose, StringComparison.Ordinal) && Alike(left.Run, right.Run);

    /// <summary>Whether circles and the marks on them lie in one place; each mark of one has a mark of the other there.</summary>
    private static bool MarksAgree(DraftRun model, RoundEdge? round, RigidMap map) => model.Round is null || round is null
        ? model.Round is null && round is null
        : Point2.Distance(model.Round.Centre, map.Apply(round.Centre)) <= ArcSorter.SameLength
            && model.Round.Marks.All(mark => round.Marks.Any(other => IsSame(mark, (map with { Shift = default }).Apply(other), model.Round.Radius)));

    private static bool IsSame(Point2 mark, Point2 other, double radius) => radius * Point2.Distance(mark, other) <= ArcSorter.SameLength;

    private static IEnumerable<RigidMap> Turns(PieceDraft model, IReadOnlyList<Point2> corners, TurnRule? turns)
    {
        yield return RigidMap.Identity;
        if (turns is null)
        {
            yield break;
        }

        yield return RigidMap.FromDegrees(180, default, mirrored: false);
        if (turns == TurnRule.Free)
        {
            yield return RigidMap.Laying(corners[0], corners[1], model.Corners[0], model.Corners[1]) with { Shift = default };
        }
    }

    private static Point2 Middle(IReadOnlyCollection<Point2> corners) =>
        (1.0 / corners.Count) * corners.Aggregate(default(Point2), (sum, corner) => sum + corner);

    /// <summary>A draft in a model's order of runs, mirrored if need be: a mirrored run begins at its last corner.</summary>
    private sealed record TurnedDraft(PieceDraft Draft, bool Mirrored, ImmutableArray<int> RunOf)
    {
        internal ImmutableArray<Point2> Corners { get; } = InOrder(Draft, Mirrored, RunOf[0]);

        internal RoundEdge? RoundOf(DraftRun run) => run.Round is not { } round || !Mirrored
            ? run.Round
            : new RoundEdge(MirrorOf(round.Centre), round.Radius, [.. round.Marks.Select(MirrorOf)]);

        internal Point2 PointOf(Point2 point) => Mirrored ? MirrorOf(point) : point;

        private static ImmutableArray<Point2> InOrder(PieceDraft draft, bool mirrored, int first)
        {
            var count = draft.Corners.Length;
            return mirrored
                ? [.. Enumerable.Range(0, count).Select(i => MirrorOf(draft.Corners[(draft.End(first) + count - i) % count]))]
                : [.. Enumerable.Range(0, count).Select(i => draft.Corners[(draft.Start(first) + i) % count])];
        }

        private static Point2 MirrorOf(Point2 point) => point with { Y = -point.Y };
    }
}
