using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Openings;

/// <summary>Lays what a pipe's cylinder cuts out of a shell: every facet is seen along the pipe, so each rim is the true intersection and closes by construction.</summary>
internal static class PipeLayer
{
    internal const string Purpose = "pipe";

    // The rain flap is stitched to the cover so far beyond the patch's lap (own choice), millimetres.
    private const double BesideLap = 10;

    // Cloth left between a cone boot's foot and the patch's rim (own choice), millimetres.
    private const double LeastPatch = 20;

    internal static string PlaceOf(int entry) => FormattableString.Invariant($"pipes[{entry}]");

    /// <summary>Lays one pipe; null when it cannot go through there, with a fault.</summary>
    internal static LaidPipe? Lay(ClippedShell surface, PipeWish wish, int entry, List<Fault> faults)
    {
        if (PipeAnchor.Find(surface, wish.Place, PlaceOf(entry), faults) is not { } anchor)
        {
            return null;
        }

        var laying = new Laying(surface, wish, entry, anchor.Axis, anchor.Foot, faults);
        var (label, face) = (string.Create(CultureInfo.InvariantCulture, $"J{entry + 1}"), FacePlane.Of(surface.Shell, anchor.Foot.Face));
        var clear = laying.Region(label, "clear distance", PipeOutlines.Circle(wish.ClearRadius));
        var (hole, apex) = wish.Spread is { } spread ? laying.ConeHole(label + "h", face, Math.Tan(spread * Math.PI / 180)) : (laying.Region(label + "h", "sleeve", PipeOutlines.Circle(wish.SleeveRadius)), null);
        var rain = laying.Region(label + "f", "rain flap", PipeOutlines.Rain(wish.ClearRadius - wish.RainFlap.Millimetres, wish.ClearRadius + wish.Lap.Millimetres + BesideLap, laying.Up(face)));
        var reach = hole is null ? 0 : Farthest(surface.Shell, anchor.Axis, hole) + wish.ClosingFlap.Millimetres;
        var closing = hole is null ? null : laying.Region(label + "c", "closing flap", PipeOutlines.Circle(reach));
        if (clear is null || hole is null || rain is null || closing is null)
        {
            return null;
        }

        if (reach > wish.ClearRadius)
        {
            faults.Add(new Fault(PlaceOf(entry) + ".closingFlap", FormattableString.Invariant($"{wish.ClosingFlap.Typed}, which reaches {reach - wish.ClearRadius:0} mm beyond the patch"), "a closing flap on the patch: a narrower one"));
            return null;
        }

        var region = clear with { Drawn = [new RegionMark("rain flap", rain.Rim)] };
        ImmutableArray<string> hubs = [.. new[] { clear, rain }.SelectMany(one => HubsInside.Of(surface, one)).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
        return new LaidPipe(label, entry, wish, anchor.Axis, region)
        {
            Hole = FromLowest(surface.Shell, hole),
            RainFlap = rain,
            ClosingFlap = closing,
            Tilt = Math.Acos(Math.Min(1, Point3.Dot(anchor.Axis.Outward, face.Normal))),
            Apex = apex,
            HubsInside = hubs,
        };
    }

    /// <summary>Farthest distance of a rim from the pipe's middle line.</summary>
    private static double Farthest(Shell shell, PipeAxis axis, Region region) =>
        region.Rim.SelectMany(stretch => stretch.Points.Select(FacePlane.Of(shell, stretch.Face).ToSpace)).Max(point => axis.ToOwn(point).Plan.Length);

    /// <summary>
    /// The same rim begun at its lowest place, where the sleeve's own seam runs down to: water runs past it. Over several facets a rim begins where it
    /// crosses a line.
    /// </summary>
    private static Region FromLowest(Shell shell, Region region)
    {
        double HeightOf(int face, Point2 point) => FacePlane.Of(shell, face).ToSpace(point).Z;
        if (region.Rim[0].IsRing)
        {
            var (face, points) = (region.Rim[0].Face, region.Rim[0].Points);
            var lowest = Enumerable.Range(0, points.Length).MinBy(i => HeightOf(face, points[i]));
            return region with { Rim = [region.Rim[0] with { Points = [.. points[lowest..], .. points[..lowest]] }] };
        }

        var first = Enumerable.Range(0, region.Rim.Length).MinBy(i => HeightOf(region.Rim[i].Face, region.Rim[i].Points[0]));
        return region with { Rim = [.. region.Rim[first..], .. region.Rim[..first]] };
    }

    /// <summary>Lays outlines about one pipe.</summary>
    private sealed record Laying(ClippedShell Surface, PipeWish Wish, int Entry, PipeAxis Axis, SurfacePoint Foot, List<Fault> Faults)
    {
        /// <summary>Up the facet, seen along the pipe; towards the pipe's outer end where the facet is square to it.</summary>
        internal Point2 Up(FacePlane face)
        {
            var up = new Point3(0, 0, 1) - (face.Normal.Z * face.Normal);
            var seen = Axis.ToOwn(Axis.Foot + up).Plan;
            const double level = 1e-6;
            return seen.Length > level ? seen : new Point2(-1, 0);
        }

        internal Region? Region(string label, string what, ImmutableArray<Point2> outline)
        {
            var shell = Surface.Shell;
            var laid = RimLayer.Lay(Surface, Foot, PlaneMap.Seen(Axis.View, FacePlane.Of(shell, Foot.Face)), outline, Seen);
            if (!laid.IsLaid || Make(label, laid.Rim).ReachesHem)
            {
                Refuse(what, laid);
                return null;
            }

            return Make(label, laid.Rim);
        }

        internal (Region? Hole, double? Apex) ConeHole(string label, FacePlane face, double spread)
        {
            var apex = ConeFoot.Apex((spread, Math.Tan(Math.Acos(Math.Min(1, Point3.Dot(Axis.Outward, face.Normal))))), Wish.SleeveRadius, Wish.Sleeve.Millimetres);
            var clip = Surface.Of(Foot.Face)!;
            if (ConeFoot.Draw(Axis, face, apex, spread) is not { } foot || foot.Farthest > Wish.ClearRadius - LeastPatch || foot.Ring.Any(point => OpeningAnchor.Depth(clip, point) < 1))
            {
                Faults.Add(new Fault(
                    PlaceOf(Entry) + ".spread",
                    FormattableString.Invariant($"a cone boot of {Wish.Spread:0.#} degrees and {Wish.Sleeve.Typed} height on facet {Surface.Shell.Faces[Foot.Face].Label}"),
                    FormattableString.Invariant($"a foot on one facet, at least {LeastPatch:0} mm inside the clear distance: less spread, less height, another place, or a straight sleeve")));
                return (null, null);
            }

            return (Make(label, [new RimStretch(Foot.Face, foot.Ring, null, null)]), apex);
        }

        private Region Make(string label, ImmutableArray<RimStretch> rim) =>
            new(label, Purpose, Foot, FacePlane.UpOf(Surface.Shell, Foot.Face), Wish.TurnUnder.Millimetres, rim);

        private PlaneMap? Seen(int index)
        {
            var (face, plane) = (Surface.Shell.Faces[index], FacePlane.Of(Surface.Shell, index));
            var isInPlace = face.Nodes.Zip(face.Chart).All(pair => Point3.Distance(plane.ToSpace(pair.Second), Surface.Shell.Nodes[pair.First].Position) <= OpeningPlacer.InPlace);
            var map = PlaneMap.Seen(Axis.View, plane);
            return isInPlace && map.Squeeze >= PipeAnchor.LeastSeen ? map : null;
        }

        private void Refuse(string what, RimLaying laid)
        {
            var why = laid switch
            {
                { IsLaid: true } or { ComesBack: true } => "runs over the finished lower edge",
                { Stop: WalkStop.AtCorner } => $"runs within 1 mm of a corner of the cover, at {laid.Where}",
                { Stop: WalkStop.Touches } => $"only touches a line of {laid.Where}",
                { Stop: WalkStop.TurnedAway } => $"comes to {laid.Where}, which the pipe runs along under less than 15 degrees, or which has no place in space",
                _ => $"runs over an edge of the cover, at {laid.Where}",
            };
            Faults.Add(new Fault(PlaceOf(Entry), $"pipe of {Wish.Diameter.Typed}: the rim of its {what} {why}", "a pipe whose cylinder lies on facets that it meets, above the finished edge: another place, or another size of flaps"));
        }
    }
}
