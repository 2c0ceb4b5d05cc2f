using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using System.Text.Json.Nodes;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Pieces;
using static CoverPattern.Files.Results.SummaryFile;

namespace CoverPattern.Files.Results;

/// <summary>What is told of a stove pipe.</summary>
/// <param name="Pipe">The pipe at its place.</param>
/// <param name="Facet">Label of the facet through which its middle line goes.</param>
/// <param name="ServiceTemperature">Of the heat cloth, degrees Celsius.</param>
/// <param name="RimMm">Length of the rim of the patch, millimetres.</param>
/// <param name="FootMm">Length of the hole's rim and of the sleeve's foot along the girth.</param>
/// <param name="Ordinates">Heights of a straight sleeve's foot at twelve stations, millimetres.</param>
internal sealed record PipeFacts(LaidPipe Pipe, string Facet, int ServiceTemperature, double RimMm, (double Rim, double Girth) FootMm, ImmutableArray<double> Ordinates)
{
    internal double TiltDegrees => Pipe.Tilt * 180 / Math.PI;

    internal static IEnumerable<PipeFacts> Of(Result result) => result.Pipes.Select(pipe => new PipeFacts(
        pipe,
        result.Shell.Faces[pipe.Region.Centre.Face].Label,
        result.Job.Cloths.First(cloth => string.Equals(cloth.Name, pipe.Wish.Cloth, StringComparison.Ordinal)).ServiceTemperature ?? 0,
        pipe.Region.RimLength,
        (pipe.Hole.RimLength, 2 * Math.PI * pipe.Wish.SleeveRadius),
        PipePieces.Ordinates(result.Shell, pipe)));

    internal JsonObject ToJson() => new()
    {
        ["label"] = Pipe.Label,
        ["run"] = JsonWords.Of(Pipe.Wish.Place.Run),
        ["facet"] = Facet,
        ["diameterMm"] = Round(Pipe.Wish.Diameter.Millimetres),
        ["clearMm"] = Round(Pipe.Wish.Clear.Millimetres),
        ["cloth"] = Pipe.Wish.Cloth,
        ["serviceTemperature"] = ServiceTemperature,
        ["tiltDegrees"] = Round(TiltDegrees),
        ["rimMm"] = Round(RimMm),
        ["holeMm"] = Round(FootMm.Rim),
        ["girthMm"] = Round(FootMm.Girth),
        ["ordinatesMm"] = new JsonArray([.. Ordinates.Select(height => (JsonNode)Round(height))]),
    };
}
