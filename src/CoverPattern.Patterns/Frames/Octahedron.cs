using System.Collections.Immutable;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Frames;

/// <summary>The solid of eight equal triangles, one corner up, one of the middle four on +x.</summary>
internal static class Octahedron
{
    private const int Sides = 4;

    private static readonly ImmutableArray<Point3> Middle = [new(1, 0, 0), new(0, 1, 0), new(-1, 0, 0), new(0, -1, 0)];

    /// <summary>The eight faces.</summary>
    internal static ImmutableArray<SolidFace> Faces()
    {
        var top = new SolidCorner(0, new Point3(0, 0, 1));
        var bottom = new SolidCorner(Sides + 1, new Point3(0, 0, -1));
        var faces = ImmutableArray.CreateBuilder<SolidFace>();
        for (var side = 0; side < Sides; side++)
        {
            faces.Add(new SolidFace(top, At(side), At(side + 1)));
            faces.Add(new SolidFace(At(side), bottom, At(side + 1)));
        }

        return faces.ToImmutable();
    }

    private static SolidCorner At(int side) => new(1 + (side % Sides), Middle[side % Sides]);
}
