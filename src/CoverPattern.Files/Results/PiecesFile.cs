using System;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Files.Results;

/// <summary>The file pieces.json: all patterns and pieces, for this program and others. docs/files.md tells every field.</summary>
public static class PiecesFile
{
    private const string View = "All drawings are seen from outside; rings run counter-clockwise, openings clockwise.";

    /// <returns>The file in UTF-8; the same bytes for the same set.</returns>
    public static byte[] Write(PieceSet set)
    {
        var file = ResultHeader.Begin(View);
        file["patterns"] = JsonWords.List(set.Patterns, PatternFields.Write);
        file["pieces"] = JsonWords.List(set.Pieces, PieceFields.Write);
        return JsonLayout.Write(file);
    }

    /// <summary>Reads what <see cref="Write"/> wrote: every number comes back as it was.</summary>
    /// <remarks>Checks the form, and that everything named exists; not whether partners fit each other.</remarks>
    /// <param name="file">The file in UTF-8.</param>
    /// <exception cref="ResultFormatException">Something is missing, unknown, of the wrong kind or names what is not there.</exception>
    public static PieceSet Read(ReadOnlySpan<byte> file) => ResultHeader.Read(file, ["patterns", "pieces"], place =>
    {
        var set = new PieceSet(
            place.Field("patterns").Items(PatternFields.Read),
            place.Field("pieces").Items(PieceFields.Read));
        PieceReferences.Check(set);
        return set;
    });
}
