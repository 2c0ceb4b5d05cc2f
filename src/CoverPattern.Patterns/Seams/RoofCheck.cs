using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Seams;

/// <summary>Holds the wish for a roof against frame, seams and openings.</summary>
public static class RoofCheck
{
    // A shorter zip is no opening (own choice, as for zips of openings), millimetres.
    private const double ShortestZip = 100;

    // Mitres of the flap leave at least this much of its lower edge (own choice), millimetres.
    private const double LeastEdge = 50;

    /// <summary>Everything that cannot be made; empty when all is well or no roof is wished.</summary>
    /// <param name="job">Roof, closing seam, notions and names are read.</param>
    /// <param name="frame">The frame.</param>
    /// <param name="shell">The finished surface.</param>
    /// <param name="plan">What becomes of its edges.</param>
    /// <param name="openings">What is laid on it.</param>
    public static ImmutableArray<Fault> Faults(Job job, Frame frame, Shell shell, SeamPlan plan, OpeningLaying openings)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(openings);
        if (RoofLine.Find(job, frame, shell) is not { } line)
        {
            return [];
        }

        ImmutableArray<Fault> facets = [.. Names(job), .. Facets(job.Roof!, frame, shell, line)];
        ImmutableArray<Fault> lines = facets.IsEmpty ? [.. Lines(job, shell, plan, line)] : facets;
        return lines.IsEmpty ? [.. Zips(job, shell, line), .. Flaps(job, shell, line), .. Openings(job, shell, line, openings), .. Slits(job, shell, line, openings.Slits)] : lines;
    }

    private static IEnumerable<Fault> Names(Job job)
    {
        if (job.MakeUps.FirstOrDefault(makeUp => RoofWish.MakeUps.Any(own => own.Name == makeUp.Name)) is { } taken)
        {
            yield return new Fault("makeUps", $"\"{taken.Name}\"", "another name: this one is the roof's own");
        }

        if (job.Roof!.Screen is not null && job.Panels.FirstOrDefault(panel => panel.Name.StartsWith(RoofWish.ScreenLetter)) is { } named)
        {
            yield return new Fault("panels", $"\"{named.Name}\"", $"a name that does not begin with {RoofWish.ScreenLetter}, the letter of the roof screen's pieces");
        }
    }

    private static IEnumerable<Fault> Facets(RoofWish wish, Frame frame, Shell shell, RoofLine line)
    {
        var place = wish.Row is null ? "roof.facets" : "roof.row";
        var top = frame.Facets.Max(facet => facet.Row);
        if (wish.Row is { } row && row > top)
        {
            yield return new Fault(place, FormattableString.Invariant($"{row}"), FormattableString.Invariant($"a row of this frame, 2 to {top}"));
            yield break;
        }

        string[] unknown = [.. wish.Facets.Where(label => frame.Facets.All(facet => !string.Equals(facet.Label, label, StringComparison.Ordinal)))];
        foreach (var label in unknown)
        {
            yield return new Fault(place, $"\"{label}\"", $"labels of facets, such as \"{frame.Facets[^1].Label}\"");
        }

        if (unknown.Length > 0)
        {
            yield break;
        }

        // Where roof or a corner of it stands on the base there is no wall all round.
        var low = line.Faces.SelectMany(face => shell.Faces[face].Nodes).Where(node => frame.Base.Contains(node)).Select(node => shell.Nodes[node].Label).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).ToArray();
        if (low.Length > 0)
        {
            yield return new Fault(place, $"a roof that comes down to {Listed(low, "base hub")}", "a roof with wall below it all round: leave out the facets at these hubs");
        }
    }

    private static IEnumerable<Fault> Lines(Job job, Shell shell, SeamPlan plan, RoofLine line)
    {
        var place = job.Roof!.Row is null ? "roof.facets" : "roof.row";
        if (line.Loops.IsEmpty)
        {
            string[] hubs = [.. line.Steps.CountBy(step => step.From).Where(count => count.Value > 1).Select(count => shell.Nodes[count.Key].Label).Order(StringComparer.Ordinal)];
            yield return new Fault(place, $"a line between roof and wall that meets itself at {Listed(hubs, "hub")}", "a line that closes without meeting itself: add or leave out a facet at these hubs");
        }

        string[] uncut = [.. line.Steps.Where(step => plan.Edges[step.Edge].Role != EdgeRole.Seam).Select(step => HubLabels.StrutOf(shell, step.Edge)).Order(StringComparer.Ordinal)];
        if (uncut.Length > 0)
        {
            yield return new Fault(place, $"a line between roof and wall over {Listed(uncut, "strut")}, which cloth goes over uncut", "a line that lies on seams: let the panels there end at it, or take the whole panel to one side");
        }

        if (job.Seam.Closing is { } closing && ClosingSeam.StartOf(shell, closing, plan) >= 0 && ClosingSeam.Chain(shell, closing, plan).Any(edge => OnRoof(shell, line, edge)))
        {
            yield return new Fault("seam.closing.to", FormattableString.Invariant($"{ClosingSeam.LastRing(shell, closing)}"), "a closing seam that ends at the roof's edge: the roof is a part of its own, and comes off. State a lower ring.");
        }
    }

    /// <summary>Whether an edge of the shell lies on the roof or on its line.</summary>
    private static bool OnRoof(Shell shell, RoofLine line, int edge) => line.Faces.Contains(shell.Edges[edge].Left) || line.Faces.Contains(shell.Edges[edge].Right);

    private static IEnumerable<Fault> Zips(Job job, Shell shell, RoofLine line)
    {
        var longest = job.Notions.ZipLongest;
        foreach (var zip in RoofZips.Plan(job, shell, line))
        {
            if (zip.LengthMm > longest.Millimetres + 1e-6)
            {
                yield return new Fault("notions.zipLongest", longest.Typed, FormattableString.Invariant($"at least {zip.LengthMm:0} mm: zips of the roof run from hub to hub, over strut {HubLabels.StrutOf(shell, zip.Steps[0].Edge)} too"));
            }
            else if (zip.LengthMm < ShortestZip)
            {
                yield return new Fault("roof", FormattableString.Invariant($"a zip of {zip.LengthMm:0} mm over strut {HubLabels.StrutOf(shell, zip.Steps[0].Edge)}"), FormattableString.Invariant($"at least {ShortestZip:0} mm between two corners of the roof's edge: add or leave out a facet there"));
            }
        }
    }

    private static IEnumerable<Fault> Flaps(Job job, Shell shell, RoofLine line)
    {
        var flap = job.Roof!.Flap;
        foreach (var step in line.Steps)
        {
            double Mitre(int node) => flap.Millimetres / Math.Tan(line.AngleAt(shell, node, onRoof: false) / 2);
            var lower = step.LengthMm - Mitre(step.From) - Mitre(step.To);
            if (lower < LeastEdge)
            {
                yield return new Fault("roof.flap", flap.Typed, FormattableString.Invariant($"a narrower flap: over strut {HubLabels.StrutOf(shell, step.Edge)} its mitres leave {Math.Max(0, lower):0} mm of the lower edge, the least is {LeastEdge:0} mm"));
                yield break;
            }
        }
    }

    private static IEnumerable<Fault> Openings(Job job, Shell shell, RoofLine line, OpeningLaying openings)
    {
        var edges = line.Steps.Select(step => step.Edge).ToHashSet();
        (string Place, string Label, Region Region, double Ring)[] all =
        [
            .. openings.Windows.Select(window => (FormattableString.Invariant($"windows[{window.Entry}]"), window.Label, window.Region, window.Wish.Ring.Millimetres)),
            .. openings.Openings.Select(opening => (FormattableString.Invariant($"openings[{opening.Entry}]"), opening.Label, opening.Region, opening.Region.RingMm)),
            .. openings.Pipes.Select(pipe => (FormattableString.Invariant($"pipes[{pipe.Entry}]"), pipe.Label, pipe.Region, pipe.Wish.Lap.Millimetres)),
        ];
        foreach (var (place, label, region, ring) in all)
        {
            if (region.Rim.Any(stretch => new[] { stretch.Enter, stretch.Leave }.Any(point => point is { } crossing && edges.Contains(crossing.Edge))))
            {
                yield return new Fault(place, $"{label} crosses the line between roof and wall", "an opening on one side of it: another place, or another row or facets for the roof");
                continue;
            }

            var onRoof = region.Rim.All(stretch => line.Faces.Contains(stretch.Face));
            var points = RimPoints.InSpace(shell, region);
            var gap = line.Steps.Min(step => points.Min(point => Segments3.Distance(shell.Nodes[step.From].Position, shell.Nodes[step.To].Position, point))) - ring;
            if (!onRoof && gap < job.Roof!.Flap.Millimetres)
            {
                yield return new Fault(place, FormattableString.Invariant($"{label} lies {Math.Max(0, gap):0} mm below the roof's edge"), $"at least the width of the roof's flap, {job.Roof.Flap.Typed}, which hangs there: a place farther down, or a narrower flap");
            }

            if (onRoof && job.Roof!.Screen is not null && openings.Pipes.Any(pipe => pipe.Label == label))
            {
                yield return new Fault(place, $"{label} goes through the roof, beneath which a screen lies", "no mesh near a stove pipe: leave the roof screen away, or let the pipe go through the wall");
            }
        }
    }

    private static IEnumerable<Fault> Slits(Job job, Shell shell, RoofLine line, ImmutableArray<LaidSlit> slits)
    {
        var edges = line.Steps.Select(step => step.Edge).ToHashSet();
        foreach (var slit in slits)
        {
            var place = FormattableString.Invariant($"openings[{slit.Entry}]");
            if (slit.Crossed.Any(edges.Contains))
            {
                yield return new Fault(place, $"{slit.Label} crosses the line between roof and wall", "a slit on one side of it: another place, or another row or facets for the roof");
                continue;
            }

            var gap = slit.Lines.Where(part => !line.Faces.Contains(part.Face)).Select(part => (Plane: FacePlane.Of(shell, part.Face), part.From, part.To))
                .SelectMany(part => line.Steps.Select(step => Segments3.Distance(shell.Nodes[step.From].Position, shell.Nodes[step.To].Position, part.Plane.ToSpace(part.From), part.Plane.ToSpace(part.To))))
                .DefaultIfEmpty(double.PositiveInfinity).Min();
            if (gap < job.Roof!.Flap.Millimetres)
            {
                yield return new Fault(place, FormattableString.Invariant($"{slit.Label} comes within {gap:0} mm of the roof's edge"), $"at least the width of the roof's flap, {job.Roof.Flap.Typed}, which hangs there: a shorter slit, a place farther down, or a narrower flap");
            }
        }
    }

    private static string Listed(string[] labels, string what) => labels.Length switch
    {
        1 => $"{what} {labels[0]}",
        <= 6 => $"{what}s {string.Join(", ", labels)}",
        _ => FormattableString.Invariant($"{labels.Length} {what}s, such as {string.Join(", ", labels.Take(3))}"),
    };
}
