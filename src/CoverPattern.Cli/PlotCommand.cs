using System.CommandLine;
using System.IO;
using System.Threading;
using System.Threading.Tasks;
using CoverPattern.Files.Jobs;
using CoverPattern.Files.Plots;
using CoverPattern.Workshop.Folders;
using CoverPattern.Workshop.Plots;

namespace CoverPattern.Cli;

/// <summary>plot: from a result folder to files for a machine; nothing is computed anew.</summary>
internal static class PlotCommand
{
    private const double ShortestSection = 200;

    internal static Command Create(TextWriter output, TextWriter error)
    {
        var flags = new PlotFlags();
        var command = new Command("plot", "Writes files for a plotter or knife table from a result. Example: coverpattern plot out --as hpgl --out plots --section \"5 m\"");
        flags.AddTo(command);
        command.SetAction((words, cancel) => Task.FromResult(Run(words, flags, output, error, cancel)));
        return command;
    }

    private static int Run(ParseResult words, PlotFlags flags, TextWriter output, TextWriter error, CancellationToken cancel)
    {
        if (flags.Read(words, error) is not { } wish)
        {
            return ExitCodes.JobWrong;
        }

        ResultFolder.Try(wish.Out);
        var (pieces, lays) = ResultReader.Read(wish.Folder);
        var files = PlotFiles.Hpgl(pieces, lays, wish.Plot);
        ResultFolder.Replace(wish.Out, files, cancel);
        output.WriteLine($"files\t{files.Count}\t{wish.Out}");
        return ExitCodes.Done;
    }

    /// <summary>What the command line asks for.</summary>
    private sealed record Wish(string Folder, string Out, PlotWish Plot);

    private sealed class PlotFlags
    {
        private readonly Argument<string> folder = new("folder") { Description = "A folder that make wrote." };
        private readonly Option<string> form = new("--as") { Description = "hpgl: HP-GL/2 for pen plotters and knife tables.", Required = true };
        private readonly Option<string> target = new("--out") { Description = "Folder for the files.", Required = true };
        private readonly Option<string?> section = new("--section") { Description = "Most length the machine takes, such as \"5 m\"; a longer lay is parted where the fewest pieces are." };
        private readonly Option<PlotOrigin> origin = new("--origin") { Description = "Where the machine counts from." };
        private readonly Option<bool> farSide = new("--far-side") { Description = "The machine marks the side of the cloth that lies on the table." };
        private readonly Option<bool> sixteenBit = new("--sixteen-bit") { Description = "The machine counts to 32767 steps only." };

        internal void AddTo(Command command)
        {
            form.AcceptOnlyFromAmong("hpgl");
            command.Add(folder);
            command.Add(form);
            command.Add(target);
            command.Add(section);
            command.Add(origin);
            command.Add(farSide);
            command.Add(sixteenBit);
        }

        internal Wish? Read(ParseResult words, TextWriter error)
        {
            double? longest = null;
            if (words.GetValue(section) is { } typed)
            {
                if (!LengthParser.TryParse(typed, signed: false, out var length, out var trouble) || length < ShortestSection)
                {
                    error.WriteLine($"--section: said \"{typed}\"{(trouble.Length > 0 ? ": " + trouble : string.Empty)}. A length of 200 mm or more is allowed, such as \"5 m\".");
                    return null;
                }

                longest = length;
            }

            var machine = new PlotMachine(Origin: words.GetValue(origin), MarksFarSide: words.GetValue(farSide), IsSixteenBit: words.GetValue(sixteenBit));
            return new Wish(words.GetRequiredValue(folder), words.GetRequiredValue(target), new PlotWish(machine, longest));
        }
    }
}
