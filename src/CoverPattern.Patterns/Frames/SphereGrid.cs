using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Frames;

/// <summary>A solid divided by class I: each edge in equal chords, the grid pushed out to the sphere of radius 1.</summary>
/// <remarks>Clinton's method 1 [Clinton 1971, abstract; formula from memory]: p = unit(k A + i B + j C) with i + j + k = n.</remarks>
internal sealed class SphereGrid
{
    private readonly int frequency;
    private readonly Dictionary<(int, int, int, int, int, int), int> indexByWeights = [];
    private readonly List<SpherePoint> points = [];
    private readonly List<ImmutableArray<int>> triangles = [];

    private SphereGrid(int frequency) => this.frequency = frequency;

    /// <summary>Divides a solid.</summary>
    /// <param name="faces">Faces of the solid, counter-clockwise seen from outside.</param>
    /// <param name="frequency">Parts of an edge, 1 or more.</param>
    /// <returns>Points, and triangles as indexes into them, counter-clockwise seen from outside.</returns>
    internal static (ImmutableArray<SpherePoint> Points, ImmutableArray<ImmutableArray<int>> Triangles) Divide(
        ImmutableArray<SolidFace> faces, int frequency)
    {
        var grid = new SphereGrid(frequency);
        foreach (var face in faces)
        {
            grid.Divide(face);
        }

        return ([.. grid.points], [.. grid.triangles]);
    }

    private void Divide(SolidFace face)
    {
        for (var i = 0; i < frequency; i++)
        {
            for (var j = 0; j < frequency - i; j++)
            {
                triangles.Add([PointAt(face, i, j), PointAt(face, i + 1, j), PointAt(face, i, j + 1)]);
                if (i + j + 2 <= frequency)
                {
                    triangles.Add([PointAt(face, i + 1, j), PointAt(face, i + 1, j + 1), PointAt(face, i, j + 1)]);
                }
            }
        }
    }

    /// <summary>The point with weights i on B, j on C and the rest on A; neighbours find the same one by its weights, never by nearness.</summary>
    private int PointAt(SolidFace face, int i, int j)
    {
        var weighted = new (SolidCorner Corner, int Weight)[] { (face.A, frequency - i - j), (face.B, i), (face.C, j) }
            .Where(pair => pair.Weight > 0)
            .OrderBy(pair => pair.Corner.Index)
            .ToArray();
        var key = Key(weighted);
        if (!indexByWeights.TryGetValue(key, out var index))
        {
            index = points.Count;
            indexByWeights.Add(key, index);
            points.Add(new SpherePoint(Ring(weighted), Direction(weighted)));
        }

        return index;
    }

    private static (int, int, int, int, int, int) Key((SolidCorner Corner, int Weight)[] weighted)
    {
        var parts = new int[6];
        for (var i = 0; i < weighted.Length; i++)
        {
            parts[2 * i] = weighted[i].Corner.Index + 1;
            parts[(2 * i) + 1] = weighted[i].Weight;
        }

        return (parts[0], parts[1], parts[2], parts[3], parts[4], parts[5]);
    }

    private static int Ring((SolidCorner Corner, int Weight)[] weighted) =>
        weighted.Sum(pair => pair.Weight * pair.Corner.Level);

    private static Point3 Direction((SolidCorner Corner, int Weight)[] weighted) =>
        weighted.Aggregate(default(Point3), (sum, pair) => sum + (pair.Weight * pair.Corner.Position)).Unit();
}

/// <summary>A point of the divided sphere.</summary>
/// <param name="RingFromTop">Ring, 0 at the top.</param>
/// <param name="Direction">On the sphere of radius 1.</param>
internal readonly record struct SpherePoint(int RingFromTop, Point3 Direction);
