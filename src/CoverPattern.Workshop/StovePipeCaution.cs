using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Workshop;

/// <summary>The caution that goes with every stove pipe, whether the job can be made or not.</summary>
public static class StovePipeCaution
{
    /// <summary>Its words.</summary>
    public const string Text = "Stove pipe: a hot pipe sets cloth, padding and liners on fire, and a fire under cloth kills by carbon monoxide. Clear distance, heat cloth, height of the pipe, spark arrestor and air for the fire are for local codes, for the papers of stove, pipe and cloth, and for somebody licensed to install it. Nothing here shows that the pipe stays below the cloth's service temperature. Have a carbon monoxide alarm and a way out, and never sleep beside a burning fire.";

    /// <summary>Whether faults speak of a pipe, so that the caution goes with them.</summary>
    /// <param name="faults">All that is wrong with a job.</param>
    public static bool IsDue(ImmutableArray<Fault> faults) => faults.Any(fault => fault.Place.StartsWith("pipes", StringComparison.Ordinal));
}
