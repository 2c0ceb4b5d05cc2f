using System;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Jobs;

/// <summary>Defaults that follow from the make-up of the seams; all common practice, no source.</summary>
internal static class MakeUpDefaults
{
    private const double TurnUnder = 12;

    internal static string SeamWidth(SeamMakeUp makeUp) => makeUp switch
    {
        SeamMakeUp.Plain => "15 mm",
        SeamMakeUp.Lapped => "25 mm",
        SeamMakeUp.Felled => "15 mm",
        SeamMakeUp.Welded => "40 mm",
        _ => throw new ArgumentOutOfRangeException(nameof(makeUp), makeUp, "Unknown make-up of a seam."),
    };

    /// <summary>A sewn hem is 38 mm deep, a welded one 60 mm.</summary>
    internal static string HemDepth(SeamMakeUp makeUp) => makeUp == SeamMakeUp.Welded ? "60 mm" : "38 mm";

    /// <summary>A sewn hem turns 12 mm under, unless it is too narrow for that; a welded one nothing.</summary>
    internal static string HemTurnUnder(SeamMakeUp makeUp, Measure depth) =>
        makeUp == SeamMakeUp.Welded || depth.Millimetres < TurnUnder ? "0 mm" : "12 mm";
}
