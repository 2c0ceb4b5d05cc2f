using System.Collections.Immutable;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Pieces;

/// <summary>An edge of an added piece.</summary>
/// <param name="Arc">Label of the line on the cover that it lies on, such as "R001"; the piece on its other side, if any, is the partner.</param>
/// <param name="IsSecond">Which of the two sides of that line it is; a piece of the shell has the first side of a rim.</param>
/// <param name="Role">What it is for.</param>
/// <param name="Allowance">Cloth beyond the sew line, millimetres.</param>
public sealed record AddedEdge(string Arc, bool IsSecond, EdgeRole Role, double Allowance)
{
    /// <summary>Width of the seams of what is made beside the cover (common practice, no source), millimetres.</summary>
    internal const double PlainWidth = 15;

    /// <summary>One side of a plain seam, 15 mm wide; the first side lies over.</summary>
    internal static AddedEdge Plain(string arc, bool isSecond) => new(arc, isSecond, EdgeRole.Seam, PlainWidth)
    {
        MakeUp = MakeUp.Of(MakeUpForm.Plain, new Measure(PlainWidth, "15 mm")),
        Side = isSecond ? EdgeSide.Under : EdgeSide.Over,
    };

    /// <summary>An edge that is turned under, joined to nothing.</summary>
    internal static AddedEdge Turned(string arc, double allowance) => new(arc, IsSecond: false, EdgeRole.Turned, allowance);

    /// <summary>How a seam is made; null elsewhere.</summary>
    public MakeUp? MakeUp { get; init; }

    /// <summary>Which side of a seam it is.</summary>
    public EdgeSide Side { get; init; }

    /// <summary>From how many corners to the next it runs.</summary>
    public int Steps { get; init; } = 1;

    /// <summary>Radius when the edge is a whole circle about the origin, millimetres; null elsewhere.</summary>
    public double? Radius { get; init; }

    /// <summary>Directions from the centre, length 1, in which a round edge bears a tick.</summary>
    public ImmutableArray<Point2> Marks { get; init; } = [];

    /// <summary>Places along a rim that bear a mark, each by its way from where the arc begins, counter-clockwise round the opening, millimetres, with its purpose.</summary>
    public ImmutableArray<(double At, string Purpose)> Places { get; init; } = [];

    /// <summary>Whether it runs along its arc as the cover does, though it has the second side: it lies on the cover.</summary>
    public bool RunsBack { get; init; }

    /// <summary>The edge as a draft knows it.</summary>
    internal DraftRun ToRun(ArcClass arcClass) => new(new ArcSide(Arc, IsSecond), arcClass, Side, Allowance)
    {
        Steps = Steps,
        Places = Places,
        RunsBack = RunsBack,
        Round = Radius is { } radius ? new RoundEdge(default, radius, Marks) : null,
    };
}
