using System.Collections.Immutable;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Pieces;

/// <summary>A liner's pieces, or what in the job makes them impossible.</summary>
/// <param name="Set">Its patterns and pieces under their own labels; empty with faults.</param>
/// <param name="Faults">All that is wrong, with places in the order's job.</param>
public sealed record LinerMaking(PieceSet Set, ImmutableArray<Fault> Faults)
{
    /// <summary>Distance of its facets from those of the struts' axes, outward, millimetres; negative.</summary>
    public double StandOffMm { get; init; }

    /// <summary>Its surface cut up; null with faults.</summary>
    public Subdivision? Cut { get; init; }
}
