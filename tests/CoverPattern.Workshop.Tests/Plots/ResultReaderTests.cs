using System;
using System.Collections.Immutable;
using System.IO;
using System.Linq;
using System.Text;
using System.Text.Json.Nodes;
using System.Threading;
using CoverPattern.Files.Results;
using CoverPattern.Workshop.Plots;
using CoverPattern.Workshop.Tests.Sewing;

namespace CoverPattern.Workshop.Tests.Plots;

public sealed class ResultReaderTests : IDisposable
{
    private static readonly Result Made = Make();

    private static readonly ImmutableSortedDictionary<string, byte[]> Files = ResultFiles.Write(Made);

    private readonly string folder = Directory.CreateTempSubdirectory("coverpattern-test").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Read_WhatMakeWrote_ComesBack()
    {
        Save();

        var read = ResultReader.Read(folder);

        Assert.Equal(PiecesFile.Write(Made.Pieces), PiecesFile.Write(read.Pieces));
        Assert.Equal(LaysFile.Write(Made.Lays), LaysFile.Write(read.Lays));
        Assert.Equal((Made.Job.Title, Made.Job.Date), (read.Head.Title, read.Head.Date));
        Assert.Equal(Unconfirmed(), read.Head.Notes.Unconfirmed);
    }

    [Theory]
    [InlineData("pieces.json")]
    [InlineData("lays.json")]
    [InlineData("summary.json")]
    public void Read_FileGone_SaysWhich(string name)
    {
        Save();
        File.Delete(Path.Combine(folder, name));

        Assert.Contains($"there is no {name}", Fault(), StringComparison.Ordinal);
    }

    [Fact]
    public void Read_ClothNamedAsAPath_IsRefused()
    {
        Save();
        foreach (var name in new[] { "pieces.json", "lays.json" })
        {
            var path = Path.Combine(folder, name);
            File.WriteAllText(path, File.ReadAllText(path).Replace($"\"{Made.Lays[0].Cloth}\"", "\"x/../../evil\"", StringComparison.Ordinal));
        }

        Assert.Contains("x/../../evil", Fault(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("pieces.json")]
    [InlineData("lays.json")]
    [InlineData("summary.json")]
    public void Read_NewerVersion_NamesItAndTheWayOut(string name)
    {
        Save();
        Change(name, file => file["formatVersion"] = 2);

        Assert.Contains(name, Fault(), StringComparison.Ordinal);
        Assert.Contains("formatVersion: this program reads version 1, not 2; a newer program made this result", Fault(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("pieces.json")]
    [InlineData("lays.json")]
    [InlineData("summary.json")]
    public void Read_BrokenOff_SaysWhere(string name)
    {
        Save();
        var text = Files[name];
        File.WriteAllBytes(Path.Combine(folder, name), text[..(text.Length / 2)]);

        Assert.Matches($"{name}.*line [0-9]+, column [0-9]+", Fault());
    }

    [Fact]
    public void Read_PiecesOfAnotherRun_IsRefused()
    {
        Save();
        Change("lays.json", file => file["lays"]![0]!["placements"]!.AsArray().RemoveAt(0));

        Assert.Contains("not of one run", Fault(), StringComparison.Ordinal);
    }

    [Fact]
    public void Read_PieceThatIsNotThere_IsRefused()
    {
        Save();
        Change("lays.json", file => file["lays"]![0]!["placements"]![0]!["piece"] = "X9.99");

        Assert.Contains("X9.99", Fault(), StringComparison.Ordinal);
    }

    [Fact]
    public void Read_FewerPatternsThanCounted_IsRefused()
    {
        Save();
        Change("summary.json", file => file["pieces"]!["distinct"] = 99);

        Assert.Contains("99 patterns", Fault(), StringComparison.Ordinal);
    }

    [Fact]
    public void Read_FieldOfTheWrongKind_NamesItsPlace()
    {
        Save();
        Change("pieces.json", file => file["patterns"]![0]!["quantity"] = "five");

        Assert.Contains("patterns[0].quantity", Fault(), StringComparison.Ordinal);
    }

    [Fact]
    public void Read_SeveralPliesCutAtOnce_ComesBack()
    {
        var made = Make(plies: 2);
        foreach (var (name, bytes) in ResultFiles.Write(made))
        {
            File.WriteAllBytes(Path.Combine(folder, name), bytes);
        }

        var read = ResultReader.Read(folder);

        Assert.Contains(read.Lays.SelectMany(lay => lay.Placements), place => !place.Under.IsEmpty);
        Assert.Equal(made.Pieces.Pieces.Length, read.Lays.Sum(lay => lay.PieceCount));
    }

    private static Result Make(int plies = 1)
    {
        var job = SewingJobs.Dome(new CoverSizes(2, 3, 2000, 25, 80, 0.004));
        return Corridor.Run(job with { Lay = job.Lay with { Effort = 1, Plies = plies } }, Encoding.UTF8.GetBytes("{}"), progress: null, CancellationToken.None).Result!;
    }

    private static string[] Unconfirmed() =>
    [
        .. JsonNode.Parse(Files["summary.json"])!["assumed"]!.AsArray().Where(entry => !(bool)entry!["confirmed"]!).Select(entry => $"{entry!["place"]}: {entry["value"]}"),
    ];

    private void Save()
    {
        foreach (var (name, bytes) in Files)
        {
            File.WriteAllBytes(Path.Combine(folder, name), bytes);
        }
    }

    private void Change(string name, Action<JsonNode> change)
    {
        var node = JsonNode.Parse(Files[name])!;
        change(node);
        File.WriteAllText(Path.Combine(folder, name), node.ToJsonString());
    }

    private string Fault() => Assert.Throws<ResultUnreadableException>(() => ResultReader.Read(folder)).Message;
}
