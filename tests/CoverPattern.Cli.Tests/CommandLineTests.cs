using System;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Text;
using System.Text.Json.Nodes;
using System.Threading.Tasks;
using CoverPattern.Cli.Tests.House;

namespace CoverPattern.Cli.Tests;

public sealed class CommandLineTests : IDisposable
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
    public async Task Make_SmallJob_WritesEveryFile()
    {
        var (exit, output, _) = await Run("make", Job(SmallJob), "--out", Out);

        Assert.Equal(0, exit);
        Assert.Equal(
            ["frame.html", "job.json", "lay-canvas.dxf", "lay-canvas.svg", "lays.json", "measuring.html", "pieces.dxf", "pieces.json", "pieces.svg", "report.html", "summary.json"],
            Directory.EnumerateFiles(Out).Select(file => Path.GetFileName(file)).Order(StringComparer.Ordinal));
        Assert.Equal(SmallJob, await File.ReadAllTextAsync(Path.Combine(Out, "job.json")));
        Assert.Contains("15 of", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Make_Twice_AndUnderADecimalComma_GivesTheSameBytes()
    {
        var job = Job(SmallJob);
        await Run("make", job, "--out", Out);
        var first = Content(Out);
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            await Run("make", job, "--out", Out + "2");
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }

        Assert.Equal(first, Content(Out + "2"));
    }

    [Fact]
    public async Task Make_OtherSeed_StandsInTheSummary()
    {
        await Run("make", Job(SmallJob), "--out", Out, "--seed", "7");

        Assert.Equal(7, (int)JsonNode.Parse(await File.ReadAllTextAsync(Path.Combine(Out, "summary.json")))!["seed"]!);
    }

    [Theory]
    [InlineData("{ \"schemaVersion\": 1,\n  oops }", "line 2")]
    [InlineData("{ \"schemaVersion\": 1, \"dat\": \"2026-03-01\" }", "date")]
    public async Task Make_BrokenJob_SaysWhereAndLeavesNothing(string job, string said)
    {
        var (exit, _, error) = await Run("make", Job(job), "--out", Out);

        Assert.Equal(1, exit);
        Assert.Contains(said, error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(Out));
    }

    [Fact]
    public async Task Make_MissingJob_IsAJobFault()
    {
        var (exit, _, error) = await Run("make", Path.Combine(folder, "none.json"), "--out", Out);

        Assert.Equal(1, exit);
        Assert.Contains("none.json", error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Plot_Result_WritesOneFileASectionAndListsThem()
    {
        await Run("make", Job(SmallJob), "--out", Out);

        var (exit, output, _) = await Run("plot", Out, "--as", "hpgl", "--marks", "Up", "--out", Out + "-plots", "--section", "1 m");

        Assert.Equal(0, exit);
        Assert.Contains("files", output, StringComparison.Ordinal);
        var summary = JsonNode.Parse(await File.ReadAllTextAsync(Path.Combine(Out + "-plots", "summary.json")))!;
        var files = summary["plots"]!.AsArray().Select(plot => (string)plot!["file"]!).ToArray();
        Assert.True(files.Length > 1);
        Assert.All(files, file => Assert.StartsWith("IN;", File.ReadAllText(Path.Combine(Out + "-plots", file)), StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("nowhere", "1 m", 2, "there is no summary.json")]
    [InlineData("nowhere", "1 yd", 1, "--section")]
    [InlineData("nowhere", "1 mm", 1, "--section")]
    public async Task Plot_NoResultOrNoLength_SaysSo(string from, string section, int code, string said)
    {
        var (exit, _, error) = await Run("plot", Path.Combine(folder, from), "--as", "hpgl", "--marks", "Up", "--out", Out + "-plots", "--section", section);

        Assert.Equal(code, exit);
        Assert.Contains(said, error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Plot_SpoiltPieces_SaysWhere()
    {
        await Run("make", Job(SmallJob), "--out", Out);
        await File.WriteAllTextAsync(Path.Combine(Out, "pieces.json"), "{ \"formatVersion\": 7 }");

        var (exit, _, error) = await Run("plot", Out, "--as", "hpgl", "--marks", "Up", "--out", Out + "-plots");

        Assert.Equal(2, exit);
        Assert.Contains("formatVersion", error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Make_FolderAsJob_SaysSo()
    {
        var (exit, _, error) = await Run("make", folder, "--out", Out);

        Assert.Equal(1, exit);
        Assert.Contains("is a folder", error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task New_FolderAsJob_IsAUsageFaultAndKeepsIt()
    {
        var (exit, _, error) = await Run("new", folder, "--defaults");

        Assert.Equal(1, exit);
        Assert.Contains("exists already", error, StringComparison.Ordinal);
        Assert.True(Directory.Exists(folder));
    }

    [Fact]
    public async Task Make_NoOut_IsAUsageFault() => Assert.Equal(1, (await Run("make", Job(SmallJob))).Exit);

    [Theory]
    [InlineData("", "1", "--out")]
    [InlineData(" ", "1", "--out")]
    [InlineData("somewhere", "-5", "--seed")]
    public async Task Make_EmptyFolderOrNegativeSeed_IsAUsageFault(string named, string seed, string said)
    {
        var (exit, _, error) = await Run("make", Job(SmallJob), "--out", named, "--seed", seed);

        Assert.Equal(1, exit);
        Assert.Contains(said, error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Make_RollTooNarrow_CannotBeDoneAndKeepsTheEarlierResult()
    {
        await Run("make", Job(SmallJob), "--out", Out);
        var earlier = Content(Out);

        var (exit, _, error) = await Run("make", Job(SmallJob.Replace("1.83 m", "0.5 m", StringComparison.Ordinal)), "--out", Out);

        Assert.Equal(2, exit);
        Assert.Contains("canvas", error, StringComparison.Ordinal);
        Assert.Contains("460", error, StringComparison.Ordinal);
        Assert.Equal(earlier, Content(Out));
    }

    [Fact]
    public async Task Make_AllowanceLargerThanThePiece_IsAJobFault()
    {
        // A 1V facet of R = 1 m has sides of 1051 mm and an inscribed circle of radius 303 mm; of R = 0.25 m, 76 mm.
        var job = SmallJob.Replace("1 m\"", "250 mm\"", StringComparison.Ordinal).Replace("\"lay\"", "\"seam\": { \"width\": \"90 mm\" }, \"lay\"", StringComparison.Ordinal);

        var (exit, _, error) = await Run("make", Job(job), "--out", Out);

        Assert.Equal(1, exit);
        Assert.Contains("seam.width", error, StringComparison.Ordinal);
        Assert.Contains("90 mm", error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Check_Samples_AreRight()
    {
        foreach (var sample in Directory.EnumerateFiles(Path.Combine(Repository.Root, "samples"), "*.json").Order(StringComparer.Ordinal))
        {
            var (exit, output, error) = await Run("check", sample);

            Assert.True(exit == 0, error);
            Assert.Contains("The job can be made.", output, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task New_Questions_AnswerTheJob()
    {
        var job = Path.Combine(folder, "asked.json");
        var output = new StringWriter();

        var exit = await CommandLine.RunAsync(["new", job, "--date", "2026-04-01"], output, TextWriter.Null, new StringReader("15 ft\n2\n1/2\n\n\n\n\n84 in\nglue\nfelled\n"));

        Assert.Equal(0, exit);
        Assert.Contains("\"glue\" is none of these.", output.ToString(), StringComparison.Ordinal);
        var text = await File.ReadAllTextAsync(job);
        Assert.Contains("15 ft", text, StringComparison.Ordinal);
        Assert.Contains("felled", text, StringComparison.Ordinal);
        Assert.Equal(0, (await Run("check", job)).Exit);
    }

    [Fact]
    public async Task New_ExistingFile_IsLeftAlone()
    {
        var job = Job(SmallJob);

        var (exit, _, _) = await Run("new", job);

        Assert.Equal(1, exit);
        Assert.Equal(SmallJob, await File.ReadAllTextAsync(job));
    }

    [Fact]
    public async Task New_WrongFlag_WritesNothing()
    {
        var job = Path.Combine(folder, "wrong.json");

        var (exit, _, error) = await Run("new", job, "--cut", "9/9");

        Assert.Equal(1, exit);
        Assert.Contains("cut", error, StringComparison.Ordinal);
        Assert.False(File.Exists(job));
    }

    [Fact]
    public async Task Schema_IsJson()
    {
        var (exit, output, _) = await Run("schema");

        Assert.Equal(0, exit);
        Assert.NotNull(JsonNode.Parse(output)!["properties"]!["frame"]);
    }

    private string Out => Path.Combine(folder, "out");

    private string Job(string text)
    {
        var path = Path.Combine(folder, "job.json");
        File.WriteAllText(path, text, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
        return path;
    }

    private static string Content(string path) => string.Join('\n', Directory.EnumerateFiles(path).Order(StringComparer.Ordinal)
        .Select(file => Path.GetFileName(file) + ":" + Convert.ToBase64String(File.ReadAllBytes(file))));

    private static async Task<(int Exit, string Output, string Error)> Run(params string[] args)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        var exit = await CommandLine.RunAsync(args, output, error);
        return (exit, output.ToString(), error.ToString());
    }
}
