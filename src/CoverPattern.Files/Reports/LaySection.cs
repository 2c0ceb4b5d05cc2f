using System;
using System.Linq;
using CoverPattern.Files.Results;
using CoverPattern.Lays;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Files.Reports;

/// <summary>Every lay: drawing in strips, and where each piece lies.</summary>
internal static class LaySection
{
    // From here on the table stands in two columns: own choice, for a report that can still be carried.
    private const int Many = 150;

    public static void Write(PageWriter page, Result result)
    {
        page.Line("h2", "Lays");
        page.Line("p", "The cut end is on the left, the lower edge of the roll below. A black dot marks corner 1 of a piece, the arrow its grain. A piece that crosses the end of a strip goes on in the next.");
        foreach (var lay in result.Lays)
        {
            Write(page, lay, result.Pieces, Ruler.Of(result.Job));
        }
    }

    private static void Write(PageWriter page, Lay lay, PieceSet set, Ruler ruler)
    {
        page.Open("h3");
        page.Text(lay.Cloth);
        page.Text(FormattableString.Invariant($", lay {lay.Number}"));
        page.Close();
        if (LayWords.Of(lay, ruler) is { Length: > 0 } words)
        {
            page.Line("p", words);
        }

        var (strips, scale) = LayFigure.Draw(lay, set, ruler);
        page.Line("p", FormattableString.Invariant(
            $"Cloth lies face {(lay.FaceDown ? "down, so the pieces are drawn mirrored: as they lie on the table" : "up")}. Cut {ruler.EnoughWithUnit(lay.LengthMm)} off a roll {ruler.WithUnit(lay.RollWidthMm)} wide; usable {ruler.WithUnit(lay.UsableWidthMm)} in the middle; {ruler.WithUnit(lay.EndAllowanceMm)} free at each end; {ruler.WithUnit(lay.SpacingMm)} between pieces. {lay.PieceCount} pieces. Scale about 1:{scale:0}."));
        foreach (var (strip, keys) in strips)
        {
            page.Open("div", ("class", "strip"));
            page.Line("p", strip.Name);
            FigureSvg.Write(page, strip);
            if (!keys.IsEmpty)
            {
                page.Line("p", $"Too small for their names: {string.Join(", ", keys)}.", ("class", "small"));
            }

            page.Close();
        }

        Table(page, lay, set, ruler);
    }

    private static void Table(PageWriter page, Lay lay, PieceSet set, Ruler ruler)
    {
        page.Line("h3", "Where the pieces lie");
        page.Line("p", $"All in {ruler.Step}: along from the cut end, across from the lower edge of the roll, selvedge included; none of them to be added to another. Chalk the two corners of the sew line, then set out the rest by tape from them; allowances go outside the sew line.", ("class", "small"));
        page.Open("div", ("class", lay.Placements.Length > Many ? "placed dense" : "placed"));
        page.Table("places wide", ["Piece", "Pattern", "Turn", "Corner", "along", "across", "Corner", "along", "across"], LaidPiece.Of(lay, set).Select(piece => Row(piece, ruler)));
        page.Close();
    }

    private static string[] Row(LaidPiece piece, Ruler ruler)
    {
        var (first, second) = TapeSetting.Base(piece.Pattern);
        var (from, to) = (piece.Corner(first), piece.Corner(second));
        return
        [
            string.Join(", ", piece.Placement.Pieces),
            piece.Pattern.Id + (piece.Placement.Mirrored ? " turned over" : string.Empty),
            Printed.Number(piece.Placement.TurnDegrees, piece.Placement.TurnDegrees % 1 == 0 ? 0 : 2) + "\u00b0",
            Printed.Count(first + 1), ruler.Of(from.X), ruler.Of(from.Y),
            Printed.Count(second + 1), ruler.Of(to.X), ruler.Of(to.Y),
        ];
    }
}
