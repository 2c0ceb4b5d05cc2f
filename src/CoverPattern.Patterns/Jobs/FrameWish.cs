using System.Collections.Immutable;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Jobs;

/// <summary>The frame the customer has or will build.</summary>
/// <param name="Family">The solid divided.</param>
/// <param name="Frequency">Parts into which an edge of the solid is divided, 1 to 12.</param>
/// <param name="Rows">Rows of facets kept, counted from the top; 0 where <paramref name="Cut"/> names the base hubs.</param>
/// <param name="Cut">The rows as typed, such as "5/8".</param>
/// <param name="Measure">What <paramref name="Size"/> states.</param>
/// <param name="Size">Positive length.</param>
public sealed record FrameWish(FrameFamily Family, int Frequency, int Rows, string Cut, FrameMeasure Measure, Measure Size)
{
    /// <summary>How the faces of the solid are divided.</summary>
    public FrameDivision Division { get; init; }

    /// <summary>What of the solid is at the top.</summary>
    public FrameUp Up { get; init; }

    /// <summary>Names of the hubs along the cut, in order round the ball, where no rows are kept; else none.</summary>
    public ImmutableArray<string> CutHubs { get; init; } = [];

    /// <summary>Measured struts, in place of the size; null where the size is stated.</summary>
    public StrutWish? Struts { get; init; }

    /// <summary>A roof of gores, in place of family, frequency, cut and size; null for none.</summary>
    public GoreWish? Gores { get; init; }

    /// <summary>Ratios by which a divided solid is drawn out along front, side and height; null for a sphere.</summary>
    public Point3? Stretch { get; init; }

    /// <summary>Height of an upright wall under the lowest base hubs, millimetres; 0 for none.</summary>
    public double RiserMm { get; init; }

    /// <summary>Bars for the frame paper's cutting list; null where nobody says.</summary>
    public StockWish? Stock { get; init; }

    /// <summary>The frame as surveyed; when there is one, family, frequency, rows and size say nothing.</summary>
    public FrameSurvey? Survey { get; init; }
}
