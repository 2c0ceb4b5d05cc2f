using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using System.Text.Json.Nodes;
using CoverPattern.Files.Results;
using CoverPattern.Geometry;
using CoverPattern.Lays;
using CoverPattern.Lays.Cutting;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Files.Plots;

/// <summary>Writes the plot files of a result, and a summary that tells what lies where.</summary>
public static class PlotFiles
{
    private const string View = "Seen as the cloth lies on the table; x along the roll from the cut end or the section's beginning, y across from the lower edge.";

    /// <summary>One HP-GL file a section and lay, and summary.json with their lengths and pieces.</summary>
    /// <param name="pieces">All pieces.</param>
    /// <param name="lays">All lays.</param>
    /// <param name="wish">The machine and its length.</param>
    /// <exception cref="PlotTooLargeException">A sixteen-bit machine cannot count so far.</exception>
    public static ImmutableSortedDictionary<string, byte[]> Hpgl(PieceSet pieces, ImmutableArray<Lay> lays, PlotWish wish)
    {
        ArgumentNullException.ThrowIfNull(wish);

        var files = ImmutableSortedDictionary.CreateBuilder<string, byte[]>(StringComparer.Ordinal);
        var listed = new JsonArray();
        foreach (var lay in lays)
        {
            var plan = CutPlanner.Plan(lay, pieces, PlotMarks.Of(lay, pieces));
            var sections = SectionPlanner.Split(lay, pieces, wish.LongestMm ?? double.PositiveInfinity);
            foreach (var section in sections)
            {
                var name = Name(lay, section, sections.Length);
                ImmutableArray<Stroke> strokes = [.. Registration.Of(section, lay), .. SectionPlanner.Within(section, plan.Strokes)];
                files.Add(name, HpglWriter.Write(name, strokes, new Point2(section.ToMm - section.FromMm, lay.RollWidthMm), wish.Machine));
                listed.Add(Listed(name, lay, section, new CutPlan(strokes)));
            }
        }

        files.Add(SummaryFile.Name, Summary(listed, [.. files.Keys, SummaryFile.Name]));
        return files.ToImmutable();
    }

    private static string Name(Lay lay, Section section, int count)
    {
        var number = lay.Number == 1 ? string.Empty : string.Create(CultureInfo.InvariantCulture, $"-{lay.Number}");
        var digits = count.ToString(CultureInfo.InvariantCulture).Length;
        var part = count == 1 ? string.Empty : "-section-" + section.Number.ToString(CultureInfo.InvariantCulture).PadLeft(digits, '0');
        return $"lay-{lay.Cloth}{number}{part}.plt";
    }

    private static JsonObject Listed(string name, Lay lay, Section section, CutPlan plan) => new()
    {
        ["file"] = name,
        ["cloth"] = lay.Cloth,
        ["lay"] = lay.Number,
        ["fromMm"] = JsonWords.Of(section.FromMm),
        ["toMm"] = JsonWords.Of(section.ToMm),
        ["cutMm"] = JsonWords.Of(SummaryFile.Round(plan.CutMm)),
        ["drawnMm"] = JsonWords.Of(SummaryFile.Round(plan.DrawnMm)),
        ["idleMm"] = JsonWords.Of(SummaryFile.Round(plan.IdleMm)),
        ["pieces"] = Labels(section.Whole),
        ["parted"] = Labels(section.Parted),
    };

    private static JsonArray Labels(IEnumerable<string> labels) => JsonWords.List(labels, label => JsonValue.Create(label));

    private static byte[] Summary(JsonArray plots, IEnumerable<string> names)
    {
        var summary = ResultHeader.Begin(View);
        summary["program"] = ProgramVersion.Text;
        summary["plots"] = plots;
        summary["files"] = Labels(names.Order(StringComparer.Ordinal));
        return JsonLayout.Write(summary);
    }
}
