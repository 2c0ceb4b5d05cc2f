using System;
using System.Collections.Immutable;
using System.Linq;
using System.Text;
using System.Text.Json.Nodes;
using CoverPattern.Files.Drawings;
using CoverPattern.Files.Exchange;
using CoverPattern.Files.Results;
using CoverPattern.Files.Tests.Drawings;
using CoverPattern.Files.Tests.Dxf;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Files.Tests.Exchange;

/// <summary>Exchange files read back: by our own reader to the same pieces, by ezdxf to the same entities.</summary>
public class ExchangeWriterTests
{
    private static readonly SummaryHead Head = new("Kiosk für 窓", new DateOnly(2026, 5, 2), 4, 6, PaperNotes.None);

    private static readonly ExchangeStyle Style = ExchangePieces.Of(SamplePieces.Set, Head);

    [Theory]
    // Half of the last decimal each way: 0.005 mm, and 0.00005 in = 0.0013 mm.
    [InlineData(ExchangeUnits.Metric, 0.0072)]
    [InlineData(ExchangeUnits.English, 0.0024)]
    public void Write_Pieces_ComeBackTheSame(ExchangeUnits units, double tolerance)
    {
        var reading = ExchangeReader.Read(ExchangeWriter.Write(Style, units));

        Assert.Empty(reading.Faults);
        Assert.Equal("02-05-2026", reading.Style!.Date);
        Assert.Equal(Style.Pieces.Length, reading.Style.Pieces.Length);
        foreach (var (wanted, read) in Style.Pieces.Zip(reading.Style.Pieces))
        {
            Assert.Equal((wanted.Name, wanted.Right, wanted.Left, wanted.Material), (read.Name, read.Right, read.Left, read.Material));
            Same(wanted.CutLine, read.CutLine, tolerance);
            SameLines(wanted.SewLines, read.SewLines, tolerance);
            SameLines(wanted.Cutouts, read.Cutouts, tolerance);
            SameLines(wanted.Lines, read.Lines, tolerance);
            Same([.. wanted.Notches.Select(notch => notch.At)], [.. read.Notches.Select(notch => notch.At)], tolerance);
            Assert.All(wanted.Notches.Zip(read.Notches), pair => Assert.Equal((pair.First.Kind, pair.First.AngleDegrees, pair.First.DepthMm), (pair.Second.Kind, pair.Second.AngleDegrees, pair.Second.DepthMm), (one, other) =>
                one.Item1 == other.Item1 && Math.Abs(one.Item2 - other.Item2) < 0.0001 && Math.Abs(one.Item3 - other.Item3) < tolerance));
            Same([.. wanted.Drills.Select(drill => drill.At)], [.. read.Drills.Select(drill => drill.At)], tolerance);
            Assert.All(read.Drills, drill => Assert.Equal(DrillMark.HoleDiameter, drill.DiameterMm, tolerance));
            Same([wanted.GrainFrom, wanted.GrainTo], [read.GrainFrom, read.GrainTo], tolerance);
            Assert.Equal(wanted.Notes.Length, read.Notes.Length);
        }
    }

    [Fact]
    public void Of_Patterns_QuantityIsRightAndLeftAndMarksAreNotDrilled()
    {
        // The sample: T01 once as drawn and once mirrored; one mark of T02 is pierced, ticks are drawn.
        Assert.Equal((1, 1), (Style.Pieces[0].Right, Style.Pieces[0].Left));
        var pierced = SamplePieces.Set.Patterns.Select(pattern => pattern.Drills.Count(drill => drill.IsPierced));
        Assert.Equal(pierced, Style.Pieces.Select(piece => piece.Drills.Length));
        Assert.Equal(SamplePieces.Set.Patterns.Select(pattern => pattern.Notches.Count(notch => notch.Form == NotchForm.Slit)), Style.Pieces.Select(piece => piece.Notches.Length));
    }

    [Theory]
    [InlineData(ExchangeUnits.Metric, "Units: METRIC")]
    [InlineData(ExchangeUnits.English, "Units: ENGLISH")]
    public void Write_Style_SaysWhatTheStandardWants(ExchangeUnits units, string said)
    {
        var text = Encoding.ASCII.GetString(ExchangeWriter.Write(Style, units));

        Assert.Empty(DxfRelease12Structure.Faults(text));
        Assert.All(
            new[] { said, "Style Name: Kiosk f{00FC}r {7A93}", "Creation Date: 02-05-2026", "Sample Size:", "Grade Rule Table:", "Piece Name: T01", "Quantity: 1,1", "Material: canvas" },
            line => Assert.Contains($"\n  1\n{line}\n", text, StringComparison.Ordinal));
        Assert.All(text, letter => Assert.True(letter is '\n' or (>= ' ' and <= '~')));
    }

    [Fact]
    public void Ezdxf_Style_LayersHoldWhatTheStandardPutsThere()
    {
        var script = System.IO.Path.Combine(ReaderPrograms.Repository(), "tests", "CoverPattern.Files.Tests", "Dxf", "Readers", "read_dxf.py");
        var found = JsonNode.Parse(ReaderPrograms.Run(ExchangeWriter.Write(Style, ExchangeUnits.Metric), ".dxf", ReaderPrograms.Python, file => [script, file]))!;

        Assert.Equal("AC1009", (string?)found["release"]);
        Assert.Empty(found["errors"]!.AsArray());
        Assert.All(found["fixes"]!.AsArray(), fix => Assert.Contains("SEQEND", (string)fix!, StringComparison.OrdinalIgnoreCase));
        Assert.Equal(Style.Pieces.Select(piece => piece.Name), found["blocks"]!.AsObject().Select(block => block.Key));
        foreach (var piece in Style.Pieces)
        {
            var counts = found["blocks"]![piece.Name]!.AsObject();
            int Count(string key) => counts.TryGetPropertyValue(key, out var number) ? (int)number! : 0;
            Assert.Equal(1, Count("1 POLYLINE"));
            Assert.Equal(piece.SewLines.Length, Count("14 POLYLINE"));
            Assert.Equal(piece.Cutouts.Length, Count("11 POLYLINE"));
            Assert.Equal(piece.Notches.Length, Count("4 POINT"));
            Assert.Equal(piece.Drills.Length, Count("13 POINT"));
            Assert.Equal(1, Count("7 LINE"));
            // Layers 5, 7 and 6 have lines only, never polylines.
            Assert.Equal(0, Count("7 POLYLINE"));
            var corners = new[] { piece.CutLine }.Concat(piece.SewLines).Concat(piece.Cutouts).Concat(piece.Lines).SelectMany(line => line).Distinct().Count();
            Assert.Equal(corners, Count("2 POINT"));
        }
    }

    [Fact]
    public void Write_TextsOfStyleAndFirstPiece_StandApart()
    {
        // Its block's lower left corner comes to lie near the sheet's origin, where the style's texts stand too.
        var lines = Encoding.ASCII.GetString(ExchangeWriter.Write(Style with { Pieces = [Style.Pieces[0]] }, ExchangeUnits.Metric)).Split('\n');
        double Value(int from, string code) => double.Parse(lines[Array.FindIndex(lines, from, line => line.Trim() == code) + 1], System.Globalization.CultureInfo.InvariantCulture);
        var insert = Array.IndexOf(lines, "INSERT");
        var entities = Array.IndexOf(lines, "ENTITIES");
        var texts = Enumerable.Range(0, lines.Length).Where(i => lines[i] == "TEXT" && lines[i + 2] == ExchangeLayer.Boundary)
            .Select(i => Value(i, "20") + (i < entities ? Value(insert, "20") : 0)).OrderDescending().ToArray();

        Assert.Equal(10, texts.Length);
        Assert.All(texts.Zip(texts.Skip(1)), pair => Assert.True(pair.First - pair.Second > 5, $"{pair}"));
    }

    private static void SameLines(ImmutableArray<ImmutableArray<Point2>> wanted, ImmutableArray<ImmutableArray<Point2>> read, double tolerance)
    {
        Assert.Equal(wanted.Length, read.Length);
        Assert.All(wanted.Zip(read), pair => Same(pair.First, pair.Second, tolerance));
    }

    private static void Same(ImmutableArray<Point2> wanted, ImmutableArray<Point2> read, double tolerance)
    {
        Assert.Equal(wanted.Length, read.Length);
        Assert.All(wanted.Zip(read), pair => Assert.InRange(Point2.Distance(pair.First, pair.Second), 0, tolerance));
    }
}
