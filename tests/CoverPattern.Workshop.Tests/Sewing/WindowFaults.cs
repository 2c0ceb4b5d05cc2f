using System;
using System.Collections.Generic;
using System.Linq;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>What is wrong with windows: their rims on the true facets, the rings sewn to them, panes and screens.</summary>
internal static class WindowFaults
{
    // A circle is a polygon this near to it, by the promise of the pieces' page, and a corner moves with the grid, millimetres.
    private const double CircleError = 0.021;

    // Areas of circles on the grid: half a step all round.
    private const double AreaError = 0.0007;

    internal static IEnumerable<string> Find(SewnFile file, SewingOrder order, TrueCover cover)
    {
        var shop = new WindowShop(file, order, cover);
        var faults = file.Pieces.Select(piece => piece.Cover).Distinct()
            .SelectMany(name => order.Windows.SelectMany(window => WindowAt(shop, name, window)).Concat(CountFaults(file, order, name)));
        return faults.Concat(AreaFaults(file, order, cover)).Concat(SetFaults(file, order));
    }

    /// <summary>The windows of one cover alone: their rims, rings, panes and screens, not the cover's area.</summary>
    /// <param name="file">Pieces that lie on the frame, and those of windows.</param>
    /// <param name="order">What was ordered.</param>
    /// <param name="cover">The true cover.</param>
    internal static IEnumerable<string> OfWindows(SewnFile file, SewingOrder order, TrueCover cover)
    {
        var shop = new WindowShop(file, order, cover);
        return order.Windows.Where(shop.HasWholeHost).SelectMany(window => WindowAt(shop, string.Empty, window)).Concat(KindFaults(file, order, string.Empty)).Concat(SetFaults(file, order));
    }

    private static IEnumerable<string> WindowAt(WindowShop shop, string cover, WindowOrder window)
    {
        var name = $"Window in {cover}{window.Facet}:";
        if (shop.Host(cover, window) is not { } host)
        {
            return [$"{name} no rim has its middle where the window was ordered."];
        }

        return HoleFaults(host.Cutout, window).Concat(RingFaults(shop, host, window)).Select(fault => $"{name} {fault}");
    }

    private static IEnumerable<string> HoleFaults(SewnCutout cutout, WindowOrder window)
    {
        if (cutout.Run.Role != "rim" || cutout.Run.From != cutout.Run.To || FlatPoint.AreaOf(cutout.Rim) >= 0)
        {
            yield return "the rim is no closed rim that runs clockwise.";
        }

        foreach (var fault in CircleFaults("rim", cutout.Rim, window.Aperture).Concat(CircleFaults("cut of the rim", cutout.CutLine, window.Aperture - window.TurnUnder)))
        {
            yield return fault;
        }

        if (!(Math.Abs(cutout.Run.AllowanceMm - window.TurnUnder) <= Tolerances.SamePlace))
        {
            yield return FormattableString.Invariant($"the rim says it has {cutout.Run.AllowanceMm} mm to turn under.");
        }
    }

    private static IEnumerable<string> RingFaults(WindowShop shop, WindowHost host, WindowOrder window)
    {
        var run = host.Piece.Runs[host.Run];
        if (run.Partner is null || shop.PieceOf(run.Partner) is not { } ring || run.PartnerRun < 0 || run.PartnerRun >= ring.Runs.Count)
        {
            return [$"its rim {run.Arc} has no partner that is there."];
        }

        var back = ring.Runs[run.PartnerRun];
        var pattern = shop.PatternOf(ring);
        if (back.Partner != host.Piece.Label || back.PartnerRun != host.Run || back.Arc != run.Arc || pattern.Kind != "windowRing" || pattern.Cutouts.Count != 1)
        {
            return [$"the ring {ring.Label} is joined to {back.Partner} run {back.PartnerRun} by {back.Arc}."];
        }

        var inner = pattern.Cutouts[0];
        var difference = Math.Abs(inner.Run.LengthMm - host.Cutout.Run.LengthMm);
        IEnumerable<string> lengths = difference <= Tolerances.PartnerLength
            ? []
            : [FormattableString.Invariant($"{host.Cutout.Run.LengthMm} mm of rim meet {inner.Run.LengthMm} mm of ring.")];
        return lengths
            .Concat(HoleFaults(inner, window).Select(fault => "ring: " + fault))
            .Concat(CircleFaults("outer edge of the ring", pattern.SewLine, window.Outer))
            .Concat(CircleFaults("cut of the ring", pattern.CutLine, window.Outer + window.TurnUnder))
            .Concat(MarkFaults(shop, host, pattern));
    }

    /// <summary>Every mark of the ring, laid on the facet with its +y up, meets a mark of the rim.</summary>
    private static IEnumerable<string> MarkFaults(WindowShop shop, WindowHost host, SewnPattern ring)
    {
        var middle = WindowShop.MiddleOf(ring.Cutouts[0].Rim);
        SpacePoint[] wanted = [.. ring.Notches.Where(notch => notch.Run == ring.Runs.Count).Select(notch => notch.OnSewLine - middle)
            .Select(step => host.Middle + (step.X * host.Right) + (step.Y * host.Up))];
        var found = shop.MarksOf(host);
        if (wanted.Length < 5 || wanted.Length != found.Length)
        {
            yield return $"{found.Length} marks of the rim meet {wanted.Length} of the ring.";
        }
        else if (wanted.Max(mark => found.Min(mark.DistanceTo)) is var gap && !(gap <= Tolerances.Notch))
        {
            yield return FormattableString.Invariant($"a mark of the ring misses those of the rim by {gap:0.###} mm.");
        }
    }

    private static IEnumerable<string> CircleFaults(string what, IReadOnlyList<FlatPoint> ring, double radius)
    {
        var middle = WindowShop.MiddleOf(ring);
        var worst = ring.Select((corner, i) => (corner, Half: 0.5 * (corner + ring[(i + 1) % ring.Count])))
            .Max(pair => Math.Max(Math.Abs(pair.corner.DistanceTo(middle) - radius), Math.Abs(pair.Half.DistanceTo(middle) - radius)));
        var area = Math.Abs(FlatPoint.AreaOf(ring)) - (Math.PI * radius * radius);
        if (!(worst <= CircleError) || !(Math.Abs(area) <= AreaError * 2 * Math.PI * radius))
        {
            yield return FormattableString.Invariant($"{what} is off its circle of {radius} mm by {worst:0.####} mm, its area by {area:0.###} mm2.");
        }
    }

    private static IEnumerable<string> CountFaults(SewnFile file, SewingOrder order, string cover)
    {
        foreach (var fault in KindFaults(file, order, cover))
        {
            yield return fault;
        }

        var rims = PatternsOf(file, cover).Where(pattern => pattern.Facets.Count > 0).Sum(pattern => pattern.Cutouts.Count);
        if (rims != order.Windows.Count)
        {
            yield return $"Cover \"{cover}\" has {rims} rims, not {order.Windows.Count}.";
        }
    }

    private static SewnPattern[] PatternsOf(SewnFile file, string cover)
    {
        var kinds = file.Patterns.GroupBy(pattern => pattern.Id).ToDictionary(group => group.Key, group => group.First());
        return [.. file.Pieces.Where(piece => piece.Cover == cover && kinds.ContainsKey(piece.Pattern)).Select(piece => kinds[piece.Pattern])];
    }

    private static IEnumerable<string> KindFaults(SewnFile file, SewingOrder order, string cover)
    {
        var own = PatternsOf(file, cover);
        var wanted = new[] { ("windowRing", order.Windows.Count), ("pane", order.Windows.Count), ("screen", order.Windows.Count(window => window.HasScreen)) };
        foreach (var (kind, count) in wanted.Where(entry => own.Count(pattern => pattern.Kind == entry.Item1) != entry.Item2))
        {
            yield return $"Cover \"{cover}\" has {own.Count(pattern => pattern.Kind == kind)} pieces that are a {kind}, not {count}.";
        }
    }

    /// <summary>Panes and screens of one size are cut and marked alike, whatever facet or cover they are for.</summary>
    private static IEnumerable<string> SetFaults(SewnFile file, SewingOrder order)
    {
        double[] sizes = [.. order.Windows.Select(window => window.Pane).Distinct()];
        var sheets = file.Patterns.Where(pattern => pattern.Kind is "pane" or "screen").ToLookup(SizeOf);
        foreach (var radius in sizes)
        {
            SewnPattern[] alike = [.. sheets[radius]];
            foreach (var fault in alike.SelectMany(pattern => CircleFaults(pattern.Kind + " " + pattern.Id, pattern.CutLine, radius)))
            {
                yield return fault;
            }

            if (alike.Length == 0 || alike.Any(other => !other.CutLine.SequenceEqual(alike[0].CutLine) || !other.Notches.SequenceEqual(alike[0].Notches)))
            {
                yield return FormattableString.Invariant($"panes and screens of {radius} mm are not all alike.");
            }
        }

        // Windows may differ by less than a wrong pane does: each sheet is of the size ordered that is nearest.
        double SizeOf(SewnPattern sheet) => sizes.MinBy(radius => Math.Abs(Math.Sqrt(FlatPoint.AreaOf(sheet.CutLine) / Math.PI) - radius));
    }

    private static IEnumerable<string> AreaFaults(SewnFile file, SewingOrder order, TrueCover cover)
    {
        var byId = file.Patterns.GroupBy(pattern => pattern.Id).ToDictionary(group => group.Key, group => group.First());
        var shell = file.Pieces.Where(piece => piece.Facets.Count > 0).Select(piece => byId[piece.Pattern]).ToArray();
        var sewn = shell.Sum(pattern => FlatPoint.AreaOf(pattern.SewLine) + pattern.Cutouts.Sum(cutout => FlatPoint.AreaOf(cutout.Rim)));
        var truth = order.Covers * (cover.Faces.Values.Sum(face => face.Area) - order.Windows.Sum(window => Math.PI * window.Aperture * window.Aperture));
        var girth = shell.Sum(pattern => pattern.Runs.Sum(run => run.LengthMm) + pattern.Cutouts.Sum(cutout => cutout.Run.LengthMm));
        if (!(Math.Abs(sewn - truth) <= Math.Max(1e-6 * truth, AreaError * girth / 2)))
        {
            yield return FormattableString.Invariant($"Windows taken out, the pieces cover {sewn} mm2, the cover has {truth} mm2.");
        }
    }
}
