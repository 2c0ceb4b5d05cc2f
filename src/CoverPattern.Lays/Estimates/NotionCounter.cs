using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Lays.Estimates;

/// <summary>Counts bindings and zips from the seams that take them.</summary>
internal static class NotionCounter
{
    // Tape of a tie: two tails, millimetres; common practice, no source.
    private const double TieLength = 2 * 300;
    private const double TieWidth = 25;

    /// <param name="job">Its make-ups say what a seam takes.</param>
    /// <param name="seams">Seams by construction.</param>
    /// <param name="ties">Number of ties.</param>
    internal static ImmutableArray<NotionEstimate> Count(Job job, ImmutableArray<SeamEstimate> seams, int ties)
    {
        var makeUps = job.Seam.Known();
        return
        [
            .. from seam in seams
               let makeUp = makeUps.FirstOrDefault(known => string.Equals(known.Name, seam.MakeUp, StringComparison.Ordinal))
               where makeUp?.Form is MakeUpForm.Bound or MakeUpForm.Zip
               select new NotionEstimate(makeUp.Form == MakeUpForm.Zip ? "zip" : "binding", seam.MakeUp, seam.Seams, seam.LengthMm, makeUp.BindingMm),
            .. ties > 0 ? [new NotionEstimate("tie", string.Empty, ties, ties * TieLength, TieWidth)] : ImmutableArray<NotionEstimate>.Empty,
        ];
    }
}
