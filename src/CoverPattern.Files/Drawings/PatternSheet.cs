using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Files.Drawings;

/// <summary>Draws every pattern once, side by side in rows, seen from outside.</summary>
public static class PatternSheet
{
    // Own choice: patterns stay well apart, captions as large as the labels.
    private const double Gap = 80;
    private const double CaptionHeight = 20;
    private const double CaptionGap = 20;
    private const double HeadGap = 80;

    // Width over height the whole sheet is meant to have.
    private const double Slimness = 1.6;

    /// <param name="set">The patterns, in the order in which they are drawn.</param>
    /// <param name="notes">What it says of values that nobody has confirmed; nothing when left out.</param>
    /// <param name="listedOn">Where those values are listed, such as "the first page"; on this sheet when left out.</param>
    /// <returns>One block a pattern, named for it and inserted once, neither turned nor mirrored.</returns>
    public static Drawing Draw(PieceSet set, PaperNotes? notes = null, string? listedOn = null)
    {
        ImmutableArray<string> captions = [.. set.Patterns.Select(pattern => Caption(pattern, set))];
        var places = Arrange(set.Patterns, captions);
        DrawnText[] texts = [.. set.Patterns.SelectMany((pattern, i) => Texts(pattern, captions[i], places[i]))];
        var corner = new Point2(0, HeadGap);
        return new Drawing(
            "Patterns",
            [.. set.Patterns.Select(PatternBlock.Draw)],
            [.. set.Patterns.Select((pattern, i) => new BlockInsertion(pattern.Id, places[i], 0, IsMirrored: false))],
            [SheetHead.Square(corner)],
            [
                .. SheetHead.Texts(
                    corner, "Patterns, seen from outside", [
                        "True size in millimetres; measure the square: 100 mm each way",
                        "You see the face of the cloth; arrow: grain, along the roll" + PieceTexts.Stickers(set.Patterns.Length, texts),
                    ]),
                .. (notes ?? PaperNotes.None).Texts(corner, listedOn),
                .. texts,
            ]);
    }

    private static IEnumerable<DrawnText> Texts(Pattern pattern, string words, Point2 shift)
    {
        var low = Rings.Bounds(pattern.CutLine).Low + shift;
        var map = RigidMap.Identity with { Shift = shift };
        var caption = Grid.Snap(low - new Point2(0, CaptionGap + (CaptionHeight / 2)));
        yield return new DrawnText(DrawingLayers.Label, words, caption, CaptionHeight, 0, TextAnchor.Start);
        foreach (var text in PieceTexts.Write(pattern, map, pattern.Id, FormattableString.Invariant($"{pattern.Quantity} x")))
        {
            yield return text;
        }
    }

    private static string Caption(Pattern pattern, PieceSet set) => $"{pattern.Id}: {CutCount.Of(pattern, set)}, {pattern.Cloth}{Marks(pattern)}";

    /// <summary>What the crosses of a pattern are, since not every one has room for its word beside it.</summary>
    private static string Marks(Pattern pattern) => string.Concat(pattern.Drills
        .GroupBy(drill => drill.Purpose, StringComparer.Ordinal)
        .OrderBy(marks => marks.Key, StringComparer.Ordinal)
        .Select(marks => FormattableString.Invariant($"; {marks.Count()} x {marks.Key}")));

    /// <summary>Where each pattern is moved, in whole millimetres so that its corners stay on the grid; the first row hangs from y = 0.</summary>
    private static ImmutableArray<Point2> Arrange(ImmutableArray<Pattern> patterns, ImmutableArray<string> captions)
    {
        var places = ImmutableArray.CreateBuilder<Point2>(patterns.Length);
        Point2[] cells = [.. patterns.Zip(captions, Cell)];
        var rowWidth = RowWidth(cells);
        var (x, top, rowHeight) = (0.0, 0.0, 0.0);
        foreach (var (pattern, cell) in patterns.Zip(cells))
        {
            if (x > 0 && x + cell.X > rowWidth)
            {
                (x, top, rowHeight) = (0, top - rowHeight - Gap, 0);
            }

            var box = Rings.Bounds(pattern.CutLine);
            places.Add(new Point2(x - Math.Floor(box.Low.X), top - Math.Ceiling(box.High.Y)));
            (x, rowHeight) = (x + cell.X + Gap, Math.Max(rowHeight, cell.Y));
        }

        return places.MoveToImmutable();
    }

    private static double RowWidth(Point2[] cells) => Math.Sqrt(Slimness * cells.Sum(cell => (cell.X + Gap) * (cell.Y + Gap)));

    /// <summary>Width and height of a pattern with its caption, whole millimetres.</summary>
    private static Point2 Cell(Pattern pattern, string caption)
    {
        var box = Rings.Bounds(pattern.CutLine);
        var width = Math.Max(box.Width, LetterWidth.Estimate(caption, CaptionHeight));
        return new Point2(Math.Ceiling(width) + 1, Math.Ceiling(box.Height) + 1 + CaptionGap + CaptionHeight);
    }
}
