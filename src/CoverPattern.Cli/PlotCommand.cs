using System.Collections.Immutable;
using System.CommandLine;
using System.IO;
using System.Threading;
using System.Threading.Tasks;
using CoverPattern.Files.Plots;
using CoverPattern.Workshop.Folders;
using CoverPattern.Workshop.Plots;

namespace CoverPattern.Cli;

/// <summary>plot: from a result folder to files for a machine or a printer; nothing is computed anew.</summary>
internal static class PlotCommand
{
    internal static Command Create(TextWriter output, TextWriter error)
    {
        var flags = new PlotFlags();
        var command = new Command("plot", "Writes files for a plotter, a knife table or a printer from a result. Example: coverpattern plot out --as pdf --sheet A4 --out plots");
        flags.AddTo(command);
        command.SetAction((words, cancel) => Task.FromResult(Interrupt.Within(stop => Run(words, flags, output, error, stop), cancel)));
        return command;
    }

    private static int Run(ParseResult words, PlotFlags flags, TextWriter output, TextWriter error, CancellationToken cancel)
    {
        if (flags.Read(words, error) is not { } wish)
        {
            return ExitCodes.JobWrong;
        }

        PlotFolder.Try(wish.Out, wish.Form);
        var files = Write(ResultReader.Read(wish.Folder), wish, new PlotWork(new FileLines(error), cancel));
        ResultFolder.Replace(wish.Out, files, cancel);
        output.WriteLine($"files\t{files.Count}\t{wish.Out}");
        return flags.Keep(words, wish, error);
    }

    private static ImmutableSortedDictionary<string, byte[]> Write(StoredResult result, PlotOrder wish, PlotWork work) => wish.Form switch
    {
        PlotFlags.Pdf => PdfPlots.Write(result.Pieces, result.Lays, result.Head.Notes, new PdfWish(wish.Plot.LongestMm, wish.Tiles), work),
        PlotFlags.Dxf => DrawingPlots.Dxf(result.Pieces, result.Lays, result.Head.Notes, wish.Plot.LongestMm, wish.Release, work),
        PlotFlags.Svg => DrawingPlots.Svg(result.Pieces, result.Lays, result.Head.Notes, wish.Plot.LongestMm, work),
        PlotFlags.Exchange => ExchangePlots.Write(result.Pieces, result.Head, wish.Units, work),
        PlotFlags.Model => ModelPlots.Write(result.Pieces, wish.Model, result.Head.Title, work),
        _ => HpglPlots.Write(result.Pieces, result.Lays, wish.Plot, work),
    };
}
