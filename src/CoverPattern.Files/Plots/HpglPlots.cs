using System;
using System.Collections.Immutable;
using System.Linq;
using System.Text.Json.Nodes;
using CoverPattern.Files.Results;
using CoverPattern.Geometry;
using CoverPattern.Lays;
using CoverPattern.Lays.Cutting;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Files.Plots;

/// <summary>Plots a result in HP-GL.</summary>
public static class HpglPlots
{
    private const string View = "Seen as the cloth lies on the table; x along the roll from the cut end or the section's beginning, y across from the lower edge.";

    /// <summary>One HP-GL file a section and lay, and summary.json with their lengths and pieces.</summary>
    /// <param name="pieces">All pieces.</param>
    /// <param name="lays">All lays.</param>
    /// <param name="wish">The machine and its length.</param>
    /// <param name="work">Told each file when it is begun; ends the work; silent when left out.</param>
    /// <exception cref="PlotTooLargeException">A sixteen-bit machine cannot count so far.</exception>
    /// <exception cref="OperationCanceledException">The work was to end.</exception>
    public static ImmutableSortedDictionary<string, byte[]> Write(PieceSet pieces, ImmutableArray<Lay> lays, PlotWish wish, PlotWork? work = null)
    {
        ArgumentNullException.ThrowIfNull(wish);

        var plots = new PlotSummary("hpgl", View, work);
        foreach (var lay in lays)
        {
            work?.Cancel.ThrowIfCancellationRequested();
            var plan = CutPlanner.Plan(lay, pieces, PlotMarks.Of(lay, pieces));
            var sections = SectionPlanner.Split(lay, pieces, wish.LongestMm ?? double.PositiveInfinity);
            foreach (var section in sections)
            {
                var name = PlotNames.Of(lay, section, sections.Length) + ".plt";
                plots.Begin(name);
                ImmutableArray<Stroke> strokes = [.. Registration.Of(section, lay), .. SectionPlanner.Within(section, plan.Strokes).SelectMany(BrokenLines.Of)];
                var size = new Point2(section.ToMm - section.FromMm, lay.RollWidthMm);
                plots.Add(name, HpglWriter.Write(name, strokes, size, wish.Machine), Facts(lay, section, new CutPlan(strokes), plan));
            }
        }

        return plots.Files();
    }

    private static JsonObject Facts(Lay lay, Section section, CutPlan plan, CutPlan whole) => new()
    {
        ["cloth"] = lay.Cloth,
        ["lay"] = lay.Number,
        ["fromMm"] = JsonWords.Of(section.FromMm),
        ["toMm"] = JsonWords.Of(section.ToMm),
        ["cutMm"] = JsonWords.Of(SummaryFile.Round(plan.CutMm)),
        ["drawnMm"] = JsonWords.Of(SummaryFile.Round(plan.DrawnMm)),
        ["sharedMm"] = JsonWords.Of(SummaryFile.Round(whole.SharedMm)),
        ["idleMm"] = JsonWords.Of(SummaryFile.Round(plan.IdleMm)),
        ["pieces"] = PlotSummary.Labels(section.Whole),
        ["parted"] = PlotSummary.Labels(section.Parted),
    };
}
