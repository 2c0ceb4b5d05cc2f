using System.CommandLine;
using System.IO;
using CoverPattern.Files.Jobs;

namespace CoverPattern.Cli;

/// <summary>schema: prints the JSON Schema of the job file, for editors that help with typing.</summary>
internal static class SchemaCommand
{
    internal static Command Create(TextWriter output)
    {
        var command = new Command("schema", "Prints the JSON Schema of the job file. Example: coverpattern schema > job.schema.json");
        command.SetAction(_ =>
        {
            output.Write(JobSchema.Write());
            return ExitCodes.Done;
        });
        return command;
    }
}
