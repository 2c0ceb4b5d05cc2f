using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Seams;

/// <summary>Tells where patches over hubs are smaller than asked for or left out; beside an opening one that is too small is refused.</summary>
public static class HubPatchCheck
{
    /// <summary>Faults: openings that leave no room for a patch.</summary>
    /// <param name="job">Whether there are patches, and their diameters.</param>
    /// <param name="shell">The finished surface.</param>
    /// <param name="cut">The same cut up, openings taken out.</param>
    public static ImmutableArray<Fault> Faults(Job job, Shell shell, Subdivision cut)
    {
        ArgumentNullException.ThrowIfNull(job);
        HubRoom[] tight = [.. HubPatchPlanner.Rooms(job, shell, cut)
            .Where(room => !room.HasZip && room.RadiusMm < HubPatchPlanner.LeastRadius && room.WithoutOpeningsMm >= HubPatchPlanner.LeastRadius)];
        if (tight.Length == 0)
        {
            return [];
        }

        var worst = tight.MinBy(room => room.RadiusMm)!;
        return
        [
            new Fault(
                "marks.patchDiameter",
                job.Marks.PatchDiameter.Typed,
                FormattableString.Invariant($"the ring round {worst.Opening} leaves room for a patch of {Math.Max(0, 2 * worst.RadiusMm):0} mm over hub {worst.Hub}; the least is {2 * HubPatchPlanner.LeastRadius:0} mm, and no patch goes over a ring; so at {tight.Length} hubs. Move the opening away from the hub, make it smaller, or leave patches out (marks.hubPatches).")),
        ];
    }

    /// <summary>Notices: patches reduced beside openings, and hubs without one.</summary>
    /// <param name="job">Whether there are patches, and their diameters.</param>
    /// <param name="shell">The finished surface.</param>
    /// <param name="cut">The same cut up, openings taken out.</param>
    public static ImmutableArray<Notice> Notices(Job job, Shell shell, Subdivision cut)
    {
        ArgumentNullException.ThrowIfNull(job);
        var rooms = HubPatchPlanner.Rooms(job, shell, cut);
        return
        [
            .. Told([.. rooms.Where(room => !room.HasZip && room.WithoutOpeningsMm < HubPatchPlanner.LeastRadius)], (NoticeLevel.Warning, "hubs-without-patch"), (hubs, worst) =>
                FormattableString.Invariant($"{hubs} hubs get no patch: at {worst.Hub} there is room for {Math.Max(0, 2 * worst.RadiusMm):0} mm between struts and finished edge, the least is {2 * HubPatchPlanner.LeastRadius:0} mm. Close the corner there by hand.")),
            .. Told([.. rooms.Where(room => room.HasZip)], (NoticeLevel.Warning, "no-patch-over-zip"), (hubs, worst) =>
                FormattableString.Invariant($"{hubs} hubs get no patch, for a zip ends there and a patch would hold it shut: {worst.Hub} and others. Cover the zip's end with a flap.")),
            .. Told([.. rooms.Where(room => !room.HasZip && room.RadiusMm < room.WithoutOpeningsMm)], (NoticeLevel.Note, "hub-patches-reduced"), (hubs, worst) =>
                FormattableString.Invariant($"{hubs} patches over hubs are reduced to fit beside openings; the smallest is {2 * worst.RadiusMm:0} mm across, at {worst.Hub} beside {worst.Opening}.")),
        ];
    }

    private static IEnumerable<Notice> Told(HubRoom[] rooms, (NoticeLevel Level, string Code) kind, Func<int, HubRoom, string> text)
    {
        if (rooms.Length > 0)
        {
            var worst = rooms.MinBy(room => room.RadiusMm)!;
            yield return new Notice(kind.Level, kind.Code, worst.Hub, text(rooms.Length, worst));
        }
    }
}
