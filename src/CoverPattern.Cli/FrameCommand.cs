using System;
using System.CommandLine;
using System.IO;
using System.Text;
using System.Threading.Tasks;
using CoverPattern.Files.Frames;
using CoverPattern.Files.Jobs;
using CoverPattern.Files.Reports;
using CoverPattern.Files.Surveys;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Cli;

/// <summary>frame: prints the paper of the frame alone, and writes the frame as a survey when asked.</summary>
internal static class FrameCommand
{
    // As frame.stock.kerf of the job.
    private const double DefaultKerf = 3;

    internal static Command Create(TextWriter output, TextWriter error)
    {
        var job = new Argument<string>("job") { Description = "The job file." };
        var bar = new Option<string?>("--bar") { Description = "Length of a bar of stock, such as \"6 m\", in place of the job's frame.stock: adds a cutting list." };
        var kerf = new Option<string?>("--kerf") { Description = "What the saw takes at a cut; 3 mm when nobody says." };
        var folder = new Option<string?>("--out") { Description = "Folder to write frame.html to, the paper with plan and elevations; made when missing." };
        var survey = new Option<string?>("--survey") { Description = "File to write the frame to, ending in .csv or .obj; it must not exist." };
        var command = new Command("frame", "Prints struts, stock, hubs and order of erection of a job's frame. Example: coverpattern frame samples/orchard-5m.json --bar \"6 m\"") { job, bar, kerf, folder, survey };
        command.SetAction((words, _) => Task.FromResult(Run(new Wish(words.GetRequiredValue(job), words.GetValue(bar), words.GetValue(kerf), words.GetValue(folder), words.GetValue(survey)), output, error)));
        return command;
    }

    private static int Run(Wish wish, TextWriter output, TextWriter error)
    {
        var (barMm, kerfMm) = (0.0, DefaultKerf);
        if ((wish.Bar is not null && !IsLength(wish.Bar, "--bar", error, out barMm)) || (wish.Kerf is not null && !IsLength(wish.Kerf, "--kerf", error, out kerfMm)))
        {
            return ExitCodes.JobWrong;
        }

        var source = JobSource.Read(wish.Job, error);
        if (source.Job is null)
        {
            return ExitCodes.JobWrong;
        }

        var job = wish.Bar is null ? source.Job : source.Job with { Frame = source.Job.Frame with { Stock = new StockWish(new Measure(barMm, wish.Bar), new Measure(kerfMm, wish.Kerf ?? "")) } };
        var frame = FrameBuilder.Build(job.Frame);
        var faults = StockList.Faults(job.Frame, frame);
        if (!faults.IsEmpty)
        {
            FaultList.Print(wish.Job, faults, error);
            return ExitCodes.JobWrong;
        }

        output.Write(FrameSheet.Write(job, frame));
        var written = NewFile.Write(wish.Folder, FramePaper.Name, FramePaper.Write(job, frame), error);
        return wish.Survey is null || WriteSurvey(wish.Survey, frame, error) ? written : ExitCodes.JobWrong;
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

    private sealed record Wish(string Job, string? Bar, string? Kerf, string? Folder, string? Survey);
}
