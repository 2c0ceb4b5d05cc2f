using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Pieces;

/// <summary>How a draft equals another one that came before it.</summary>
/// <param name="Mirrored">Whether it is the mirror twin.</param>
/// <param name="RunOf">For each run of the earlier draft the index of the like run of this one.</param>
internal sealed record DraftMatch(bool Mirrored, ImmutableArray<int> RunOf)
{
    /// <summary>Finds out whether a draft is the same piece as an earlier one.</summary>
    /// <param name="model">The earlier draft.</param>
    /// <param name="draft">The draft asked about.</param>
    /// <param name="cloth">A one-way nap forbids turning; a face side forbids mirroring.</param>
    /// <param name="turns">Free turns leave the grain out of the comparison.</param>
    /// <returns>Null when they differ: in a run's class, side or allowance, or anywhere by more than 0.002 mm.</returns>
    internal static DraftMatch? Find(PieceDraft model, PieceDraft draft, Cloth cloth, TurnRule turns)
    {
        var count = model.Runs.Length;
        if (draft.Runs.Length != count || draft.Faces.Length != model.Faces.Length)
        {
            return null;
        }

        foreach (var mirrored in cloth.HasFace ? new[] { false } : [false, true])
        {
            for (var shift = 0; shift < count; shift++)
            {
                ImmutableArray<int> runOf = [.. Enumerable.Range(0, count).Select(i => mirrored ? (shift + count - i) % count : (shift + i) % count)];
                if (RunsAgree(model, draft, runOf) && ShapesAgree(model, Corners(draft, runOf, mirrored), cloth.Nap, turns))
                {
                    return new DraftMatch(mirrored, runOf);
                }
            }
        }

        return null;
    }

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

    private static bool ShapesAgree(PieceDraft model, Point2[] corners, Nap nap, TurnRule turns)
    {
        var (centre, modelCentre) = (Middle(corners), Middle(model.Corners));
        return Turns(model, corners, nap, turns).Any(turn => model.Corners.Zip(corners).All(pair =>
            Point2.Distance(pair.First - modelCentre, turn.Apply(pair.Second - centre)) <= ArcSorter.SameLength));
    }

    private static IEnumerable<RigidMap> Turns(PieceDraft model, Point2[] corners, Nap nap, TurnRule turns)
    {
        yield return RigidMap.Identity;
        if (nap == Nap.OneWay)
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
}
