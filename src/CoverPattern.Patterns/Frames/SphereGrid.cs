using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Frames;

/// <summary>A solid divided into triangles on the sphere of radius 1.</summary>
/// <remarks>
/// Class I: p = unit(k A + i B + j C) with i + j + k = n [Clinton 1971, abstract; formula from memory]. Class II: the
/// triples of sum 3 n / 2 whose three numbers leave the same rest by 3; a strut then crosses each edge of the solid squarely.
/// </remarks>
internal sealed class SphereGrid
{
    private readonly int sum;
    private readonly HubPlacement place;
    private readonly Dictionary<(int, int, int, int, int, int), int> indexByWeights = [];
    private readonly List<Point3> points = [];
    private readonly List<ImmutableArray<int>> triangles = [];

    private SphereGrid(int sum, HubPlacement place)
    {
        (this.sum, this.place) = (sum, place);
    }

    /// <summary>Divides a solid by class I.</summary>
    /// <param name="faces">Faces of the solid, counter-clockwise seen from outside.</param>
    /// <param name="frequency">Parts of an edge, 1 or more.</param>
    /// <param name="place">Where hubs are.</param>
    /// <returns>Points, and triangles as indexes into them, counter-clockwise seen from outside.</returns>
    internal static (ImmutableArray<Point3> Points, ImmutableArray<ImmutableArray<int>> Triangles) DivideAlong(
        ImmutableArray<SolidFace> faces, int frequency, HubPlacement place)
    {
        var grid = new SphereGrid(frequency, place);
        foreach (var face in faces)
        {
            grid.DivideAlong(face);
        }

        return ([.. grid.points], [.. grid.triangles]);
    }

    /// <summary>Divides a solid by class II.</summary>
    /// <param name="faces">Faces of the solid, counter-clockwise seen from outside.</param>
    /// <param name="frequency">Twice the parts of an edge: 2, 4, ...</param>
    /// <param name="place">Where hubs are.</param>
    /// <returns>Points, and triangles as indexes into them, counter-clockwise seen from outside.</returns>
    internal static (ImmutableArray<Point3> Points, ImmutableArray<ImmutableArray<int>> Triangles) DivideAcross(
        ImmutableArray<SolidFace> faces, int frequency, HubPlacement place)
    {
        var grid = new SphereGrid(3 * frequency / 2, place);
        foreach (var face in faces)
        {
            grid.DivideInside(face);
        }

        // Each edge once: two faces run along it in opposite directions.
        var edges = faces.SelectMany(face => new[] { (face.A, face.B, Tip: face.C), (face.B, face.C, Tip: face.A), (face.C, face.A, Tip: face.B) }).ToArray();
        foreach (var (from, to, tip) in edges.Where(edge => edge.Item1.Index < edge.Item2.Index))
        {
            grid.DivideAtEdge(from, to, tip, edges.Single(edge => edge.Item1 == to && edge.Item2 == from).Tip);
        }

        return ([.. grid.points], [.. grid.triangles]);
    }

    private void DivideAlong(SolidFace face)
    {
        for (var i = 0; i < sum; i++)
        {
            for (var j = 0; j < sum - i; j++)
            {
                triangles.Add([PointAt(face, i, j), PointAt(face, i + 1, j), PointAt(face, i, j + 1)]);
                if (i + j + 2 <= sum)
                {
                    triangles.Add([PointAt(face, i + 1, j), PointAt(face, i + 1, j + 1), PointAt(face, i, j + 1)]);
                }
            }
        }
    }

    /// <summary>The triangles that lie in one face.</summary>
    private void DivideInside(SolidFace face)
    {
        for (var a = 0; a <= sum; a++)
        {
            for (var b = a % 3; a + b <= sum; b += 3)
            {
                // Steps to neighbours: (2, -1, -1), (1, 1, -2), (-1, 2, -1) and their opposites.
                var c = sum - a - b;
                if (b >= 1 && c >= 2)
                {
                    triangles.Add([PointAt(face, b, c), PointAt(face, b - 1, c - 1), PointAt(face, b + 1, c - 2)]);
                }

                if (a >= 1 && c >= 2)
                {
                    triangles.Add([PointAt(face, b, c), PointAt(face, b + 1, c - 2), PointAt(face, b + 2, c - 1)]);
                }
            }
        }
    }

    /// <summary>The triangles astride an edge: a strut from a hub next to the edge to its twin on the other side.</summary>
    private void DivideAtEdge(SolidCorner from, SolidCorner to, SolidCorner left, SolidCorner right)
    {
        for (var i = 1; i < sum; i += 3)
        {
            var j = sum - 1 - i;
            var (here, there) = (PointAt((from, i), (to, j), (left, 1)), PointAt((from, i), (to, j), (right, 1)));
            if (j >= 1)
            {
                triangles.Add([PointAt((from, i + 2), (to, j - 1)), there, here]);
                triangles.Add([PointAt((from, i - 1), (to, j + 2)), here, there]);
            }
        }
    }

    private int PointAt(SolidFace face, int i, int j) => PointAt((face.A, sum - i - j), (face.B, i), (face.C, j));

    /// <summary>The point with these weights; neighbours find the same one by its weights, never by nearness.</summary>
    private int PointAt(params ReadOnlySpan<(SolidCorner Corner, int Weight)> corners)
    {
        var weighted = corners.ToArray()
            .Where(pair => pair.Weight > 0)
            .OrderBy(pair => pair.Corner.Index)
            .ToArray();
        var key = Key(weighted);
        if (!indexByWeights.TryGetValue(key, out var index))
        {
            index = points.Count;
            indexByWeights.Add(key, index);
            points.Add(place(weighted));
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
}
