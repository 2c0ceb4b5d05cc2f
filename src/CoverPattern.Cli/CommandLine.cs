using System;
using System.CommandLine;
using System.IO;
using System.Threading.Tasks;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Cli;

/// <summary>The program's commands and what their outcome means for the exit code.</summary>
public static class CommandLine
{
    /// <summary>Runs one command.</summary>
    /// <param name="args">Words of the command line.</param>
    /// <param name="output">Takes results; plain lines, so that scripts can read them.</param>
    /// <param name="error">Takes progress, faults and notices.</param>
    /// <param name="input">Answers questions; none when null.</param>
    /// <returns>0 done, 1 command or job wrong, 2 cannot be done or cancelled, 3 our fault.</returns>
    public static async Task<int> RunAsync(string[] args, TextWriter output, TextWriter error, TextReader? input = null)
    {
        var root = new RootCommand("Patterns, lays and papers for fabric covers of faceted domes, from one job file.")
        {
            MakeCommand.Create(output, error),
            CheckCommand.Create(output, error),
            NewCommand.Create(input, output, error),
            PlotCommand.Create(output, error),
            ReadCommand.Create(output, error),
            SchemaCommand.Create(output),
            FrameCommand.Create(output, error),
            MeasureCommand.Create(output, error),
        };
        var settings = new InvocationConfiguration { Output = output, Error = error, EnableDefaultExceptionHandler = false, ProcessTerminationTimeout = null };
        try
        {
            return await root.Parse(args).InvokeAsync(settings);
        }
        catch (WorkException fault)
        {
            await error.WriteLineAsync("Cannot be done: " + fault.Message);
            return ExitCodes.CannotBeDone;
        }
        catch (OperationCanceledException)
        {
            await error.WriteLineAsync("Cancelled; nothing was written.");
            return ExitCodes.CannotBeDone;
        }
        catch (Exception fault) when (fault is not OutOfMemoryException)
        {
            await error.WriteLineAsync("The program made a mistake; please report this with the job file: " + fault);
            return ExitCodes.OurFault;
        }
    }
}
