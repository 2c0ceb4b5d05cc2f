using System;
using System.Collections.Generic;
using System.Linq;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>What is wrong between two edges that are to be sewn together.</summary>
internal static class SeamFaults
{
    // Centres nearer in height than this are level, millimetres.
    private const double Level = 1e-6;

    // Own rule of the patterns' page: a seam longer than this cannot be sewn without a mark on the way, millimetres.
    private const double LongestUnmarked = 300;

    /// <param name="here">One piece.</param>
    /// <param name="run">Its run.</param>
    /// <param name="there">The piece it names as its partner.</param>
    /// <param name="stripsApart">Whether skirts stand each on its own chord: then only their edges are held to each other, not their places.</param>
    /// <param name="plan">What was ordered to be cut as one piece, and which seams to be turned.</param>
    internal static IEnumerable<string> Find(PlacedPiece here, int run, PlacedPiece there, bool stripsApart, SewnPlan plan)
    {
        var other = here.Piece.Runs[run].PartnerRun;
        var name = $"Seam {here.Piece.Runs[run].Arc}, {here.Piece.Label} run {run} to {there.Piece.Label} run {other}:";
        var (back, arc) = (there.Piece.Runs[other], here.Piece.Runs[run].Arc);
        return back.Partner != here.Piece.Label || back.PartnerRun != run || back.Arc != arc
            ? [$"{name} the partner is joined to {back.Partner} run {back.PartnerRun} by {back.Arc}."]
            : PlaceFaults((here, run), (there, other), stripsApart && here.FaceOf(run).IsSkirt).Concat(SideFaults((here, run), (there, other), plan)).Select(fault => $"{name} {fault}");
    }

    private static IEnumerable<string> PlaceFaults((PlacedPiece Piece, int Run) here, (PlacedPiece Piece, int Run) there, bool apart)
    {
        var (length, otherLength) = (here.Piece.Pattern.Runs[here.Run].LengthMm, there.Piece.Pattern.Runs[there.Run].LengthMm);
        if (!(Math.Abs(length - otherLength) <= Tolerances.PartnerLength))
        {
            yield return FormattableString.Invariant($"{length} mm are to be sewn to {otherLength} mm.");
        }

        var (line, back) = (here.Piece.LineOf(here.Run), there.Piece.LineOf(there.Run));
        var gap = Math.Max(line.From.DistanceTo(back.To), line.To.DistanceTo(back.From));
        var bend = here.Piece.FaceOf(here.Run).Bend + there.Piece.FaceOf(there.Run).Bend;
        if (!apart && !(gap <= Tolerances.OnCover + bend))
        {
            yield return FormattableString.Invariant($"the edges lie {gap:0.####} mm apart.");
        }

        var (notches, others) = (here.Piece.NotchesOf(here.Run), there.Piece.NotchesOf(there.Run).Reverse().ToArray());
        if (notches.Count != others.Length || (notches.Count == 0 && length > LongestUnmarked))
        {
            yield return FormattableString.Invariant($"{notches.Count} notches meet {others.Length} on {length:0.#} mm.");
        }

        // Apart, the notches are held to each other by their way from the seam's end.
        double Miss(SpacePoint notch, SpacePoint other) => apart ? Math.Abs(notch.DistanceTo(line.From) - other.DistanceTo(back.To)) : notch.DistanceTo(other);
        foreach (var (notch, other) in notches.Zip(others).Where(pair => !(Miss(pair.First, pair.Second) <= Tolerances.Notch + bend)))
        {
            yield return FormattableString.Invariant($"the notch {notch.DistanceTo(line.From):0.###} mm from its start misses its partner by {Miss(notch, other):0.####} mm.");
        }
    }

    private static IEnumerable<string> SideFaults((PlacedPiece Piece, int Run) here, (PlacedPiece Piece, int Run) there, SewnPlan plan)
    {
        var (side, otherSide) = (here.Piece.Pattern.Runs[here.Run].Side, there.Piece.Pattern.Runs[there.Run].Side);
        var (face, other) = (here.Piece.FaceOf(here.Run), there.Piece.FaceOf(there.Run));
        var isUpright = SewnPlan.RowOf(face.Label) == SewnPlan.RowOf(other.Label) && !plan.IsSingle(here.Piece.Piece) && !plan.IsSingle(there.Piece.Piece);
        var isOver = plan.IsRoofEdge(face.Label, other.Label) ? plan.Roof.Contains(face.Label) : LiesOver(face, other, isUpright) != plan.Turned.Contains(SewnPlan.Pair(face.Label, other.Label));
        if (side != (isOver ? "over" : "under") || otherSide != (isOver ? "under" : "over"))
        {
            yield return $"{side} meets {otherSide}; the first should lie {(isOver ? "over" : "under")}.";
        }
    }

    /// <summary>
    /// The higher face sheds water onto the lower; of level ones, and between parts of one row, the counter-clockwise neighbour lies over,
    /// of two opposite across the middle the one with the later label.
    /// </summary>
    private static bool LiesOver(TrueFace face, TrueFace other, bool isUpright)
    {
        var (centre, otherCentre) = (face.Centre, other.Centre);
        var turn = (otherCentre.X * centre.Y) - (otherCentre.Y * centre.X);
        var isOpposite = Math.Abs(turn) <= Level * Math.Sqrt(Math.Max((centre.X * centre.X) + (centre.Y * centre.Y), (otherCentre.X * otherCentre.X) + (otherCentre.Y * otherCentre.Y)));
        return !isUpright && Math.Abs(centre.Z - otherCentre.Z) > Level ? centre.Z > otherCentre.Z
            : isOpposite ? string.CompareOrdinal(face.Label, other.Label) > 0
            : turn > 0;
    }
}
