using System.CommandLine;
using System.IO;
using System.Threading;
using CoverPattern.Workshop;

namespace CoverPattern.Cli;

/// <summary>check: reads a job, makes it in memory with the least search, and writes nothing.</summary>
internal static class CheckCommand
{
    private const int LeastEffort = 1;

    internal static Command Create(TextWriter output, TextWriter error)
    {
        var job = new Argument<string>("job") { Description = "The job file." };
        var command = new Command("check", "Tells all that is wrong with a job file, and what to know before cutting; writes nothing. Example: coverpattern check samples/orchard-5m.json") { job };
        command.SetAction((words, cancel) => System.Threading.Tasks.Task.FromResult(Interrupt.Within(stop => Run(words.GetRequiredValue(job), output, error, stop), cancel)));
        return command;
    }

    private static int Run(string path, TextWriter output, TextWriter error, CancellationToken cancel)
    {
        var source = JobSource.Read(path, error);
        if (source.Job is null)
        {
            return ExitCodes.JobWrong;
        }

        var quick = source.Job with { Lay = source.Job.Lay with { Effort = LeastEffort } };
        var outcome = Corridor.Run(quick, source.Text, progress: null, cancel);
        FaultList.Print(path, outcome.Faults, error);
        if (outcome.Result is null)
        {
            return ExitCodes.JobWrong;
        }

        NoticeList.Print(outcome.Result.Notices, error);
        foreach (var assumption in source.Job.Assumed)
        {
            var state = source.Job.Confirmed.Contains(assumption.Place) ? "confirmed" : "assumed";
            output.WriteLine($"{state}\t{assumption.Place}\t{assumption.Value}\t{assumption.Standing}");
        }

        output.WriteLine("The job can be made.");
        return ExitCodes.Done;
    }
}
