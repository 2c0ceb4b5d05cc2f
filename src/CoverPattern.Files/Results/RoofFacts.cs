using System;
using System.Collections.Immutable;
using System.Linq;
using System.Text.Json.Nodes;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Patterns.Seams;
using static CoverPattern.Files.Results.SummaryFile;

namespace CoverPattern.Files.Results;

/// <summary>What report and summary tell of a roof that comes off.</summary>
/// <param name="Wish">The job's wish.</param>
/// <param name="Zips">Its zips, see <see cref="RoofZipFacts"/>.</param>
/// <param name="Corners">Hubs where zips end: what to open there to fold a corner back.</param>
/// <param name="Loops">Hubs with a lifting loop.</param>
/// <param name="TabCount">Number of load tabs of one cover.</param>
/// <param name="WeightKg">Weight of the roof of one cover with its flap, without zips and fittings; null where the job does not state the cloth's mass.</param>
internal sealed record RoofFacts(
    RoofWish Wish, ImmutableArray<RoofZipFacts> Zips, ImmutableArray<(string Hub, string OpenWhole, string OpenPart)> Corners, ImmutableArray<string> Loops, int TabCount, double? WeightKg)
{
    /// <summary>The facts; null where the job wishes no roof.</summary>
    internal static RoofFacts? Of(Result result)
    {
        if (result.Job.Roof is not { } wish || RoofLine.Find(result.Job, result.Frame, result.Shell) is not { } line)
        {
            return null;
        }

        string Hub(int node) => result.Shell.Nodes[node].Label;
        var arcs = RoofFlap.ArcsOf(line, result.Cut);
        var zips = RoofZips.Plan(result.Job, result.Shell, line);
        var roof = result.Pieces.Fittings.Where(fitting => fitting.Opening == RoofFittings.Roof).ToArray();
        return new RoofFacts(
            wish,
            [.. zips.Select(zip => new RoofZipFacts(zip.Label, Hub(zip.From), Hub(zip.To), [.. zip.Steps.Select(step => arcs[step.Edge])], zip.LengthMm, result.Job.Notions.SoldZipMm(zip.LengthMm)))],
            [.. zips.Select(zip => (Hub(zip.From), zip.Label, zips.Single(before => before.To == zip.From).Label)).OrderBy(corner => corner.Item1, StringComparer.Ordinal)],
            [.. roof.Where(fitting => fitting.What == Fitting.LiftingLoop).Select(fitting => fitting.Label)],
            roof.Count(fitting => fitting.What == Fitting.LoadTab),
            RoofNotices.Weight(result.Job, result.Shell, line, result.Pieces));
    }

    internal JsonObject ToJson() => new()
    {
        ["flapMm"] = Round(Wish.Flap.Millimetres),
        ["zips"] = JsonWords.List(Zips, zip => new JsonObject
        {
            ["label"] = zip.Label,
            ["from"] = zip.From,
            ["to"] = zip.To,
            ["seams"] = new JsonArray([.. zip.Seams.Select(seam => (JsonNode)seam)]),
            ["lengthMm"] = Round(zip.LengthMm),
            ["soldMm"] = Round(zip.SoldMm),
            ["stops"] = 2,
            ["pin"] = "roof",
            ["box"] = "wall",
        }),
        ["corners"] = JsonWords.List(Corners, corner => new JsonObject { ["hub"] = corner.Hub, ["openWhole"] = corner.OpenWhole, ["openPart"] = corner.OpenPart }),
        ["loadTabs"] = TabCount,
        ["loops"] = new JsonArray([.. Loops.Select(loop => (JsonNode)loop)]),
        ["weightKg"] = WeightKg is { } weight ? Round(weight) : null,
        ["hasScreen"] = Wish.Screen is not null,
    };
}
