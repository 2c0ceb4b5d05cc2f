using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Openings;

/// <summary>Holds laid openings against hubs, tubes, hem, splash band and each other; gathers all faults and notices.</summary>
internal sealed class OpeningCheck(Job job, ClippedShell surface, ImmutableArray<LaidWindow> windows)
{
    // A clear sheet that faces the sky by more than this ages and gathers heat (common practice, no source), degrees of tilt.
    private const double SkyTilt = 45;

    internal List<Fault> Faults { get; } = [];

    internal List<Notice> Notices { get; } = [];

    /// <summary>Looks at all openings.</summary>
    internal void Look(ImmutableArray<LaidOpening> openings)
    {
        foreach (var opening in openings)
        {
            LookAt(opening);
            TellHubs(opening);
            Weather(opening);
        }

        Neighbours(openings);
    }

    private void LookAt(LaidOpening opening)
    {
        var gaps = job.Clearances;
        var ring = opening.Region.RingMm;
        Hold(opening, "the hub", HubGap(opening.Region) - job.StandOff.HubRadius.Millimetres - ring, gaps.Hub);
        Hold(opening, "the tube wall", TubeGap(opening.Region) - job.StandOff.TubeRadius.Millimetres - ring, gaps.Tube);
        var lowest = RimPoints.Lowest(surface.Shell, opening.Region);
        if (!opening.Region.ReachesHem && opening.Wish.Kind == OpeningKind.Window)
        {
            Hold(opening, "the finished lower edge", lowest - ring, gaps.Hem);
        }

        if (job.Skirt.Splash is { } splash && lowest < splash.Width.Millimetres)
        {
            Refuse(opening, FormattableString.Invariant($"{Math.Max(0, lowest):0} mm above the finished edge"), $"a rim above the splash band, {splash.Width.Typed} wide: the band is made in one piece. Leave the band away, or move the opening up");
        }
    }

    /// <summary>From the rim to the nearest hub of the facets it runs over.</summary>
    private double HubGap(Region region) => region.Rim.Where(stretch => IsFacet(stretch.Face))
        .SelectMany(stretch => surface.Shell.Faces[stretch.Face].Chart.Select(hub => RimPoints.Distance(stretch, hub))).DefaultIfEmpty(double.PositiveInfinity).Min();

    /// <summary>From the rim to the nearest strut beside it; struts that it crosses stand in the opening and are told of.</summary>
    private double TubeGap(Region region) => region.Rim.Where(stretch => IsFacet(stretch.Face)).SelectMany(stretch => StrutsBeside(stretch)
        .Select(edge => surface.Ends(stretch.Face, edge)).Select(strut => RimPoints.Distance(stretch, strut.From, strut.To))).DefaultIfEmpty(double.PositiveInfinity).Min();

    private IEnumerable<int> StrutsBeside(RimStretch stretch) => surface.Shell.Faces[stretch.Face].Edges
        .Where(edge => stretch.Enter?.Edge != edge && stretch.Leave?.Edge != edge && !surface.Shell.Edges[edge].IsFold);

    private bool IsFacet(int face) => surface.Shell.Faces[face].Kind == FaceKind.Facet;

    private void TellHubs(LaidOpening opening)
    {
        if (opening.HubsInside.IsEmpty)
        {
            return;
        }

        var hubs = string.Join(", ", opening.HubsInside);
        if (opening.Wish.Flap is not null)
        {
            Notices.Add(new Notice(NoticeLevel.Note, "flap-round-hubs", opening.Label, $"The flap of {opening.Label} goes round hub {hubs}: it is made up along the cover's seams, for it does not lie flat there, and bulges as the cover does."));
        }
        else if ((opening.Wish.Sheet ?? opening.Wish.Screen) is { } sheet)
        {
            Refuse(opening, $"hub {hubs} inside sheet \"{sheet}\"", "sheet over facets that lie flat together: no hub may be inside. Make it smaller, move it, or make an opening in every facet");
        }
        else
        {
            Notices.Add(new Notice(NoticeLevel.Warning, "opening-round-hubs", opening.Label, FormattableString.Invariant(
                $"{opening.Label} is open round hub {hubs}: struts and hubs stand in it and hold nothing there; wind and rain reach them.")));
        }
    }

    private void Weather(LaidOpening opening)
    {
        var tilts = opening.Region.Rim.Where(stretch => IsFacet(stretch.Face)).Select(stretch => FacePlane.Of(surface.Shell, stretch.Face).Tilt * 180 / Math.PI).DefaultIfEmpty(90).ToArray();
        if (opening.Wish.Sheet is not null && tilts.Min() < SkyTilt)
        {
            Notices.Add(new Notice(NoticeLevel.Warning, "window-to-the-sky", opening.Label, FormattableString.Invariant(
                $"{opening.Label} faces the sky by more than {SkyTilt:0} degrees: clear sheet yellows there, gathers heat and holds water (common practice, no source).")));
        }

        if (tilts.Min() < 90 && opening.Wish is { Drip: null, Hood: null })
        {
            Notices.Add(new Notice(NoticeLevel.Warning, "opening-drip", opening.Label, FormattableString.Invariant(
                $"{opening.Label} lies under rain that runs down the cover; it has no drip flap: {(opening.Wish switch { { HasZips: true } or { Held: not JoinKind.Sewn } => "water comes in at its upper edge; state a drip flap (drip)", { Sheet: null } => "water comes in over its upper edge", _ => "seal the seam of the sheet" })}.")));
        }
    }

    private void Neighbours(ImmutableArray<LaidOpening> openings)
    {
        ImmutableArray<(string Label, int Entry, Region Region, double Ring)> all =
            [.. windows.Select(window => (window.Label, -1, window.Region, window.Wish.Ring.Millimetres)), .. openings.Select(opening => (opening.Label, opening.Entry, opening.Region, opening.Region.RingMm))];
        var points = all.Select(one => RimPoints.InSpace(surface.Shell, one.Region)).ToArray();
        for (var i = windows.Length; i < all.Length; i++)
        {
            for (var other = 0; other < i; other++)
            {
                var gap = points[i].Min(point => points[other].Min(beside => Point3.Distance(point, beside))) - all[other].Ring - all[i].Ring;
                if (FaceCutter.Cut(surface, [all[other].Region, all[i].Region]) is null)
                {
                    Faults.Add(new Fault(OpeningPlacer.PlaceOf(all[i].Entry), $"{all[i].Label} and {all[other].Label} lie over each other", "openings apart from each other: move one or make it smaller"));
                }
                else if (gap < job.Clearances.Opening.Millimetres)
                {
                    Faults.Add(new Fault(
                        OpeningPlacer.PlaceOf(all[i].Entry),
                        FormattableString.Invariant($"{all[i].Label} beside {all[other].Label}, which leaves {Math.Max(0, gap):0.0} mm between them"),
                        $"at least {job.Clearances.Opening.Typed}: other places or smaller openings"));
                }
            }
        }
    }

    private void Hold(LaidOpening opening, string what, double gap, Measure least)
    {
        var told = FormattableString.Invariant($"{gap:0.0} mm from {(opening.Wish.Hood is not null ? "the hood's edge" : opening.Region.RingMm > 0 ? "the ring's outer edge" : "the rim")} to {what}");
        if (gap < least.Millimetres)
        {
            Refuse(opening, told, $"at least {least.Typed}: another size or place");
        }
        else if (gap < least.Millimetres + job.Clearances.Tight.Millimetres)
        {
            Notices.Add(new Notice(NoticeLevel.Warning, "opening-tight", opening.Label, $"Tight: {told}, where {least.Typed} are the least. Measure tube and hub there before cutting."));
        }
    }

    private void Refuse(LaidOpening opening, string said, string allowed) =>
        Faults.Add(new Fault(OpeningPlacer.PlaceOf(opening.Entry), $"{OpeningPlacer.NameOf(opening.Wish)}: {said}", allowed));
}
