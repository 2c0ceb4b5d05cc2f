using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json.Nodes;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;
using CsCheck;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>Zips that take a part of a seam.</summary>
public class SeamZipSewingTests
{
    private static readonly Job Dome = SewingJobs.Dome(new CoverSizes(3, 5, 3657.6, 25, 60, 0.003));
    private static readonly string Plain = SewingJobs.PiecesText(Dome);
    private static readonly string Zipped = SewingJobs.PiecesText(With(new SeamZip("H1.02-H2.02", SewingJobs.Mm(220), SewingJobs.Mm(640))));

    private static readonly Dictionary<string, (Action<JsonNode> Change, string Found)> Planted = new(StringComparer.Ordinal)
    {
        ["one side of the zip longer"] = (file => PlantedFaults.Add(ZipRun(file, 0), "lengthMm", 0.02), "do not fit each other"),
        ["a mark moved"] = (file => PlantedFaults.Add(Marks(file, 0).First(), "atMm", 0.2), "do not meet"),
        ["less turned back"] = (file => PlantedFaults.Add(ZipRun(file, 1), "allowanceMm", -2), "mm are turned back"),
        ["one side sewn"] = (file => ZipRun(file, 0)["makeUp"] = "plain", "1 edges bear the zip"),
    };

    public static IEnumerable<object[]> Names() => Planted.Keys.Select(name => new object[] { name });

    [Fact]
    public void Faults_ZipInUpright_None() => Assert.Empty(PartedSeam.Faults(Plain, Zipped, 220, 640));

    [Fact]
    public void Faults_OtherLengthOrPlaceThanOrdered_Found()
    {
        Assert.Contains(PartedSeam.Faults(Plain, Zipped, 220, 640.1), fault => fault.Contains("the zip is", StringComparison.Ordinal));
        Assert.Contains(PartedSeam.Faults(Plain, Zipped, 220.1, 640), fault => fault.Contains("the zip begins", StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Faults_Planted_Found(string name)
    {
        var (change, found) = Planted[name];

        Assert.Contains(PartedSeam.Faults(Plain, PlantedFaults.Plant(Zipped, change), 220, 640), fault => fault.Contains(found, StringComparison.Ordinal));
    }

    [Fact]
    public void Faults_RandomZips_NoneWhereTheyFit()
    {
        var laid = 0;
        var shell = ShellFitter.Fit(Dome, FrameBuilder.Build(Dome.Frame));
        var struts = Enumerable.Range(0, shell.Edges.Length).Where(edge => shell.Edges[edge].Right >= 0 && shell.Nodes[shell.Edges[edge].From].AboveHem > 0 && shell.Nodes[shell.Edges[edge].To].AboveHem > 0).ToArray();
        Gen.Select(Gen.Int[0, struts.Length - 1], Gen.Bool, Gen.Double[50, 900], Gen.Double[80, 900]).Sample(
            (at, turned, from, length) =>
            {
                var edge = shell.Edges[struts[at]];
                var (first, second) = turned ? (edge.To, edge.From) : (edge.From, edge.To);
                var job = With(new SeamZip($"{shell.Nodes[first].Label}-{shell.Nodes[second].Label}", SewingJobs.Mm(from), SewingJobs.Mm(length)));
                if (FaultsOf(job).Length == 0)
                {
                    laid++;
                    Assert.Empty(PartedSeam.Faults(Plain, SewingJobs.PiecesText(job), from, length));
                }
            },
            iter: 25,
            threads: 1);

        Assert.InRange(laid, 5, 25);
    }

    [Theory]
    [InlineData("H1.02-H2.09", 200, 500, "\"H1.02-H2.09\"")]
    [InlineData("H1.02-H2.02", 60, 500, "a zip 60 mm from a hub")]
    [InlineData("H1.02-H2.02", 400, 1090, "mm from a hub")]
    [InlineData("H1.02-H2.02", 300, 60, "60 mm")]
    public void Faults_ZipThatDoesNotFit_IsTold(string strut, double from, double length, string said) =>
        Assert.Contains(FaultsOf(With(new SeamZip(strut, SewingJobs.Mm(from), SewingJobs.Mm(length)))), fault => fault.Said.Contains(said, StringComparison.Ordinal));

    [Fact]
    public void Faults_ZipInFoldOrOverAnother_IsTold()
    {
        var zip = new SeamZip("H1.02-H2.02", SewingJobs.Mm(200), SewingJobs.Mm(400));

        Assert.Contains(FaultsOf(With(zip, zip with { Strut = "H2.02-H1.02", From = SewingJobs.Mm(700) })), fault => fault.Said.Contains("beside or over", StringComparison.Ordinal));
        Assert.Contains(
            FaultsOf(With(zip) with { Panels = [new PanelWish(PanelForm.Bands)], Cloths = [Dome.Cloths[0] with { RollWidth = SewingJobs.Mm(6000) }] }),
            fault => fault.Allowed.Contains("a strut with a seam over it", StringComparison.Ordinal));
    }

    [Fact]
    public void Faults_ZipWhereAnOpeningTakesTheSeam_IsTold()
    {
        // An opening of 1.2 m about the middle of a facet takes the middle of every strut round it.
        var job = With(new SeamZip("H1.02-H2.02", SewingJobs.Mm(500), SewingJobs.Mm(400)));
        var shell = ShellFitter.Fit(job, FrameBuilder.Build(job.Frame));
        var edge = shell.Edges.First(edge => $"{shell.Nodes[edge.From].Label}-{shell.Nodes[edge.To].Label}" is "H1.02-H2.02" or "H2.02-H1.02");
        var opened = job with { Openings = [new OpeningWish(new OutlineWish(OutlineForm.Circle) { Width = SewingJobs.Mm(1100) }, new OpeningPlace(shell.Faces[edge.Left].Label, SewingJobs.Mm(0), SewingJobs.Mm(0)), LayingRule.Carried, SewingJobs.Mm(15))] };

        Assert.Contains(FaultsOf(opened), fault => fault.Said.Contains("O1 crosses the seam or takes it out", StringComparison.Ordinal));
    }

    private static Job With(params SeamZip[] zips) => Dome with { Seam = Dome.Seam with { Zips = [.. zips] } };

    private static Fault[] FaultsOf(Job job)
    {
        var frame = FrameBuilder.Build(job.Frame);
        var shell = ShellFitter.Fit(job, frame);
        return [.. SeamZipCheck.Faults(job, shell, SeamPlanner.Plan(job, shell, PanelPlanner.Plan(job, frame, shell)), OpeningLayer.Lay(job, frame, shell))];
    }

    private static (JsonNode Pattern, int Run)[] Zips(JsonNode file) =>
    [
        .. file["patterns"]!.AsArray().SelectMany(pattern => pattern!["runs"]!.AsArray().Select((run, i) => (Pattern: pattern!, i, (string?)run!["makeUp"])))
            .Where(entry => entry.Item3 == "zip in a seam").Select(entry => (entry.Pattern, entry.i)),
    ];

    private static JsonNode ZipRun(JsonNode file, int side) => Zips(file)[side].Pattern["runs"]![Zips(file)[side].Run]!;

    private static IEnumerable<JsonNode> Marks(JsonNode file, int side) => Zips(file)[side].Pattern["notches"]!.AsArray().Where(notch => (int)notch!["run"]! == Zips(file)[side].Run).Select(notch => notch!);
}
