using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Makes what closes openings: sheets, screens and flaps, rings, and strips along rims. docs/designs/closing-openings.md tells how they hang together.</summary>
public static class OpeningPieces
{
    /// <summary>The pieces of one cover.</summary>
    /// <param name="job">Cloths, hem and notions are read.</param>
    /// <param name="openings">The openings laid; their regions stand in the order of the subdivision's insides.</param>
    /// <param name="cut">The surface cut up.</param>
    /// <returns>Named for their opening, such as "O1p"; the rims' arcs are those of the cover.</returns>
    public static ImmutableArray<AddedPiece> Make(Job job, OpeningLaying openings, Subdivision cut)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(openings);
        ArgumentNullException.ThrowIfNull(cut);
        return
        [
            .. openings.Openings.SelectMany((opening, i) => OpeningPart.Of(opening.Wish).Length == 0
                ? []
                : new PartMaker(job, opening, cut.Insides[openings.Windows.Length + i]).Make()),
            .. openings.Slits.SelectMany(slit => StripPieces.Make(job, slit)),
        ];
    }
}
