using System;
using System.Collections.Generic;
using System.Linq;
using CoverPattern.Files.Results;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Files.Reports;

/// <summary>In which order one cover is sewn.</summary>
internal static class SewingSection
{
    public static void Write(PageWriter page, Result result)
    {
        page.Line("h2", "Order of sewing");
        page.Line("p", "One that works, for one cover (common practice, no source); seams by the names of the drawings row by row.");
        page.Open("ol");
        foreach (var step in Steps(result))
        {
            page.Line("li", step);
        }

        page.Close();
    }

    private static IEnumerable<string> Steps(Result result)
    {
        var steps = SewingOrder.Of(result.Shell, result.Cut);
        foreach (var step in steps.Where(step => step.Kind != SewingStepKind.Closing))
        {
            yield return $"{What(step)}: {LabelRanges.List(step.Seams)}.";
        }

        if (result.Job.Marks.HubPatches != HubPatchPlace.None)
        {
            yield return "Patches over the hubs.";
        }

        var closing = steps.FirstOrDefault(step => step.Kind == SewingStepKind.Closing);
        if (closing is null)
        {
            yield return "Hem, all round.";
            yield break;
        }

        yield return "Hem, but for the last pieces on both sides of the closing seam.";
        yield return $"Measure the girths, then the closing seam, last of all seams: {LabelRanges.List(closing.Seams)}.";
        yield return "The rest of the hem.";
    }

    private static string What(SewingStep step) => step.Kind switch
    {
        SewingStepKind.Rims => "What fills openings inside one piece, at their rims, while the pieces lie flat",
        SewingStepKind.Openings => "What fills openings over several pieces, at their rims, which lie whole now",
        SewingStepKind.WithinPieces => "Seams that join a piece to itself",
        SewingStepKind.WithinRow => $"Uprights of row {step.Row}",
        SewingStepKind.BetweenRows => $"Row {step.Row} to the row below it",
        SewingStepKind.AcrossRows => "Pieces that reach over several rows, each to the next",
        SewingStepKind.WithinSkirt => "Uprights of the skirt",
        SewingStepKind.SkirtToRow => "Skirt to the row above it",
        SewingStepKind.Roof => "Flap of the roof to one ring, then with the roof's halves of the zips to the roof's edge, the other halves to the wall's, each closed while its second side is pinned",
        _ => throw new ArgumentOutOfRangeException(nameof(step), step.Kind, "Unknown step of sewing."),
    };
}
