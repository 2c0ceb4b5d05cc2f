using System.CommandLine;
using System.IO;
using System.Threading;
using CoverPattern.Files.Results;
using CoverPattern.Workshop;
using CoverPattern.Workshop.Folders;

namespace CoverPattern.Cli;

/// <summary>make: from a job file to a folder of cut files.</summary>
internal static class MakeCommand
{
    internal static Command Create(TextWriter output, TextWriter error)
    {
        var job = new Argument<string>("job") { Description = "The job file; docs/job-file.md tells its form." };
        var folder = new Option<string>("--out") { Description = "Folder for the result; made when missing, an earlier result in it is replaced.", Required = true };
        var seed = new Option<int?>("--seed") { Description = "Seed of the search for lays, in place of the job's." };
        var command = new Command("make", "Makes pieces, lays and drawings from a job file. Example: coverpattern make samples/orchard-5m.json --out out")
        {
            job, folder, seed,
        };
        command.SetAction((words, cancel) => System.Threading.Tasks.Task.FromResult(
            Interrupt.Within(stop => Run(new Wish(words.GetRequiredValue(job), words.GetRequiredValue(folder), words.GetValue(seed)), output, error, stop), cancel)));
        return command;
    }

    private static int Run(Wish wish, TextWriter output, TextWriter error, CancellationToken cancel)
    {
        if (string.IsNullOrWhiteSpace(wish.Folder) || wish.Seed < 0)
        {
            error.WriteLine(wish.Seed < 0 ? $"--seed: said {wish.Seed}. 0 to {int.MaxValue} is allowed." : "--out: said nothing. Name a folder.");
            return ExitCodes.JobWrong;
        }

        var source = JobSource.Read(wish.JobPath, error);
        if (source.Job is null)
        {
            return ExitCodes.JobWrong;
        }

        ResultFolder.Try(wish.Folder);
        var job = wish.Seed is { } seed ? source.Job with { Lay = source.Job.Lay with { Seed = seed } } : source.Job;
        var outcome = Corridor.Run(job, source.Text, new ProgressLines(error), cancel);
        FaultList.Print(wish.JobPath, outcome.Faults, error);
        if (outcome.Result is null)
        {
            return ExitCodes.JobWrong;
        }

        var files = ResultFiles.Write(outcome.Result);
        ResultFolder.Replace(wish.Folder, files, cancel);
        ClosingTable.Print(outcome.Result, output);
        NoticeList.Print(outcome.Result.Notices, error);
        output.WriteLine($"files\t{files.Count}\t{wish.Folder}");
        return ExitCodes.Done;
    }

    private sealed record Wish(string JobPath, string Folder, int? Seed);
}
