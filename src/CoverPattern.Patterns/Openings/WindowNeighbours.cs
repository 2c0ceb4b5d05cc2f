using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Openings;

/// <summary>Holds windows against each other.</summary>
internal static class WindowNeighbours
{
    internal static IEnumerable<Fault> Faults(Job job, Shell shell, ImmutableArray<LaidWindow> windows)
    {
        for (var i = 0; i < windows.Length; i++)
        {
            for (var other = i + 1; other < windows.Length; other++)
            {
                var (left, right) = (windows[i], windows[other]);
                var gap = Distance(shell, left.Region.Centre, right.Region.Centre) - left.Wish.OuterRadius - right.Wish.OuterRadius;
                if (gap < job.Clearances.Opening.Millimetres)
                {
                    var how = gap < 0
                        ? FormattableString.Invariant($"whose rings lie over each other by {-gap:0.0} mm")
                        : FormattableString.Invariant($"which leaves {gap:0.0} mm between their rings");
                    yield return new Fault(
                        WindowFacets.Place(right.Entry, "aperture"),
                        $"{right.Wish.Aperture.Typed} at {right.Label} beside {left.Label}, {how}",
                        $"at least {job.Clearances.Opening.Typed}: smaller apertures, narrower rings, or other facets or places");
                }
            }
        }
    }

    /// <summary>
    /// Distance on the surface within a facet and over one edge, the neighbour laid flat beside it; farther away the straight
    /// distance in space, which is never more.
    /// </summary>
    private static double Distance(Shell shell, SurfacePoint left, SurfacePoint right)
    {
        if (left.Face == right.Face)
        {
            return Point2.Distance(left.At, right.At);
        }

        var shared = shell.Faces[left.Face].Edges.Intersect(shell.Faces[right.Face].Edges).ToArray();
        if (shared.Length == 0)
        {
            return Point3.Distance(FacePlane.Of(shell, left.Face).ToSpace(left.At), FacePlane.Of(shell, right.Face).ToSpace(right.At));
        }

        var (from, to) = Ends(shell.Faces[left.Face], shared[0]);
        var (otherFrom, otherTo) = Ends(shell.Faces[right.Face], shared[0]);
        return Point2.Distance(left.At, RigidMap.Laying(otherTo, otherFrom, from, to).Apply(right.At));
    }

    private static (Point2 From, Point2 To) Ends(ShellFace face, int edge)
    {
        var i = face.Edges.IndexOf(edge);
        return (face.Chart[i], face.Chart[(i + 1) % face.Chart.Length]);
    }
}
