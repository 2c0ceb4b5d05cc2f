using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Openings;

/// <summary>Holds pipes against all that must not be within their clear distance: each strut, hub and opening in it is a fault of its own.</summary>
internal sealed class PipeCheck(Job job, Frame frame, ClippedShell surface)
{
    // The pipe goes on outside farther than any cover is high, millimetres.
    private const double Outside = 100_000;

    internal List<Fault> Faults { get; } = [];

    internal List<Notice> Notices { get; } = [];

    /// <summary>Looks at all pipes.</summary>
    /// <param name="pipes">The pipes.</param>
    /// <param name="others">Other openings, each with the width of what is sewn on round its rim, millimetres.</param>
    internal void Look(ImmutableArray<LaidPipe> pipes, ImmutableArray<(string Label, Region Region, double Ring)> others)
    {
        foreach (var pipe in pipes)
        {
            foreach (var (hub, gap) in Hubs(pipe))
            {
                Hold(pipe, "hub " + hub, gap);
            }

            foreach (var (strut, gap) in Struts(pipe))
            {
                Hold(pipe, "strut " + strut, gap);
            }

            HoldLow(pipe);
            foreach (var (label, region, ring) in others.Concat(pipes.Take(pipes.IndexOf(pipe)).Select(other => (other.Label, other.Region, other.Wish.Lap.Millimetres))))
            {
                HoldOpening(pipe, label, region, ring);
            }

            if (!pipe.HubsInside.IsEmpty)
            {
                Refuse(pipe, $"patch or rain flap round hub {string.Join(", ", pipe.HubsInside)}, where cloth does not lie flat", "patch and rain flap without a hub inside: another place, or a narrower rain flap");
            }
        }
    }

    /// <summary>Looks at flaps: staked out, rolled, or loose in the wind, one can be anywhere that its cloth reaches from where it is sewn.</summary>
    /// <param name="pipes">The pipes.</param>
    /// <param name="openings">Openings whose flap is sewn along a side of the rim.</param>
    internal void LookAtFlaps(ImmutableArray<LaidPipe> pipes, ImmutableArray<LaidOpening> openings)
    {
        foreach (var (pipe, opening) in pipes.SelectMany(pipe => openings.Select(opening => (pipe, opening))))
        {
            var (from, to) = Line(pipe, 1);
            var reach = TieBacks.RolledLength(opening);
            var gap = Math.Max(0, TieBacks.SewnIn(surface.Shell, opening).Select(step => Segments3.Distance(from, to, step.From, step.To)).DefaultIfEmpty(double.PositiveInfinity).Min() - reach - (pipe.Wish.Diameter.Millimetres / 2));
            if (gap < pipe.Wish.Clear.Millimetres)
            {
                Notices.Add(new Notice(NoticeLevel.Warning, "pipe-flap", pipe.Label, FormattableString.Invariant($"The flap of {opening.Label} reaches {reach:0} mm from where it is sewn: staked out, rolled or loose in the wind it can come within {gap:0} mm of the wall of the pipe, whose clear distance is {pipe.Wish.Clear.Typed}. Move one of them, or see that the flap is always fastened while there is fire.")));
            }
        }
    }

    /// <summary>Looks at slits: their zips too keep out of the clear distance.</summary>
    /// <param name="pipes">The pipes.</param>
    /// <param name="slits">The slits.</param>
    internal void Look(ImmutableArray<LaidPipe> pipes, ImmutableArray<LaidSlit> slits)
    {
        foreach (var (pipe, slit) in pipes.SelectMany(pipe => slits.Select(slit => (pipe, slit))))
        {
            var (from, to) = Line(pipe, 1);
            var gap = slit.Lines.Select(line => (Plane: FacePlane.Of(surface.Shell, line.Face), line)).Min(entry => Segments3.Distance(from, to, entry.Plane.ToSpace(entry.line.From), entry.Plane.ToSpace(entry.line.To)));
            Hold(pipe, "the zip of " + slit.Label, gap - SeamZip.MakeUp.Width.Millimetres - (pipe.Wish.Diameter.Millimetres / 2));
        }
    }

    /// <summary>Wall to wall, on the frame: the pipe's place on the cover is taken back by the ease.</summary>
    private IEnumerable<(string Label, double Gap)> Struts(LaidPipe pipe)
    {
        var (from, to) = Line(pipe, 1 / (1 + surface.Shell.Ease));
        return frame.Struts.Select(strut => (
            $"{frame.Hubs[strut.From].Label}-{frame.Hubs[strut.To].Label}",
            Segments3.Distance(from, to, frame.Hubs[strut.From].Position, frame.Hubs[strut.To].Position) - job.StandOff.TubeRadius.Millimetres - (pipe.Wish.Diameter.Millimetres / 2)));
    }

    private IEnumerable<(string Label, double Gap)> Hubs(LaidPipe pipe)
    {
        var (from, to) = Line(pipe, 1 / (1 + surface.Shell.Ease));
        return frame.Hubs.Select(hub => (hub.Label, Segments3.Distance(from, to, hub.Position) - job.StandOff.HubRadius.Millimetres - (pipe.Wish.Diameter.Millimetres / 2)));
    }

    /// <summary>The pipe's middle line: inside from the deck, or from where it passes the upright axis; outside on and on.</summary>
    /// <param name="pipe">The pipe.</param>
    /// <param name="scale">1 on the cover; on the frame the ratio by which the cover is larger, taken back.</param>
    private static (Point3 From, Point3 To) Line(LaidPipe pipe, double scale)
    {
        var (foot, outward) = (scale * pipe.Axis.Foot, pipe.Axis.Outward);
        var inside = pipe.Wish.Place.Run == PipeRun.Vertical ? foot.Z : Point2.Dot(foot.Plan, outward.Plan);
        return (foot - (Math.Max(0, inside) * outward), foot + (Outside * outward));
    }

    private void HoldLow(LaidPipe pipe)
    {
        var lowest = RimPoints.Lowest(surface.Shell, pipe.Region);
        var least = Math.Max(job.Clearances.Hem.Millimetres, pipe.Wish.Lap.Millimetres);
        if (lowest < least)
        {
            Refuse(pipe, FormattableString.Invariant($"{lowest:0} mm from the rim of its patch down to the finished lower edge"), FormattableString.Invariant($"at least {least:0} mm: a place farther up"));
        }

        if (job.Skirt.Splash is { } splash && lowest - pipe.Wish.Lap.Millimetres < splash.Width.Millimetres)
        {
            Refuse(pipe, FormattableString.Invariant($"a patch that comes down to {Math.Max(0, lowest - pipe.Wish.Lap.Millimetres):0} mm above the finished edge"), $"a patch above the splash band, {splash.Width.Typed} wide: leave the band away, or move the pipe up");
        }
    }

    private void HoldOpening(LaidPipe pipe, string label, Region region, double ring)
    {
        var (from, to) = Line(pipe, 1);
        var (rim, beside) = (RimPoints.InSpace(surface.Shell, pipe.Region), RimPoints.InSpace(surface.Shell, region));
        // Amid a large window its rim is far, but its sheet is not.
        var isOver = FaceCutter.Cut(surface, [region, pipe.Region]) is null;
        var gap = isOver ? 0 : beside.Min(point => Segments3.Distance(from, to, point)) - ring - (pipe.Wish.Diameter.Millimetres / 2);
        Hold(pipe, label, gap);
        var between = beside.Min(point => rim.Min(other => Point3.Distance(point, other))) - ring;
        var least = Math.Max(job.Clearances.Opening.Millimetres, pipe.Wish.Lap.Millimetres);
        if (gap >= pipe.Wish.Clear.Millimetres && between < least)
        {
            Refuse(pipe, FormattableString.Invariant($"{Math.Max(0, between):0.0} mm between the rim of its patch and {label}"), FormattableString.Invariant($"at least {least:0} mm: another place"));
        }
    }

    private void Hold(LaidPipe pipe, string what, double gap)
    {
        var clear = pipe.Wish.Clear;
        var told = FormattableString.Invariant($"{what} lies {Math.Max(0, gap):0} mm from the wall of the pipe of {pipe.Wish.Diameter.Typed}, inside its clear distance");
        if (gap < clear.Millimetres)
        {
            Refuse(pipe, told, $"nothing but heat cloth within the clear distance of {clear.Typed}, as the papers of stove and pipe state it: move the pipe, or what lies there");
        }
        else if (gap < clear.Millimetres + job.Clearances.Tight.Millimetres)
        {
            Notices.Add(new Notice(NoticeLevel.Warning, "pipe-tight", pipe.Label, FormattableString.Invariant($"Tight: {what} lies {gap:0.0} mm from the wall of the pipe; its clear distance is {clear.Typed}. Measure there before cutting.")));
        }
    }

    private void Refuse(LaidPipe pipe, string said, string allowed) => Faults.Add(new Fault(PipeLayer.PlaceOf(pipe.Entry), said, allowed));
}
