using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using CoverPattern.Files.Results;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Files.Reports;

/// <summary>What closes each opening of any outline: its pieces, zips one by one, webbing and tape.</summary>
internal static class OpeningSection
{
    public static void Write(PageWriter page, Result result)
    {
        var openings = result.Job.Openings;
        if (openings.All(opening => opening.Kind != OpeningKind.Slit && (opening.Sheet ?? opening.Screen ?? opening.Flap) is null))
        {
            return;
        }

        var ruler = Ruler.Of(result.Job);
        page.Line("h3", "What closes the openings");
        page.Table("wide", ["Opening", "What", "Pieces", "Zips, sewn length", "Other"], openings.Select((opening, i) => Row(result, (string.Create(CultureInfo.InvariantCulture, $"O{i + 1}"), opening), ruler)));
        page.Line(
            "p",
            "One cover. Cover and part bear the same ticks along a zip: lay tick on tick, or the sides end up unlike. Each zip gets a stop at both ends of its sewn length; what is bought is longer. "
            + "A zip at one jamb of a door ends at its foot; sliders run on both sides of the tape. Sheet and screen of one opening are equal: either goes in. "
            + "Strips over zips are stitched to the cover along their turned edge, outside the zip, teeth under their middle, and held on the part by hook and loop. Drip flaps (d) are stitched to the cover along their turned edge, level, 20 mm above the opening, their middle over the highest point of the rim; they hang over it. "
            + "The line of a drip flap is drawn on the cover. Slits are cut along their line to 15 mm short of its ends, from there into the corners of the zip's width; the cloth is turned back beside the teeth. "
            + "Hoods (h) are stitched to the cover from outside along their three turned edges, on the line \"hood\"; the foot between them hangs open, its front edge a sleeve for a rod that holds it off, its side edges hemmed. "
            + "Thresholds (t) stand inside behind the flap, held at both jambs by hook and loop (common practice, no source).",
            ("class", "small"));
    }

    private static string[] Row(Result result, (string Label, OpeningWish Wish) opening, Ruler ruler)
    {
        var fittings = result.Pieces.Fittings.Where(fitting => fitting.Opening == opening.Label).ToArray();
        return
        [
            opening.Label,
            What(opening.Wish),
            string.Join(", ", Pieces(result, opening.Label)),
            string.Join(", ", fittings.Where(fitting => fitting.What == Fitting.Zip).Select(zip => $"{zip.Label} {ruler.WithUnit(zip.LengthMm)}")),
            string.Join("; ", fittings.Where(fitting => fitting.What != Fitting.Zip).GroupBy(fitting => fitting.What)
                .Select(kind => $"{kind.Key} {ruler.WithUnit(kind.Sum(fitting => fitting.LengthMm))}{(kind.Count() > 1 ? $" in {Printed.Count(kind.Count())}" : string.Empty)}")),
        ];
    }

    private static string What(OpeningWish wish) => (wish.Kind switch { OpeningKind.BaseVent => "base vent", OpeningKind.HighVent => "high vent", _ => Printed.Word(wish.Kind) })
        + (wish.Held == JoinKind.Sewn ? ", sewn in" : $", by {(wish.Held == JoinKind.HookLoop ? "hook and loop" : Printed.Word(wish.Held))}")
        + (wish.Flap is null || wish.Kind == OpeningKind.HighVent ? string.Empty : $", opens {Printed.Word(wish.Opens)}");

    /// <summary>Labels of the pieces of the first cover that are no part of the cloth round the opening.</summary>
    private static IEnumerable<string> Pieces(Result result, string opening) => result.Pieces.Pieces
        .Select(piece => (piece, Place: Covers.PlaceOf(piece.Label)))
        .Where(entry => entry.piece.Facets.IsEmpty && entry.Place.StartsWith(opening, System.StringComparison.Ordinal) && entry.Place.Length > opening.Length && !char.IsAsciiDigit(entry.Place[opening.Length]))
        .Select(entry => entry.Place).Distinct();
}
