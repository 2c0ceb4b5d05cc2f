using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Pieces;

/// <summary>A ring of the cover's cloth round an opening, and the sheet and screen that slip into the pocket behind it.</summary>
internal static class RingPieces
{
    /// <summary>Ring first, then the parts.</summary>
    /// <param name="job">The first cloth is the ring's.</param>
    /// <param name="opening">The opening; its rim is one arc.</param>
    /// <param name="parts">What slips in.</param>
    /// <param name="rim">What it takes out, laid flat with its up along +y; counter-clockwise, from where the rim begins.</param>
    internal static IEnumerable<AddedPiece> Make(Job job, LaidOpening opening, ImmutableArray<OpeningPart> parts, ImmutableArray<Point2> rim)
    {
        var wish = opening.Wish;
        var outer = CutLine.Draw([.. rim.Select((corner, i) => new SewEdge(corner, rim[(i + 1) % rim.Length], EdgeRole.Rim, wish.Ring!.Value.Millimetres))], default);
        yield return new AddedPiece(
            opening.Label + "r",
            job.Cloths[0].Name,
            PieceKind.WindowRing,
            outer,
            [new AddedEdge(opening.Label + "u", IsSecond: false, EdgeRole.Turned, wish.TurnUnder.Millimetres) { Steps = outer.Length }],
            [
                new AddedCutout(opening.Region.Purpose, new AddedEdge(opening.Label, IsSecond: true, EdgeRole.Rim, wish.TurnUnder.Millimetres) { RunsBack = true })
                {
                    Ring = [rim[0], .. rim.Skip(1).Reverse()],
                },
            ]);
        foreach (var part in parts)
        {
            yield return new AddedPiece(
                opening.Label + part.Letter,
                part.Cloth,
                part.Kind,
                rim,
                [new AddedEdge(opening.Label + "x" + part.Letter, IsSecond: true, EdgeRole.Rim, wish.Lap.Millimetres) { Steps = rim.Length }],
                []);
        }
    }
}
