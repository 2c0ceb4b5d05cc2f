using System;
using System.Collections.Immutable;
using System.CommandLine;
using System.IO;
using System.Linq;
using CoverPattern.Files.Plots;

namespace CoverPattern.Cli;

/// <summary>The words of the command plot that tell of a plotter or knife table, and the file that keeps them.</summary>
internal sealed class MachineFlags
{
    private const string MarksQuestion = "Up when the machine marks the side of the cloth that faces it, Table when it marks the side on the table";

    private readonly Option<string?> file = new("--machine") { Description = "File that keeps what is said of the machine, such as plotter.json: written when it is not there yet, else read." };
    private readonly Option<MarkedSide?> marks = new("--marks") { Description = MarksQuestion + ". Asked, since a wrong answer mirrors every piece." };
    private readonly Option<PlotOrigin?> origin = new("--origin") { Description = "Where the machine counts from." };
    private readonly Option<PenMoves?> moves = new("--moves") { Description = "How places are told: Relative for machines that hold no large numbers." };
    private readonly Option<bool> sixteenBit = new("--sixteen-bit") { Description = "The machine counts to 32767 steps only." };

    /// <summary>All of them.</summary>
    internal ImmutableArray<Option> All => [file, marks, origin, moves, sixteenBit];

    internal void AddTo(Command command)
    {
        foreach (var option in All)
        {
            command.Add(option);
        }
    }

    /// <summary>The machine, from its file or as said; faults are told.</summary>
    internal PlotWish Read(ParseResult words, double? section, TextWriter faults)
    {
        var said = new PlotMachine(
            words.GetValue(marks) ?? MarkedSide.Up, Origin: words.GetValue(origin) ?? PlotOrigin.Corner, Moves: words.GetValue(moves) ?? PenMoves.Absolute, IsSixteenBit: words.GetValue(sixteenBit));
        if (words.GetValue(file) is { } path && Path.Exists(path))
        {
            return Stored(words, path, section, faults) ?? new PlotWish(said, section);
        }

        if (words.GetValue(marks) is null)
        {
            faults.WriteLine($"--marks: said nothing. Say {MarksQuestion}: a wrong answer mirrors every piece. With --machine plotter.json it is asked once.");
        }

        return new PlotWish(said, section);
    }

    /// <summary>Writes the file where one was named that is not there.</summary>
    internal int Keep(ParseResult words, PlotWish wish, TextWriter error)
    {
        if (words.GetValue(file) is not { } path || Path.Exists(path))
        {
            return ExitCodes.Done;
        }

        var full = Path.GetFullPath(path);
        return NewFile.Write(Path.GetDirectoryName(full) ?? full, Path.GetFileName(full), MachineFile.Write(wish), error);
    }

    /// <summary>What the file says; a section that was said goes before the file's.</summary>
    private PlotWish? Stored(ParseResult words, string path, double? section, TextWriter faults)
    {
        foreach (var option in new Option[] { marks, origin, moves, sixteenBit }.Where(option => words.GetResult(option) is { Implicit: false }))
        {
            faults.WriteLine($"{option.Name}: said beside --machine {path}, which says it already. Leave one of them out.");
        }

        byte[] bytes;
        try
        {
            bytes = File.ReadAllBytes(path);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            faults.WriteLine($"--machine: {path} cannot be read: {fault.Message}");
            return null;
        }

        var (wish, wrong) = MachineFile.Read(bytes);
        FaultList.Print(path, wrong, faults);
        return wish is null ? null : wish with { LongestMm = section ?? wish.LongestMm };
    }
}
