using System;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Jobs;

/// <summary>Defaults that follow from the kind of hem; all common practice, no source.</summary>
internal static class HemDefaults
{
    internal const string Gap = "100 mm";
    internal const string Webbing = "25 mm";

    // So that a pipe can be pushed through, millimetres.
    private const double SleeveEase = 10;

    // Beyond the sleeve, to be welded on, millimetres.
    private const double SleeveWeld = 40;

    /// <summary>Cloth turned up: for a sleeve half the girth of its pipe, ease and weld, up to the next millimetre.</summary>
    internal static string Depth(HemKind kind, MakeUpForm makeUp, Measure? pipe)
    {
        var isWelded = makeUp is MakeUpForm.Welded or MakeUpForm.SplitWelded;
        return kind switch
        {
            HemKind.Sleeve when pipe is { } round => FormattableString.Invariant($"{Math.Ceiling(HalfGirth(round) + SleeveEase + (isWelded ? SleeveWeld : 0)):0} mm"),
            HemKind.Strip => isWelded ? "40 mm" : "25 mm",
            _ => MakeUpDefaults.HemDepth(makeUp),
        };
    }

    /// <summary>Fixing points of a screw strip stand nearer than those of grommets.</summary>
    internal static string Spacing(HemKind kind) => kind == HemKind.Strip ? "300 mm" : "500 mm";

    /// <summary>Half the way round a pipe: what a flat sleeve needs at least, millimetres.</summary>
    internal static double HalfGirth(Measure pipe) => Math.PI * pipe.Millimetres / 2;
}
