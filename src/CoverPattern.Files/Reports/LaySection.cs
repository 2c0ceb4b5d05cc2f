using System;
using System.Linq;
using CoverPattern.Files.Results;
using CoverPattern.Lays;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Files.Reports;

/// <summary>Every lay: drawing in strips, and where each piece lies.</summary>
internal static class LaySection
{
    public static void Write(PageWriter page, Result result)
    {
        page.Line("h2", "Lays");
        page.Line("p", "The cut end is on the left, the lower edge of the roll below. A black dot marks corner 1 of a piece, the arrow its grain. A piece that crosses the end of a strip goes on in the next.");
        foreach (var lay in result.Lays)
        {
            Write(page, lay, result.Pieces);
        }
    }

    private static void Write(PageWriter page, Lay lay, PieceSet set)
    {
        page.Open("h3");
        page.Text(lay.Cloth);
        page.Text(FormattableString.Invariant($", lay {lay.Number}"));
        page.Close();
        var (strips, scale) = LayFigure.Draw(lay, set);
        page.Line("p", FormattableString.Invariant(
            $"Cloth lies face {(lay.FaceDown ? "down, so the pieces are drawn mirrored: as they lie on the table" : "up")}. Cut {Math.Ceiling(lay.LengthMm):0} mm off a roll {lay.RollWidthMm:0} mm wide; usable {lay.UsableWidthMm:0} mm in the middle; {lay.EndAllowanceMm:0.#} mm free at each end; {lay.SpacingMm:0.#} mm between pieces. {lay.Placements.Length} pieces. Scale about 1:{scale:0}."));
        foreach (var strip in strips)
        {
            page.Open("div", ("class", "strip"));
            page.Line("p", strip.Name);
            FigureSvg.Write(page, strip);
            page.Close();
        }

        page.Line("h3", "Where the pieces lie");
        page.Line("p", "All in mm: along from the cut end, across from the lower edge of the roll. The box is the upright rectangle round the cut line; the base is the longest edge of the sew line, from which the other corners are set out by tape.", ("class", "small"));
        page.Table("places wide", ["Piece", "Pattern", "Turn", "Box along", "Box across", "Base from", "along", "across", "Base to", "along", "across"], LaidPiece.Of(lay, set).Select(Row));
    }

    private static string[] Row(LaidPiece piece)
    {
        var (bottom, box) = (TapeSetting.Base(piece.Pattern), piece.Box);
        var (from, to) = (piece.Corner(bottom.From), piece.Corner(bottom.To));
        return
        [
            piece.Label,
            piece.Pattern.Id,
            Printed.Number(piece.Placement.TurnDegrees, piece.Placement.TurnDegrees % 1 == 0 ? 0 : 2) + "\u00b0",
            Printed.Mm(box.Low.X) + " to " + Printed.Mm(box.High.X),
            Printed.Mm(box.Low.Y) + " to " + Printed.Mm(box.High.Y),
            "corner " + Printed.Count(bottom.From + 1), Printed.Mm(from.X), Printed.Mm(from.Y),
            "corner " + Printed.Count(bottom.To + 1), Printed.Mm(to.X), Printed.Mm(to.Y),
        ];
    }
}
