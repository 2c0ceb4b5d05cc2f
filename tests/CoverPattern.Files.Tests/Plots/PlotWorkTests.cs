using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using System.Threading;
using CoverPattern.Files.Drawings;
using CoverPattern.Files.Dxf;
using CoverPattern.Files.Exchange;
using CoverPattern.Files.Plots;
using CoverPattern.Files.Results;
using CoverPattern.Files.Tests.Drawings;
using CoverPattern.Lays.Models;
using CoverPattern.Lays.Sheets;

namespace CoverPattern.Files.Tests.Plots;

/// <summary>Work on plots tells each file when it begins it, and ends when it is told to.</summary>
public class PlotWorkTests
{
    private static readonly SheetSize A4 = new(210, 297);

    public static TheoryData<string> Forms => ["pdf", "dxf", "svg", "hpgl", "model", "d6673"];

    [Theory]
    [MemberData(nameof(Forms))]
    public void Write_AnyForm_TellsEveryFileOnce(string form)
    {
        var told = new Names();

        var files = Write(form, new PlotWork(told, CancellationToken.None));

        Assert.Equal(files.Keys.Where(name => name != "summary.json"), told.All.Order(StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Forms))]
    public void Write_ToldToEndAtItsFirstFile_EndsBeforeTheNext(string form)
    {
        using var stop = new CancellationTokenSource();
        var told = new Names(stop.Cancel);

        // Forms of one file here are short, but for the model, which looks before each piece.
        var ended = Record.Exception(() => Write(form, new PlotWork(told, stop.Token)));

        Assert.Single(told.All);
        Assert.Equal(form is "d6673" or "hpgl" ? null : typeof(OperationCanceledException), ended?.GetType());
    }

    private static ImmutableSortedDictionary<string, byte[]> Write(string form, PlotWork work) => form switch
    {
        "pdf" => PdfPlots.Write(SamplePieces.Set, [SamplePieces.Lay], PaperNotes.None, new PdfWish(null, new TileWish(A4)), work),
        "dxf" => DrawingPlots.Dxf(SamplePieces.Set, [SamplePieces.Lay], PaperNotes.None, null, DxfRelease.AC1015, work),
        "svg" => DrawingPlots.Svg(SamplePieces.Set, [SamplePieces.Lay], PaperNotes.None, null, work),
        "hpgl" => HpglPlots.Write(SamplePieces.Set, [SamplePieces.Lay], new PlotWish(new PlotMachine(MarkedSide.Up), null), work),
        "model" => ModelPlots.Write(SamplePieces.Set, new ModelWish(null, A4), "sample", work),
        _ => ExchangePlots.Write(SamplePieces.Set, new SummaryHead("sample", new DateOnly(2026, 5, 2), 4, 6, PaperNotes.None), ExchangeUnits.Metric, work),
    };

    private sealed class Names(Action? then = null) : IProgress<string>
    {
        internal List<string> All { get; } = [];

        public void Report(string value)
        {
            All.Add(value);
            then?.Invoke();
        }
    }
}
