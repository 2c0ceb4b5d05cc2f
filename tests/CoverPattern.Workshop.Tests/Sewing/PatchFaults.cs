using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>What is wrong with patches over hubs and under clips, and with marks that are pierced.</summary>
internal sealed class PatchFaults
{
    // Promises of the patterns' page: a patch reaches 5 mm beyond its clip at least; a hole is 3 mm wide, under a patch with 5 mm of it round
    // the hole or in an allowance; a patch stays clear of a window's ring.
    private const double BeyondClip = 5;
    private const double HoleRadius = 1.5;
    private const double RoundHole = 5;

    // A circle drawn by chords stays this near, millimetres.
    private const double CircleError = 0.03;

    private readonly SewnFile file;
    private readonly SewingOrder order;
    private readonly Dictionary<string, SpacePoint> hubs;

    internal PatchFaults(SewnFile file, SewingOrder order, TrueCover cover)
    {
        this.file = file;
        this.order = order;
        hubs = HubsByLabel(order, cover);
    }

    internal IEnumerable<string> Find(IReadOnlyCollection<PlacedPiece> placed, WindowShop windows)
    {
        var drawn = placed.SelectMany(Arcs).ToArray();
        return placed.SelectMany(piece => ClipFaults(piece).Concat(PierceFaults(piece)).Select(fault => $"Piece {piece.Piece.Label}: {fault}"))
            .Concat(ClipPatchFaults(drawn))
            .Concat(HubPatchFaults(drawn))
            .Concat(drawn.Where(arc => arc.Purpose == "patch").SelectMany(arc => OverRing(arc, windows)));
    }

    /// <summary>Under every clip lies a patch that is drawn: its own, or that of the hub.</summary>
    private static IEnumerable<string> ClipFaults(PlacedPiece placed)
    {
        var pattern = placed.Pattern;
        foreach (var clip in pattern.Lines.Where(line => line.Purpose == "clip"))
        {
            var corner = pattern.SewLine.MinBy(clip.Path[^1].DistanceTo);
            var radii = pattern.Lines.Where(line => line.Purpose is "clip patch" or "patch" && IsRound(line.Path, corner)).Select(line => line.Path[0].DistanceTo(corner)).ToArray();
            if (radii.Length == 0 || radii.Max() < corner.DistanceTo(clip.Path[0]) + BeyondClip - CircleError)
            {
                yield return FormattableString.Invariant($"under the clip of {corner.DistanceTo(clip.Path[0]):0.#} mm at ({corner.X:0}, {corner.Y:0}) no patch is drawn that covers it.");
            }
        }
    }

    private IEnumerable<string> PierceFaults(PlacedPiece placed)
    {
        var pattern = placed.Pattern;
        foreach (var (at, purpose) in pattern.Drills)
        {
            var isCovered = pattern.Lines.Any(line => line.Purpose is "clip patch" or "patch" && pattern.SewLine.Any(corner =>
                IsRound(line.Path, corner) && corner.DistanceTo(at) + HoleRadius + RoundHole <= corner.DistanceTo(line.Path[0])));
            var isInAllowance = !DrawnFaults.IsInside(pattern.SewLine, at) && DrawnFaults.DistanceTo(pattern.SewLine, at) >= HoleRadius;
            var isInCloth = DrawnFaults.IsInside(pattern.CutLine, at) && DrawnFaults.DistanceTo(pattern.CutLine, at) >= HoleRadius;
            var may = order.Pierces && isInCloth && (isCovered || isInAllowance);
            if (pattern.Pierced.Contains(at) != may)
            {
                yield return FormattableString.Invariant($"the {purpose} at ({at.X:0}, {at.Y:0}) is {(may ? "drawn though it was to be pierced" : "pierced though no cloth covers the hole or none was asked for")}.");
            }
        }
    }

    /// <summary>As many patches as are drawn, each of the radius that is drawn, at the hubs where they are drawn.</summary>
    private IEnumerable<string> ClipPatchFaults((string Cover, string Hub, double Radius, string Purpose, SpacePoint At)[] drawn)
    {
        var wanted = drawn.Where(arc => arc.Purpose == "clip patch").CountBy(arc => (arc.Cover, arc.Hub, Math.Round(arc.Radius))).ToDictionary();
        var found = file.Patches.Where(patch => patch.Label.Contains("-clip", StringComparison.Ordinal))
            .CountBy(patch => (patch.Cover, patch.Label[patch.Cover.Length..patch.Label.IndexOf("-clip", StringComparison.Ordinal)], Math.Round(patch.Radius))).ToDictionary();
        return wanted.Keys.Union(found.Keys).Where(key => wanted.GetValueOrDefault(key) != found.GetValueOrDefault(key))
            .Select(key => FormattableString.Invariant($"{found.GetValueOrDefault(key)} patches of {key.Item3} mm are cut for the {wanted.GetValueOrDefault(key)} clips drawn at {key.Item1}{key.Item2}."));
    }

    private IEnumerable<string> HubPatchFaults((string Cover, string Hub, double Radius, string Purpose, SpacePoint At)[] drawn)
    {
        var arcs = drawn.Where(arc => arc.Purpose == "patch").ToLookup(arc => arc.Cover + arc.Hub, arc => arc.Radius, StringComparer.Ordinal);
        var patches = file.Patches.Where(patch => patch.Label.EndsWith("-in", StringComparison.Ordinal) || patch.Label.EndsWith("-out", StringComparison.Ordinal))
            .ToLookup(patch => patch.Label[..patch.Label.LastIndexOf('-')], patch => patch.Radius, StringComparer.Ordinal);
        foreach (var hub in arcs.Select(group => group.Key).Union(patches.Select(group => group.Key)))
        {
            if (patches[hub].Count() != order.PatchesAtHub || patches[hub].Any(radius => arcs[hub].Any(arc => Math.Abs(arc - radius) > CircleError)) || !arcs[hub].Any())
            {
                yield return FormattableString.Invariant($"The patches of {string.Join(" and ", patches[hub].Select(radius => FormattableString.Invariant($"{radius:0.#}")))} mm at {hub} are not the {order.PatchesAtHub} that are drawn there with {string.Join(", ", arcs[hub].Distinct().Select(radius => FormattableString.Invariant($"{radius:0.#}")))} mm.");
            }
        }
    }

    private IEnumerable<string> OverRing((string Cover, string Hub, double Radius, string Purpose, SpacePoint At) arc, WindowShop windows)
    {
        foreach (var window in order.Windows.Where(window => windows.MiddleOf(window).DistanceTo(arc.At) < window.Outer + arc.Radius))
        {
            yield return FormattableString.Invariant($"The patch of {arc.Radius:0.#} mm at {arc.Cover}{arc.Hub} lies over the ring of the window in {window.Facet}.");
        }
    }

    /// <summary>Rims of patches on a piece, each at the hub over which its corner lies.</summary>
    private IEnumerable<(string Cover, string Hub, double Radius, string Purpose, SpacePoint At)> Arcs(PlacedPiece placed)
    {
        var pattern = placed.Pattern;
        foreach (var line in pattern.Lines.Where(line => line.Purpose is "clip patch" or "patch"))
        {
            var at = Enumerable.Range(0, pattern.Runs.Count).FirstOrDefault(run => IsRound(line.Path, pattern.SewLine[pattern.Runs[run].From]), -1);
            if (at < 0)
            {
                continue;
            }

            var corner = pattern.SewLine[pattern.Runs[at].From];
            var point = placed.Lift(at, corner);
            var hub = hubs.MinBy(entry => entry.Value.DistanceTo(point));
            var reach = Tolerances.OnCover + placed.Faces.Sum(face => face.Bend);
            yield return (placed.Piece.Cover, hub.Value.DistanceTo(point) <= reach ? hub.Key : "(no hub)", corner.DistanceTo(line.Path[0]), line.Purpose, point);
        }
    }

    private static bool IsRound(IReadOnlyList<FlatPoint> path, FlatPoint centre) =>
        path.Count > 2 && path.Max(centre.DistanceTo) - path.Min(centre.DistanceTo) <= Tolerances.SamePlace;

    /// <summary>Hubs by ring from the base up and position from the front on, counter-clockwise, numbers padded to the largest.</summary>
    private static Dictionary<string, SpacePoint> HubsByLabel(SewingOrder order, TrueCover cover)
    {
        var frame = order.Sizes.Mesh;
        var rings = Enumerable.Range(0, frame.Hubs.Count).GroupBy(frame.RingOf).ToArray();
        string Padded(int number, int largest) => number.ToString(CultureInfo.InvariantCulture).PadLeft(largest.ToString(CultureInfo.InvariantCulture).Length, '0');
        return rings.SelectMany(ring => ring.OrderBy(hub => TrueMesh.Bearing([frame.Hubs[hub]]))
                .Select((hub, i) => ("H" + Padded(ring.Key, rings.Length - 1) + "." + Padded(i + 1, rings.Max(other => other.Count())), cover.Over(hub))))
            .ToDictionary(entry => entry.Item1, entry => entry.Item2, StringComparer.Ordinal);
    }
}
