using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Openings;

/// <summary>Lays an opening of any outline: carried where it can be, else projected.</summary>
internal static class OpeningPlacer
{
    /// <summary>The purpose of holes of these openings.</summary>
    internal const string Purpose = "opening";

    // A facet steeper to the outline's plane than this (cosine; 75 degrees) is not projected onto: it would be stretched fourfold.
    private const double LeastSeen = 0.26;

    /// <summary>How far above the opening a drip flap is stitched on, clear of the turned rim (own choice), millimetres.</summary>
    internal const double DripAbove = 20;

    /// <summary>How far a drip flap reaches beyond each side (common practice, no source), millimetres.</summary>
    internal const double DripBeyond = 100;

    // Charts and space agree better than this where a face has a place in space, millimetres.
    internal const double InPlace = 0.001;

    internal static string PlaceOf(int entry) => FormattableString.Invariant($"openings[{entry}]");

    /// <summary>Lays one opening; null when it cannot lie there, with a fault.</summary>
    internal static LaidOpening? Lay(ClippedShell surface, OpeningWish wish, int entry, List<Fault> faults)
    {
        if (wish.Outline.Form == OutlineForm.Facets)
        {
            return LayFacets(surface, wish, entry, faults);
        }

        var outline = OutlineShapes.Turned(OutlineShapes.Draw(wish.Outline), wish.Place.Turned);
        if (!ExactPredicates.IsSimple(Rings.ToSteps(outline)))
        {
            faults.Add(new Fault(PlaceOf(entry) + ".points", "an outline that crosses or touches itself", "corners in order round the opening"));
            return null;
        }

        if (OpeningAnchor.Find(surface, wish.Place, PlaceOf(entry), faults) is not { } centre)
        {
            return null;
        }

        var up = FacePlane.UpOf(surface.Shell, centre.Face);
        var plane = PlaneMap.About(centre.At, up);
        var carried = wish.Laid == LayingRule.Projected ? null : Carry(surface, centre, plane, outline);
        if (carried is { IsLaid: true })
        {
            return Make(surface, (entry, wish), (centre, up), carried, isCarried: true) with { Lines = LinesOf(surface, centre, plane, (wish, outline), null) };
        }

        var laid = wish.Laid == LayingRule.Carried ? carried! : Project(surface, centre, plane, outline);
        if (laid.IsLaid && !laid.ComesBack)
        {
            return Make(surface, (entry, wish), (centre, up), laid, isCarried: false) with { Lines = LinesOf(surface, centre, plane, (wish, outline), ViewOf(surface, centre, plane)) };
        }

        faults.Add(Refusal(entry, wish, laid));
        return null;
    }

    /// <summary>A rim from hem to hem may hold hubs too, and then is no more exact than a closed one.</summary>
    private static RimLaying Carry(ClippedShell surface, SurfacePoint centre, PlaneMap plane, ImmutableArray<Point2> outline)
    {
        var laid = RimLayer.Lay(surface, centre, plane, outline, seen: null);
        if (!laid.IsLaid || laid.ComesBack)
        {
            return laid with { Rim = [] };
        }

        var hubs = HubsInside.Of(surface, new Region("carried", Purpose, centre, default, 0, laid.Rim));
        return hubs.IsEmpty ? laid : laid with { Rim = [], Where = string.Join(", ", hubs) };
    }

    /// <summary>Where a drip flap is stitched on, level, above the highest point of the outline and beyond it on both sides; where a hood is, on three sides.</summary>
    private static ImmutableArray<SurfaceLine> LinesOf(
        ClippedShell surface, SurfacePoint centre, PlaneMap plane, (OpeningWish Wish, ImmutableArray<Point2> Outline) of, Func<int, PlaneMap?>? seen)
    {
        var walk = new SurfaceWalk(surface, centre.Face, centre.At, plane, seen);
        if (HoodShape.Of(of.Wish) is { } hood)
        {
            Point2[] corners = [hood.Low, new(hood.Low.X, hood.High.Y), hood.High, new(hood.High.X, hood.Low.Y)];
            var sides = Enumerable.Range(0, 3).Select(i => SurfaceLines.Draw(walk, corners[i], corners[i + 1], SurfaceLine.Hood).Lines).ToArray();
            return sides.Any(side => side.IsEmpty) ? [] : [.. sides.SelectMany(side => side)];
        }

        if (of.Wish.Drip is null)
        {
            return [];
        }

        var top = of.Outline.Max(point => point.Y) + DripAbove;
        var (left, right) = (of.Outline.Min(point => point.X) - DripBeyond, of.Outline.Max(point => point.X) + DripBeyond);
        return SurfaceLines.Draw(walk, new Point2(left, top), new Point2(right, top), SurfaceLine.Drip).Lines;
    }

    private static RimLaying Project(ClippedShell surface, SurfacePoint centre, PlaneMap plane, ImmutableArray<Point2> outline) =>
        RimLayer.Lay(surface, centre, plane, outline, ViewOf(surface, centre, plane));

    /// <summary>Faces as they are seen square to the facet that holds the middle; null for those that are not.</summary>
    private static Func<int, PlaneMap?> ViewOf(ClippedShell surface, SurfacePoint centre, PlaneMap plane)
    {
        var face = FacePlane.Of(surface.Shell, centre.Face);
        var (along, across) = ((plane.X.X * face.Along) + (plane.Y.X * face.Across), (plane.X.Y * face.Along) + (plane.Y.Y * face.Across));
        var view = new FacePlane(face.ToSpace(centre.At), along, across);
        return other => Seen(surface.Shell, view, other);
    }

    private static PlaneMap? Seen(Shell shell, FacePlane view, int index)
    {
        var (face, plane) = (shell.Faces[index], FacePlane.Of(shell, index));
        var isInPlace = face.Nodes.Zip(face.Chart).All(pair => Point3.Distance(plane.ToSpace(pair.Second), shell.Nodes[pair.First].Position) <= InPlace);
        var map = PlaneMap.Seen(view, plane);
        return isInPlace && map.Squeeze >= LeastSeen ? map : null;
    }

    private static LaidOpening? LayFacets(ClippedShell surface, OpeningWish wish, int entry, List<Fault> faults)
    {
        var shell = surface.Shell;
        var faces = wish.Outline.Facets.Select(label => Enumerable.Range(0, shell.Faces.Length)
            .Where(i => shell.Faces[i].Kind == FaceKind.Facet && string.Equals(shell.Faces[i].Label, label, StringComparison.Ordinal)).DefaultIfEmpty(-1).First()).ToArray();
        foreach (var (label, i) in wish.Outline.Facets.Select((label, i) => (label, i)).Where(entry => faces[entry.i] < 0))
        {
            faults.Add(new Fault(FormattableString.Invariant($"{PlaceOf(entry)}.facets[{i}]"), $"\"{label}\"", $"the label of a facet, \"{shell.Faces[0].Label}\" to \"{shell.Faces.Last(other => other.Kind == FaceKind.Facet).Label}\""));
        }

        if (faces.Contains(-1))
        {
            return null;
        }

        var laid = FacetRim.Lay(surface, faces, wish.Outline.Margin.Millimetres);
        if (!laid.IsLaid)
        {
            faults.Add(new Fault(
                PlaceOf(entry) + ".facets",
                string.Join(", ", wish.Outline.Facets) + FormattableString.Invariant($" with a margin of {wish.Outline.Margin.Typed}"),
                $"facets that hang together, with one border, that the finished edge does not cut, and a margin that leaves something of every side; it fails at {laid.Where}. Take fewer facets or a smaller margin"));
            return null;
        }

        var up = FacePlane.UpOf(shell, faces[0]);
        return Make(surface, (entry, wish), (new SurfacePoint(faces[0], OpeningLayer.Incentre(shell.Faces[faces[0]].Chart)), up), laid, isCarried: true);
    }

    private static LaidOpening Make(ClippedShell surface, (int Entry, OpeningWish Wish) of, (SurfacePoint At, Point2 Up) centre, RimLaying laid, bool isCarried)
    {
        var wish = of.Wish;
        var label = string.Create(CultureInfo.InvariantCulture, $"O{of.Entry + 1}");
        var region = new Region(label, Purpose, centre.At, centre.Up, wish.TurnUnder.Millimetres, laid.Rim) { RingMm = wish.Ring?.Millimetres ?? (wish.Hood is null ? 0 : HoodShape.Beyond) };
        var hubs = HubsInside.Of(surface, region);

        // Cloth does not lie flat round a hub: there a flap is made up as the cover is.
        region = RimSides.Broken(surface, region with { IsSeamed = wish.IsSeamed || (wish.Flap is not null && !hubs.IsEmpty) }, wish);
        return new LaidOpening(label, of.Entry, wish, region, isCarried) { HubsInside = hubs, Line = RimLine.Of(surface, region) };
    }

    private static Fault Refusal(int entry, OpeningWish wish, RimLaying laid)
    {
        var (said, allowed) = laid switch
        {
            { GapMm: > 0 } => (
                FormattableString.Invariant($"carried round a hub, it misses its own beginning by {laid.GapMm:0.0} mm"),
                "an outline without a hub inside: smaller, elsewhere, or \"laid\": \"projected\", whose sizes are measured on the cover"),
            { ComesBack: true } => ("its outline goes below the finished edge and comes up again", "an outline that meets the finished edge twice at most"),
            { Stop: WalkStop.Arrived } => (
                $"carried with {laid.Where} inside",
                "an outline without a hub inside: smaller, elsewhere, or \"laid\": \"projected\", whose sizes are measured on the cover"),
            { Stop: WalkStop.AtCorner } => ($"its rim runs within 1 mm of a corner of the cover, at {laid.Where}", "a rim clear of hubs: move it, turn it or change its size"),
            { Stop: WalkStop.Touches } => ($"its rim only touches a line of {laid.Where}", "a rim that crosses lines or stays clear of them: move it, turn it or change its size"),
            { Stop: WalkStop.TurnedAway } => ($"projected, it comes to {laid.Where}, which is turned away from the plane of the outline by more than 75 degrees or has no place in space", "an outline that stays on facets seen from its middle: smaller, elsewhere, or \"laid\": \"carried\""),
            _ => ($"its rim runs over an edge of the cover that is no finished lower edge, at {laid.Where}", "an outline on the cover"),
        };
        return new Fault(PlaceOf(entry), $"{NameOf(wish)}: {said}", allowed);
    }

    /// <summary>The form and size of an opening in words.</summary>
    internal static string NameOf(OpeningWish wish) => wish.Outline.Form switch
    {
        OutlineForm.Circle => $"circle of {wish.Outline.Width.Typed}",
        OutlineForm.Regular => FormattableString.Invariant($"{wish.Outline.Sides} corners on a circle of {wish.Outline.Width.Typed}"),
        OutlineForm.Polygon => FormattableString.Invariant($"{wish.Outline.Points.Length} corners"),
        OutlineForm.Facets => $"facets {string.Join(", ", wish.Outline.Facets)}",
        OutlineForm.Rectangle => $"rectangle {wish.Outline.Width.Typed} x {wish.Outline.Height.Typed}",
        OutlineForm.Rounded => $"rounded rectangle {wish.Outline.Width.Typed} x {wish.Outline.Height.Typed}",
        OutlineForm.Line => $"slit of {wish.Outline.Height.Typed}",
        OutlineForm.Arch => $"arch {wish.Outline.Width.Typed} x {wish.Outline.Height.Typed}",
        _ => throw new ArgumentOutOfRangeException(nameof(wish), wish.Outline.Form, "Unknown form."),
    };
}
