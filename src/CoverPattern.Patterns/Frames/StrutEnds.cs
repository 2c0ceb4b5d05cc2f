using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Frames;

/// <summary>How far struts dip below their hubs.</summary>
public static class StrutEnds
{
    /// <summary>For each strut the dip at either end, radians: against the plane square to the mean of the facets' normals at the hub.</summary>
    /// <remarks>On a sphere this is nearly the axial angle asin(L / 2R); at base hubs, which have facets on one side only, it is not, so hubs inside count first.</remarks>
    public static ImmutableArray<(double From, double To)> Bends(Frame frame)
    {
        ArgumentNullException.ThrowIfNull(frame);
        var normals = new Point3[frame.Hubs.Length];
        foreach (var facet in frame.Facets)
        {
            var corners = facet.Hubs.Select(hub => frame.Hubs[hub].Position).ToArray();
            var normal = Point3.Cross(corners[1] - corners[0], corners[2] - corners[0]).Unit();
            foreach (var hub in facet.Hubs)
            {
                normals[hub] += normal;
            }
        }

        double Dip(int at, int to) => -Math.Asin(Math.Clamp(Point3.Dot((frame.Hubs[to].Position - frame.Hubs[at].Position).Unit(), normals[at].Unit()), -1, 1));
        return [.. frame.Struts.Select(strut => (Dip(strut.From, strut.To), Dip(strut.To, strut.From)))];
    }
}
