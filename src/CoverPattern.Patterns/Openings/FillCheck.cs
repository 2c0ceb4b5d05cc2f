using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Openings;

/// <summary>Holds what closes openings against the cover and the frame; gathers all faults and notices.</summary>
internal sealed class FillCheck(Job job, Frame frame, ClippedShell surface)
{
    // A rain flap covers the zip and half an inch on both sides [own sum of common practice: 38 mm overall and 2 x 12 mm], millimetres.
    private const double LeastStrip = 62;

    internal List<Fault> Faults { get; } = [];

    internal List<Notice> Notices { get; } = [];

    internal void Look(ImmutableArray<LaidOpening> openings)
    {
        foreach (var opening in openings)
        {
            Parts(opening);
            if (opening.Wish.Kind == OpeningKind.HighVent)
            {
                HighVent(opening);
            }
            else if (opening.Wish.Kind != OpeningKind.Window)
            {
                Flap(opening);
            }
        }

        if (openings.Any(opening => opening.Wish.Kind == OpeningKind.Door))
        {
            Notices.Add(new Notice(
                NoticeLevel.Caution,
                "door-way-out",
                string.Join(", ", openings.Where(opening => opening.Wish.Kind == OpeningKind.Door).Select(opening => opening.Label)),
                "A door is the way out in a fire: it must open from inside, without a key, by a child too. Sliders that run on both sides of the tape are needed. How many ways out there must be, and how wide, is for local codes."));
        }
    }

    private void Parts(LaidOpening opening)
    {
        var wish = opening.Wish;
        if (wish.Kind == OpeningKind.Window && opening.Region.ReachesHem && (wish.Sheet ?? wish.Screen) is not null)
        {
            Refuse(opening, "a sheet in an opening that reaches the finished edge", "a sheet with a rim all round: move the opening up, make it a door or vent, or leave the sheet away");
        }

        if (wish.Held == JoinKind.HookLoop && wish.Lap.Millimetres < job.Notions.HookLoop.Millimetres)
        {
            Refuse(opening, $"a lap of {wish.Lap.Typed}, held by hook and loop", $"a lap that holds the hook and loop, {job.Notions.HookLoop.Typed} wide (notions.hookLoop): at least as much");
        }

        if (wish.Strip is { } strip && strip.Millimetres < LeastStrip)
        {
            Notices.Add(new Notice(NoticeLevel.Warning, "strip-narrow", opening.Label, FormattableString.Invariant(
                $"The strip over the zips of {opening.Label} is {strip.Typed} wide; {LeastStrip:0} mm cover a No. 10 zip and 12 mm on both sides (common practice, no source). Rain blows in beside a narrower one.")));
        }

        if (wish.Drip is not null && opening.Lines.IsEmpty && wish.Hood is null)
        {
            Notices.Add(new Notice(NoticeLevel.Warning, "drip-not-drawn", opening.Label, $"Where the drip flap of {opening.Label} is stitched on is not drawn: a hub or the edge of the cover is in the way, or whole facets are opened. Set it by hand, level, {OpeningPlacer.DripAbove:0} mm above the opening."));
        }

        if (opening.Wish.HasZips && wish.Strip is null)
        {
            Notices.Add(new Notice(NoticeLevel.Warning, "zip-open-to-rain", opening.Label, $"The zips of {opening.Label} have no strip over them: a zip lets driving rain through."));
        }
    }

    /// <summary>A hood is sewn on round a flat box, which no hub and no edge of the cover may cross.</summary>
    private void HighVent(LaidOpening opening)
    {
        if (opening.Region.ReachesHem)
        {
            Refuse(opening, "a vent under a hood that reaches the finished edge", "a rim all round: move it up, or make it a base vent");
        }
        else if (!opening.HubsInside.IsEmpty || opening.Lines.IsEmpty)
        {
            Refuse(opening, opening.HubsInside.IsEmpty ? "a hood whose sides run over a hub or off the cover" : $"a hood over hub {string.Join(", ", opening.HubsInside)}", FormattableString.Invariant($"a hood on facets that lie flat together, {HoodShape.Beyond:0} mm outside the opening on all sides: smaller, or elsewhere"));
        }

        Notices.Add(new Notice(NoticeLevel.Note, "vent-closes-inside", opening.Label, $"{opening.Label} is closed from inside, by a flap with hook and loop behind the screen: keep it within reach, or hang a line from it."));
    }

    private void Flap(LaidOpening opening)
    {
        if (!opening.Region.ReachesHem)
        {
            var lowest = RimPoints.Lowest(surface.Shell, opening.Region);
            Refuse(opening, FormattableString.Invariant($"its outline ends {lowest:0} mm above the finished edge"), "a door or vent that comes from the finished edge: lower its middle or make it higher, so that its outline runs below the edge; or make it a window");
            return;
        }

        if (opening.Wish.Opens == OpensAt.Middle && opening.Region.IsSeamed)
        {
            Refuse(opening, $"two leaves that are made up along seams{(opening.HubsInside.IsEmpty ? string.Empty : ", for hub " + string.Join(", ", opening.HubsInside) + " is inside")}", "a flap that lies flat in one piece: another way to open, or an opening without a hub inside");
        }

        if (opening.Wish.Kind == OpeningKind.Door)
        {
            Struts(opening);
        }
    }

    /// <summary>A door goes between struts, unless the customer's frame has a doubled frame round it.</summary>
    private void Struts(LaidOpening opening)
    {
        var (struts, chords) = StrutsInside.Of(surface, opening.Region);
        string[] inTheWay = [.. struts, .. opening.HubsInside];
        var doubled = opening.Wish.Doubled.SelectMany(name => new[] { name, Turned(name) }).ToHashSet(StringComparer.Ordinal);
        var left = inTheWay.Where(name => !doubled.Contains(name)).ToArray();
        var box = BoxOf(opening);
        if (left.Length > 0)
        {
            Refuse(
                opening,
                $"a door through {string.Join(", ", left)}",
                FormattableString.Invariant($"a door between struts, or a frame that is doubled round it as the customer's own papers show, whose missing struts and hubs are named in \"doubled\": never leave out or cut struts for a door. {box}"));
            return;
        }

        if (inTheWay.Length > 0)
        {
            Notices.Add(new Notice(NoticeLevel.Caution, "door-through-struts", opening.Label, $"{opening.Label} is made for a frame that has not {string.Join(", ", inTheWay)} but a doubled frame round the door: somebody licensed must check that frame. Over an ordinary frame this cover must not be used."));
        }

        Notices.Add(new Notice(NoticeLevel.Note, "door-box", opening.Label, box + (chords.IsEmpty ? string.Empty : $" The base strut {string.Join(", ", chords)} runs across its foot: one steps over it.")));
    }

    private static string Turned(string strut) => string.Join('-', strut.Split('-').Reverse());

    /// <summary>What there is room for in the facet in which the door has its middle, in words.</summary>
    private string BoxOf(LaidOpening opening)
    {
        var face = opening.Region.Centre.Face;
        if (face >= frame.Facets.Length)
        {
            return string.Empty;
        }

        var (label, box) = (surface.Shell.Faces[face].Label, ClearBox.Of(job, frame, face));
        var told = FormattableString.Invariant($"Largest clear box between the struts round {label}: {Math.Floor(box.WidthMm):0} mm wide, {Math.Floor(box.HeightMm):0} mm high along the facet.");
        var width = opening.Wish.Outline.Width.Millimetres;
        return width <= 0 ? told : told + (ClearBox.HighestOf(job, frame, face, width) is var high and > 0
            ? FormattableString.Invariant($" {opening.Wish.Outline.Width.Typed} wide it can be {Math.Floor(high):0} mm high.")
            : FormattableString.Invariant($" None is {opening.Wish.Outline.Width.Typed} wide."));
    }

    private void Refuse(LaidOpening opening, string said, string allowed) =>
        Faults.Add(new Fault(OpeningPlacer.PlaceOf(opening.Entry), $"{OpeningPlacer.NameOf(opening.Wish)}: {said}", allowed));
}
