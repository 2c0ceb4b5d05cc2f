using System.Collections.Generic;
using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using System.IO;
using System.Linq;
using CoverPattern.Files.Dxf;
using CoverPattern.Files.Exchange;
using CoverPattern.Files.Jobs;
using CoverPattern.Files.Plots;
using CoverPattern.Lays.Sheets;

namespace CoverPattern.Cli;

/// <summary>The words of the command plot.</summary>
internal sealed class PlotFlags
{
    internal const string Hpgl = "hpgl";
    internal const string Pdf = "pdf";
    internal const string Model = "model";
    internal const string Dxf = "dxf";
    internal const string Svg = "svg";
    internal const string Exchange = "d6673";

    private readonly Argument<string> folder = new("folder") { Description = "A folder that make wrote." };
    private readonly Option<string> form = new("--as") { Description = "dxf, svg: drawings by layers, a lay file a section; d6673: patterns for other pattern programs; hpgl: HP-GL/2 for pen plotters and knife tables; pdf: true size, lays and patterns on a page each, in tiles too with --sheet; model: a paper model to fold up.", Required = true };
    private readonly Option<string> target = new("--out") { Description = "Folder for the files.", Required = true };
    private readonly Option<string?> section = new("--section") { Description = "Most length the machine takes, such as \"5 m\"; a longer lay is parted where the fewest pieces are." };
    private readonly MachineFlags machine = new();
    private readonly Option<string?> sheet = new("--sheet") { Description = "Paper: " + SheetSizes.Allowed + "." };
    private readonly Option<string?> overlap = new("--overlap") { Description = "What neighbouring sheets show alike; 10 mm when left out." };
    private readonly Option<string?> margin = new("--margin") { Description = "Border of a sheet that the printer leaves white; 10 mm when left out." };

    private readonly Option<string?> scale = new("--scale") { Description = "How many times smaller a model is; 10 when left out, or more where a piece would not go on the sheet." };

    private readonly Option<DxfRelease> release = new("--release") { Description = "Form of DXF; AC1009 for programs that read nothing newer." };

    private readonly Option<ExchangeUnits> units = new("--units") { Description = "Units of a d6673 file." };

    internal void AddTo(Command command)
    {
        form.AcceptOnlyFromAmong(Dxf, Exchange, Hpgl, Pdf, Svg, Model);
        command.Add(folder);
        foreach (var option in new Option[] { form, target, section, sheet, overlap, margin, scale, release, units })
        {
            command.Add(option);
        }

        machine.AddTo(command);
    }

    /// <summary>What was typed; null after the faults have been told.</summary>
    internal PlotOrder? Read(ParseResult words, TextWriter error)
    {
        var faults = new StringWriter();
        var longest = Length(words, section, MachineFile.ShortestSectionMm, faults);
        var kind = words.GetRequiredValue(form);
        var plot = kind == Hpgl ? machine.Read(words, longest, faults) : new PlotWish(new PlotMachine(MarkedSide.Up), longest);
        var order = new PlotOrder(words.GetRequiredValue(folder), words.GetRequiredValue(target), kind, plot, Tiles(words, faults), Scale(words, faults), words.GetValue(release), words.GetValue(units));
        foreach (var stray in Strays(words, kind))
        {
            faults.WriteLine($"{stray.Name}: said beside --as {kind}, which knows no such word. Leave it out, or say the form it belongs to.");
        }

        error.Write(faults);
        return faults.GetStringBuilder().Length == 0 ? order : null;
    }

    /// <summary>What was typed though it says nothing of this form: who mirrors or scales in vain should be told.</summary>
    private IEnumerable<Option> Strays(ParseResult words, string kind)
    {
        ImmutableArray<Option> known = kind switch
        {
            Dxf => [section, release],
            Svg => [section],
            Exchange => [units],
            Hpgl => [section, .. machine.All],
            Pdf => [section, sheet, overlap, margin],
            _ => [sheet, margin, scale],
        };
        Option[] all = [section, sheet, overlap, margin, scale, release, units, .. machine.All];
        return all.Where(option => words.GetResult(option) is { Implicit: false } && !known.Contains(option));
    }

    /// <summary>Keeps the machine's answers where the order names a file for them that is not there yet.</summary>
    internal int Keep(ParseResult words, PlotOrder order, TextWriter error) => order.Form == Hpgl ? machine.Keep(words, order.Plot, error) : ExitCodes.Done;

    private TileWish? Tiles(ParseResult words, StringWriter faults)
    {
        var (wide, border) = (Length(words, overlap, 0, faults), Length(words, margin, 0, faults));
        if (words.GetValue(sheet) is not { } typed)
        {
            return null;
        }

        if (!SheetSizes.TryParse(typed, out var size))
        {
            faults.WriteLine($"--sheet: said \"{typed}\". Allowed: {SheetSizes.Allowed}.");
            return null;
        }

        var wish = new TileWish(size);
        wish = wish with { OverlapMm = wide ?? wish.OverlapMm, MarginMm = border ?? wish.MarginMm };
        if (!wish.HasRoom)
        {
            faults.WriteLine($"--sheet: said \"{typed}\". Its shorter side must leave {TileWish.LeastStepMm} mm between the margins and beside the overlap: take larger paper or smaller margins.");
        }

        return wish;
    }

    private double? Scale(ParseResult words, StringWriter faults)
    {
        if (words.GetValue(scale) is not { } typed)
        {
            return null;
        }

        // A decimal comma is a comma, as in a job; no digits are grouped.
        if (typed.All(sign => char.IsAsciiDigit(sign) || sign is '.' or ',')
            && double.TryParse(typed.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) && number is >= 1 and <= 1000)
        {
            return number;
        }

        faults.WriteLine($"--scale: said \"{typed}\". A number from 1 to 1000 is allowed, such as 10 for 1:10.");
        return null;
    }

    private static double? Length(ParseResult words, Option<string?> option, double least, StringWriter faults)
    {
        if (words.GetValue(option) is not { } typed)
        {
            return null;
        }

        if (!LengthParser.TryParse(typed, signed: false, out var length, out var trouble) || length < least)
        {
            faults.WriteLine($"{option.Name}: said \"{typed}\"{(trouble.Length > 0 ? ": " + trouble : string.Empty)}. A length of {least} mm or more is allowed, such as \"5 m\".");
        }

        return length;
    }
}
