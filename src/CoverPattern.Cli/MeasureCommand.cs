using System.CommandLine;
using System.IO;
using System.Threading.Tasks;
using CoverPattern.Files.Frames;
using CoverPattern.Patterns.Frames;

namespace CoverPattern.Cli;

/// <summary>measure: prints what to measure on a frame, before there is a job or filled in from one.</summary>
internal static class MeasureCommand
{
    internal static Command Create(TextWriter output, TextWriter error)
    {
        var job = new Argument<string?>("job") { Description = "A job whose numbers stand beside the blanks.", Arity = ArgumentArity.ZeroOrOne };
        var command = new Command("measure", "Prints a measuring sheet for a standing frame. Examples: coverpattern measure > sheet.txt; coverpattern measure dome.json > sheet.txt") { job };
        command.SetAction((words, _) => Task.FromResult(Run(words.GetValue(job), output, error)));
        return command;
    }

    private static int Run(string? path, TextWriter output, TextWriter error)
    {
        if (path is null)
        {
            output.Write(MeasuringSheet.Write(null, ""));
            return ExitCodes.Done;
        }

        var source = JobSource.Read(path, error);
        if (source.Job is null)
        {
            return ExitCodes.JobWrong;
        }

        output.Write(MeasuringSheet.Write(FrameBuilder.Build(source.Job.Frame), source.Job.Title));
        return ExitCodes.Done;
    }
}
