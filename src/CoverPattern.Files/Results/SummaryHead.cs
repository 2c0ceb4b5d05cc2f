using System;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using CoverPattern.Files.Drawings;

namespace CoverPattern.Files.Results;

/// <summary>What papers made later from a result folder must know of the run that made it.</summary>
/// <param name="Title">Title of the job.</param>
/// <param name="Date">Date of the job.</param>
/// <param name="Patterns">Patterns in pieces.json.</param>
/// <param name="Pieces">Pieces in pieces.json.</param>
/// <param name="Notes">What nobody had confirmed, and how the shop measures; in millimetres where an older summary does not say.</param>
public sealed record SummaryHead(string Title, DateOnly Date, int Patterns, int Pieces, PaperNotes Notes)
{
    /// <summary>Reads it from a summary.json; fields it does not need are not looked at.</summary>
    /// <param name="file">The file in UTF-8.</param>
    /// <exception cref="ResultFormatException">A field is missing or of the wrong kind.</exception>
    public static SummaryHead Read(ReadOnlySpan<byte> file) => ResultHeader.ReadLeniently(file, place =>
    {
        var counts = place.Field("pieces");
        return new SummaryHead(
            place.Field("title").Text(),
            ReadDate(place.Field("date")),
            counts.Field("distinct").Whole(0, int.MaxValue),
            counts.Field("total").Whole(0, int.MaxValue),
            new PaperNotes(Unconfirmed(place.Field("assumed"))) { IsInInches = place.Has("lengths") && place.Field("lengths").Text() == SummaryFile.Inches });
    });

    private static ImmutableArray<string> Unconfirmed(JsonPlace assumed) =>
    [
        .. assumed.Items(item => item).Where(item => !item.Field("confirmed").Flag()).Select(item => $"{item.Field("place").Text()}: {item.Field("value").Text()}"),
    ];

    private static DateOnly ReadDate(JsonPlace place) => DateOnly.TryParseExact(place.Text(), "O", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date)
        ? date
        : throw place.Fault($"must be a date such as 2026-05-02, not \"{place.Text()}\".");
}
