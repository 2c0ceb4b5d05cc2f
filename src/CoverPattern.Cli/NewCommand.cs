using System;
using System.CommandLine;
using System.IO;
using System.Text;
using CoverPattern.Files.Jobs;

namespace CoverPattern.Cli;

/// <summary>new: writes a commented starter job, from flags or from six questions.</summary>
internal static class NewCommand
{
    /// <param name="input">Answers the questions; null when nobody is there to ask.</param>
    /// <param name="output">Takes the questions.</param>
    /// <param name="error">Takes faults.</param>
    internal static Command Create(TextReader? input, TextWriter output, TextWriter error)
    {
        var path = new Argument<string>("job") { Description = "The job file to write; it must not exist." };
        var defaults = new Option<bool>("--defaults") { Description = "Take every default instead of asking." };
        var flags = new StarterFlags();
        var command = new Command("new", "Writes a commented starter job: asks six questions, or takes flags. Examples: coverpattern new dome.json; coverpattern new dome.json --size \"24 ft\" --cut 5/8")
        {
            path, defaults,
        };
        flags.AddTo(command);
        command.SetAction(words =>
        {
            var answers = flags.Answers(words, error);
            if (answers is null)
            {
                return ExitCodes.JobWrong;
            }

            var isAnswered = words.GetValue(defaults) || flags.AnyGiven(words);
            answers = input is null || isAnswered ? answers : new StarterQuestions(input, output).Ask(answers);
            return Write(words.GetRequiredValue(path), StarterJob.Write(answers), output, error);
        });
        return command;
    }

    private static int Write(string path, string job, TextWriter output, TextWriter error)
    {
        var faults = JobReader.Read(job).Faults;
        if (!faults.IsEmpty)
        {
            FaultList.Print(path, faults, error);
            return ExitCodes.JobWrong;
        }

        if (Path.Exists(path))
        {
            error.WriteLine($"{path} exists already. Name a file that does not.");
            return ExitCodes.JobWrong;
        }

        try
        {
            using var file = new FileStream(path, FileMode.CreateNew, FileAccess.Write);
            file.Write(Encoding.UTF8.GetBytes(job));
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            error.WriteLine($"The job file {path} cannot be written: {fault.Message}");
            return Path.Exists(path) ? ExitCodes.JobWrong : ExitCodes.CannotBeDone;
        }

        output.WriteLine($"Wrote {path}. Look at it, then: coverpattern make {path} --out <folder>");
        return ExitCodes.Done;
    }
}
