using System;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using System.Text;
using CoverPattern.Files.Dxf;
using CoverPattern.Files.Results;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Exchange;

/// <summary>Writes patterns for other programs after the public text of the pattern exchange standard [ASTM D6673].</summary>
/// <remarks>docs/plots.md tells what of the standard could be read and what is our own choice.</remarks>
public static class ExchangeWriter
{
    private const double MillimetresPerInch = 25.4;
    private const double TextHeight = 5;
    private const double LineStep = 8;
    private const int PieceLines = 3;
    private const double Gap = 50;
    private const double Square = 100;

    /// <param name="style">The pieces.</param>
    /// <param name="units">What numbers mean.</param>
    /// <returns>DXF of release 12 in ASCII with "\n" line ends; the same bytes for the same style.</returns>
    public static byte[] Write(ExchangeStyle style, ExchangeUnits units)
    {
        ArgumentNullException.ThrowIfNull(style);

        var names = DxfNames.Of(style.Pieces.Select(piece => piece.Name), DxfRelease12.Plain);
        var file = new DxfTags();
        Section(file, "HEADER", new DxfTags().Add(9, "$ACADVER").Add(1, "AC1009").Add(9, "$INSBASE").AddInSpace(10, default));
        Section(file, "TABLES", Tables());
        var blocks = new DxfTags();
        foreach (var piece in style.Pieces)
        {
            new PieceBlock(blocks, units).Write(piece, names[piece.Name]);
        }

        Section(file, "BLOCKS", blocks);
        Section(file, "ENTITIES", Sheet(style, units, names));
        return Encoding.ASCII.GetBytes(file.Add(0, "EOF").ToString());
    }

    /// <summary>The style's texts, a square of known size, and every piece once, in a row.</summary>
    private static DxfTags Sheet(ExchangeStyle style, ExchangeUnits units, ImmutableSortedDictionary<string, string> names)
    {
        var sheet = new PieceBlock(new DxfTags(), units);
        string[] lines =
        [
            "ASTM/D13 Proposal 1 Version: D 6673-04",
            "Style Name: " + ExchangeText.Ascii(style.Name),
            "Creation Date: " + style.Date,
            "Author: CoverPattern;coverpattern;" + ProgramVersion.Text.Split(' ')[^1],
            "Sample Size:",
            "Grade Rule Table:",
            "Units: " + (units == ExchangeUnits.English ? "ENGLISH" : "METRIC"),
        ];
        // Below the texts of the first piece.
        var top = -LineStep * (PieceLines + 1);
        for (var i = 0; i < lines.Length; i++)
        {
            sheet.Text(ExchangeLayer.Boundary, lines[i], new Point2(0, top - (LineStep * (i + 1))));
        }

        var corner = new Point2(0, top - (LineStep * (lines.Length + 2)));
        sheet.Line(ExchangeLayer.Lines, [corner, corner - new Point2(0, Square), corner + new Point2(Square, -Square), corner + new Point2(Square, 0)], isClosed: true);
        sheet.Text(ExchangeLayer.Notes, "100 mm (3.937 in) each way", corner - new Point2(-LineStep, Square / 2));
        var right = 0.0;
        foreach (var piece in style.Pieces)
        {
            var box = Rings.Bounds(piece.CutLine);
            sheet.Insert(names[piece.Name], new Point2(right - Math.Floor(box.Low.X), -Math.Floor(box.Low.Y)));
            right += Math.Ceiling(box.Width) + Gap;
        }

        return sheet.Tags;
    }

    private static DxfTags Tables()
    {
        var tables = new DxfTags().Add(0, "TABLE").Add(2, "LTYPE").Add(70, 1)
            .Add(0, "LTYPE").Add(2, "CONTINUOUS").Add(70, 0).Add(3, string.Empty).Add(72, (int)'A').Add(73, 0).Add(40, 0.0).Add(0, "ENDTAB");
        tables.Add(0, "TABLE").Add(2, "LAYER").Add(70, ExchangeLayer.Written.Length + 1);
        foreach (var name in ExchangeLayer.Written.Prepend("0"))
        {
            tables.Add(0, "LAYER").Add(2, name).Add(70, 0).Add(62, 7).Add(6, "CONTINUOUS");
        }

        return tables.Add(0, "ENDTAB");
    }

    private static void Section(DxfTags file, string name, DxfTags content) => file.Add(0, "SECTION").Add(2, name).Add(content).Add(0, "ENDSEC");

    /// <summary>Writes entities in the file's units.</summary>
    private sealed class PieceBlock(DxfTags tags, ExchangeUnits units)
    {
        internal DxfTags Tags => tags;

        internal void Write(ExchangePiece piece, string name)
        {
            tags.Add(0, "BLOCK").Add(8, ExchangeLayer.Boundary).Add(2, name).Add(70, 0).AddInSpace(10, default);
            Line(ExchangeLayer.Boundary, piece.CutLine, isClosed: true);
            foreach (var line in piece.SewLines)
            {
                Line(ExchangeLayer.SewLines, line);
            }

            foreach (var cutout in piece.Cutouts)
            {
                Line(ExchangeLayer.Cutouts, cutout, isClosed: true);
            }

            foreach (var line in piece.Lines)
            {
                Line(ExchangeLayer.Lines, line);
            }

            foreach (var point in new[] { piece.CutLine }.Concat(piece.SewLines).Concat(piece.Cutouts).Concat(piece.Lines).SelectMany(line => line).Distinct())
            {
                Point(ExchangeLayer.TurnPoints, point, 0);
            }

            WriteMarks(piece);
            tags.Add(0, "ENDBLK").Add(8, ExchangeLayer.Boundary);
        }

        internal void Text(string layer, string text, Point2 at) =>
            tags.Add(0, "TEXT").Add(8, layer).AddInSpace(10, Units(at)).Add(40, Units(TextHeight)).Add(1, text);

        internal void Insert(string block, Point2 at) => tags.Add(0, "INSERT").Add(8, ExchangeLayer.Boundary).Add(2, block).AddInSpace(10, Units(at));

        internal void Line(string layer, ImmutableArray<Point2> points, bool isClosed) => DxfRelease12.Line(tags, layer, [.. points.Select(Units)], isClosed);

        /// <summary>A line that is closed where it ends at its beginning.</summary>
        private void Line(string layer, ImmutableArray<Point2> points)
        {
            var isRing = points.Length > 3 && points[0] == points[^1];
            Line(layer, isRing ? points[..^1] : points, isRing);
        }

        private void WriteMarks(ExchangePiece piece)
        {
            foreach (var notch in piece.Notches)
            {
                Point(((int)notch.Kind).ToString(CultureInfo.InvariantCulture), notch.At, notch.DepthMm);
                // A thickness of nought is left out, as it is what a reader takes anyway: some trip over it.
                _ = notch.WidthMm == 0 ? tags : tags.Add(39, Units(notch.WidthMm));
                tags.Add(50, Math.Round(notch.AngleDegrees, 4));
            }

            foreach (var drill in piece.Drills)
            {
                Point(ExchangeLayer.Drills, drill.At, drill.DiameterMm);
            }

            if (piece.GrainFrom != piece.GrainTo)
            {
                Line(ExchangeLayer.Grain, [piece.GrainFrom, piece.GrainTo], isClosed: false);
            }

            string[] lines = ["Piece Name: " + ExchangeText.Ascii(piece.Name), FormattableString.Invariant($"Quantity: {piece.Right},{piece.Left}"), "Material: " + ExchangeText.Ascii(piece.Material)];
            for (var i = 0; i < lines.Length; i++)
            {
                Text(ExchangeLayer.Boundary, lines[i], Rings.Bounds(piece.CutLine).Low - new Point2(0, LineStep * (i + 1)));
            }

            foreach (var note in piece.Notes)
            {
                Text(ExchangeLayer.Notes, ExchangeText.Ascii(note.Text), note.At);
            }
        }

        private void Point(string layer, Point2 at, double height)
        {
            var point = Units(at);
            tags.Add(0, "POINT").Add(8, layer).Add(10, point.X).Add(20, point.Y).Add(30, Units(height));
        }

        private Point2 Units(Point2 point) => new(Units(point.X), Units(point.Y));

        /// <summary>Millimetres with two decimals, inches with four.</summary>
        private double Units(double millimetres) => units == ExchangeUnits.English ? Math.Round(millimetres / MillimetresPerInch, 4) : Math.Round(millimetres, 2);
    }
}
