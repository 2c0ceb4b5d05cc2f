using System;
using System.IO;
using System.Linq;
using System.Text.Json.Nodes;
using System.Threading.Tasks;
using CoverPattern.Geometry;

namespace CoverPattern.Cli.Tests;

public sealed class PlotCommandTests : IDisposable
{
    private const string SmallJob = """
        {
          "schemaVersion": 1, "date": "2026-03-01",
          "frame": { "frequency": 1, "cut": 2, "size": { "radius": "1 m" } },
          "cloths": [ { "name": "canvas", "rollWidth": "1.83 m", "mass": "350 g/m2" } ],
          "lay": { "effort": 1 }
        }
        """;

    private readonly string folder = Directory.CreateTempSubdirectory("coverpattern-test").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public async Task Plot_EveryForm_WritesItsFiles()
    {
        await Make();

        await Writes(["--as", "pdf", "--sheet", "Letter"], "lay-canvas-tiles.pdf", "lay-canvas.pdf", "patterns-tiles.pdf", "patterns.pdf");
        await Writes(["--as", "model"], "model.pdf");
        await Writes(["--as", "dxf", "--release", "AC1009"], "lay-canvas.dxf", "patterns.dxf");
        await Writes(["--as", "svg"], "lay-canvas.svg", "patterns.svg");
        await Writes(["--as", "hpgl", "--marks", "Table"], "lay-canvas.plt");
        await Writes(["--as", "d6673", "--units", "English"], "style.dxf");
    }

    [Fact]
    public async Task Read_OurOwnExchangeFile_ListsThePatterns()
    {
        await Make();
        await Run("plot", Path.Combine(folder, "out"), "--as", "d6673", "--out", Path.Combine(folder, "style"));

        var (exit, output, error) = await Run("read", Path.Combine(folder, "style", "style.dxf"));

        Assert.Equal((0, true), (exit, error.Contains("POINT on layer", StringComparison.Ordinal) || error.Length == 0));
        Assert.StartsWith("T01\t", output, StringComparison.Ordinal);
        // Fifteen facets of a half icosahedron, some of them with a skirt.
        Assert.Equal(15, output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Sum(line => line.Split('\t')[1].Split(',').Sum(int.Parse)));
    }

    [Fact]
    public async Task Make_WithPiecesDrawnElsewhere_TheyAreLaidAndCutAsDrawn()
    {
        await Make();
        await Run("plot", Path.Combine(folder, "out"), "--as", "d6673", "--out", Path.Combine(folder, "style"));
        File.Copy(Path.Combine(folder, "style", "style.dxf"), Path.Combine(folder, "bag.dxf"));
        await File.WriteAllTextAsync(Path.Combine(folder, "two.json"), SmallJob.Replace("\"lay\":", "\"outside\": [ { \"file\": \"bag.dxf\", \"cloth\": \"canvas\" } ], \"lay\":", StringComparison.Ordinal));

        var (exit, _, error) = await Run("make", Path.Combine(folder, "two.json"), "--out", Path.Combine(folder, "both"));

        Assert.True(exit == 0, error);
        Assert.Equal(await File.ReadAllBytesAsync(Path.Combine(folder, "bag.dxf")), await File.ReadAllBytesAsync(Path.Combine(folder, "both", "bag.dxf")));
        var patterns = JsonNode.Parse(await File.ReadAllTextAsync(Path.Combine(folder, "both", "pieces.json")))!["patterns"]!.AsArray();
        var (own, outside) = (patterns.Single(pattern => (string?)pattern!["id"] == "T01")!, patterns.Single(pattern => (string?)pattern!["id"] == "X-T01")!);
        Assert.Equal(("outside", (int)own["quantity"]!), ((string)outside["kind"]!, (int)outside["quantity"]!));
        // The same shape moved: sides as long within the file's rounding of 0.005 mm each way at both ends.
        Assert.Equal(Sides(own["cutLine"]!), Sides(outside["cutLine"]!), (one, other) => Math.Abs(one - other) < 0.015);
        Assert.Equal(own["notches"]!.AsArray().Count(notch => (string?)notch!["form"] == "slit"), outside["notches"]!.AsArray().Count);
        var laid = JsonNode.Parse(await File.ReadAllTextAsync(Path.Combine(folder, "both", "lays.json")))!["lays"]!.AsArray().SelectMany(lay => lay!["placements"]!.AsArray()).Select(place => (string)place!["piece"]!).ToArray();
        Assert.Equal(15, laid.Count(label => label.StartsWith("X-", StringComparison.Ordinal)));
        Assert.Equal(0, (await Run("plot", Path.Combine(folder, "both"), "--as", "hpgl", "--marks", "Up", "--out", Path.Combine(folder, "both-plots"))).Exit);
        Assert.Equal(0, (await Run("plot", Path.Combine(folder, "both"), "--as", "model", "--out", Path.Combine(folder, "both-model"))).Exit);
    }

    [Theory]
    [InlineData("\n  8\n7\n", "\n  8\n9\n", "no grain line")]
    [InlineData("Quantity: ", "Quantity: -", "quantity")]
    [InlineData("Units: METRIC", "Units: ells", "does not say its units")]
    public async Task Make_PiecesThatCannotBeUsed_SaysWhich(string sound, string broken, string said)
    {
        await Make();
        await Run("plot", Path.Combine(folder, "out"), "--as", "d6673", "--out", Path.Combine(folder, "style"));
        var style = await File.ReadAllTextAsync(Path.Combine(folder, "style", "style.dxf"));
        Assert.Contains(sound, style, StringComparison.Ordinal);
        await File.WriteAllTextAsync(Path.Combine(folder, "bag.dxf"), style.Replace(sound, broken, StringComparison.Ordinal));
        await File.WriteAllTextAsync(Path.Combine(folder, "two.json"), SmallJob.Replace("\"lay\":", "\"outside\": [ { \"file\": \"bag.dxf\", \"cloth\": \"canvas\" } ], \"lay\":", StringComparison.Ordinal));

        var (exit, _, error) = await Run("make", Path.Combine(folder, "two.json"), "--out", Path.Combine(folder, "both"));

        Assert.Equal(1, exit);
        Assert.Contains("outside[0].file", error, StringComparison.Ordinal);
        Assert.Contains(said, error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("no such file", "cannot be read")]
    [InlineData("job.json", "this is not DXF")]
    public async Task Read_WhatIsNone_SaysSo(string name, string said)
    {
        await File.WriteAllTextAsync(Path.Combine(folder, "job.json"), SmallJob);

        var (exit, _, error) = await Run("read", Path.Combine(folder, name));

        Assert.Equal(1, exit);
        Assert.Contains(said, error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--sheet", "A9", "Allowed: A0, A1, A2, A3, A4, Legal, Letter, Tabloid")]
    [InlineData("--sheet", "100 mm x 300 mm", "must leave 110 mm")]
    [InlineData("--overlap", "much", "--overlap")]
    [InlineData("--scale", "0.5", "from 1 to 1000", "model")]
    [InlineData("--scale", "NaN", "from 1 to 1000", "model")]
    [InlineData("--scale", "1e2", "from 1 to 1000", "model")]
    [InlineData("--scale", "10", "beside --as dxf", "dxf")]
    [InlineData("--marks", "Table", "beside --as svg", "svg")]
    [InlineData("--sheet", "A4", "beside --as hpgl", "hpgl")]
    [InlineData("--units", "English", "beside --as model", "model")]
    public async Task Plot_WrongWord_SaysWhatIsAllowed(string option, string value, string said, string form = "pdf")
    {
        var (exit, _, error) = await Run("plot", folder, "--as", form, "--out", Path.Combine(folder, "plots"), option, value);

        Assert.Equal(1, exit);
        Assert.Contains(said, error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Plot_DecimalComma_IsAComma()
    {
        await Make();

        Assert.Equal(0, (await Run("plot", Path.Combine(folder, "out"), "--as", "model", "--scale", "12,5", "--out", Path.Combine(folder, "model"))).Exit);

        Assert.Equal(12.5, (double)JsonNode.Parse(await File.ReadAllTextAsync(Path.Combine(folder, "model", "summary.json")))!["plots"]![0]!["scale"]!);
    }

    [Fact]
    public async Task Plot_IntoAResultOrPlotsOfAnotherForm_TouchesNothing()
    {
        await Make();
        var (result, plots) = (Path.Combine(folder, "out"), Path.Combine(folder, "plots"));
        Assert.Equal(0, (await Run("plot", result, "--as", "svg", "--out", plots)).Exit);
        var before = Directory.GetFiles(result).Concat(Directory.GetFiles(plots)).Order(StringComparer.Ordinal).ToArray();

        var onResult = await Run("plot", result, "--as", "pdf", "--out", result);
        var onPlots = await Run("plot", result, "--as", "dxf", "--out", plots);
        var again = await Run("plot", result, "--as", "svg", "--out", plots);

        Assert.Equal((2, 2, 0), (onResult.Exit, onPlots.Exit, again.Exit));
        Assert.Contains("it holds a result", onResult.Error, StringComparison.Ordinal);
        Assert.Contains("of the form svg", onPlots.Error, StringComparison.Ordinal);
        Assert.Equal(before, Directory.GetFiles(result).Concat(Directory.GetFiles(plots)).Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task Plot_Machine_IsAskedOnce()
    {
        await Make();
        var (machine, result) = (Path.Combine(folder, "plotter.json"), Path.Combine(folder, "out"));

        var asked = await Run("plot", result, "--as", "hpgl", "--machine", machine, "--out", Path.Combine(folder, "none"));
        var told = await Run("plot", result, "--as", "hpgl", "--machine", machine, "--marks", "Table", "--moves", "Relative", "--section", "500 mm", "--out", Path.Combine(folder, "first"));
        var kept = await Run("plot", result, "--as", "hpgl", "--machine", machine, "--out", Path.Combine(folder, "second"));
        var both = await Run("plot", result, "--as", "hpgl", "--machine", machine, "--marks", "Up", "--out", Path.Combine(folder, "none"));

        Assert.Equal((1, 0, 0, 1), (asked.Exit, told.Exit, kept.Exit, both.Exit));
        Assert.Contains("--marks", asked.Error, StringComparison.Ordinal);
        Assert.Contains("says it already", both.Error, StringComparison.Ordinal);
        var files = Directory.EnumerateFiles(Path.Combine(folder, "first")).Select(file => Path.GetFileName(file)).Order(StringComparer.Ordinal).ToArray();
        Assert.True(files.Length > 2);
        Assert.All(files, file => Assert.Equal(File.ReadAllBytes(Path.Combine(folder, "first", file)), File.ReadAllBytes(Path.Combine(folder, "second", file))));
    }

    [Fact]
    public async Task Plot_ModelTooLarge_SaysWhichScaleFits()
    {
        await Make();

        var (exit, _, error) = await Run("plot", Path.Combine(folder, "out"), "--as", "model", "--scale", "2", "--out", Path.Combine(folder, "plots"));

        Assert.Equal(2, exit);
        Assert.Contains("Take 1:", error, StringComparison.Ordinal);
    }

    private static double[] Sides(JsonNode ring)
    {
        var points = ring.AsArray().Select(point => new Point2((double)point![0]!, (double)point[1]!)).ToArray();
        return [.. points.Select((point, i) => Point2.Distance(point, points[(i + 1) % points.Length]))];
    }

    private async Task Make()
    {
        var job = Path.Combine(folder, "job.json");
        await File.WriteAllTextAsync(job, SmallJob);
        var (exit, _, error) = await Run("make", job, "--out", Path.Combine(folder, "out"));
        Assert.True(exit == 0, error);
    }

    private async Task Writes(string[] words, params string[] files)
    {
        var target = Path.Combine(folder, "plots-" + words[1]);
        var (exit, _, error) = await Run(["plot", Path.Combine(folder, "out"), "--out", target, .. words]);
        Assert.True(exit == 0, error);
        Assert.Equal([.. files, "summary.json"], Directory.EnumerateFiles(target).Select(file => Path.GetFileName(file)).Order(StringComparer.Ordinal));
    }

    private static async Task<(int Exit, string Output, string Error)> Run(params string[] args)
    {
        var (output, error) = (new StringWriter(), new StringWriter());
        var exit = await CommandLine.RunAsync(args, output, error);
        return (exit, output.ToString(), error.ToString());
    }
}
