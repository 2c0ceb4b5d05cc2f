using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using CoverPattern.Files.Results;

namespace CoverPattern.Cli;

/// <summary>The numbers that a shop wants to see at once; tab-separated, so that scripts can read them too.</summary>
internal static class ClosingTable
{
    internal static void Print(Result result, TextWriter output)
    {
        foreach (var (name, value) in Lines(result))
        {
            output.WriteLine($"{name}\t{value}");
        }
    }

    private static IEnumerable<(string Name, string Value)> Lines(Result result)
    {
        var numbers = SummaryNumbers.Of(result);
        yield return ("frame", FormattableString.Invariant($"{result.Frame.Hubs.Length} hubs, {result.Frame.Struts.Length} struts, {result.Frame.Facets.Length} facets"));
        foreach (var strut in result.Frame.Classes)
        {
            yield return ("strut " + strut.Label, FormattableString.Invariant($"{strut.Count} x {strut.LengthMm:0.0} mm"));
        }

        yield return ("cover", FormattableString.Invariant($"{numbers.AreaM2:0.00} m2, hem {numbers.HemMm:0} mm, seams {numbers.SeamsMm / 1000:0.0} m"));
        yield return ("pieces", FormattableString.Invariant($"{result.Pieces.Pieces.Length} of {result.Pieces.Patterns.Length} patterns"));
        foreach (var lay in result.Estimate.Lays)
        {
            yield return ("lay " + lay.Cloth, FormattableString.Invariant($"{lay.LengthMm / 1000:0.00} m, {lay.UtilisationPercent:0.0} % of the usable width, {lay.RollPercent:0.0} % of the roll"));
        }

        var weight = result.Estimate.WeightKg is { } kilograms ? FormattableString.Invariant($"{kilograms:0.0} kg") : "not known";
        yield return ("weight", weight);
        var open = result.Job.Assumed.Count(one => !result.Job.Confirmed.Contains(one.Place));
        yield return ("assumed", FormattableString.Invariant($"{open} values that nobody has confirmed"));
    }
}
