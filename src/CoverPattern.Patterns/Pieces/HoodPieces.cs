using System.Collections.Generic;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Makes the hood of an opening, of the cover's cloth.</summary>
internal static class HoodPieces
{
    // Turned under where it is sewn to the cover, and as a hem (common practice, no source), millimetres.
    private const double TurnUnder = 12;

    // The front foot is a sleeve for the rod that holds it off (own choice: a rod of 10 mm and a turn-under), millimetres.
    private const double Sleeve = 35;

    /// <summary>The hood; none without one.</summary>
    internal static IEnumerable<AddedPiece> Make(Job job, LaidOpening opening)
    {
        if (HoodShape.Of(opening.Wish) is not { } shape)
        {
            yield break;
        }

        var flat = shape.Flat();
        AddedEdge Edge(string number, EdgeRole role, double allowance) => new($"{opening.Label}h{number}", IsSecond: false, role, allowance);
        yield return AddedPiece.Polygon(
            opening.Label + "h",
            job.Cloths[0].Name,
            PieceKind.Hood,
            [
                (flat[0], Edge("1", EdgeRole.Hemmed, Sleeve)),
                (flat[1], Edge("2", EdgeRole.Hemmed, TurnUnder)),
                (flat[2], Edge("3", EdgeRole.Turned, TurnUnder)),
                (flat[3], Edge("4", EdgeRole.Turned, TurnUnder)),
                (flat[4], Edge("5", EdgeRole.Turned, TurnUnder)),
                (flat[5], Edge("6", EdgeRole.Hemmed, TurnUnder)),
            ]) with
        {
            Folds = [new FoldLine(flat[1], flat[3]), new FoldLine(flat[0], flat[4])],
        };
    }
}
