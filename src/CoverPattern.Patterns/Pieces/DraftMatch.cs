using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Pieces;

/// <summary>How a draft equals another one that came before it.</summary>
/// <param name="Mirrored">Whether it is the mirror twin.</param>
/// <param name="RunOf">For each run of the earlier draft the index of the like run of this one.</param>
/// <param name="FaceOf">For each face of the earlier draft the index of the like face of this one.</param>
internal sealed record DraftMatch(bool Mirrored, ImmutableArray<int> RunOf, ImmutableArray<int> FaceOf)
{
    /// <summary>Finds out whether a draft is the same piece as an earlier one.</summary>
    /// <param name="model">The earlier draft.</param>
    /// <param name="draft">The draft asked about.</param>
    /// <param name="cloth">A one-way nap forbids turning; a face side forbids mirroring.</param>
    /// <param name="turns">Free turns leave the grain out of the comparison.</param>
    /// <returns>Null when they differ: in kind, in a run's class, side or allowance, in a fold, or anywhere by more than 0.002 mm.</returns>
    internal static DraftMatch? Find(PieceDraft model, PieceDraft draft, Cloth cloth, TurnRule turns)
    {
        var count = model.Runs.Length;
        if (draft.Kind != model.Kind || draft.Runs.Length != count || draft.Faces.Length != model.Faces.Length || draft.Folds.Length != model.Folds.Length)
        {
            return null;
        }

        foreach (var mirrored in cloth.HasFace ? new[] { false } : [false, true])
        {
            for (var shift = 0; shift < count; shift++)
            {
                ImmutableArray<int> runOf = [.. Enumerable.Range(0, count).Select(i => mirrored ? (shift + count - i) % count : (shift + i) % count)];
                if (RunsAgree(model, draft, runOf) && FaceOfTurned(model, draft, Corners(draft, runOf, mirrored), mirrored, Rule(cloth, turns)) is { } faceOf)
                {
                    return new DraftMatch(mirrored, runOf, faceOf);
                }
            }
        }

        return null;
    }

    private static TurnRule? Rule(Cloth cloth, TurnRule turns) => cloth.Nap == Nap.OneWay ? null : turns;

    private static bool RunsAgree(PieceDraft model, PieceDraft draft, ImmutableArray<int> runOf) => model.Runs.Zip(
        runOf.Select(run => draft.Runs[run]),
        (left, right) => left.Class == right.Class && left.Side == right.Side && left.Allowance == right.Allowance).All(same => same);

    /// <summary>The draft's corners in the model's order, mirrored if need be: a mirrored run begins at its last corner.</summary>
    private static Point2[] Corners(PieceDraft draft, ImmutableArray<int> runOf, bool mirrored) =>
    [
        .. runOf.Select(run => mirrored
            ? new Point2(draft.Corners[(run + 1) % draft.Corners.Length].X, -draft.Corners[(run + 1) % draft.Corners.Length].Y)
            : draft.Corners[run]),
    ];

    /// <summary>The like faces, once the outlines lie on each other in an allowed turn and the folds do too; null when they do not.</summary>
    private static ImmutableArray<int>? FaceOfTurned(PieceDraft model, PieceDraft draft, Point2[] corners, bool mirrored, TurnRule? turns)
    {
        var (centre, modelCentre) = (Middle(corners), Middle(model.Corners));
        foreach (var turn in Turns(model, corners, turns))
        {
            if (!model.Corners.Zip(corners).All(pair => AreSame(pair.First - modelCentre, turn.Apply(pair.Second - centre))))
            {
                continue;
            }

            Point2 Place(Point2 point) => modelCentre + turn.Apply((mirrored ? new Point2(point.X, -point.Y) : point) - centre);
            if (FoldsAgree(model, draft, Place) && LikeFaces(model, draft, Place) is { } faces)
            {
                return faces;
            }
        }

        return null;
    }

    private static bool FoldsAgree(PieceDraft model, PieceDraft draft, System.Func<Point2, Point2> place) => draft.Folds
        .Select(fold => (From: place(fold.From), To: place(fold.To)))
        .All(fold => model.Folds.Any(other =>
            (AreSame(other.From, fold.From) && AreSame(other.To, fold.To)) || (AreSame(other.From, fold.To) && AreSame(other.To, fold.From))));

    private static ImmutableArray<int>? LikeFaces(PieceDraft model, PieceDraft draft, System.Func<Point2, Point2> place)
    {
        Point2[] middles = [.. draft.Faces.Select(face => place(Middle(face)))];
        ImmutableArray<int> faceOf = [.. model.Faces.Select(face => System.Array.FindIndex(middles, middle => AreSame(middle, Middle(face))))];
        return faceOf.Contains(-1) || faceOf.Distinct().Count() != faceOf.Length ? null : faceOf;
    }

    private static IEnumerable<RigidMap> Turns(PieceDraft model, Point2[] corners, TurnRule? turns)
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

    private static bool AreSame(Point2 left, Point2 right) => Point2.Distance(left, right) <= ArcSorter.SameLength;

    private static Point2 Middle(IReadOnlyCollection<Point2> corners) =>
        (1.0 / corners.Count) * corners.Aggregate(default(Point2), (sum, corner) => sum + corner);
}
