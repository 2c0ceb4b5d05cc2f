using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Seams;

/// <summary>Free areas low and high on one cover, and the height between them.</summary>
/// <param name="Low">Openings that let air in.</param>
/// <param name="High">Openings that let it out.</param>
public sealed record VentSheet(ImmutableArray<VentArea> Low, ImmutableArray<VentArea> High)
{
    /// <summary>Free area below, square metres.</summary>
    public double LowM2 => FreeM2(Low);

    /// <summary>Free area above, square metres.</summary>
    public double HighM2 => FreeM2(High);

    /// <summary>From the middle of the low ones to that of the high ones, each weighed with its free area, millimetres.</summary>
    public double HeightMm => Middle(High) - Middle(Low);

    /// <summary>Measures the openings that the job names.</summary>
    /// <param name="wish">Their labels.</param>
    /// <param name="shell">The finished surface.</param>
    /// <param name="openings">Everything laid on it.</param>
    /// <param name="cut">The surface cut up; its insides stand in the order of the openings' regions.</param>
    public static VentSheet Of(VentWish wish, Shell shell, OpeningLaying openings, Subdivision cut)
    {
        ArgumentNullException.ThrowIfNull(wish);
        ArgumentNullException.ThrowIfNull(shell);
        ArgumentNullException.ThrowIfNull(openings);
        ArgumentNullException.ThrowIfNull(cut);
        var known = Known(openings).Select((entry, i) => (entry.Label, Area: Measure(entry, shell, cut.Insides[i], wish.MeshShare))).ToDictionary(entry => entry.Label, entry => entry.Area, StringComparer.Ordinal);
        return new VentSheet([.. wish.Low.Select(label => known[label])], [.. wish.High.Select(label => known[label])]);
    }

    /// <summary>What the job says wrongly about vents: unknown labels, openings that never open or stand on both sides.</summary>
    /// <param name="job">Its vents are read.</param>
    /// <param name="openings">Everything laid on the cover.</param>
    public static ImmutableArray<Fault> Faults(Job job, OpeningLaying openings)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(openings);
        if (job.Vents is not { } wish)
        {
            return [];
        }

        var known = Known(openings).ToDictionary(entry => entry.Label, entry => entry, StringComparer.Ordinal);
        var faults = ImmutableArray.CreateBuilder<Fault>();
        foreach (var (key, i, label) in wish.Low.Select((label, i) => ("low", i, label)).Concat(wish.High.Select((label, i) => ("high", i, label))))
        {
            var place = FormattableString.Invariant($"vents.{key}[{i}]");
            if (!known.TryGetValue(label, out var opening))
            {
                faults.Add(new Fault(place, $"\"{label}\"", "the label of an opening: " + (known.Count == 0 ? "the job has none" : string.Join(", ", known.Keys))));
            }
            else if (opening.IsClosed)
            {
                faults.Add(new Fault(place, $"\"{label}\", whose sheet is sewn in", "an opening that opens: without a sheet, or with one that is held otherwise"));
            }
            else if (key == "high" && wish.Low.Contains(label, StringComparer.Ordinal))
            {
                faults.Add(new Fault(place, $"\"{label}\", which stands among the low ones", "each opening once"));
            }
        }

        return faults.ToImmutable();
    }

    private static IEnumerable<(string Label, bool HasScreen, bool IsClosed, Region Region)> Known(OpeningLaying openings) =>
        openings.Windows.Select(window => (window.Label, window.Wish.Screen is not null, false, window.Region))
            .Concat(openings.Openings.Select(opening => (opening.Label, opening.Wish.Screen is not null, opening.Wish is { Sheet: not null, Held: JoinKind.Sewn }, opening.Region)));

    private static VentArea Measure((string Label, bool HasScreen, bool IsClosed, Region Region) entry, Shell shell, Subdivision inside, double meshShare)
    {
        var parts = inside.Patches.Select(patch => (patch.Area, FacePlane.Of(shell, patch.Face).ToSpace(Centre(patch.Corners)).Z)).ToArray();
        // A circle's polygon has its exact area but for rounding.
        var area = parts.Sum(part => part.Area);
        return new VentArea(entry.Label, area, area * (entry.HasScreen ? meshShare : 1), parts.Sum(part => part.Area * part.Z) / area, entry.HasScreen);
    }

    /// <summary>Centre of the area of a ring.</summary>
    private static Point2 Centre(ImmutableArray<Point2> ring)
    {
        var (sum, area) = (default(Point2), 0.0);
        for (var i = 1; i + 1 < ring.Length; i++)
        {
            var twice = Point2.Cross(ring[i] - ring[0], ring[i + 1] - ring[0]);
            sum += twice / 3 * (ring[0] + ring[i] + ring[i + 1]);
            area += twice;
        }

        return 1 / area * sum;
    }

    private static double FreeM2(ImmutableArray<VentArea> vents) => vents.Sum(vent => vent.FreeMm2) / 1e6;

    private static double Middle(ImmutableArray<VentArea> vents) => vents.Sum(vent => vent.FreeMm2 * vent.MiddleMm) / vents.Sum(vent => vent.FreeMm2);
}
