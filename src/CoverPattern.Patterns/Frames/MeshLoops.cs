using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Frames;

/// <summary>The borders of a mesh whose faces all run the same way round.</summary>
internal static class MeshLoops
{
    // Borders whose lengths differ by less than this share are equally long: over what a file's digits lose, under what a tape tells.
    private const double Alike = 1e-6;

    /// <summary>Walks the edges that only one face has.</summary>
    /// <param name="faces">Rings of corners.</param>
    /// <returns>Loops in the direction of their faces, each beginning with its lowest corner, in order of that corner; a corner that two borders touch stands in one of them only once.</returns>
    internal static ImmutableArray<ImmutableArray<int>> Find(IEnumerable<ImmutableArray<int>> faces)
    {
        var sides = faces.SelectMany(face => face.Select((corner, i) => (From: corner, To: face[(i + 1) % face.Length]))).ToHashSet();
        var next = sides.Where(side => !sides.Contains((side.To, side.From))).OrderBy(side => side.From).ThenBy(side => side.To)
            .GroupBy(side => side.From).ToDictionary(side => side.Key, side => side.First().To);
        var loops = ImmutableArray.CreateBuilder<ImmutableArray<int>>();
        foreach (var start in next.Keys.Order().ToArray())
        {
            var loop = ImmutableArray.CreateBuilder<int>();
            for (var at = start; next.Remove(at, out var after); at = after)
            {
                loop.Add(at);
            }

            if (loop.Count > 0)
            {
                loops.Add(loop.ToImmutable());
            }
        }

        return loops.ToImmutable();
    }

    /// <summary>The loop with the longest way round: the base; of equally long ones, as of a drum open above and below, the lowest.</summary>
    internal static ImmutableArray<int> Longest(ImmutableArray<ImmutableArray<int>> loops, IReadOnlyList<Point3> points)
    {
        var around = loops.Select(loop => loop.Select((corner, i) => Point3.Distance(points[corner], points[loop[(i + 1) % loop.Length]])).Sum()).ToArray();
        var longest = around.DefaultIfEmpty().Max();
        return loops.Where((_, i) => around[i] >= longest * (1 - Alike)).MinBy(loop => loop.Average(corner => points[corner].Z));
    }

    /// <summary>Half the sum of the cross products round a ring: as long as its area, square to it, seen from there counter-clockwise.</summary>
    internal static Point3 AreaVector(ImmutableArray<int> ring, IReadOnlyList<Point3> points)
    {
        var first = points[ring[0]];
        return Enumerable.Range(1, ring.Length - 2).Aggregate(
            default(Point3), (sum, i) => sum + (0.5 * Point3.Cross(points[ring[i]] - first, points[ring[i + 1]] - first)));
    }
}
