using System;
using System.Collections.Generic;
using System.Linq;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>Holds the pieces round a stove pipe to the pipe itself, from pieces.json alone: the sleeve is rolled up again and stood on the true cover.</summary>
internal static class PipedCover
{
    // A drawn curve is this near to its line, by the promise of the pipes' page; the grid moves a corner, millimetres.
    private const double OnLine = 0.03;

    // Stations at which the true foot is tried as the sleeve's beginning.
    private const int Turns = 180;

    /// <summary>Everything that does not fit, cover and patch included; empty when all can be sewn.</summary>
    internal static IReadOnlyList<string> Faults(string text, SewingOrder order, PipeOrder pipe)
    {
        var (file, cover) = (SewnFile.Read(text), TrueCover.Build(order.Sizes));
        return [.. OpenedCover.Faults(file, cover, [pipe.Opening(cover)]), .. OfPipe(file, cover, pipe)];
    }

    /// <summary>Everything that does not fit in what is sewn round one pipe.</summary>
    internal static IEnumerable<string> OfPipe(SewnFile file, TrueCover cover, PipeOrder pipe)
    {
        var faults = new List<string>();
        var patterns = file.Patterns.ToDictionary(pattern => pattern.Id);
        foreach (var (kind, count) in new[] { ("pipePatch", 1), ("pipeSleeve", 1), ("pipeFlap", 2) })
        {
            var found = file.Pieces.Count(piece => patterns[piece.Pattern].Kind == kind);
            if (found != count)
            {
                faults.Add($"{found} pieces of kind {kind}, not {count}.");
            }
        }

        if (file.Patterns.FirstOrDefault(pattern => pattern.Kind == "pipeSleeve") is { } sleeve)
        {
            faults.AddRange(pipe.Spread is { } spread ? ConeFaults(cover, pipe, sleeve, spread * Math.PI / 180) : SleeveFaults(cover, pipe, sleeve));
        }

        foreach (var run in file.Patterns.Where(pattern => pattern.Kind is "pipePatch" or "pipeSleeve" or "pipeFlap").SelectMany(pattern => pattern.Runs.Select(run => (pattern.Kind, run)).Concat(pattern.Cutouts.Select(cutout => (Kind: "hole", run: cutout.Run)))))
        {
            var wanted = run.run.Role == "seam" ? 12.5 : run.Kind == "pipePatch" ? pipe.Lap : pipe.TurnUnder;
            if (!(Math.Abs(run.run.AllowanceMm - wanted) <= Tolerances.SamePlace))
            {
                faults.Add(FormattableString.Invariant($"An edge of a {run.Kind} has {run.run.AllowanceMm} mm of allowance, not {wanted} mm."));
            }
        }

        faults.AddRange(file.Pieces.Where(piece => patterns[piece.Pattern].Kind is "pipePatch" or "pipeSleeve")
            .SelectMany(piece => piece.Runs.Where(run => run.Role is "rim" or "seam" && run.Partner is null).Select(run => $"{piece.Label}: {run.Arc} has no partner.")));
        faults.AddRange(FlapFaults(cover, pipe, file));
        return faults;
    }

    /// <summary>The foot of an unrolled sleeve, from left to right.</summary>
    private static FlatPoint[] FootOf(SewnPattern sleeve)
    {
        var run = sleeve.Runs.Single(run => run.Role == "rim");
        return [.. Enumerable.Range(run.From, run.To - run.From + 1).Select(corner => sleeve.SewLine[corner])];
    }

    private static IEnumerable<string> SleeveFaults(TrueCover cover, PipeOrder pipe, SewnPattern sleeve)
    {
        var (foot, radius) = (FootOf(sleeve), pipe.Radius + pipe.Gap);
        var girth = foot[^1].X - foot[0].X;

        // The chords of a fine polygon of the circle's area are a little longer than the circle: less than 0.05 mm at any size allowed.
        if (!(Math.Abs(girth - (2 * Math.PI * radius)) <= 0.05))
        {
            yield return FormattableString.Invariant($"The sleeve's girth is {girth} mm, not {2 * Math.PI * radius} mm.");
        }

        var (axis, middle) = (pipe.Along(cover), TrueOpening.MiddleOf(cover, pipe.Cylinder(cover, radius)));
        var across = (Math.Abs(axis.Z) < 0.9 ? axis.Cross(new SpacePoint(0, 0, 1)) : axis.Cross(new SpacePoint(1, 0, 0))).Unit;
        var aside = axis.Cross(across);
        // The faces that the cylinder meets, and no others.
        var cells = TrueOpening.CellsOf(cover, pipe.Cylinder(cover, 1.05 * radius));
        TrueFace[] met = [.. cover.Faces.Values.Where(face => !face.IsSkirt && cells[face.Label].Sum(cell => cell.Area) < face.Area)];
        double[] heights = [.. foot.Select(point => point.Y - foot[0].Y)];
        double Error(double start, IEnumerable<int> stations)
        {
            double TrueAt(int i)
            {
                var angle = start + ((foot[i].X - foot[0].X) / girth * 2 * Math.PI);
                return HeightAt(met, middle + (radius * Math.Cos(angle) * across) + (radius * Math.Sin(angle) * aside), axis);
            }

            var off = stations.Select(i => TrueAt(i) - heights[i]).ToArray();
            return (off.Max() - off.Min()) / 2;
        }

        int[] some = [.. Enumerable.Range(0, 24).Select(i => i * (foot.Length - 1) / 24)];
        var best = Enumerable.Range(0, Turns).Select(i => 2 * Math.PI * i / Turns).MinBy(start => Error(start, some));
        for (var step = 2 * Math.PI / Turns; step > 1e-8; step /= 2)
        {
            best = new[] { best - step, best, best + step }.MinBy(start => Error(start, some));
        }

        var error = Error(best, Enumerable.Range(0, foot.Length));
        if (!(error <= OnLine))
        {
            yield return FormattableString.Invariant($"The sleeve's foot stands up to {error:0.###} mm off the cover.");
        }

        var top = sleeve.SewLine.Max(point => point.Y) - foot.Max(point => point.Y);
        if (!(Math.Abs(top - pipe.Sleeve) <= Tolerances.SamePlace))
        {
            yield return FormattableString.Invariant($"The sleeve is {top} mm high over the top of its foot, not {pipe.Sleeve} mm.");
        }

        // The sleeve's own seam stands on the lowest place of the hole, or over several facets where it crosses a line.
        if (sleeve.Cutouts.Count != 0)
        {
            yield return "The sleeve has a hole.";
        }
    }

    /// <summary>Height along the pipe at which a line beside it meets the true cover.</summary>
    private static double HeightAt(TrueFace[] faces, SpacePoint point, SpacePoint axis)
    {
        var heights = faces.Select(face =>
        {
            var height = face.Outward.Dot(face.Corners[0] - point) / face.Outward.Dot(axis);
            var hit = point + (height * axis);
            var depth = face.Corners.Select((corner, i) => (face.Corners[(i + 1) % face.Corners.Count] - corner).Unit.Cross(hit - corner).Dot(face.Outward)).Min();
            return (height, depth);
        });
        return heights.MaxBy(entry => entry.depth).height;
    }

    /// <summary>Every point of an unrolled cone's foot against the closed form: at (apex - z) / cos a from the apex, z where its ray meets the facet.</summary>
    private static IEnumerable<string> ConeFaults(TrueCover cover, PipeOrder pipe, SewnPattern sleeve, double half)
    {
        var foot = FootOf(sleeve);
        var tilt = pipe.Tilt(cover);
        var seams = sleeve.Runs.Where(run => run.Role == "seam").Select(run => (From: sleeve.SewLine[run.From], To: sleeve.SewLine[run.To % sleeve.SewLine.Count])).ToArray();
        var (right, left) = (seams[0], seams[1]);
        var (along, beside) = (right.To - right.From, left.To - left.From);
        var apex = right.From + ((left.From - right.From).Cross(beside) / along.Cross(beside) * along);
        var (tanHalf, tanTilt) = (Math.Tan(half), Math.Tan(tilt));
        var radius = pipe.Radius + pipe.Gap;
        var height = pipe.Apex(cover);
        double TrueAt(double theta) => (height - (height * tanHalf * Math.Cos(theta) * tanTilt / (1 + (tanHalf * Math.Cos(theta) * tanTilt)))) / Math.Cos(half);
        double[] angles = [.. foot.Select(point => Math.Atan2((foot[0] - apex).Cross(point - apex), (foot[0] - apex).Dot(point - apex)) / Math.Sin(half))];
        for (var i = 1; i < angles.Length; i++)
        {
            angles[i] += angles[i] < angles[i - 1] - Math.PI ? 2 * Math.PI / Math.Sin(half) : 0;
        }

        double Error(double start) => foot.Select((point, i) => Math.Abs(point.DistanceTo(apex) - TrueAt(start + angles[i]))).Max();
        var best = Enumerable.Range(0, Turns).Select(i => 2 * Math.PI * i / Turns).MinBy(Error);
        for (var step = 2 * Math.PI / Turns; step > 1e-8; step /= 2)
        {
            best = new[] { best - step, best, best + step }.MinBy(Error);
        }

        if (!(Error(best) <= 2 * OnLine))
        {
            yield return FormattableString.Invariant($"The boot's foot stands up to {Error(best):0.###} mm off the cover.");
        }

        if (!(Math.Abs(angles[^1] - (2 * Math.PI)) <= 0.002))
        {
            yield return FormattableString.Invariant($"The boot closes at {angles[^1] * 180 / Math.PI:0.###} degrees.");
        }

        var top = sleeve.SewLine.Except(foot).Select(point => point.DistanceTo(apex)).ToArray();
        if (!(Math.Abs(top.Average() - (radius / Math.Sin(half))) <= OnLine) || !(top.Max() - top.Min() <= OnLine))
        {
            yield return FormattableString.Invariant($"The boot's top lies {top.Average():0.###} mm from its apex, not {radius / Math.Sin(half):0.###} mm.");
        }
    }

    /// <summary>The closing flap covers the hole and as much more as was ordered, seen along the pipe.</summary>
    private static IEnumerable<string> FlapFaults(TrueCover cover, PipeOrder pipe, SewnFile file)
    {
        if (pipe.Spread is not null || file.Pieces.FirstOrDefault(piece => piece.Label.EndsWith("1c", StringComparison.Ordinal)) is not { } closing)
        {
            yield break;
        }

        var truth = TrueOpening.AreaOf(cover, pipe.Cylinder(cover, pipe.Radius + pipe.Gap + pipe.ClosingFlap));
        var pattern = file.Patterns.Single(one => one.Id == closing.Pattern);
        var area = FlatPoint.AreaOf(pattern.SewLine);

        // Half a grid step and the rise of the chords all round.
        if (!(Math.Abs(area - truth) <= pattern.Runs.Sum(run => run.LengthMm) * OnLine))
        {
            yield return FormattableString.Invariant($"The closing flap covers {area} mm2, not {truth} mm2.");
        }
    }
}
