using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Openings;

/// <summary>Lays the openings of a job on its shell: where each lies, and whether it can be there.</summary>
public static class OpeningLayer
{
    // How well the largest circle is found in a facet of more than three sides, millimetres.
    private const double CentreError = 0.01;

    /// <summary>Lays every opening.</summary>
    /// <param name="job">Windows, openings, clearances and stand-off are read.</param>
    /// <param name="frame">The frame; openings keep clear of its struts and hubs.</param>
    /// <param name="shell">The surface that openings are taken out of.</param>
    /// <returns>The openings, in order of facets and of the job's entries; seams are not looked at, for they are not planned yet.</returns>
    public static OpeningLaying Lay(Job job, Frame frame, Shell shell)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(frame);
        ArgumentNullException.ThrowIfNull(shell);
        var faults = new List<Fault>();
        var wished = job.Windows
            .SelectMany((wish, entry) => WindowFacets.Find(wish, entry, frame, faults).Select(face => (Face: face, Entry: entry, Wish: wish)))
            .OrderBy(window => window.Face).ThenBy(window => window.Entry)
            .ToArray();
        var windows = wished.Select((window, i) => Place(shell, window.Face, window.Entry, window.Wish, Names(shell, wished, i))).ToImmutableArray();
        var check = new WindowCheck(job, frame, shell);
        check.Look(windows);
        var surface = new ClippedShell(shell);
        ImmutableArray<LaidOpening> openings = [.. job.Openings.Select((wish, entry) => wish.Kind == OpeningKind.Slit ? null : OpeningPlacer.Lay(surface, wish, entry, faults)).OfType<LaidOpening>()];
        var fits = new OpeningCheck(job, surface, windows);
        fits.Look(openings);
        var fills = new FillCheck(job, frame, surface);
        fills.Look(openings);
        openings = [.. openings.Select(opening => ZipPlanner.Plan(job, surface, opening, faults))];
        ImmutableArray<LaidPipe> pipes = [.. job.Pipes.Select((wish, entry) => PipeLayer.Lay(surface, wish, entry, faults)).OfType<LaidPipe>()];
        var safe = new PipeCheck(job, frame, surface);
        safe.Look(pipes, [.. windows.Select(window => (window.Label, window.Region, window.Wish.Ring.Millimetres)), .. openings.Select(opening => (opening.Label, opening.Region, ReachOf(opening.Wish)))]);
        safe.LookAtFlaps(pipes, openings);
        var slits = new SlitPlacer(job, surface);
        var laid = slits.Lay([.. windows.Select(window => window.Region), .. openings.Select(opening => opening.Region), .. pipes.Select(pipe => pipe.Region)]);
        safe.Look(pipes, laid);
        return new OpeningLaying(windows, [.. faults, .. check.Faults, .. fits.Faults, .. fills.Faults, .. slits.Faults, .. safe.Faults], [.. check.Notices, .. fits.Notices, .. fills.Notices, .. slits.Notices, .. safe.Notices])
        {
            Openings = openings,
            Slits = laid,
            Pipes = pipes,
        };

        static (string Label, string Rim) Names(Shell shell, (int Face, int Entry, WindowWish Wish)[] wished, int index)
        {
            var number = 1 + wished.Take(index).Count(other => other.Face == wished[index].Face);
            var label = "W" + shell.Faces[wished[index].Face].Label[1..] + (number > 1 ? string.Create(CultureInfo.InvariantCulture, $"-{number}") : string.Empty);
            return (label, "R" + (index + 1).ToString("D3", CultureInfo.InvariantCulture));
        }
    }

    /// <summary>How far what is sewn on round an opening reaches beyond its rim at most, millimetres.</summary>
    private static double ReachOf(OpeningWish wish)
    {
        // A drip flap goes on beyond the jambs by as much as this, by the doors' page.
        const double besideJambs = 100;
        var drip = wish.Drip is { } flap ? Math.Max(besideJambs, flap.Millimetres) : 0;
        return new[] { wish.Lap.Millimetres, wish.Ring?.Millimetres ?? 0, wish.Strip?.Millimetres ?? 0, wish.Webbing?.Millimetres ?? 0, drip, HoodShape.Reach(wish) }.Max();
    }

    private static LaidWindow Place(Shell shell, int face, int entry, WindowWish wish, (string Label, string Rim) names)
    {
        var up = FacePlane.UpOf(shell, face);
        var right = -1 * up.QuarterTurned();
        var at = Incentre(shell.Faces[face].Chart) + (wish.Right.Millimetres * right) + (wish.Up.Millimetres * up);
        var region = Region.Round(names.Rim, "window", new SurfacePoint(face, at), wish.ApertureRadius, (up, wish.TurnUnder.Millimetres)) with { Name = names.Label, RingMm = wish.Ring.Millimetres };
        return new LaidWindow(names.Label, entry, wish, region);
    }

    /// <summary>Centre of the circle that touches all sides of a triangle; of a larger polygon, of the largest circle inside.</summary>
    internal static Point2 Incentre(ImmutableArray<Point2> chart)
    {
        if (chart.Length != 3)
        {
            return InscribedCircle.Largest(chart, CentreError).Centre;
        }

        double[] facing = [Point2.Distance(chart[1], chart[2]), Point2.Distance(chart[2], chart[0]), Point2.Distance(chart[0], chart[1])];
        return (1 / facing.Sum()) * ((facing[0] * chart[0]) + (facing[1] * chart[1]) + (facing[2] * chart[2]));
    }
}
