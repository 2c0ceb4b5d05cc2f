using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using System.Text.Json;
using System.Text.Json.Nodes;
using CoverPattern.Lays;
using CoverPattern.Patterns.Jobs;

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
        ["roll"] = lay.Roll,
        ["rollName"] = lay.RollName,
        ["fromMm"] = JsonWords.Of(lay.FromMm),
        ["plies"] = lay.Plies,
        ["faceToFace"] = lay.FaceToFace,
        ["flaws"] = JsonWords.List(lay.Flaws, Write),
        ["making"] = Write(lay.Making),
        ["placements"] = JsonWords.List(lay.Placements, Write),
    };

    private static JsonObject Write(LayFlaw flaw) => new JsonObject
    {
        ["x"] = JsonWords.Of(flaw.X),
        ["y"] = JsonWords.Of(flaw.Y),
        ["longMm"] = JsonWords.Of(flaw.LongMm),
        ["wideMm"] = JsonWords.Of(flaw.WideMm),
        ["grade"] = flaw.LeastGrade,
        ["ply"] = flaw.Ply,
    };

    private static JsonObject Write(LayMaking making) => new JsonObject
    {
        ["origin"] = JsonWords.Of(making.Origin),
        ["style"] = JsonWords.Of(making.Style),
        ["method"] = making.Method,
        ["turns"] = making.Turns,
        ["offGrain"] = JsonWords.Of(making.OffGrainDegrees),
        ["inHoles"] = making.InHoles,
        ["tightMm"] = making.TightMm is { } tight ? JsonWords.Of(tight) : null,
    };

    private static JsonObject Write(Placement placement)
    {
        var place = new JsonObject { ["piece"] = placement.Piece };
        if (!placement.Under.IsEmpty)
        {
            place["under"] = JsonWords.List(placement.Under, label => JsonValue.Create(label));
        }

        place["x"] = JsonWords.Of(placement.X);
        place["y"] = JsonWords.Of(placement.Y);
        place["turn"] = JsonWords.Of(placement.TurnDegrees);
        place["mirrored"] = placement.Mirrored;
        return place;
    }

    private static Lay ReadLay(JsonPlace place)
    {
        place.AllowOnly(
            "cloth", "number", "rollWidthMm", "usableWidthMm", "endAllowanceMm", "lengthMm", "spacingMm", "faceDown", "roll", "rollName", "fromMm",
            "plies", "faceToFace", "flaws", "making", "placements");
        var (roll, usable) = (place.Field("rollWidthMm"), place.Field("usableWidthMm"));
        if (usable.Length() > roll.Length())
        {
            throw usable.Fault($"must not be greater than the roll's width, {roll.Element.GetRawText()}.");
        }

        var lay = new Lay(
            place.Field("cloth").Name(),
            roll.Length(),
            usable.Length(),
            place.Field("endAllowanceMm").Length(),
            place.Field("lengthMm").Length(),
            place.Field("spacingMm").Length(),
            place.Field("faceDown").Flag(),
            place.Field("placements").Items(ReadPlacement),
            place.Field("number").Whole(1, int.MaxValue));
        // Files of earlier versions have none of the rest.
        return !place.Has("making") ? lay : lay with
        {
            Roll = place.Field("roll").Whole(0, int.MaxValue),
            RollName = place.Field("rollName").Text(),
            FromMm = place.Field("fromMm").Length(),
            Plies = place.Field("plies").Whole(1, int.MaxValue),
            FaceToFace = place.Field("faceToFace").Flag(),
            Flaws = place.Field("flaws").Items(ReadFlaw),
            Making = ReadMaking(place.Field("making")),
        };
    }

    private static LayFlaw ReadFlaw(JsonPlace place)
    {
        place.AllowOnly("x", "y", "longMm", "wideMm", "grade", "ply");
        var grade = place.Field("grade");
        return new LayFlaw(
            place.Field("x").Number(),
            place.Field("y").Number(),
            place.Field("longMm").Length(),
            place.Field("wideMm").Length(),
            grade.Element.ValueKind == JsonValueKind.Null ? null : grade.Whole(1, 10))
        {
            // Files of earlier versions name no ply: they have flaws on single plies only.
            Ply = place.Has("ply") ? place.Field("ply").Whole(1, 100) : 1,
        };
    }

    private static LayMaking ReadMaking(JsonPlace place)
    {
        place.AllowOnly("origin", "style", "method", "turns", "offGrain", "inHoles", "tightMm");
        var tight = place.Field("tightMm");
        return new LayMaking(
            place.Field("origin").Word<LayOrigin>(),
            place.Field("style").Word<LayStyle>(),
            place.Field("method").Text(),
            place.Field("turns").Name(),
            place.Field("offGrain").Length(),
            place.Field("inHoles").Flag())
        {
            TightMm = tight.Element.ValueKind == JsonValueKind.Null ? null : tight.Length(),
        };
    }

    private static Placement ReadPlacement(JsonPlace place)
    {
        place.AllowOnly("piece", "under", "x", "y", "turn", "mirrored");
        return new Placement(
            place.Field("piece").Name(),
            place.Field("x").Number(),
            place.Field("y").Number(),
            place.Field("turn").Number(),
            place.Field("mirrored").Flag())
        {
            Under = place.Has("under") ? place.Field("under").Items(label => label.Name()) : [],
        };
    }

    private static void RefuseTwice(ImmutableArray<Lay> lays)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        for (var i = 0; i < lays.Length; i++)
        {
            for (var j = 0; j < lays[i].Placements.Length; j++)
            {
                foreach (var piece in lays[i].Placements[j].Pieces.Where(piece => !seen.Add(piece)))
                {
                    throw new ResultFormatException($"lays[{i}].placements[{j}].piece", $"the piece \"{piece}\" lies twice.");
                }
            }
        }
    }
}
