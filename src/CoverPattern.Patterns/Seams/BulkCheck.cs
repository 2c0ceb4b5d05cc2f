using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Seams;

/// <summary>Holds crossings to the shop's limits.</summary>
public static class BulkCheck
{
    private const string Stopping = "Let felled seams stop short of hubs (seam.stopAtHubs), or take";

    /// <summary>Faults for crossings thicker than the machine sews; none where the cloth's thickness is not stated.</summary>
    /// <param name="job">Its limits are read.</param>
    /// <param name="bulks">All crossings counted.</param>
    public static ImmutableArray<Fault> Faults(Job job, ImmutableArray<CrossingBulk> bulks)
    {
        ArgumentNullException.ThrowIfNull(job);
        var limit = job.Limits.Thickness;
        var over = bulks.Where(bulk => bulk.ThicknessMm > limit.Millimetres).ToArray();
        if (over.Length == 0)
        {
            return [];
        }

        var worst = over.MaxBy(bulk => bulk.Plies)!;
        return
        [
            new Fault(
                "limits.thickness",
                limit.Typed,
                FormattableString.Invariant($"{worst.Crossing.Label}: {Meeting(worst)} to {worst.Plies} plies, {worst.ThicknessMm:0.#} mm of a cloth {job.Cloths[0].Thickness!.Value.Millimetres:0.##} mm thick; {over.Length} of {bulks.Length} crossings are over the limit. {WayOut(job, worst)}")),
        ];
    }

    /// <summary>Notices: where too many seams meet, and how many plies the crossings come to.</summary>
    /// <param name="job">Its limits are read.</param>
    /// <param name="bulks">All crossings counted.</param>
    public static ImmutableArray<Notice> Notices(Job job, ImmutableArray<CrossingBulk> bulks)
    {
        ArgumentNullException.ThrowIfNull(job);
        return [.. TooMany(job, bulks), .. Bare(job, bulks), .. Summary(bulks)];
    }

    private static IEnumerable<Notice> TooMany(Job job, ImmutableArray<CrossingBulk> bulks)
    {
        var over = bulks.Where(bulk => bulk.Seams > LimitFor(job.Limits, bulk)).ToArray();
        if (over.Length > 0)
        {
            var worst = over.MaxBy(bulk => bulk.Seams - LimitFor(job.Limits, bulk))!;
            yield return new Notice(
                NoticeLevel.Warning,
                "seams-meeting",
                worst.Crossing.Label,
                FormattableString.Invariant($"{worst.Seams} seams meet at {worst.Crossing.Label}, more than the shop's limit of {LimitFor(job.Limits, worst)}; so at {over.Length} of {bulks.Length} crossings. {FewerWays(job, worst)}"));
        }
    }

    private static IEnumerable<Notice> Bare(Job job, ImmutableArray<CrossingBulk> bulks)
    {
        var stops = bulks.Where(bulk => bulk.StopsShort).ToArray();
        if (stops.Length > 0 && job.Marks.PatchesAtHub == 0)
        {
            yield return new Notice(
                NoticeLevel.Warning,
                "stops-without-patch",
                stops[0].Crossing.Label,
                FormattableString.Invariant($"Felled seams stop short of {stops.Length} hubs, and no patch lies over them: there the seam is plain and lets water in. Ask for patches (marks.hubPatches), or let the seams run through (seam.stopAtHubs)."));
        }
    }

    private static IEnumerable<Notice> Summary(ImmutableArray<CrossingBulk> bulks)
    {
        var most = bulks.Where(bulk => bulk.Seams > 0).MaxBy(bulk => bulk.Plies);
        if (most is not null)
        {
            var thickness = most.ThicknessMm is { } mm ? FormattableString.Invariant($", {mm:0.#} mm") : "; how thick that is the job does not tell (cloths[0].thickness)";
            yield return new Notice(
                NoticeLevel.Note,
                "crossings",
                most.Crossing.Label,
                FormattableString.Invariant($"Seams meet at {bulks.Count(bulk => bulk.Seams > 1)} places. Thickest is {most.Crossing.Label}: {Meeting(most)} to {most.Plies} plies{thickness}."));
        }
    }

    private static int LimitFor(LimitWish limits, CrossingBulk bulk) => bulk.Crossing.Place is CrossingPlace.Hub or CrossingPlace.BaseHub
        ? bulk.IsFelled ? limits.FelledSeamsAtHub : limits.SeamsAtHub
        : limits.SeamsElsewhere;

    private static string Meeting(CrossingBulk bulk)
    {
        var seams = FormattableString.Invariant($"{bulk.Seams} {(bulk.Seams == 1 ? "seam" : "seams")}{(bulk.StopsShort ? ", stopped short," : string.Empty)}");
        return bulk.IsAtRim ? seams + " and the rim turned under come"
            : bulk.IsAtHem ? seams + " and the turned-up hem come"
            : seams + (bulk.Seams == 1 ? " comes" : " come");
    }

    /// <summary>What makes a crossing thinner.</summary>
    private static string WayOut(Job job, CrossingBulk bulk)
    {
        if (bulk.IsAtHem)
        {
            return "Make the uprights alone plain, lapped or welded (seam.others), turn the hem once (hem.turnUnder 0), take a thinner cloth; or raise the limit if your machine sews it.";
        }

        var first = CanStop(job, bulk) ? Stopping + " plain, lapped"
            : CanTrim(job) ? "Trim the corners of plain seams, so that they are pressed open there (seam.corners), or take lapped"
            : "Take plain, lapped";
        return first + " or welded seams, a thinner cloth, bands that leave seams out; or raise the limit if your machine sews it.";
    }

    /// <summary>What makes fewer seams meet, or lets more of them: a thinner cloth does not.</summary>
    private static string FewerWays(Job job, CrossingBulk bulk)
    {
        var (isHub, limit) = bulk.Crossing.Place is not (CrossingPlace.Hub or CrossingPlace.BaseHub) ? (false, "seamsElsewhere")
            : bulk.IsFelled ? (true, "felledSeamsAtHub") : (true, "seamsAtHub");
        var unfelled = CanStop(job, bulk) ? Stopping + " plain or welded seams, or " : isHub && bulk.IsFelled ? "Take plain or welded seams, or " : string.Empty;
        var ring = job.Frame.Gores is { Crown: null } ? " or a crown ring (frame.gores.crown)" : string.Empty;
        var panels = (unfelled.Length > 0 ? "panels" : "Take panels") + " of several facets that leave seams out there (panels)" + ring;
        return FormattableString.Invariant($"{unfelled}{panels}; or raise the limit if your machine sews it (limits.{limit}).");
    }

    private static bool CanTrim(Job job) => job.Seam.Corners != CornerStyle.Trimmed && job.Seam.MakeUp.Form == MakeUpForm.Plain;

    private static bool CanStop(Job job, CrossingBulk bulk) =>
        bulk.IsFelled && !job.Seam.StopAtHubs && bulk.Crossing.Place is CrossingPlace.Hub or CrossingPlace.BaseHub;
}
