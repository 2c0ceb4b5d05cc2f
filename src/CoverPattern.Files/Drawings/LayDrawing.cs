using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Files.Reports;
using CoverPattern.Geometry;
using CoverPattern.Lays;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Files.Drawings;

/// <summary>Draws one lay as the cloth lies on the table: the roll, every piece on it, a scale in metres or feet, a test square.</summary>
public static class LayDrawing
{
    // Between the roll and the head band above it; own choice.
    private const double HeadGap = 60;

    /// <param name="lay">The lay; x along the roll, y across from its lower edge.</param>
    /// <param name="set">The pieces it places, with their patterns.</param>
    /// <param name="notes">What it says of values that nobody has confirmed, and how the shop measures; nothing and in millimetres when left out.</param>
    /// <returns>One block a pattern that lies on this roll, inserted once for each of its pieces.</returns>
    /// <exception cref="ArgumentException">A placement names a piece that is not in the set.</exception>
    public static Drawing Draw(Lay lay, PieceSet set, PaperNotes? notes = null)
    {
        var patterns = PatternsByPiece(set);
        var unknown = lay.Placements.FirstOrDefault(placement => !patterns.ContainsKey(placement.Piece));
        if (unknown is not null)
        {
            throw new ArgumentException($"The lay places {unknown.Piece}, which is not among the pieces.", nameof(lay));
        }

        var used = lay.Placements.Select(placement => patterns[placement.Piece].Id).ToHashSet(StringComparer.Ordinal);
        DrawnText[] texts = [.. lay.Placements.SelectMany(placement => Texts(placement, patterns[placement.Piece]))];
        var corner = new Point2(0, Math.Ceiling(lay.RollWidthMm) + HeadGap);
        var (said, scale) = (notes ?? PaperNotes.None, new RollScale(notes is { IsInInches: true }));
        return new Drawing(
            $"Lay of {lay.Cloth}",
            [.. set.Patterns.Where(pattern => used.Contains(pattern.Id)).Select(PatternBlock.Draw)],
            [.. lay.Placements.Select(placement => Insertion(placement, patterns[placement.Piece]))],
            [.. Strips(lay), .. scale.Lines(lay.LengthMm), SheetHead.Square(corner)],
            [
                .. scale.Texts(lay.LengthMm),
                .. SheetHead.Texts(corner, Title(lay), Below(lay, new Ruler(said.IsInInches), PieceTexts.Stickers(lay.Placements.Length, texts))),
                .. said.Texts(corner),
                .. texts,
            ]);
    }

    private static Dictionary<string, Pattern> PatternsByPiece(PieceSet set)
    {
        var byId = set.Patterns.ToDictionary(pattern => pattern.Id, StringComparer.Ordinal);
        return set.Pieces.ToDictionary(piece => piece.Label, piece => byId[piece.Pattern], StringComparer.Ordinal);
    }

    private static BlockInsertion Insertion(Placement placement, Pattern pattern) =>
        new(pattern.Id, new Point2(placement.X, placement.Y), placement.TurnDegrees, placement.Mirrored);

    private static ImmutableArray<DrawnText> Texts(Placement placement, Pattern pattern) =>
        PieceTexts.Write(pattern, Insertion(placement, pattern).Map, placement.Name, pattern.Id);

    private static IEnumerable<DrawnLine> Strips(Lay lay)
    {
        var (edge, end) = ((lay.RollWidthMm - lay.UsableWidthMm) / 2, lay.EndAllowanceMm);
        yield return Rectangle(DrawingLayers.Roll, default, new Point2(lay.LengthMm, lay.RollWidthMm));
        yield return Rectangle(
            DrawingLayers.Usable, new Point2(end, edge), new Point2(lay.LengthMm - end, lay.RollWidthMm - edge));
        foreach (var flaw in lay.Flaws)
        {
            yield return Rectangle(DrawingLayers.Flaw, new Point2(flaw.X, flaw.Y), new Point2(flaw.X + flaw.LongMm, flaw.Y + flaw.WideMm));
        }
    }

    private static DrawnLine Rectangle(DrawingLayer layer, Point2 low, Point2 high) =>
        new(layer, [low, new Point2(high.X, low.Y), high, new Point2(low.X, high.Y)], IsClosed: true);

    private static string Title(Lay lay) => $"{lay.Cloth}: as the cloth lies, face {(lay.FaceDown ? "down: pieces are drawn from inside" : "up: pieces are drawn seen from outside")}";

    private static ImmutableArray<string> Below(Lay lay, Ruler ruler, string stickers) =>
    [
        $"Roll {Width(lay.RollWidthMm, ruler)} wide, {Width(lay.UsableWidthMm, ruler)} of it usable; cut {ruler.EnoughWithUnit(lay.LengthMm)} off the roll{Off(lay, ruler)}",
        FormattableString.Invariant($"{lay.PieceCount} pieces; arrow: grain; measure the square: 100 mm each way{stickers}"),
    ];

    private static string Width(double millimetres, Ruler ruler) =>
        ruler.IsInches ? ruler.WithUnit(millimetres) : FormattableString.Invariant($"{millimetres:0.#} mm");

    private static string Off(Lay lay, Ruler ruler) =>
        (lay.Roll > 0 ? FormattableString.Invariant($", roll {lay.Roll}{(lay.RollName.Length > 0 ? " (" + lay.RollName + ")" : string.Empty)} from {ruler.WithUnit(lay.FromMm)} on") : string.Empty)
        + (lay.Plies > 1 ? FormattableString.Invariant($", {lay.Plies} plies, {(lay.FaceToFace ? "face to face" : "all one way")}: names show the top piece and how many lie under it") : string.Empty);
}
