using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Openings;

/// <summary>Lays slits, and holds them against hubs, tubes, hem and what else is taken out.</summary>
internal sealed class SlitPlacer(Job job, ClippedShell surface)
{
    // Points along a slit at which its distance from other openings is taken, millimetres apart.
    private const double Spacing = 20;

    internal List<Fault> Faults { get; } = [];

    internal List<Notice> Notices { get; } = [];

    internal ImmutableArray<LaidSlit> Lay(ImmutableArray<Region> regions)
    {
        ImmutableArray<LaidSlit> slits = [.. job.Openings.Select((wish, entry) => (wish, entry)).Where(entry => entry.wish.Kind == OpeningKind.Slit).Select(entry => Lay(entry.wish, entry.entry)).OfType<LaidSlit>()];
        foreach (var slit in slits)
        {
            Look(slit);
        }

        Neighbours(slits, regions);
        return slits;
    }

    private LaidSlit? Lay(OpeningWish wish, int entry)
    {
        if (OpeningAnchor.Find(surface, wish.Place, OpeningPlacer.PlaceOf(entry), Faults) is not { } centre)
        {
            return null;
        }

        var plane = PlaneMap.About(centre.At, FacePlane.UpOf(surface.Shell, centre.Face));
        ImmutableArray<Point2> ends = OutlineShapes.Turned([new Point2(0, -wish.Outline.Height.Millimetres / 2), new Point2(0, wish.Outline.Height.Millimetres / 2)], wish.Place.Turned);
        var (lines, crossed, stop) = SurfaceLines.Draw(new SurfaceWalk(surface, centre.Face, centre.At, plane, null), ends[0], ends[1], SurfaceLine.Slit);
        if (stop == WalkStop.Arrived)
        {
            return new LaidSlit(string.Create(CultureInfo.InvariantCulture, $"O{entry + 1}"), entry, wish, lines, crossed);
        }

        Faults.Add(new Fault(
            OpeningPlacer.PlaceOf(entry),
            $"{OpeningPlacer.NameOf(wish)}: it runs {(stop == WalkStop.AtHem ? "over the finished edge" : stop == WalkStop.AtCorner ? "within 1 mm of a hub" : "off the cover")}",
            "a slit that lies on the cover: shorter, turned or elsewhere; or a door that opens in the middle"));
        return null;
    }

    private void Look(LaidSlit slit)
    {
        var shell = surface.Shell;
        var (tube, hub) = (double.PositiveInfinity, double.PositiveInfinity);
        var lowest = double.PositiveInfinity;
        foreach (var line in slit.Lines)
        {
            var face = shell.Faces[line.Face];
            lowest = Math.Min(lowest, Math.Min(FaceHeight.Of(shell, face).At(line.From), FaceHeight.Of(shell, face).At(line.To)));
            if (face.Kind != FaceKind.Facet)
            {
                continue;
            }

            hub = Math.Min(hub, face.Chart.Min(corner => Segments.Distance(line.From, line.To, corner)));
            var beside = face.Edges.Where(edge => !slit.Crossed.Contains(edge) && !shell.Edges[edge].IsFold).Select(edge => surface.Ends(line.Face, edge));
            tube = Math.Min(tube, beside.Select(strut => Segments.Distance(line.From, line.To, strut.From, strut.To)).DefaultIfEmpty(double.PositiveInfinity).Min());
        }

        Hold(slit, "the hub", hub - job.StandOff.HubRadius.Millimetres, job.Clearances.Hub);
        Hold(slit, "the tube wall", tube - job.StandOff.TubeRadius.Millimetres, job.Clearances.Tube);
        Hold(slit, "the finished lower edge", lowest, job.Clearances.Hem);
        if (slit.LengthMm > job.Notions.ZipLongest.Millimetres)
        {
            Refuse(slit, FormattableString.Invariant($"{slit.LengthMm:0} mm for one zip"), $"at most {job.Notions.ZipLongest.Typed} (notions.zipLongest): a shorter slit, or two");
        }

        if (slit.Crossed.Length > 0)
        {
            Notices.Add(new Notice(NoticeLevel.Warning, "slit-over-strut", slit.Label, $"The zip of {slit.Label} runs over {slit.Crossed.Length} struts: it rubs on them, and nothing passes through there. Pad the tubes, or move it between struts."));
        }

        if (slit.Lines.Any(line => shell.Faces[line.Face].Kind == FaceKind.Facet && FacePlane.Of(shell, line.Face).Tilt < Math.PI / 2))
        {
            Notices.Add(new Notice(NoticeLevel.Warning, "zip-under-rain", slit.Label, $"The zip of {slit.Label} lies under rain that runs down the cover: {(slit.Wish.Strip is null ? "it has no strip over it and lets water through" : "lay its strip so that the stitched edge is the upper one")}."));
        }
    }

    private void Neighbours(ImmutableArray<LaidSlit> slits, ImmutableArray<Region> regions)
    {
        var points = slits.Select(slit => InSpace(slit).ToArray()).ToArray();
        var others = regions.Select(region => (region.Label, Points: RimPoints.InSpace(surface.Shell, region).ToArray(), Ring: region.RingMm)).ToArray();
        for (var i = 0; i < slits.Length; i++)
        {
            foreach (var region in regions.Where(region => LiesIn(slits[i], region)))
            {
                Refuse(slits[i], $"it lies in what {region.Label} takes out", "a slit in the cover's cloth: another place");
            }

            foreach (var (label, beside, ring) in others.Concat(Enumerable.Range(0, i).Select(k => (slits[k].Label, points[k], 0.0))))
            {
                var gap = points[i].Min(point => beside.Min(other => Point3.Distance(point, other))) - ring;
                if (gap < job.Clearances.Opening.Millimetres)
                {
                    Refuse(slits[i], FormattableString.Invariant($"{Math.Max(0, gap):0.0} mm from {label}"), $"at least {job.Clearances.Opening.Typed}: another place");
                }
            }
        }
    }

    private bool LiesIn(LaidSlit slit, Region region) => FaceCutter.Cut(surface, [region])!.Value.Where(cell => cell.Region == 0)
        .Any(cell => slit.Lines.Any(line => line.Face == cell.Face && ExactPredicates.Locate(Rings.ToSteps(cell.Corners), Grid.ToSteps(Point2.Between(line.From, line.To, 0.5))) > 0));

    private IEnumerable<Point3> InSpace(LaidSlit slit) => slit.Lines.SelectMany(line =>
    {
        var (plane, count) = (FacePlane.Of(surface.Shell, line.Face), Math.Max(1, (int)Math.Ceiling(line.Length / Spacing)));
        return Enumerable.Range(0, count + 1).Select(i => plane.ToSpace(Point2.Between(line.From, line.To, (double)i / count)));
    });

    private void Hold(LaidSlit slit, string what, double gap, Measure least)
    {
        if (gap < least.Millimetres)
        {
            Refuse(slit, FormattableString.Invariant($"{gap:0.0} mm from the zip to {what}"), $"at least {least.Typed}: another length or place");
        }
    }

    private void Refuse(LaidSlit slit, string said, string allowed) =>
        Faults.Add(new Fault(OpeningPlacer.PlaceOf(slit.Entry), $"{OpeningPlacer.NameOf(slit.Wish)}: {said}", allowed));
}
