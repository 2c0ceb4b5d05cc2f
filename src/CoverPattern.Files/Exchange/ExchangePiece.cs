using System.Collections.Immutable;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Exchange;

/// <summary>One piece of an exchange file, a block there; millimetres.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Right">How many are cut as drawn.</param>
/// <param name="Left">How many are cut turned over.</param>
/// <param name="Material">Name of the cloth; empty when not told.</param>
/// <param name="CutLine">Its boundary: ring, counter-clockwise, first point not repeated.</param>
/// <param name="SewLines">Where stitching goes: the finished outline as a ring or as open lines, rims of holes as rings; a ring repeats its first point.</param>
/// <param name="Cutouts">Holes: rings, first point not repeated.</param>
/// <param name="Lines">Lines that are drawn, not cut.</param>
/// <param name="Notches">Notches on the boundary.</param>
/// <param name="Drills">Drill holes.</param>
/// <param name="GrainFrom">First end of the grain line.</param>
/// <param name="GrainTo">Other end; equal to the first where there is none.</param>
/// <param name="Notes">Annotations.</param>
public sealed record ExchangePiece(
    string Name,
    int Right,
    int Left,
    string Material,
    ImmutableArray<Point2> CutLine,
    ImmutableArray<ImmutableArray<Point2>> SewLines,
    ImmutableArray<ImmutableArray<Point2>> Cutouts,
    ImmutableArray<ImmutableArray<Point2>> Lines,
    ImmutableArray<ExchangeNotch> Notches,
    ImmutableArray<ExchangeDrill> Drills,
    Point2 GrainFrom,
    Point2 GrainTo,
    ImmutableArray<ExchangeNote> Notes);
