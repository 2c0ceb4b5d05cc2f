using System;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Jobs;

/// <summary>Defaults that follow from the make-up of the seams; all common practice, no source.</summary>
internal static class MakeUpDefaults
{
    private const double TurnUnder = 12;

    internal static string SeamWidth(MakeUpForm makeUp) => makeUp switch
    {
        MakeUpForm.Plain => "15 mm",
        MakeUpForm.Lapped => "25 mm",
        MakeUpForm.Felled or MakeUpForm.FolderFelled => "15 mm",
        MakeUpForm.Welded or MakeUpForm.SplitWelded => "40 mm",
        MakeUpForm.Bound => "12 mm",
        MakeUpForm.Zip => "20 mm",
        _ => throw new ArgumentOutOfRangeException(nameof(makeUp), makeUp, "Unknown make-up of a seam."),
    };

    /// <summary>Seams that stop short leave holes at hubs, which a patch outside covers against water; other seams need none.</summary>
    internal static string HubPatches(bool seamsStop) => seamsStop ? "outside" : "none";

    /// <summary>A sewn hem is 38 mm deep, a welded one 60 mm.</summary>
    internal static string HemDepth(MakeUpForm makeUp) => makeUp is MakeUpForm.Welded or MakeUpForm.SplitWelded ? "60 mm" : "38 mm";

    /// <summary>A sewn hem turns 12 mm under, unless it is too narrow for that; a welded one nothing.</summary>
    internal static string HemTurnUnder(MakeUpForm makeUp, Measure depth) =>
        makeUp is MakeUpForm.Welded or MakeUpForm.SplitWelded || depth.Millimetres < TurnUnder ? "0 mm" : "12 mm";
}
