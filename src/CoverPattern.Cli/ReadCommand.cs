using System;
using System.CommandLine;
using System.IO;
using System.Threading.Tasks;
using CoverPattern.Files.Exchange;
using CoverPattern.Geometry;

namespace CoverPattern.Cli;

/// <summary>read: looks through a pattern exchange file of another program and lists its pieces, or all that is wrong with it.</summary>
internal static class ReadCommand
{
    internal static Command Create(TextWriter output, TextWriter error)
    {
        var file = new Argument<string>("file") { Description = "A pattern exchange file (DXF in text form)." };
        var command = new Command("read", "Lists the pieces of a pattern exchange file, or what is wrong with it. Example: coverpattern read style.dxf") { file };
        command.SetAction((words, _) => Task.FromResult(Run(words.GetRequiredValue(file), output, error)));
        return command;
    }

    private static int Run(string path, TextWriter output, TextWriter error)
    {
        byte[] file;
        try
        {
            file = File.ReadAllBytes(path);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException)
        {
            error.WriteLine($"{path} cannot be read: {fault.Message}");
            return ExitCodes.JobWrong;
        }

        var reading = ExchangeReader.Read(file);
        foreach (var line in reading.Notes)
        {
            error.WriteLine("Note: " + line);
        }

        foreach (var fault in reading.Faults)
        {
            error.WriteLine($"{path}: {fault}");
        }

        foreach (var piece in reading.Style?.Pieces ?? [])
        {
            var box = Rings.Bounds(piece.CutLine);
            output.WriteLine(FormattableString.Invariant(
                $"{piece.Name}\t{piece.Right},{piece.Left}\t{piece.Material}\t{box.Width:0.0} x {box.Height:0.0} mm\t{piece.Notches.Length} notches\t{piece.Cutouts.Length} holes\t{piece.Drills.Length} drills"));
        }

        return reading.Style is null ? ExitCodes.JobWrong : ExitCodes.Done;
    }
}
