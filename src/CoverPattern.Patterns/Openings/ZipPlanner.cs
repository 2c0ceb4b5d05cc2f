using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Openings;

/// <summary>Divides what opens by zip into zips: from corner to corner, none longer than the longest, none on a curve too tight; marks their ends and the tie-backs.</summary>
internal static class ZipPlanner
{
    /// <summary>Purpose of the mark where a zip begins or ends on the way along a rim.</summary>
    internal const string EndPurpose = "zip end";

    // A shorter zip is no opening: slider and stops alone take 50 mm (own choice), millimetres.
    private const double Shortest = 100;

    // Steps of a drawn curve tell its radius to a twentieth.
    private const double ChordShare = 0.95;

    /// <summary>The opening with its zips; what cannot be zipped becomes a fault.</summary>
    internal static LaidOpening Plan(Job job, ClippedShell surface, LaidOpening opening, List<Fault> faults)
    {
        opening = opening with { Region = opening.Region with { Marks = [.. TieBacks.Along(opening).Select(at => (at, TieBacks.Purpose))] } };
        if (!opening.Wish.HasZips)
        {
            return opening;
        }

        var runs = opening.Wish.Opens == OpensAt.Middle && !opening.Line.IsClosed ? [] : Runs(job, surface, opening);
        faults.AddRange(runs.SelectMany(run => Faults(job, opening, run)));
        ImmutableArray<ZipRun> zips =
        [
            .. Parts(opening.Wish).SelectMany(part => runs.Select((run, i) => new ZipRun(
                string.Create(CultureInfo.InvariantCulture, $"{opening.Label}{part}z{i + 1}"), part, opening.Line.Wrapped(run.From), run.To - run.From))),
        ];

        // An end at a corner of the outline or where an arc ends needs no mark.
        var marks = runs.SelectMany(run => new[] { run.From, run.To }).Select(opening.Line.Wrapped).DistinctBy(at => Math.Round(at, 3))
            .Where(at => opening.Line.Points.Select((_, i) => i).All(i => Math.Abs(opening.Line.At[i] - at) > 1 || Math.Abs(opening.Line.Bends[i]) < RimSides.Corner));
        return opening with { Zips = zips, Region = opening.Region with { Marks = [.. opening.Region.Marks, .. marks.Order().Select(at => (at, EndPurpose))] } };
    }

    /// <summary>Letters of the parts that a zip holds.</summary>
    internal static IEnumerable<string> Parts(OpeningWish wish)
    {
        if (wish.Flap is not null)
        {
            yield return "f";
        }

        if (wish.Sheet is not null)
        {
            yield return "p";
        }

        if (wish.Screen is not null)
        {
            yield return "s";
        }
    }

    private static (double From, double To)[] Runs(Job job, ClippedShell surface, LaidOpening opening)
    {
        var line = opening.Line;
        var longest = job.Notions.ZipLongest.Millimetres;
        return [.. Spans(surface, opening).SelectMany(span => Pieces(span, CornersIn(line, span))).SelectMany(run => Parted(run, longest))];
    }

    /// <summary>What opens by zip, sides beside each other together; a closed rim from a corner or from its lowest point once round.</summary>
    private static List<(double From, double To)> Spans(ClippedShell surface, LaidOpening opening)
    {
        var line = opening.Line;
        if (line.IsClosed)
        {
            var begin = Begin(surface, opening);
            return [(begin, begin + line.Length)];
        }

        var spans = new List<(double From, double To)>();
        foreach (var (side, from, to) in opening.Sides.Where(side => opening.JoinOf(side.Side) == JoinKind.Zip))
        {
            if (spans.Count > 0 && spans[^1].To == from)
            {
                spans[^1] = (spans[^1].From, to);
            }
            else
            {
                spans.Add((from, to));
            }
        }

        return spans;
    }

    /// <summary>The first corner of a closed rim; without one its lowest point, so that slider and joint lie where no rain runs.</summary>
    private static double Begin(ClippedShell surface, LaidOpening opening)
    {
        var line = opening.Line;
        var indexes = Enumerable.Range(0, line.Points.Length - 1).ToArray();
        var corner = Array.FindIndex(indexes, i => Math.Abs(line.Bends[i]) >= RimSides.Corner);
        if (corner >= 0)
        {
            return line.At[corner];
        }

        // Of one outline it is one point wherever the outline lies, so that its parts are equal everywhere.
        return line.Up is { } up
            ? line.At[indexes.OrderBy(i => Math.Round(Point2.Dot(line.Points[i], up), 3)).ThenBy(i => Point2.Cross(line.Points[i], up)).First()]
            : line.At[indexes.MinBy(i => HeightAt(surface, opening.Region, line.Where[i]))];
    }

    private static double HeightAt(ClippedShell surface, Region region, (int Stretch, int Index) where)
    {
        var stretch = region.Rim[where.Stretch];
        return Math.Round(FaceHeight.Of(surface.Shell, surface.Shell.Faces[stretch.Face]).At(stretch.Points[where.Index]), 3);
    }

    private static double[] CornersIn(RimLine line, (double From, double To) span) =>
    [
        .. Enumerable.Range(0, line.Points.Length).Where(i => Math.Abs(line.Bends[i]) >= RimSides.Corner)
            .SelectMany(i => new[] { line.At[i], line.At[i] + line.Length }).Where(at => at > span.From + 1e-6 && at < span.To - 1e-6).Distinct().Order(),
    ];

    private static IEnumerable<(double From, double To)> Pieces((double From, double To) span, double[] corners) =>
        corners.Append(span.To).Select((to, i) => (i == 0 ? span.From : corners[i - 1], to));

    private static IEnumerable<(double From, double To)> Parted((double From, double To) run, double longest)
    {
        var count = Math.Max(1, (int)Math.Ceiling(((run.To - run.From) / longest) - 1e-9));
        var step = (run.To - run.From) / count;
        return Enumerable.Range(0, count).Select(i => (run.From + (i * step), i == count - 1 ? run.To : run.From + ((i + 1) * step)));
    }

    private static IEnumerable<Fault> Faults(Job job, LaidOpening opening, (double From, double To) run)
    {
        var (line, least) = (opening.Line, job.Notions.ZipRadius);
        var radius = Math.Min(line.TightestRadius(run.From, run.To, RimSides.Corner), line.TightestRadius(run.From - line.Length, run.To - line.Length, RimSides.Corner));
        if (radius < ChordShare * least.Millimetres)
        {
            yield return new Fault(OpeningPlacer.PlaceOf(opening.Entry), FormattableString.Invariant($"{OpeningPlacer.NameOf(opening.Wish)}: a zip round a curve of {radius:0} mm radius"), $"curves of at least {least.Typed} (notions.zipRadius), or corners, at which a zip stops and the next one starts: a larger corner, another outline, or \"held\" otherwise");
        }

        if (run.To - run.From < Shortest)
        {
            yield return new Fault(OpeningPlacer.PlaceOf(opening.Entry), FormattableString.Invariant($"{OpeningPlacer.NameOf(opening.Wish)}: a side of {run.To - run.From:0} mm for a zip of its own"), FormattableString.Invariant($"sides of at least {Shortest:0} mm between corners: a larger opening, fewer corners, or \"held\" otherwise"));
        }
    }
}
