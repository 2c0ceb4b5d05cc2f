using System;
using System.Collections.Immutable;
using System.Text.Json.Nodes;
using CoverPattern.Files.Exchange;
using CoverPattern.Files.Results;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Files.Plots;

/// <summary>Writes the patterns of a result for other pattern programs.</summary>
public static class ExchangePlots
{
    private const string View = "Seen from outside; a block a pattern, its boundary with all allowances on layer 1.";

    /// <summary>style.dxf, and a summary.</summary>
    /// <param name="pieces">All pieces.</param>
    /// <param name="head">Title and date of the job.</param>
    /// <param name="units">What numbers mean.</param>
    /// <param name="work">Told each file when it is begun; ends the work; silent when left out.</param>
    public static ImmutableSortedDictionary<string, byte[]> Write(PieceSet pieces, SummaryHead head, ExchangeUnits units, PlotWork? work = null)
    {
        ArgumentNullException.ThrowIfNull(pieces);

        var plots = new PlotSummary("d6673", View, work);
        plots.Begin("style.dxf");
        plots.Add("style.dxf", ExchangeWriter.Write(ExchangePieces.Of(pieces, head), units), new JsonObject
        {
            ["units"] = JsonWords.Of(units),
            ["patterns"] = pieces.Patterns.Length,
        });
        return plots.Files();
    }
}
