using System;
using System.Collections.Immutable;
using System.Text.Json.Nodes;
using CoverPattern.Files.Drawings;
using CoverPattern.Files.Dxf;
using CoverPattern.Files.Results;
using CoverPattern.Files.Svg;
using CoverPattern.Lays;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Files.Plots;

/// <summary>Plots a result as drawings for other programs: every pattern in one file, each section of each lay in one.</summary>
public static class DrawingPlots
{
    private const string View = "Lays as the cloth lies on the table, patterns seen from outside; x along the roll from the cut end or the section's beginning.";

    /// <summary>DXF files and summary.json.</summary>
    /// <param name="pieces">All pieces.</param>
    /// <param name="lays">All lays.</param>
    /// <param name="notes">What nobody has confirmed.</param>
    /// <param name="longest">Most length of a section, millimetres; null without limit.</param>
    /// <param name="release">The form of DXF.</param>
    /// <param name="work">Told each file when it is begun; ends the work; silent when left out.</param>
    /// <exception cref="OperationCanceledException">The work was to end.</exception>
    public static ImmutableSortedDictionary<string, byte[]> Dxf(
        PieceSet pieces, ImmutableArray<Lay> lays, PaperNotes notes, double? longest, DxfRelease release, PlotWork? work = null) =>
        Write(pieces, lays, notes, longest, (".dxf", drawing => DxfWriter.Write(drawing, release)), new PlotSummary("dxf", View, work));

    /// <summary>SVG files, one group a layer, and summary.json.</summary>
    /// <inheritdoc cref="Dxf"/>
    public static ImmutableSortedDictionary<string, byte[]> Svg(PieceSet pieces, ImmutableArray<Lay> lays, PaperNotes notes, double? longest, PlotWork? work = null) =>
        Write(pieces, lays, notes, longest, (".svg", SvgWriter.Write), new PlotSummary("svg", View, work));

    private static ImmutableSortedDictionary<string, byte[]> Write(
        PieceSet pieces, ImmutableArray<Lay> lays, PaperNotes notes, double? longest, (string Ending, Func<Drawing, byte[]> Write) form, PlotSummary plots)
    {
        plots.Begin("patterns" + form.Ending);
        plots.Add("patterns" + form.Ending, form.Write(PatternSheet.Draw(pieces, notes)), new JsonObject { ["patterns"] = pieces.Patterns.Length });
        foreach (var lay in lays)
        {
            var sections = SectionDrawing.Of(lay, pieces, notes, longest);
            foreach (var (section, drawing) in sections)
            {
                var name = PlotNames.Of(lay, section, sections.Length) + form.Ending;
                plots.Begin(name);
                plots.Add(name, form.Write(drawing), new JsonObject
                {
                    ["cloth"] = lay.Cloth,
                    ["lay"] = lay.Number,
                    ["fromMm"] = JsonWords.Of(section.FromMm),
                    ["toMm"] = JsonWords.Of(section.ToMm),
                    ["pieces"] = PlotSummary.Labels(section.Whole),
                    ["parted"] = PlotSummary.Labels(section.Parted),
                });
            }
        }

        return plots.Files();
    }
}
