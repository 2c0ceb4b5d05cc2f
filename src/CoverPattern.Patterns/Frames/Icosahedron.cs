using System;
using System.Collections.Immutable;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Frames;

/// <summary>The solid of twenty equal triangles, one corner up, one of the upper five on the meridian of +x.</summary>
internal static class Icosahedron
{
    private const int Sides = 5;

    /// <summary>The twenty faces.</summary>
    internal static ImmutableArray<SolidFace> Faces()
    {
        var top = new SolidCorner(0, new Point3(0, 0, 1));
        var bottom = new SolidCorner(11, new Point3(0, 0, -1));
        var faces = ImmutableArray.CreateBuilder<SolidFace>();
        for (var side = 0; side < Sides; side++)
        {
            var (upper, nextUpper) = (Upper(side), Upper(side + 1));
            var (lower, nextLower) = (Lower(side), Lower(side + 1));
            faces.Add(new SolidFace(top, upper, nextUpper));
            faces.Add(new SolidFace(upper, lower, nextUpper));
            faces.Add(new SolidFace(nextUpper, lower, nextLower));
            faces.Add(new SolidFace(lower, bottom, nextLower));
        }

        return faces.ToImmutable();
    }

    private static SolidCorner Upper(int side) => OnRing(1 + (side % Sides), side * 72, 1);

    private static SolidCorner Lower(int side) => OnRing(6 + (side % Sides), (side * 72) + 36, -1);

    /// <summary>Both rings lie at height 1/sqrt 5 on the unit sphere, radius 2/sqrt 5.</summary>
    private static SolidCorner OnRing(int index, double degrees, int upOrDown)
    {
        var angle = degrees % 360 * Math.PI / 180;
        var radius = 2 / Math.Sqrt(5);
        return new SolidCorner(index, new Point3(radius * Math.Cos(angle), radius * Math.Sin(angle), upOrDown / Math.Sqrt(5)));
    }
}
