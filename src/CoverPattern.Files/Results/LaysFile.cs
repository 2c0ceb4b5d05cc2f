using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Text.Json.Nodes;
using CoverPattern.Lays;

namespace CoverPattern.Files.Results;

/// <summary>The file lays.json: where every piece lies, for this program and others. docs/files.md tells every field.</summary>
public static class LaysFile
{
    private const string View =
        "All drawings are seen from outside; placements show the cloth as it lies on the table: mirror (y to -y), then turn, then move.";

    /// <returns>The file in UTF-8; the same bytes for the same lays.</returns>
    public static byte[] Write(ImmutableArray<Lay> lays)
    {
        var file = ResultHeader.Begin(View);
        file["lays"] = JsonWords.List(lays, Write);
        return JsonLayout.Write(file);
    }

    /// <summary>Reads what <see cref="Write(ImmutableArray{Lay})"/> wrote: every number comes back as it was.</summary>
    /// <param name="file">The file in UTF-8.</param>
    /// <exception cref="ResultFormatException">Something is missing, unknown, of the wrong kind, or a piece lies twice.</exception>
    public static ImmutableArray<Lay> Read(ReadOnlySpan<byte> file) => ResultHeader.Read(file, ["lays"], place =>
    {
        var lays = place.Field("lays").Items(ReadLay);
        RefuseTwice(lays);
        return lays;
    });

    private static JsonNode Write(Lay lay) => new JsonObject
    {
        ["cloth"] = lay.Cloth,
        ["number"] = lay.Number,
        ["rollWidthMm"] = JsonWords.Of(lay.RollWidthMm),
        ["usableWidthMm"] = JsonWords.Of(lay.UsableWidthMm),
        ["endAllowanceMm"] = JsonWords.Of(lay.EndAllowanceMm),
        ["lengthMm"] = JsonWords.Of(lay.LengthMm),
        ["spacingMm"] = JsonWords.Of(lay.SpacingMm),
        ["faceDown"] = lay.FaceDown,
        ["placements"] = JsonWords.List(lay.Placements, Write),
    };

    private static JsonNode Write(Placement placement) => new JsonObject
    {
        ["piece"] = placement.Piece,
        ["x"] = JsonWords.Of(placement.X),
        ["y"] = JsonWords.Of(placement.Y),
        ["turn"] = JsonWords.Of(placement.TurnDegrees),
        ["mirrored"] = placement.Mirrored,
    };

    private static Lay ReadLay(JsonPlace place)
    {
        place.AllowOnly(
            "cloth", "number", "rollWidthMm", "usableWidthMm", "endAllowanceMm", "lengthMm", "spacingMm", "faceDown", "placements");
        var (roll, usable) = (place.Field("rollWidthMm"), place.Field("usableWidthMm"));
        if (usable.Length() > roll.Length())
        {
            throw usable.Fault($"must not be greater than the roll's width, {roll.Element.GetRawText()}.");
        }

        return new Lay(
            place.Field("cloth").Name(),
            roll.Length(),
            usable.Length(),
            place.Field("endAllowanceMm").Length(),
            place.Field("lengthMm").Length(),
            place.Field("spacingMm").Length(),
            place.Field("faceDown").Flag(),
            place.Field("placements").Items(ReadPlacement),
            place.Field("number").Whole(1, int.MaxValue));
    }

    private static Placement ReadPlacement(JsonPlace place)
    {
        place.AllowOnly("piece", "x", "y", "turn", "mirrored");
        return new Placement(
            place.Field("piece").Name(),
            place.Field("x").Number(),
            place.Field("y").Number(),
            place.Field("turn").Number(),
            place.Field("mirrored").Flag());
    }

    private static void RefuseTwice(ImmutableArray<Lay> lays)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        for (var i = 0; i < lays.Length; i++)
        {
            for (var j = 0; j < lays[i].Placements.Length; j++)
            {
                var piece = lays[i].Placements[j].Piece;
                if (!seen.Add(piece))
                {
                    throw new ResultFormatException($"lays[{i}].placements[{j}].piece", $"the piece \"{piece}\" lies twice.");
                }
            }
        }
    }
}
