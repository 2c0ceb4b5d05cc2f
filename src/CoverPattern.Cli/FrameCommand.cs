using System;
using System.Collections.Immutable;
using System.CommandLine;
using System.IO;
using System.Text;
using System.Threading.Tasks;
using CoverPattern.Files.Frames;
using CoverPattern.Files.Jobs;
using CoverPattern.Files.Surveys;
using CoverPattern.Patterns.Frames;

namespace CoverPattern.Cli;

/// <summary>frame: prints the paper of the frame alone, and writes the frame as a survey when asked.</summary>
internal static class FrameCommand
{
    internal static Command Create(TextWriter output, TextWriter error)
    {
        var job = new Argument<string>("job") { Description = "The job file." };
        var bar = new Option<string?>("--bar") { Description = "Length of a bar of stock, such as \"6 m\": prints a cutting list." };
        var kerf = new Option<string>("--kerf") { Description = "What the saw takes at a cut.", DefaultValueFactory = _ => "3 mm" };
        var survey = new Option<string?>("--survey") { Description = "File to write the frame to, ending in .csv or .obj; it must not exist." };
        var command = new Command("frame", "Prints struts, stock, hubs and order of erection of a job's frame. Example: coverpattern frame samples/orchard-5m.json --bar \"6 m\"") { job, bar, kerf, survey };
        command.SetAction((words, _) => Task.FromResult(Run(new Wish(words.GetRequiredValue(job), words.GetValue(bar), words.GetRequiredValue(kerf), words.GetValue(survey)), output, error)));
        return command;
    }

    private static int Run(Wish wish, TextWriter output, TextWriter error)
    {
        var (barMm, kerfMm) = (0.0, 0.0);
        if ((wish.Bar is not null && !IsLength(wish.Bar, "--bar", error, out barMm)) || !IsLength(wish.Kerf, "--kerf", error, out kerfMm))
        {
            return ExitCodes.JobWrong;
        }

        var source = JobSource.Read(wish.Job, error);
        if (source.Job is null)
        {
            return ExitCodes.JobWrong;
        }

        var frame = FrameBuilder.Build(source.Job.Frame);
        ImmutableArray<StockBar> stock = [];
        if (wish.Bar is not null)
        {
            if (StockCutting.Cut(frame, 2 * (source.Job.Frame.Struts?.EndAllowanceMm ?? 0), barMm, kerfMm) is not { } bars)
            {
                error.WriteLine(FormattableString.Invariant($"--bar: said {wish.Bar}. The longest strut is {frame.Classes[^1].LengthMm:0.0} mm: take longer bars."));
                return ExitCodes.JobWrong;
            }

            stock = bars;
        }

        output.Write(FrameSheet.Write(frame, stock, barMm));
        return wish.Survey is null || WriteSurvey(wish.Survey, frame, error) ? ExitCodes.Done : ExitCodes.JobWrong;
    }

    private static bool IsLength(string text, string flag, TextWriter error, out double millimetres)
    {
        var allowed = LengthParser.TryParse(text, signed: false, out millimetres, out var trouble);
        if (!allowed)
        {
            error.WriteLine($"{flag}: said {text}: {trouble}. {LengthParser.Allowed} is allowed.");
        }

        return allowed;
    }

    private static bool WriteSurvey(string path, Frame frame, TextWriter error)
    {
        var ending = Path.GetExtension(path);
        if (ending is not (".csv" or ".obj") || Path.Exists(path))
        {
            error.WriteLine(Path.Exists(path) ? $"{path} exists already. Name a file that does not." : $"--survey: said {path}. A file that ends in .csv or .obj is allowed.");
            return false;
        }

        try
        {
            using var file = new FileStream(path, FileMode.CreateNew, FileAccess.Write);
            file.Write(Encoding.UTF8.GetBytes(ending == ".csv" ? SurveyWriter.Csv(frame) : SurveyWriter.Obj(frame)));
            return true;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            error.WriteLine($"{path} cannot be written: {fault.Message}");
            return false;
        }
    }

    private sealed record Wish(string Job, string? Bar, string Kerf, string? Survey);
}
