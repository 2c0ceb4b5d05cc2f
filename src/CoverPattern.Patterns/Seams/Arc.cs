using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Openings;

namespace CoverPattern.Patterns.Seams;

/// <summary>A line of the cut-up surface with one or two patches beside it: straight, or a rim of many edges over one or more patches.</summary>
/// <param name="Label">Letter of its role and a number, such as "S017".</param>
/// <param name="Role">What it is for.</param>
/// <param name="MakeUp">How it is made, for a seam; null elsewhere.</param>
/// <param name="LengthMm">Length on the surface, millimetres; the one length of both sides.</param>
/// <param name="First">The side of the patch that lies over; of a fold or hem the first patch in order; of a rim the edge with which it begins, going round the cloth counter-clockwise.</param>
/// <param name="Second">The other side; null at the hem, and at a rim, whose other side belongs to what fills the hole.</param>
public sealed record Arc(string Label, EdgeRole Role, MakeUp? MakeUp, double LengthMm, PatchSide First, PatchSide? Second)
{
    // A mark this near to an end of the arc is its end, millimetres.
    private const double End = 1;

    /// <summary>What is taken out beyond a rim; null elsewhere.</summary>
    public Region? Region { get; init; }

    /// <summary>How far along its rim it begins, counter-clockwise round the opening, millimetres; 0 elsewhere.</summary>
    public double FromMm { get; init; }

    /// <summary>The marks of the rim on it, each by its way from where the arc begins, counter-clockwise, millimetres.</summary>
    public ImmutableArray<(double At, string Purpose)> Marks => Region is not { } region ? [] :
    [
        .. region.Marks.Select(mark => (At: (mark.At - FromMm + region.RimLength) % region.RimLength, mark.Purpose))
            .Where(mark => mark.At > End && mark.At < LengthMm - End),
    ];
}
