using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Frames;

/// <summary>Stands a survey upright, its facets running counter-clockwise seen from outside, its plan centred on the base.</summary>
internal static class SurveyStance
{
    // The base may lean this much against the level, cosine of 60 degrees; a frame that leans more is not upright.
    private const double LeastUpright = 0.5;

    // Two facets that bend back over their edge by more than this, cosine of 175 degrees between the normals.
    private const double FoldedBack = -0.996;

    internal static FrameSurvey Stand(SurveyUp up, FrameSurvey survey, SurveyFaults faults)
    {
        var points = Stood(up, survey.Hubs.Select(hub => hub.Position));
        var facets = survey.Facets;
        CheckAreas(survey, points, faults);
        if (!faults.IsEmpty)
        {
            return survey;
        }

        var ground = MeshLoops.Longest(MeshLoops.Find(facets.Select(facet => facet.Hubs)), points);
        if (IsInsideOut(facets, ground, points))
        {
            facets = [.. facets.Select(facet => facet with { Hubs = [.. facet.Hubs.Reverse()] })];
            ground = [.. ground.Reverse()];
        }

        CheckFolds(survey, facets, points, faults);
        points = up == SurveyUp.Base ? [.. points.Select(point => ToUpright(MeshLoops.AreaVector(ground, points).Unit(), point))] : points;
        CheckUpright(ground, points, faults);
        var middle = Middle(ground, points);
        return survey with
        {
            Hubs = [.. survey.Hubs.Select((hub, i) => hub with { Position = points[i] - new Point3(middle.X, middle.Y, 0) })],
            Facets = facets,
        };
    }

    private static void CheckAreas(FrameSurvey survey, Point3[] points, SurveyFaults faults)
    {
        foreach (var facet in survey.Facets)
        {
            var longest = facet.Hubs.Select((hub, i) => Point3.Distance(points[hub], points[facet.Hubs[(i + 1) % facet.Hubs.Length]])).Max();
            var height = 2 * MeshLoops.AreaVector(facet.Hubs, points).Length / longest;
            if (!(height >= 1))
            {
                faults.Add(FormattableString.Invariant($"{facet.Place}: a facet {height:0.###} mm high"), "facets of 1 mm or more: its hubs lie in one line; leave one out or correct it");
            }
        }
    }

    /// <summary>Whether the facets turn their inner sides out: the volume between them and the middle of the base is then negative.</summary>
    private static bool IsInsideOut(ImmutableArray<SurveyFacet> facets, ImmutableArray<int> ground, Point3[] points)
    {
        var middle = Middle(ground, points);
        return facets.Sum(facet => Point3.Dot(points[facet.Hubs[0]] - middle, MeshLoops.AreaVector(facet.Hubs, points))) < 0;
    }

    private static Point3 Middle(ImmutableArray<int> ground, Point3[] points)
    {
        var sides = ground.Select((hub, i) => (From: points[hub], To: points[ground[(i + 1) % ground.Length]])).ToArray();
        var around = sides.Sum(side => Point3.Distance(side.From, side.To));
        return sides.Aggregate(default(Point3), (sum, side) => sum + ((Point3.Distance(side.From, side.To) / around) * Point3.Between(side.From, side.To, 0.5)));
    }

    private static void CheckFolds(FrameSurvey survey, ImmutableArray<SurveyFacet> facets, Point3[] points, SurveyFaults faults)
    {
        var normals = facets.Select(facet => MeshLoops.AreaVector(facet.Hubs, points).Unit()).ToArray();
        var left = new Dictionary<(int, int), int>();
        foreach (var (facet, i) in facets.Select((facet, i) => (facet, i)))
        {
            for (var at = 0; at < facet.Hubs.Length; at++)
            {
                var (from, to) = (facet.Hubs[at], facet.Hubs[(at + 1) % facet.Hubs.Length]);
                left[(from, to)] = i;
                if (left.TryGetValue((to, from), out var other) && Point3.Dot(normals[i], normals[other]) < FoldedBack)
                {
                    faults.Add(
                        $"{facet.Place}: folded back over the edge {survey.Hubs[from].Name} - {survey.Hubs[to].Name} onto {facets[other].Place}",
                        "neighbours that bend by less than 175 degrees; a hub is measured wrongly or a facet is inside out");
                }
            }
        }
    }

    /// <summary>With z up, where the survey says which way is up; the turn by its base comes later.</summary>
    private static Point3[] Stood(SurveyUp up, IEnumerable<Point3> points) => up switch
    {
        SurveyUp.Z or SurveyUp.Base => [.. points],
        SurveyUp.Y => [.. points.Select(point => new Point3(point.X, -point.Z, point.Y))],
        _ => throw new ArgumentOutOfRangeException(nameof(up), up, "Unknown way up."),
    };

    /// <summary>The turn about a level axis that takes a direction to +z.</summary>
    private static Point3 ToUpright(Point3 direction, Point3 point)
    {
        if (direction.Z < -1 + 1e-12)
        {
            return new Point3(point.X, -point.Y, -point.Z);
        }

        // Rodrigues' rotation about direction x z, written without the angle.
        var axis = Point3.Cross(direction, new Point3(0, 0, 1));
        return (direction.Z * point) + Point3.Cross(axis, point) + ((Point3.Dot(axis, point) / (1 + direction.Z)) * axis);
    }

    private static void CheckUpright(ImmutableArray<int> ground, Point3[] points, SurveyFaults faults)
    {
        var up = MeshLoops.AreaVector(ground, points).Unit();
        if (!(up.Z > LeastUpright))
        {
            faults.Add(
                FormattableString.Invariant($"the line of base hubs leans {Math.Acos(Math.Clamp(up.Z, -1, 1)) * 180 / Math.PI:0} degrees against the level"),
                "less than 60 degrees; say \"frame.survey.up\": \"y\" or \"base\"");
        }
    }
}
