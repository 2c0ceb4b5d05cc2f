using System;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Lays;

/// <summary>No lay of several plies was found that keeps clear of the flaws of each.</summary>
public sealed class FlawsOnPliesException : WorkException
{
    /// <param name="cloth">Name of the cloth.</param>
    /// <param name="roll">Roll with the flaws, counted from 1.</param>
    /// <param name="plies">How many plies were asked for.</param>
    public FlawsOnPliesException(string cloth, int roll, int plies)
        : base(
            cloth,
            FormattableString.Invariant($"No lay of {plies} plies of cloth {cloth} keeps clear of the flaws of roll {roll}: where they lie on the upper plies hangs on the lay's length, and no length was found that suits. Take fewer plies (\"lay.plies\"), or cut the flaws out of the roll first."))
    {
    }
}
