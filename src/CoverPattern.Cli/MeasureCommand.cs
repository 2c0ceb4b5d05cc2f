using System.CommandLine;
using System.IO;
using System.Threading.Tasks;
using CoverPattern.Files.Frames;
using CoverPattern.Files.Reports;
using CoverPattern.Patterns.Frames;

namespace CoverPattern.Cli;

/// <summary>measure: prints what to measure on a frame, before there is a job or filled in from one.</summary>
internal static class MeasureCommand
{
    internal static Command Create(TextWriter output, TextWriter error)
    {
        var job = new Argument<string?>("job") { Description = "A job whose numbers stand beside the blanks.", Arity = ArgumentArity.ZeroOrOne };
        var target = new Option<string?>("--out") { Description = "Folder to write measuring.html to, the sheet with pictures; made when missing." };
        var command = new Command("measure", "Prints a measuring sheet for a standing frame. Examples: coverpattern measure > sheet.txt; coverpattern measure dome.json --out sheets") { job, target };
        command.SetAction((words, _) => Task.FromResult(Run(words.GetValue(job), words.GetValue(target), output, error)));
        return command;
    }

    private static int Run(string? path, string? folder, TextWriter output, TextWriter error)
    {
        if (path is null)
        {
            output.Write(MeasuringSheet.Write(null, null));
            return NewFile.Write(folder, MeasuringPaper.Name, MeasuringPaper.Write(null, null), error);
        }

        var source = JobSource.Read(path, error);
        if (source.Job is null)
        {
            return ExitCodes.JobWrong;
        }

        var frame = FrameBuilder.Build(source.Job.Frame);
        output.Write(MeasuringSheet.Write(source.Job, frame));
        return NewFile.Write(folder, MeasuringPaper.Name, MeasuringPaper.Write(source.Job, frame), error);
    }
}
