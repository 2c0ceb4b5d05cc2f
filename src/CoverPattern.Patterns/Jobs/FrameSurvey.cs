using System.Collections.Immutable;

namespace CoverPattern.Patterns.Jobs;

/// <summary>A frame known by its hubs: measured on site, or drawn as a mesh.</summary>
/// <param name="Source">Name of the file beside the job; empty for lines in the job itself.</param>
/// <param name="Hubs">In the order of the survey.</param>
/// <param name="Facets">As listed; when there are none they are found from the struts.</param>
/// <param name="Struts">Connections, where no facets are listed.</param>
public sealed record FrameSurvey(
    string Source,
    ImmutableArray<SurveyHub> Hubs,
    ImmutableArray<SurveyFacet> Facets,
    ImmutableArray<SurveyStrut> Struts)
{
    /// <summary>Which way is up.</summary>
    public SurveyUp Up { get; init; }

    /// <summary>Hubs nearer than this are one hub, millimetres.</summary>
    public double WeldMm { get; init; }

    /// <summary>Struts whose lengths differ by no more than this stand in one class of the schedules, millimetres; no length is changed by it.</summary>
    public double ClassesMm { get; init; }

    /// <summary>The bytes of the file, so that a result can carry them beside its job; empty for lines in the job itself.</summary>
    public ImmutableArray<byte> File { get; init; } = [];
}
