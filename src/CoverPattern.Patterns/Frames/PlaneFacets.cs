using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Frames;

/// <summary>Divides facets that are not plane, or not convex, into triangles.</summary>
internal static class PlaneFacets
{
    // Hubs off the facet's plane by more than this make it not plane, millimetres.
    private const double Plane = 0.01;

    // Diagonals whose lengths differ by less are equally long, millimetres.
    private const double Alike = 1e-6;

    // More corners than this are no facet of a frame.
    private const int MostCorners = 64;

    internal static (ImmutableArray<ImmutableArray<int>> Facets, ImmutableArray<(int From, int To)> Folds) Split(FrameSurvey survey, SurveyFaults faults)
    {
        var points = survey.Hubs.Select(hub => hub.Position).ToArray();
        var facets = ImmutableArray.CreateBuilder<ImmutableArray<int>>();
        var folds = ImmutableArray.CreateBuilder<(int, int)>();
        foreach (var facet in survey.Facets)
        {
            if (facet.Hubs.Length > MostCorners)
            {
                faults.Add(FormattableString.Invariant($"{facet.Place}: a facet of {facet.Hubs.Length} hubs"), FormattableString.Invariant($"at most {MostCorners} hubs a facet"));
            }
            else if (facet.Hubs.Length == 3 || IsPlaneAndConvex(facet.Hubs, points))
            {
                facets.Add(facet.Hubs);
            }
            else
            {
                SplitOne(facet, points, facets, folds, faults);
            }
        }

        return (facets.ToImmutable(), folds.ToImmutable());
    }

    private static bool IsPlaneAndConvex(ImmutableArray<int> ring, Point3[] points)
    {
        var normal = MeshLoops.AreaVector(ring, points).Unit();
        var middle = (1.0 / ring.Length) * ring.Aggregate(default(Point3), (sum, hub) => sum + points[hub]);
        return ring.All(hub => Math.Abs(Point3.Dot(points[hub] - middle, normal)) <= Plane)
            && Enumerable.Range(0, ring.Length).All(i => Turn(ring, i, points, normal) > 0);
    }

    /// <summary>Positive where a ring turns left at a corner, seen from outside.</summary>
    private static double Turn(IReadOnlyList<int> ring, int corner, Point3[] points, Point3 normal)
    {
        var (before, at, after) = (points[ring[(corner + ring.Count - 1) % ring.Count]], points[ring[corner]], points[ring[(corner + 1) % ring.Count]]);
        return Point3.Dot(Point3.Cross(at - before, after - at), normal);
    }

    /// <summary>Cuts ears off, always the one with the shortest new edge; of equally short ones that which lies highest.</summary>
    private static void SplitOne(
        SurveyFacet facet, Point3[] points, ImmutableArray<ImmutableArray<int>>.Builder facets, ImmutableArray<(int, int)>.Builder folds, SurveyFaults faults)
    {
        var normal = MeshLoops.AreaVector(facet.Hubs, points).Unit();
        var ring = facet.Hubs.ToList();
        while (ring.Count > 3)
        {
            var ears = Enumerable.Range(0, ring.Count).Where(i => IsEar(ring, i, points, normal)).Select(i => (At: i, Edge: NewEdge(ring, i, points))).ToArray();
            if (ears.Length == 0)
            {
                faults.Add($"{facet.Place}: a facet whose outline crosses itself", "hubs in order round the facet");
                return;
            }

            var shortest = ears.Min(ear => ear.Edge.Length);
            var ear = ears.Where(one => one.Edge.Length <= shortest + Alike).MaxBy(one => one.Edge.Height).At;
            var (before, after) = (ring[(ear + ring.Count - 1) % ring.Count], ring[(ear + 1) % ring.Count]);
            facets.Add([before, ring[ear], after]);
            folds.Add((Math.Min(before, after), Math.Max(before, after)));
            ring.RemoveAt(ear);
        }

        facets.Add([.. ring]);
    }

    private static (double Length, double Height) NewEdge(List<int> ring, int corner, Point3[] points)
    {
        var (before, after) = (points[ring[(corner + ring.Count - 1) % ring.Count]], points[ring[(corner + 1) % ring.Count]]);
        return (Point3.Distance(before, after), before.Z + after.Z);
    }

    /// <summary>Whether the corner sticks out and no other corner lies in its triangle.</summary>
    private static bool IsEar(List<int> ring, int corner, Point3[] points, Point3 normal)
    {
        if (Turn(ring, corner, points, normal) <= 0)
        {
            return false;
        }

        int[] triangle = [ring[(corner + ring.Count - 1) % ring.Count], ring[corner], ring[(corner + 1) % ring.Count]];
        return ring.Except(triangle).All(hub => Enumerable.Range(0, 3).Any(i =>
            Point3.Dot(Point3.Cross(points[triangle[(i + 1) % 3]] - points[triangle[i]], points[hub] - points[triangle[i]]), normal) < 0));
    }
}
