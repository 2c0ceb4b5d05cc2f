using System;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Openings;

namespace CoverPattern.Patterns.Seams;

/// <summary>Cuts what lies inside a rim, or between two, out of a shell by itself: cloth that goes over every line uncut.</summary>
internal static class LoneCut
{
    /// <summary>What lies inside a region; its rim is one arc.</summary>
    internal static Subdivision Inside(ClippedShell surface, Region region)
    {
        ImmutableArray<FaceCell> cells = region.Rim[0].IsRing
            ? [OfRing(region)]
            : [.. (FaceCutter.Cut(surface, [region]) ?? throw Crossing(region)).Where(cell => cell.Region == 0)];
        return Assemble(cells, [new Border(0, region.Label, [.. Enumerable.Range(0, region.Rim.Length)], region)]);
    }

    /// <summary>What lies between two rims, the inner one wholly inside the outer one.</summary>
    /// <param name="surface">The shell above its hem.</param>
    /// <param name="outer">Its rim's arcs are those that the cover has there.</param>
    /// <param name="inner">Its rim is one arc.</param>
    /// <param name="isEnd">Whether an arc of the outer rim ends where it crosses a line.</param>
    internal static Subdivision Between(ClippedShell surface, Region outer, Region inner, Func<LinePoint, bool> isEnd)
    {
        // All beyond the outer rim is what its rim takes out when it runs the other way.
        var count = outer.Rim.Length;
        var beyond = outer with { Rim = [.. outer.Rim.Reverse().Select(stretch => stretch.Reversed)] };
        ImmutableArray<FaceCell> cells = outer.Rim[0].IsRing
            ? [OfRing(outer) with { Rings = [(1, 0)] }]
            : [.. (FaceCutter.Cut(surface, [beyond, inner]) ?? throw Crossing(inner)).Where(cell => cell.Region < 0)];
        var groups = RimArcs.Groups(outer, isEnd);
        return Assemble(cells,
        [
            .. groups.Select((group, i) => new Border(0, groups.Count == 1 ? outer.Label : string.Create(CultureInfo.InvariantCulture, $"{outer.Label}-{i + 1}"), [.. group.Select(part => count - 1 - part.Stretch)], outer)),
            // The cloth runs along the inner rim backward.
            new Border(1, inner.Label, [.. Enumerable.Range(0, inner.Rim.Length).Reverse()], inner),
        ]);
    }

    private static FaceCell OfRing(Region region) =>
        new(region.Rim[0].Face, -1, region.Rim[0].Points, [.. region.Rim[0].Points.Select(_ => CellEdge.OnRim(0, 0, 0))]);

    private static ArgumentException Crossing(Region region) => new($"The rim of {region.Label} crosses itself or another.", nameof(region));

    private static Subdivision Assemble(ImmutableArray<FaceCell> cells, ImmutableArray<Border> borders)
    {
        var sides = cells.SelectMany((cell, patch) => cell.Edges.Select((edge, i) => (Edge: edge, Side: new PatchSide(patch, i)))).ToArray();
        var folds = sides.Where(entry => !entry.Edge.IsRim).GroupBy(entry => (entry.Edge.Line, entry.Edge.Part)).ToArray();
        var arcs = folds.Select((fold, i) => Fold(cells, [.. fold.Select(entry => entry.Side)], i)).ToList();
        var arcOf = folds.SelectMany((fold, i) => fold.Select(entry => (entry.Side, i))).ToDictionary(entry => entry.Side, entry => entry.i);
        var rings = cells.SelectMany((cell, patch) => cell.Rings.Select((ring, i) => (Edge: CellEdge.OnRim(ring.Region, ring.Stretch, 0), Side: new PatchSide(patch, cell.Corners.Length + i)))).ToArray();
        foreach (var border in borders)
        {
            var own = sides.Concat(rings).Where(entry => entry.Edge.IsRim && entry.Edge.Region == border.Number && border.Stretches.Contains(entry.Edge.Stretch)).ToArray();
            var first = own.First(entry => entry.Edge.Stretch == border.Stretches[0]).Side;
            var length = border.Stretches.Length == border.Region.Rim.Length ? border.Region.RimLength : border.Stretches.Sum(stretch => border.LengthOf(stretch));
            Array.ForEach(own, entry => arcOf[entry.Side] = arcs.Count);
            arcs.Add(new Arc(border.Label, EdgeRole.Rim, null, length, first, Second: null) { Region = border.Region });
        }

        return new Subdivision([.. cells.Select(PatchOf)], [.. arcs]);

        Patch PatchOf(FaceCell cell, int patch) => new(cell.Face, cell.Corners, [.. cell.Edges.Select((_, i) => arcOf[new PatchSide(patch, i)])])
        {
            Holes = [.. cell.Rings.Select((ring, i) => new PatchHole(arcOf[new PatchSide(patch, cell.Corners.Length + i)], borders.First(border => border.Number == ring.Region).Region))],
        };
    }

    private static Arc Fold(ImmutableArray<FaceCell> cells, PatchSide[] sides, int number)
    {
        var (corners, at) = (cells[sides[0].Patch].Corners, sides[0].Edge);
        return new Arc(
            "L" + (number + 1).ToString("D3", CultureInfo.InvariantCulture),
            sides.Length == 2 ? EdgeRole.Fold : EdgeRole.Hem,
            null,
            Point2.Distance(corners[at], corners[(at + 1) % corners.Length]),
            sides[0],
            sides.Length == 2 ? sides[1] : null);
    }

    /// <summary>An arc of a rim.</summary>
    /// <param name="Number">Number of its region among those cut.</param>
    /// <param name="Label">Its label.</param>
    /// <param name="Stretches">Stretches of that region, in the order in which the cloth runs along them.</param>
    /// <param name="Region">The region whose rim it is; of the outer one the stretches are numbered from its end.</param>
    private sealed record Border(int Number, string Label, ImmutableArray<int> Stretches, Region Region)
    {
        internal double LengthOf(int stretch) => Region.Rim[Region.Rim.Length - 1 - stretch].Length;
    }
}
