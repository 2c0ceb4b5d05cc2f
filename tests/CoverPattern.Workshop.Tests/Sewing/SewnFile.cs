using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>The text of pieces.json, as another program would read it.</summary>
internal sealed record SewnFile(IReadOnlyList<SewnPattern> Patterns, IReadOnlyList<SewnPiece> Pieces)
{
    internal static SewnFile Read(string text)
    {
        using var document = JsonDocument.Parse(text);
        var root = document.RootElement;
        // Patches lie over hubs and are no part of the surface.
        var patches = root.GetProperty("patterns").EnumerateArray().Where(pattern => TextOf(pattern, "kind") == "patch").Select(pattern => TextOf(pattern, "id")).ToHashSet();
        return new SewnFile(
            [.. root.GetProperty("patterns").EnumerateArray().Where(pattern => TextOf(pattern, "kind") != "patch").Select(ReadPattern)],
            [.. root.GetProperty("pieces").EnumerateArray().Where(piece => !patches.Contains(TextOf(piece, "pattern"))).Select(ReadPiece)])
        {
            Patches =
            [
                .. from piece in root.GetProperty("pieces").EnumerateArray()
                   where patches.Contains(TextOf(piece, "pattern"))
                   let pattern = root.GetProperty("patterns").EnumerateArray().First(pattern => TextOf(pattern, "id") == TextOf(piece, "pattern"))
                   let label = TextOf(piece, "label")
                   select new SewnPatch(label, label[..(label.LastIndexOf(' ') + 1)], Math.Sqrt(FlatPoint.AreaOf(Ring(pattern.GetProperty("cutLine"))) / Math.PI)),
            ],
        };
    }

    /// <summary>Round patches over hubs and under clips.</summary>
    internal IReadOnlyList<SewnPatch> Patches { get; init; } = [];

    /// <summary>Some of the pieces, with their patterns.</summary>
    internal SewnFile Only(Func<SewnPiece, bool> isMeant)
    {
        SewnPiece[] pieces = [.. Pieces.Where(isMeant)];
        var used = pieces.Select(piece => piece.Pattern).ToHashSet(StringComparer.Ordinal);
        return new SewnFile([.. Patterns.Where(pattern => used.Contains(pattern.Id))], pieces);
    }

    /// <summary>The pieces that lie on the frame, with nothing but their outlines: what was there before any window.</summary>
    internal SewnFile Shell()
    {
        var outlines = Patterns.Where(pattern => pattern.Facets.Count > 0)
            .Select(pattern => pattern with { Notches = [.. pattern.Notches.Where(notch => notch.Run < pattern.Runs.Count)] }).ToArray();
        var runs = outlines.GroupBy(pattern => pattern.Id).ToDictionary(group => group.Key, group => group.First().Runs.Count);
        var added = Patterns.Where(pattern => pattern.Facets.Count == 0).Select(pattern => pattern.Id).ToHashSet();
        return new SewnFile(
            outlines,
            [.. Pieces.Where(piece => !added.Contains(piece.Pattern)).Select(piece => piece with { Runs = [.. piece.Runs.Take(Outline(piece))] })]);

        // A count of runs that is wrong stays wrong: only as many as the pattern has holes are taken off.
        int Outline(SewnPiece piece) => runs.ContainsKey(piece.Pattern)
            ? piece.Runs.Count - Patterns.First(pattern => pattern.Id == piece.Pattern).Cutouts.Count
            : piece.Runs.Count;
    }

    private static SewnPattern ReadPattern(JsonElement pattern) => new(
        TextOf(pattern, "id"),
        pattern.GetProperty("quantity").GetInt32(),
        Ring(pattern.GetProperty("sewLine")),
        Ring(pattern.GetProperty("cutLine")),
        [.. pattern.GetProperty("runs").EnumerateArray().Select(ReadRun)],
        [.. pattern.GetProperty("folds").EnumerateArray().Select(ReadLine)],
        [.. pattern.GetProperty("notches").EnumerateArray().Select(ReadNotch)],
        ReadLine(pattern.GetProperty("grain")),
        [.. pattern.GetProperty("facets").EnumerateArray().Select(Ring)])
    {
        Drills = [.. pattern.GetProperty("drills").EnumerateArray().Select(drill => (Point(drill.GetProperty("at")), TextOf(drill, "purpose")))],
        Pierced = [.. pattern.GetProperty("drills").EnumerateArray().Where(drill => drill.GetProperty("pierced").GetBoolean()).Select(drill => Point(drill.GetProperty("at")))],
        Lines = [.. pattern.GetProperty("lines").EnumerateArray().Select(line => (Ring(line.GetProperty("path")), TextOf(line, "purpose")))],
        Kind = TextOf(pattern, "kind"),
        Cutouts = [.. pattern.GetProperty("cutouts").EnumerateArray().Select(ReadCutout)],
    };

    private static SewnCutout ReadCutout(JsonElement cutout) =>
        new(Ring(cutout.GetProperty("rim")), Ring(cutout.GetProperty("cutLine")), ReadRun(cutout.GetProperty("run")));

    private static SewnRun ReadRun(JsonElement run) => new(
        TextOf(run, "role"),
        TextOf(run, "side"),
        run.TryGetProperty("makeUp", out _) ? TextOf(run, "makeUp") : string.Empty,
        run.GetProperty("from").GetInt32(),
        run.GetProperty("to").GetInt32(),
        run.GetProperty("lengthMm").GetDouble(),
        run.GetProperty("allowanceMm").GetDouble());

    private static SewnNotch ReadNotch(JsonElement notch) => new(
        notch.GetProperty("run").GetInt32(),
        notch.GetProperty("atMm").GetDouble(),
        TextOf(notch, "form"),
        Point(notch.GetProperty("onSewLine")),
        Point(notch.GetProperty("outer")),
        Point(notch.GetProperty("inner")));

    private static SewnPiece ReadPiece(JsonElement piece) => new(
        TextOf(piece, "label"),
        TextOf(piece, "pattern"),
        piece.GetProperty("mirrored").GetBoolean(),
        [.. piece.GetProperty("facets").EnumerateArray().Select(label => label.GetString()!)],
        [.. piece.GetProperty("runs").EnumerateArray().Select(ReadPieceRun)]);

    private static SewnPieceRun ReadPieceRun(JsonElement run) => new(
        TextOf(run, "arc"),
        TextOf(run, "role"),
        run.TryGetProperty("partner", out var partner) ? TextOf(partner, "piece") : null,
        run.TryGetProperty("partner", out var same) ? same.GetProperty("run").GetInt32() : -1);

    private static (FlatPoint From, FlatPoint To) ReadLine(JsonElement line) =>
        (Point(line.GetProperty("from")), Point(line.GetProperty("to")));

    private static IReadOnlyList<FlatPoint> Ring(JsonElement ring) => [.. ring.EnumerateArray().Select(Point)];

    private static FlatPoint Point(JsonElement point) => new(point[0].GetDouble(), point[1].GetDouble());

    private static string TextOf(JsonElement owner, string field) => owner.GetProperty(field).GetString()!;
}

/// <summary>A pattern as the file tells it.</summary>
internal sealed record SewnPattern(
    string Id,
    int Quantity,
    IReadOnlyList<FlatPoint> SewLine,
    IReadOnlyList<FlatPoint> CutLine,
    IReadOnlyList<SewnRun> Runs,
    IReadOnlyList<(FlatPoint From, FlatPoint To)> Folds,
    IReadOnlyList<SewnNotch> Notches,
    (FlatPoint From, FlatPoint To) Grain,
    IReadOnlyList<IReadOnlyList<FlatPoint>> Facets)
{
    /// <summary>Marks inside, each with its purpose.</summary>
    internal IReadOnlyList<(FlatPoint At, string Purpose)> Drills { get; init; } = [];

    /// <summary>Places of those that are pierced.</summary>
    internal IReadOnlyList<FlatPoint> Pierced { get; init; } = [];

    /// <summary>Drawn lines, each with its purpose.</summary>
    internal IReadOnlyList<(IReadOnlyList<FlatPoint> Path, string Purpose)> Lines { get; init; } = [];

    internal string Kind { get; init; } = string.Empty;

    internal IReadOnlyList<SewnCutout> Cutouts { get; init; } = [];
}

/// <summary>A patch as the file tells it; its radius by the area of its cut line.</summary>
internal sealed record SewnPatch(string Label, string Cover, double Radius);

/// <summary>A hole as the file tells it.</summary>
internal sealed record SewnCutout(IReadOnlyList<FlatPoint> Rim, IReadOnlyList<FlatPoint> CutLine, SewnRun Run);

/// <summary>An edge of a pattern as the file tells it.</summary>
internal sealed record SewnRun(string Role, string Side, string MakeUp, int From, int To, double LengthMm, double AllowanceMm);

/// <summary>A notch as the file tells it.</summary>
internal sealed record SewnNotch(int Run, double AtMm, string Form, FlatPoint OnSewLine, FlatPoint Outer, FlatPoint Inner);

/// <summary>A piece as the file tells it.</summary>
internal sealed record SewnPiece(
    string Label, string Pattern, bool Mirrored, IReadOnlyList<string> Facets, IReadOnlyList<SewnPieceRun> Runs)
{
    /// <summary>"C03 " where the job has several covers, else nothing.</summary>
    internal string Cover => Label[..(Label.LastIndexOf(' ') + 1)];
}

/// <summary>What an edge of a piece is joined to; no partner is null.</summary>
internal sealed record SewnPieceRun(string Arc, string Role, string? Partner, int PartnerRun);
