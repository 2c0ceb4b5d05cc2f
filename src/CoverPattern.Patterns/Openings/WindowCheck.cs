using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Openings;

/// <summary>Holds laid windows against frame, hem and each other; gathers all faults and notices, one for windows that are alike.</summary>
internal sealed class WindowCheck(Job job, Frame frame, Shell shell)
{
    // A clear sheet that faces the sky by more than this ages and gathers heat (common practice, no source), degrees of tilt.
    private const double SkyTilt = 45;

    internal List<Fault> Faults { get; } = [];

    internal List<Notice> Notices { get; } = [];

    internal void Look(ImmutableArray<LaidWindow> windows)
    {
        var rooms = windows.Select(window => (Window: window, Room: WindowRoom.Round(frame, shell, window.Region.Centre))).ToArray();
        foreach (var alike in rooms.GroupBy(entry => (entry.Window.Entry, Axis: Rounded(entry.Room.Axis), Hub: Rounded(entry.Room.Hub), Hem: Rounded(LowestAbove(entry.Window, entry.Room)))))
        {
            LookAt(WindowLabels.List(alike.Select(entry => entry.Window)), alike.First().Window, alike.First().Room);
        }

        Faults.AddRange(WindowNeighbours.Faults(job, shell, windows));
        Weather(windows);
    }

    private static double Rounded(double millimetres) => Math.Round(millimetres, 1);

    private static double LowestAbove(LaidWindow window, WindowRoom room) => room.AboveHem - (window.Wish.OuterRadius * room.Steepness);

    private void LookAt(string labels, LaidWindow window, WindowRoom room)
    {
        var (wish, gaps) = (window.Wish, job.Clearances);
        var (tube, hub) = (job.StandOff.TubeRadius.Millimetres, job.StandOff.HubRadius.Millimetres);
        if (Math.Min(room.Edge, room.Axis) <= wish.ApertureRadius)
        {
            Refuse(window, "aperture", $"{wish.Aperture.Typed} at {labels}", FormattableString.Invariant(
                $"an aperture inside its facet: the nearest edge is {Math.Max(0, Math.Min(room.Edge, room.Axis)):0.0} mm from the centre. Take a smaller aperture or move it"));
            return;
        }

        Hold(window, labels, ("the tube wall", room.Axis - tube - wish.OuterRadius, gaps.Tube));
        Hold(window, labels, ("the hub", room.Hub - hub - wish.OuterRadius, gaps.Hub));
        Hold(window, labels, ("the finished lower edge", LowestAbove(window, room), gaps.Hem));
    }

    private void Hold(LaidWindow window, string labels, (string What, double Gap, Measure Least) rule)
    {
        var gap = FormattableString.Invariant($"{rule.Gap:0.0} mm from the ring's outer edge to {rule.What}");
        if (rule.Gap < rule.Least.Millimetres)
        {
            Refuse(window, "aperture", $"{window.Wish.Aperture.Typed} at {labels}, which leaves {gap}", FormattableString.Invariant(
                $"at least {rule.Least.Typed}: an aperture smaller by {2 * (rule.Least.Millimetres - rule.Gap):0.0} mm, a narrower ring, another place or a larger facet"));
        }
        else if (rule.Gap < rule.Least.Millimetres + job.Clearances.Tight.Millimetres)
        {
            Notices.Add(new Notice(NoticeLevel.Warning, "window-tight", labels, FormattableString.Invariant(
                $"Tight: {gap}, where {rule.Least.Typed} are the least. Measure tube and hub, and that facet of the frame, before cutting.")));
        }
    }

    private void Weather(ImmutableArray<LaidWindow> windows)
    {
        var sky = windows.Where(window => Degrees(window) < SkyTilt).ToArray();
        if (sky.Length > 0)
        {
            Notices.Add(new Notice(NoticeLevel.Warning, "window-to-the-sky", WindowLabels.List(sky), FormattableString.Invariant(
                $"{(sky.Length == 1 ? "1 window faces" : FormattableString.Invariant($"{sky.Length} windows face"))} the sky by more than {SkyTilt:0} degrees: clear sheet yellows there, gathers heat and holds water (common practice, no source).")));
        }

        var wet = windows.Where(window => Degrees(window) < 90).ToArray();
        if (wet.Length > 0)
        {
            Notices.Add(new Notice(NoticeLevel.Note, "window-drip", WindowLabels.List(wet), FormattableString.Invariant(
                $"{(wet.Length == 1 ? "1 window lies" : FormattableString.Invariant($"{wet.Length} windows lie"))} under rain that runs down the cover, without a drip flap. Leave the outer stitching of the ring open between its two lowest ticks, so that water drains from the pocket.")));
        }
    }

    private double Degrees(LaidWindow window) => FacePlane.Of(shell, window.Region.Centre.Face).Tilt * 180 / Math.PI;

    private void Refuse(LaidWindow window, string key, string said, string allowed) =>
        Faults.Add(new Fault(WindowFacets.Place(window.Entry, key), said, allowed));
}
