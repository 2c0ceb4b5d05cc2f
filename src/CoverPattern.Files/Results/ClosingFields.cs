using System;
using System.Linq;
using System.Text.Json.Nodes;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Seams;
using static CoverPattern.Files.Results.SummaryFile;

namespace CoverPattern.Files.Results;

/// <summary>The seam that is sewn last, in summary.json.</summary>
internal static class ClosingFields
{
    /// <param name="result">Its job asks for the seam.</param>
    /// <param name="wish">Where it runs.</param>
    internal static JsonObject Write(Result result, ClosingWish wish) => new()
    {
        ["from"] = ClosingSeam.From(result.Shell, result.Cut),
        ["toRing"] = ClosingSeam.LastRing(result.Shell, wish),
        ["struts"] = new JsonArray([.. ClosingSeam.Struts(result.Shell, result.Cut).Select(strut => (JsonNode)strut)]),
        ["seams"] = new JsonArray([.. Seams(result).Select(seam => (JsonNode)seam)]),
        ["allowanceMm"] = Round(wish.Allowance.Millimetres),
        ["allowedErrorMm"] = Round(ClosingSeam.AllowedError),
        ["takeInEachSidePerMm"] = Round(ClosingSeam.TakenIn),
        ["edgeGirthMm"] = Round(result.Estimate.PerCover.HemMm),
        ["girths"] = new JsonArray([.. ClosingSeam.Girths(result.Shell, wish).Select(girth => (JsonNode)new JsonObject
        {
            ["ring"] = girth.Ring,
            ["shouldBeMm"] = Round(girth.LengthMm),
        })]),
    };

    /// <summary>Labels of the seams of the chain, sorted.</summary>
    internal static string[] Seams(Result result) =>
        [.. result.Cut.Arcs.Where(arc => arc.MakeUp is { IsClosing: true }).Select(arc => arc.Label).Order(StringComparer.Ordinal)];
}
