using System;
using System.Linq;
using System.Text;
using CoverPattern.Files.Exchange;
using CoverPattern.Geometry;
using CsCheck;

namespace CoverPattern.Files.Tests.Exchange;

/// <summary>Files of other makers, good and bad.</summary>
public class ExchangeReaderTests
{
    /// <summary>Half a metre by hand as another program may write it: carriage returns, capitals, first corner repeated, clockwise.</summary>
    private const string Foreign =
        "999\r\nsome program\r\n0\r\nSECTION\r\n2\r\nBLOCKS\r\n0\r\nBLOCK\r\n8\r\n1\r\n2\r\nFRONT\r\n70\r\n0\r\n10\r\n0.0\r\n20\r\n0.0\r\n"
        + "0\r\nPOLYLINE\r\n8\r\n1\r\n66\r\n1\r\n70\r\n0\r\n"
        + "0\r\nVERTEX\r\n8\r\n1\r\n10\r\n0\r\n20\r\n0\r\n0\r\nVERTEX\r\n8\r\n1\r\n10\r\n0\r\n20\r\n300\r\n0\r\nVERTEX\r\n8\r\n1\r\n10\r\n500\r\n20\r\n0\r\n0\r\nVERTEX\r\n8\r\n1\r\n10\r\n0\r\n20\r\n0\r\n0\r\nSEQEND\r\n"
        + "0\r\nLINE\r\n8\r\n7\r\n10\r\n50\r\n20\r\n50\r\n11\r\n150\r\n21\r\n50\r\n"
        + "0\r\nPOINT\r\n8\r\n81\r\n10\r\n250\r\n20\r\n0\r\n30\r\n5\r\n39\r\n4\r\n50\r\n90\r\n"
        + "0\r\nSPLINE\r\n8\r\n84\r\n"
        + "0\r\nTEXT\r\n8\r\n1\r\n10\r\n0\r\n20\r\n0\r\n40\r\n5\r\n1\r\nPIECE NAME: Front panel\r\n0\r\nTEXT\r\n8\r\n1\r\n10\r\n0\r\n20\r\n0\r\n40\r\n5\r\n1\r\nQuantity: 2,3\r\n"
        + "0\r\nENDBLK\r\n8\r\n1\r\n0\r\nENDSEC\r\n0\r\nSECTION\r\n2\r\nENTITIES\r\n0\r\nINSERT\r\n8\r\n1\r\n2\r\nFRONT\r\n10\r\n0\r\n20\r\n0\r\n"
        + "0\r\nTEXT\r\n8\r\n1\r\n10\r\n0\r\n20\r\n0\r\n40\r\n5\r\n1\r\nUNITS: metric\r\n0\r\nENDSEC\r\n0\r\nEOF\r\n";

    [Fact]
    public void Read_FileOfAnotherProgram_IsUnderstood()
    {
        var reading = ExchangeReader.Read(Encoding.ASCII.GetBytes(Foreign));

        var piece = Assert.Single(reading.Style!.Pieces);
        Assert.Equal(("Front panel", 2, 3), (piece.Name, piece.Right, piece.Left));
        // Half of 500 x 300 by hand, counter-clockwise.
        Assert.Equal(75_000, Rings.SignedArea(piece.CutLine), 6);
        Assert.Equal(3, piece.CutLine.Length);
        Assert.Equal(new ExchangeNotch(new Point2(250, 0), ExchangeNotchKind.Castle, 5, 4, 90), Assert.Single(piece.Notches));
        Assert.Equal((new Point2(50, 50), new Point2(150, 50)), (piece.GrainFrom, piece.GrainTo));
        // A curve on a layer that only repeats others does no harm.
        Assert.Equal("SPLINE on layer 84: 1 left aside.", Assert.Single(reading.Notes));
    }

    [Theory]
    [InlineData("UNITS: metric", "UNITS: ells", "does not say its units")]
    [InlineData("0\r\nSPLINE\r\n8\r\n84\r\n", "0\r\nSPLINE\r\n8\r\n14\r\n", "block FRONT, layer 14: SPLINE: the standard has")]
    [InlineData("0\r\nSPLINE\r\n8\r\n84\r\n", "0\r\nARC\r\n8\r\n1\r\n10\r\n0\r\n", "block FRONT, layer 1: ARC: the standard has")]
    [InlineData("10\r\n500\r\n20\r\n0\r\n", "10\r\n500\r\n20\r\n0\r\n42\r\n0.5\r\n", "an arc (group code 42)")]
    [InlineData("10\r\n500\r\n20\r\n0\r\n0\r\nVERTEX\r\n8\r\n1\r\n10\r\n0\r\n20\r\n0\r\n", "10\r\n500\r\n20\r\n0\r\n", "the boundary is open: its ends are 500.00 mm apart")]
    [InlineData("8\r\n7\r\n", "8\r\n1\r\n", "there are 2 boundaries on layer 1")]
    [InlineData("0\r\nPOLYLINE\r\n8\r\n1\r\n", "0\r\nPOLYLINE\r\n8\r\n14\r\n", "there is no boundary")]
    [InlineData("10\r\n500\r\n", "10\r\n5o0\r\n", "\"5o0\" is no number")]
    [InlineData("10\r\n500\r\n", "10\r\nNaN\r\n", "\"NaN\" is no number")]
    [InlineData("10\r\n500\r\n", "10\r\n1e9\r\n", "farther than 131 m")]
    [InlineData("10\r\n0\r\n20\r\n300\r\n", "10\r\n0\r\n20\r\n0\r\n", "meets itself or has a corner twice")]
    [InlineData("0\r\nSEQEND\r\n", "", "does not end with SEQEND")]
    [InlineData("0\r\nENDBLK\r\n8\r\n1\r\n", "", "the block does not end")]
    [InlineData("0\r\nEOF\r\n", "", "the file breaks off")]
    [InlineData("Quantity: 2,3", "Quantity: many", "quantity \"many\"")]
    [InlineData("2\r\nFRONT\r\n10\r\n0\r\n20\r\n0\r\n0\r\nTEXT", "2\r\nFRONT\r\n10\r\n0\r\n20\r\n0\r\n41\r\n2.0\r\n0\r\nTEXT", "inserted scaled by 2.0")]
    [InlineData("2\r\nBLOCKS\r\n", "2\r\nBLACKS\r\n", "there is no block")]
    [InlineData("8\r\n1\r\n66\r\n", "8\r\n1\r\nsixty\r\n", "a group code, a whole number, must stand here")]
    public void Read_FaultyFile_NamesPlaceAndFault(string sound, string broken, string expected)
    {
        Assert.Contains(sound, Foreign, StringComparison.Ordinal);
        var at = Foreign.IndexOf(sound, StringComparison.Ordinal);
        var text = Foreign[..at] + broken + Foreign[(at + sound.Length)..];

        var reading = ExchangeReader.Read(Encoding.ASCII.GetBytes(text));

        Assert.Null(reading.Style);
        Assert.Contains(reading.Faults, fault => fault.ToString().Contains(expected, StringComparison.Ordinal));
        Assert.All(reading.Faults, fault => Assert.InRange(fault.Line, 1, text.Count(letter => letter == '\n') + 1));
    }

    [Fact]
    public void Read_Fault_LineIsThatOfTheFile()
    {
        var reading = ExchangeReader.Read(Encoding.ASCII.GetBytes(Foreign.Replace("10\r\n500\r\n", "10\r\n5o0\r\n", StringComparison.Ordinal)));

        // The line after the tenth-code line: found by counting in the text itself.
        var line = Foreign[..Foreign.IndexOf("\r\n500\r\n", StringComparison.Ordinal)].Count(letter => letter == '\n') + 2;
        Assert.Equal(line, reading.Faults[0].Line);
    }

    [Fact]
    public void Read_BinaryDxf_IsRefused()
    {
        var reading = ExchangeReader.Read([.. Encoding.ASCII.GetBytes("AutoCAD Binary DXF\r\n\u001a\0"), 0, 0, 1, 2]);

        Assert.Contains("binary DXF", Assert.Single(reading.Faults).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0)]
    [InlineData((byte)'1')]
    [InlineData((byte)'\n')]
    [InlineData(0xFF)]
    public void Read_HundredMegabytesOfGarbage_IsRefusedAtOnce(byte filling)
    {
        var file = new byte[100_000_000];
        Array.Fill(file, filling);

        Assert.Single(ExchangeReader.Read(file).Faults);
        // A third of it is read, and found wanting.
        Assert.Single(ExchangeReader.Read(file.AsSpan(0, ExchangeRecord.LargestBytes)).Faults);
    }

    [Fact]
    public void Read_ALineOfAMillionCorners_IsRefused()
    {
        var corners = string.Concat(Enumerable.Repeat("0\nVERTEX\n8\n1\n10\n1\n20\n1\n", 200_000));
        var text = Foreign.Replace("0\r\nSEQEND", corners + "0\r\nSEQEND", StringComparison.Ordinal);

        var reading = ExchangeReader.Read(Encoding.ASCII.GetBytes(text));

        Assert.Contains(reading.Faults, fault => fault.Message.Contains("200004 corners", StringComparison.Ordinal));
    }

    [Fact]
    public void Read_AnyBytes_FaultsButNoException() => Gen.Byte.Array[0, 400].Sample(bytes => ExchangeReader.Read(bytes).Style is null);

    [Fact]
    public void Read_AnyChangeOfASoundFile_NeverThrows() => Gen.Select(Gen.Int[0, Foreign.Length - 1], Gen.Char[' ', '~'], Gen.Int[0, 30]).Sample((at, letter, cut) =>
    {
        var text = Foreign[..at] + letter + Foreign[Math.Min(Foreign.Length, at + cut)..];
        var reading = ExchangeReader.Read(Encoding.ASCII.GetBytes(text));
        return reading.Style is null == !reading.Faults.IsEmpty;
    });

    [Fact]
    public void Read_HeaderWithUnitsAndNoStyle_AreUsed()
    {
        var text = Foreign.Replace("UNITS: metric", "hello", StringComparison.Ordinal)
            .Replace("0\r\nSECTION\r\n2\r\nBLOCKS", "0\r\nSECTION\r\n2\r\nHEADER\r\n9\r\n$INSUNITS\r\n70\r\n1\r\n0\r\nENDSEC\r\n0\r\nSECTION\r\n2\r\nBLOCKS", StringComparison.Ordinal);

        var piece = ExchangeReader.Read(Encoding.ASCII.GetBytes(text)).Style!.Pieces[0];

        // Inches: 25.4 x 25.4 times the area.
        Assert.Equal(75_000 * 25.4 * 25.4, Rings.SignedArea(piece.CutLine), 1e-3 * 75_000);
    }
}
