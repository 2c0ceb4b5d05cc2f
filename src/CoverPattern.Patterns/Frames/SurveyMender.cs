using System;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Frames;

/// <summary>Puts a survey in order, or says where and why it cannot be a frame.</summary>
/// <remarks>
/// In this order: numbers, welding, facets from struts where none are listed, topology (a disc, with openings or without),
/// which side is out, which way is up, plane facets. Each step needs the one before, so faults of one step only are told at once.
/// </remarks>
public static class SurveyMender
{
    /// <summary>Most facets that a survey may have.</summary>
    public const int MostFacets = 5000;

    /// <summary>Most hubs that a survey may have: one sheet of quadrangles has about as many hubs as facets, one of hexagons twice as many.</summary>
    public const int MostHubs = 2 * MostFacets;

    private const double LeastSize = 200;
    private const double MostSize = 120_000;

    /// <summary>Puts a survey in order.</summary>
    /// <param name="survey">As read.</param>
    public static SurveyMending Mend(FrameSurvey survey)
    {
        ArgumentNullException.ThrowIfNull(survey);

        var faults = new SurveyFaults();
        var mesh = Mend(survey, faults);
        return new SurveyMending(faults.IsEmpty ? mesh : null, faults.All);
    }

    private static SurveyMesh? Mend(FrameSurvey survey, SurveyFaults faults)
    {
        CheckNumbers(survey, faults);
        if (!faults.IsEmpty)
        {
            return null;
        }

        var welded = SurveyWeld.Weld(survey, faults);
        if (faults.IsEmpty && welded.Facets.IsEmpty)
        {
            welded = welded with { Facets = FacetFinder.Find(welded, faults) };
        }

        if (!faults.IsEmpty)
        {
            return null;
        }

        var turned = SurveyTopology.Order(welded, faults);
        if (!faults.IsEmpty)
        {
            return null;
        }

        var upright = SurveyStance.Stand(survey.Up, welded with { Facets = turned }, faults);
        if (!faults.IsEmpty)
        {
            return null;
        }

        var (facets, folds) = PlaneFacets.Split(upright, faults);
        var isNamed = upright.Hubs.All(hub => hub.Label.Length > 0);
        return new SurveyMesh(
            [.. upright.Hubs.Select(hub => hub.Position)],
            isNamed ? [.. upright.Hubs.Select(hub => hub.Label)] : [],
            facets,
            folds);
    }

    private static void CheckNumbers(FrameSurvey survey, SurveyFaults faults)
    {
        if (survey.Facets.Length > MostFacets)
        {
            faults.Add(FormattableString.Invariant($"{survey.Facets.Length} facets"), FormattableString.Invariant($"at most {MostFacets}; leave out what is not the frame, or draw it with fewer facets"));
        }

        if (survey.Hubs.Length is < 4 or > 3 * MostHubs)
        {
            faults.Add(FormattableString.Invariant($"{survey.Hubs.Length} hubs"), FormattableString.Invariant($"4 to {MostHubs} hubs"));
        }

        foreach (var hub in survey.Hubs.Where(hub => !IsUsable(hub.Position)).Take(SurveyFaults.Most))
        {
            faults.Add(FormattableString.Invariant($"{hub.Place}: hub {hub.Name} at {hub.Position.X}, {hub.Position.Y}, {hub.Position.Z} mm"), "coordinates that are numbers, at most 131 m from the origin; look at the unit, or move the origin nearer");
        }

        if (faults.IsEmpty)
        {
            CheckSize(survey, faults);
        }
    }

    private static bool IsUsable(Point3 point) => IsUsable(point.X) && IsUsable(point.Y) && IsUsable(point.Z);

    /// <summary>Not for NaN, which compares with nothing.</summary>
    private static bool IsUsable(double coordinate) => Math.Abs(coordinate) <= Grid.LargestMillimetres;

    private static void CheckSize(FrameSurvey survey, SurveyFaults faults)
    {
        var points = survey.Hubs.Select(hub => hub.Position).ToArray();
        double Span(Func<Point3, double> along) => points.Max(along) - points.Min(along);
        var size = Enumerable.Max<double>([Span(p => p.X), Span(p => p.Y), Span(p => p.Z)]);
        if (size is < LeastSize or > MostSize)
        {
            faults.Add(FormattableString.Invariant($"a frame {size:0.###} mm across"), FormattableString.Invariant($"{LeastSize:0} to {MostSize:0} mm across; look at the unit"));
        }
    }
}
