using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Files.Results;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Files.Reports;

/// <summary>What drawings of the whole cover show beside its faces: openings, zips, and lines to which something is sewn on.</summary>
/// <param name="Voids">What openings take out, face by face.</param>
/// <param name="Lines">All lines, face by face.</param>
internal sealed record CoverMarks(ImmutableArray<CoverVoid> Voids, ImmutableArray<CoverLine> Lines)
{
    /// <summary>Those of the cover, each point in the chart of its face.</summary>
    public static CoverMarks Of(Result result)
    {
        var voids = result.Cut.Insides.Select(inside => (Inside: inside, inside.Arcs.First(arc => arc.Region is not null).Region!)).ToArray();
        return new CoverMarks(
            [.. voids.SelectMany(entry => entry.Inside.Patches.Select(patch => new CoverVoid(entry.Item2.Name, entry.Item2.Label, patch.Face, patch.Corners)))],
            [
                .. voids.SelectMany(entry => entry.Inside.Patches.SelectMany(patch => Rims(entry.Inside, patch, entry.Item2, ZipsOf(result, entry.Item2)))),
                .. result.Cut.Drawn.Select(line => new CoverLine(
                    line.Purpose == SurfaceLine.Slit ? CoverLine.Slit : CoverLine.Mark, line.Purpose == SurfaceLine.Slit ? line.Opening : string.Empty, result.Cut.Patches[line.Patch].Face, line.Path)),
                .. result.Pipes.SelectMany(pipe => pipe.Hole.Rim).Select(stretch => new CoverLine(CoverLine.Mark, string.Empty, stretch.Face, stretch.IsRing ? stretch.Points.Add(stretch.Points[0]) : stretch.Points)),
                .. Zips(result),
            ]);
    }

    /// <summary>Those of one face.</summary>
    public CoverMarks On(int face) => new([.. Voids.Where(one => one.Face == face)], [.. Lines.Where(line => line.Face == face)]);

    /// <summary>Those of the faces for which there is a map, with every point mapped.</summary>
    /// <param name="map">For the index of a face, the map of its chart; null where the face is not shown.</param>
    public CoverMarks Map(Func<int, Func<Point2, Point2>?> map)
    {
        var maps = Voids.Select(one => one.Face).Concat(Lines.Select(line => line.Face)).Distinct().ToDictionary(face => face, map);
        return new(
            [.. Voids.Where(one => maps[one.Face] is not null).Select(one => one with { Ring = [.. one.Ring.Select(maps[one.Face]!)] })],
            [.. Lines.Where(line => maps[line.Face] is not null).Select(line => line with { Points = [.. line.Points.Select(maps[line.Face]!)] })]);
    }

    public IEnumerable<FigureLine> Figures() => Lines.Select(line => new FigureLine(line.Style, line.Points, IsClosed: false));

    /// <summary>The edges of a patch that lie on the rim, arc by arc; an arc that is no whole rim bears its label.</summary>
    private static IEnumerable<CoverLine> Rims(Subdivision inside, Patch patch, Region region, ImmutableArray<ZipRun> zips)
    {
        var count = patch.Corners.Length;
        var start = Enumerable.Range(0, count).FirstOrDefault(i => patch.Arcs[i] != patch.Arcs[(i + count - 1) % count]);
        for (var (first, steps) = (0, 0); first < count; first += steps)
        {
            var arc = patch.Arcs[(start + first) % count];
            steps = Enumerable.Range(first, count - first).TakeWhile(i => patch.Arcs[(start + i) % count] == arc).Count();
            if (inside.Arcs[arc].Role == EdgeRole.Rim)
            {
                var (begin, label) = (start + first, inside.Arcs[arc].Label);
                yield return new CoverLine(IsZipped(inside.Arcs[arc], region, zips) ? CoverLine.ZippedRim : CoverLine.Rim, label == region.Label ? string.Empty : label, patch.Face, [.. Enumerable.Range(begin, steps + 1).Select(i => patch.Corners[i % count])]);
            }
        }
    }

    private static ImmutableArray<ZipRun> ZipsOf(Result result, Region region) =>
        result.Openings.FirstOrDefault(opening => opening.Label == region.Label)?.Zips.RemoveAll(zip => zip.IsBetweenLeaves) ?? [];

    /// <summary>Whether a zip runs by the middle of an arc.</summary>
    private static bool IsZipped(Arc arc, Region region, ImmutableArray<ZipRun> zips) =>
        zips.Any(zip => (arc.FromMm + (arc.LengthMm / 2) - zip.From + region.RimLength) % region.RimLength < zip.LengthMm);

    /// <summary>Seams by zip, on both faces beside them; those of the roof and those that open a part of a seam bear a name.</summary>
    private static IEnumerable<CoverLine> Zips(Result result)
    {
        var names = RoofFacts.Of(result)?.Zips.SelectMany(zip => zip.Seams.Select(seam => (seam, zip.Label))).ToDictionary(entry => entry.seam, entry => entry.Label, StringComparer.Ordinal) ?? [];
        return
            from arc in result.Cut.Arcs
            where arc.MakeUp?.Form == MakeUpForm.Zip && arc.Second is not null
            let name = names.GetValueOrDefault(arc.Label) ?? (arc.MakeUp!.Name == SeamZip.MakeUp.Name ? arc.Label : string.Empty)
            from side in new[] { arc.First, arc.Second!.Value }
            let patch = result.Cut.Patches[side.Patch]
            select new CoverLine(CoverLine.Zip, name, patch.Face, [patch.Corners[side.Edge], patch.Corners[(side.Edge + 1) % patch.Corners.Length]]);
    }
}
