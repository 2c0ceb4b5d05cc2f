using System.Text.Json.Nodes;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Files.Results;

/// <summary>The fields of one piece in pieces.json.</summary>
internal static class PieceFields
{
    public static JsonNode Write(Piece piece) => new JsonObject
    {
        ["label"] = piece.Label,
        ["pattern"] = piece.Pattern,
        ["mirrored"] = piece.Mirrored,
        ["facets"] = JsonWords.List(piece.Facets, label => JsonValue.Create(label)),
        ["runs"] = JsonWords.List(piece.Runs, Write),
    };

    public static Piece Read(JsonPlace place)
    {
        place.AllowOnly("label", "pattern", "mirrored", "facets", "runs");
        return new Piece(
            place.Field("label").Name(),
            place.Field("pattern").Name(),
            place.Field("mirrored").Flag(),
            place.Field("runs").Items(ReadRun),
            place.Field("facets").Items(label => label.Text()));
    }

    /// <summary>An edge without partner has no such field.</summary>
    private static JsonNode Write(PieceRun run)
    {
        var fields = new JsonObject { ["arc"] = run.Arc, ["role"] = JsonWords.Of(run.Role) };
        if (run.Partner is { } partner)
        {
            fields["partner"] = new JsonObject { ["piece"] = partner.Piece, ["run"] = partner.Run };
        }

        return fields;
    }

    private static PieceRun ReadRun(JsonPlace place)
    {
        place.AllowOnly("arc", "role", "partner");
        return new PieceRun(
            place.Field("arc").Text(),
            place.Field("role").Word<EdgeRole>(),
            place.Has("partner") ? ReadPartner(place.Field("partner")) : null);
    }

    private static PartnerRun ReadPartner(JsonPlace place)
    {
        place.AllowOnly("piece", "run");
        return new PartnerRun(place.Field("piece").Name(), place.Field("run").Whole(0, int.MaxValue));
    }
}
